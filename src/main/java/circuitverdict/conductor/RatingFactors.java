package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Installation;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Load;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/**
 * Rating factors of Appendix 4, or of annex B of IEC 60364-5-52: Ca ambient, Cg grouping, Ci
 * thermal insulation, Cs soil, and Ch for third harmonics (523.6.3). Between rows the next less
 * favourable one counts; beyond a table nothing is known.
 */
final class RatingFactors {
  /** Of cables of different sizes (Appendix 4, 2.3.3.1; IEC 60364-5-52, B.52.5). */
  private static final Formula MIXED = Formula.of("Cg", Unit.ONE, "1/√n");

  private static final Formula NEUTRAL_SIZED = Formula.of("Ch", Unit.ONE, "min(fh; fh/(3·h/100))");

  private final Cable cable;
  private final Installation laid;
  private final String place;
  private final Dossier d;

  RatingFactors(Cable cable, Dossier d) {
    this.cable = cable;
    this.laid = cable.installation();
    this.place = laid.place();
    this.d = d;
  }

  /** Ca: the next hotter row; the table's reference temperature may be assumed for a design. */
  Figure ambient() {
    Pointer at = new Pointer(place, "ambientTemperatureC");
    boolean ground = laid.buried();
    Value reference =
        d.edition()
            .constant(
                ground
                    ? Constant.TEMPERATURE_REFERENCE_AMBIENT_GROUND
                    : Constant.TEMPERATURE_REFERENCE_AMBIENT_AIR);
    Figure temperature =
        d.orAssume(
            "θa",
            laid.ambientTemperatureC(),
            at,
            reference,
            Allowance.TABLE_DEFAULTS,
            NoteCode.ASSUMED_AMBIENT);
    if (!temperature.known() || cable.insulation() == null) {
      return Figure.unknown("Ca", Unit.ONE);
    }
    String insulation = RatingTables.ratedAs(cable, d);
    Value factor =
        ground
            ? d.edition()
                .table(TableName.TABLE_4B2)
                .atOrAbove(insulation.endsWith("70") ? "70" : "90", temperature.value())
            : ambientColumn(insulation, temperature.value());
    return d.tabled("Ca", factor, Unit.ONE, at);
  }

  private Value ambientColumn(String insulation, double temperature) {
    return d.edition().table(TableName.TABLE_4B1).has(insulation)
        ? d.edition().table(TableName.TABLE_4B1).atOrAbove(insulation, temperature)
        : null;
  }

  /** Cg: the next larger number tabled; cables in parallel count one by one. */
  Figure grouping() {
    Pointer at = new Pointer(place, "groupedCircuits");
    Integer circuits = laid.groupedCircuits();
    if (circuits == null && d.allows(Allowance.TYPICAL_VALUES)) {
      d.assume(NoteCode.ASSUMED_SINGLE_CIRCUIT, at);
      circuits = 1;
    }
    if (circuits == null) {
      d.missing(at);
      return Figure.unknown("Cg", Unit.ONE);
    }
    int cables = circuits - 1 - light(circuits) + cable.parallel();
    if (cables == 1) {
      return one("Cg");
    }
    if (laid.groupArrangement() == Installation.Group.SPACED && freeToAir()) {
      // Clear by more than twice the diameter: Table 4C1 asks for no factor.
      return one("Cg");
    }
    if (laid.groupArrangement() == null) {
      d.assume(NoteCode.ASSUMED_BUNCHED, new Pointer(place, "groupArrangement"));
    }
    if (Boolean.TRUE.equals(laid.mixedSizes())) {
      Figure count = new Figure("n", cables, Unit.ONE, at);
      return d.working().step(MIXED, count);
    }
    return d.tabled("Cg", grouped(cables), Unit.ONE, at);
  }

  /** Others that carry so little of what they may that they heat nobody (notes of Table 4C1). */
  private int light(int circuits) {
    Integer light = laid.lightlyLoadedCircuits();
    if (light == null || light == 0) {
      return 0;
    }
    d.remark(NoteCode.LIGHTLY_LOADED, d.constant("p", Constant.GROUP_NOTES_LIGHT_LOAD));
    return Math.min(light, circuits - 1);
  }

  /**
   * Methods whose cables can lie clear of each other; in conduit, trunking or the ground they
   * cannot.
   */
  private boolean freeToAir() {
    String method = laid.referenceMethod();
    return "C".equals(method) || "E".equals(method) || "F".equals(method) || "G".equals(method);
  }

  private Value grouped(int cables) {
    if (laid.buried()) {
      if (cable.construction() == Cable.Construction.SINGLES) {
        // What is tabled holds for multicore cables; single ones have less.
        return null;
      }
      TableName spaced = laid.direct() ? TableName.TABLE_4C2 : TableName.TABLE_4C3;
      return d.edition().table(spaced).atOrAbove("nil", cables);
    }
    String method = laid.referenceMethod();
    boolean touching = laid.groupArrangement() == Installation.Group.TOUCHING;
    if (touching && "C".equals(method)) {
      return d.edition()
          .table(TableName.TABLE_4C1)
          .atOrAbove("factor", "single-layer-on-surface", cables);
    }
    if (touching && ("E".equals(method) || "F".equals(method))) {
      Value tray =
          d.edition()
              .table(TableName.TABLE_4C1)
              .atOrAbove("factor", "single-layer-on-tray", cables);
      Value ladder =
          d.edition()
              .table(TableName.TABLE_4C1)
              .atOrAbove("factor", "single-layer-on-ladder", cables);
      return tray == null || ladder == null
          ? null
          : tray.number() <= ladder.number() ? tray : ladder;
    }
    return d.edition().table(TableName.TABLE_4C1).atOrAbove("factor", "bunched", cables);
  }

  /** Ci: the next longer row; methods 100 to 103 already contain their insulation. */
  Figure insulation() {
    Double length = laid.insulationLengthM();
    boolean contained = laid.referenceMethod() != null && laid.referenceMethod().startsWith("10");
    if (length == null || length == 0 || contained) {
      return one("Ci");
    }
    Pointer at = new Pointer(place, "insulationLengthM");
    var table = d.edition().table(TableName.TABLE_52_2);
    if (!d.edition().has(TableName.TABLE_52_2)) {
      return d.tabled("Ci", null, Unit.ONE, at);
    }
    double longest = d.edition().constant(Constant.INSULATION_RANGE_LONGEST).number();
    double largest = d.edition().constant(Constant.INSULATION_RANGE_LARGEST_CSA).number();
    boolean large = cable.lineCsaMm2() == null || cable.lineCsaMm2() > largest;
    if (large && length < longest) {
      d.missing(NoteCode.NOT_IN_TABLES, at);
      return Figure.unknown("Ci", Unit.ONE);
    }
    return d.tabled("Ci", table.atOrAbove("factor", Math.min(length, longest)), Unit.ONE, at);
  }

  /** Cs of cables in the ground; deeper than the reference depth nothing is known. */
  Figure soil() {
    if (!laid.buried()) {
      return one("Cs");
    }
    Pointer at = new Pointer(place, "soilThermalResistivityKMPerW");
    Figure resistivity =
        d.orAssume(
            "ρ",
            laid.soilThermalResistivityKMPerW(),
            at,
            d.edition().constant(Constant.TEMPERATURE_REFERENCE_SOIL_RESISTIVITY),
            Allowance.TABLE_DEFAULTS,
            NoteCode.ASSUMED_SOIL);
    Value reference = d.edition().constant(Constant.TEMPERATURE_REFERENCE_DEPTH);
    Pointer depthAt = new Pointer(place, "burialDepthM");
    Figure depth =
        d.orAssume(
            "h",
            laid.burialDepthM(),
            depthAt,
            reference,
            Allowance.TABLE_DEFAULTS,
            NoteCode.ASSUMED_DEPTH);
    if (!resistivity.known() || !depth.known()) {
      return Figure.unknown("Cs", Unit.ONE);
    }
    if (depth.value() > reference.number()) {
      d.missing(NoteCode.NOT_IN_TABLES, depthAt);
      return Figure.unknown("Cs", Unit.ONE);
    }
    return d.tabled(
        "Cs",
        d.edition()
            .table(TableName.TABLE_4B3)
            .atOrAbove(laid.direct() ? "direct" : "duct", resistivity.value()),
        Unit.ONE,
        at);
  }

  /** Ch: needed where three phases and a neutral feed lamps or electronics. */
  Figure harmonics(Circuit circuit, LiveConductors live) {
    if (live == null || !live.threePhase() || !live.neutral()) {
      return one("Ch");
    }
    Load load = circuit.load();
    Double percent = load.thirdHarmonicPercent();
    Figure harmonic = d.given("h", percent, Unit.PERCENT, At.THIRD_HARMONIC);
    if (percent == null) {
      Boolean rich = harmonicsExpected(load);
      if (rich == null) {
        d.missing(At.LOAD_KIND);
        return Figure.unknown("Ch", Unit.ONE);
      }
      if (!rich) {
        return one("Ch");
      }
      harmonic =
          d.orAssume(
              "h",
              null,
              At.THIRD_HARMONIC,
              d.edition().constant(Constant.THIRD_HARMONIC_ASSUMED_QUOTATION),
              Allowance.TYPICAL_VALUES,
              NoteCode.ASSUMED_THIRD_HARMONIC);
    }
    if (!harmonic.known()) {
      return Figure.unknown("Ch", Unit.ONE);
    }
    var table = d.edition().table(TableName.THIRD_HARMONIC);
    Figure factor = Figure.of("fh", table.at("factor", harmonic.value()));
    boolean byNeutral = table.at("neutralBasis", harmonic.value()).number() > 0;
    return byNeutral ? d.working().step(NEUTRAL_SIZED, factor, harmonic) : factor.as("Ch");
  }

  /** Whether the load is known to make harmonics; null where its kind is not stated. */
  private static Boolean harmonicsExpected(Load load) {
    for (Load.Kind rich :
        new Load.Kind[] {
          Load.Kind.LED,
          Load.Kind.DISCHARGE,
          Load.Kind.ELECTRONIC,
          Load.Kind.MIXED,
          Load.Kind.SOCKET_OUTLETS,
          Load.Kind.VEHICLE_CHARGING
        }) {
      if (load.has(rich)) {
        return true;
      }
    }
    return load.kindsKnown() ? Boolean.FALSE : null;
  }

  private static Figure one(String symbol) {
    return Figure.derived(symbol, 1, Unit.ONE);
  }
}
