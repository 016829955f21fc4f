package circuitverdict.conductor;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Load;
import circuitverdict.device.RatedCurrent;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Shared.Topic;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;

/**
 * Design current Ib, A (311, 433.1.1): as stated, from the load's power at its own rated voltage,
 * the declared current of a charging point, or, for circuits that state no load but their
 * socket-outlets, the rated current of the device. A ring alone says not that it feeds such
 * outlets.
 */
public final class DesignCurrent {
  private static final Formula SINGLE = Formula.of("Ib", Unit.AMPERE, "P·n·kd/(U·cosφ·η/100)");
  private static final Formula THREE = Formula.of("Ib", Unit.AMPERE, "P·n·kd/(√3·U·cosφ·η/100)");
  private static final Formula POINTS = Formula.of("Ib", Unit.AMPERE, "Ir·n·kd");
  private static final Formula LAMPS = Formula.of("P", Unit.WATT, "kl·Plamps");
  private static final Formula SUM = Formula.of("Ib", Unit.AMPERE, "Isum + Ipart");
  private static final Formula DIVERSE = Formula.of("Ib", Unit.AMPERE, "kd·Isum");

  private final Circuit circuit;
  private final LiveConductors live;
  private final Dossier d;
  private final boolean least;

  private DesignCurrent(Circuit circuit, LiveConductors live, Dossier d, boolean least) {
    this.circuit = circuit;
    this.live = live;
    this.d = d;
    this.least = least;
  }

  /** Ib of a circuit. */
  public static Figure of(Circuit circuit, LiveConductors live, Dossier d) {
    return d.once(
        Topic.DESIGN_CURRENT,
        circuit,
        inner -> new DesignCurrent(circuit, live, inner, false).ofCircuit());
  }

  /** The current of one load or part of a load of the circuit, A, as stated or by its ratings. */
  public static Figure ofOne(
      Circuit circuit, LiveConductors live, Load load, String place, Dossier d) {
    return new DesignCurrent(circuit, live, d, false).ofLoad(load, place);
  }

  /** Whether the rated current of the device stands for Ib: the most that the outlets may draw. */
  public static boolean isRating(Circuit circuit) {
    Load load = circuit.load();
    return load.kind() == Load.Kind.SOCKET_OUTLETS
        && circuit.device() != null
        && statesNoCurrent(load);
  }

  private static boolean statesNoCurrent(Load load) {
    return load.designCurrentA() == null && load.ratedPowerW() == null && load.parts().isEmpty();
  }

  /** Ib, with a remark where it is stated as less than the stated load draws at the least. */
  public static Figure noted(Circuit circuit, LiveConductors live, Dossier d) {
    new DesignCurrent(circuit, live, d.trial(), true).hold(circuit.load(), At.LOAD, d);
    return of(circuit, live, d);
  }

  private void hold(Load load, String place, Dossier told) {
    for (int i = 0; i < load.parts().size(); i++) {
      hold(load.parts().get(i), place + "/parts/" + i, told);
    }
    if (load.designCurrentA() == null) {
      return;
    }
    Figure stated = ofLoad(load, place);
    Figure drawn = ofRatings(load, place);
    if (drawn.known() && !Comparator.atMost(drawn.value(), stated.value())) {
      String member =
          load.kind() == Load.Kind.VEHICLE_CHARGING
              ? "ratedCurrentA"
              : load.parts().isEmpty() ? "ratedPowerW" : "parts";
      told.remark(
          NoteCode.DESIGN_CURRENT_BELOW_LOAD,
          stated,
          new Figure("Ib,min", drawn.value(), Unit.AMPERE, new Pointer(place, member)));
    }
  }

  /**
   * The least that the stated load draws, whatever the inputs that are missing: power all drawn and
   * in phase, no current where none follows. Only a failure may rest on it.
   */
  public static Figure least(Circuit circuit, LiveConductors live, Dossier d) {
    return new DesignCurrent(circuit, live, d, true).ofLoad(circuit.load(), At.LOAD).as("Ib,min");
  }

  private Figure ofCircuit() {
    Load load = circuit.load();
    if (statesNoCurrent(load) && load.kind() == null && circuit.cable().ring()) {
      d.missing(At.LOAD_KIND);
    }
    if (isRating(circuit)) {
      Figure rated = RatedCurrent.of(circuit.device(), d);
      Figure outlet =
          d.given("Ib", load.ratedCurrentA(), Unit.AMPERE, new Pointer(At.LOAD, "ratedCurrentA"));
      Figure design = outlet.known() ? Figure.greater(rated.as("Ib"), outlet) : rated.as("Ib");
      if (rated.known()) {
        d.assume(NoteCode.DESIGN_CURRENT_IS_RATING, At.DESIGN_CURRENT, design);
      }
      return d.working().look(rated.known() ? design : rated.as("Ib"));
    }
    return ofLoad(load, At.LOAD);
  }

  private Figure ofLoad(Load load, String place) {
    if (load.designCurrentA() != null) {
      return d.working()
          .look(
              d.given(
                  "Ib", load.designCurrentA(), Unit.AMPERE, new Pointer(place, "designCurrentA")));
    }
    return ofRatings(load, place);
  }

  private Figure ofRatings(Load load, String place) {
    if (load.kind() == Load.Kind.VEHICLE_CHARGING) {
      // A charging point draws what it declares; its rounded power would give a few tenths more.
      String member = load.ratedCurrentA() == null ? "designCurrentA" : "ratedCurrentA";
      Figure declared = need("Ir", load.ratedCurrentA(), Unit.AMPERE, new Pointer(place, member));
      if (load.diversityFactor() != null
          && load.diversityFactor() < 1
          && circuit.kind() != Circuit.Kind.DISTRIBUTION) {
        d.remark(NoteCode.CHARGING_DIVERSITY);
      }
      return d.working().step(POINTS, declared, count(load, place), diversity(load, place));
    }
    if (!load.parts().isEmpty()) {
      return ofParts(load, place);
    }
    if (load.ratedPowerW() == null) {
      return need("Ib", null, Unit.AMPERE, new Pointer(place, "designCurrentA"));
    }
    return ofPower(load, place);
  }

  private Figure ofParts(Load load, String place) {
    Figure sum = Figure.derived("Isum", 0, Unit.AMPERE);
    for (int i = 0; i < load.parts().size(); i++) {
      Figure part = ofLoad(load.parts().get(i), place + "/parts/" + i);
      if (part.known() || !least) {
        sum = d.working().step(SUM, sum, part.as("Ipart")).as("Isum");
      }
    }
    return d.working().step(DIVERSE, diversity(load, place), sum);
  }

  private Figure ofPower(Load load, String place) {
    Figure power = d.given("P", load.ratedPowerW(), Unit.WATT, new Pointer(place, "ratedPowerW"));
    boolean byWatts = isLampOfNoData(load);
    Figure efficiency = efficiency(load, place);
    Figure cosine = byWatts ? one("cosφ") : powerFactor(load, place);
    power = byWatts ? lampInput(power, place) : power;
    Boolean spread =
        live == null
            ? null
            : live.threePhase() ? OneLine.acrossLines(circuit, load, d) : Boolean.FALSE;
    if (spread == null) {
      return Figure.unknown("Ib", Unit.AMPERE);
    }
    Figure voltage = voltage(load, place, spread);
    if (!spread && live.threePhase() && load.count() != null && load.count() > 1) {
      // How the items share the lines is not known.
      return need("Ib", null, Unit.AMPERE, new Pointer(place, "designCurrentA"));
    }
    Figure whole =
        d.working()
            .step(
                spread ? THREE : SINGLE,
                power,
                count(load, place),
                diversity(load, place),
                voltage,
                cosine,
                efficiency);
    return load.demandRule() == null ? whole : byRule(load, whole, place);
  }

  /** A stated demand of a guide: not where parameters must be stated. */
  private Figure byRule(Load load, Figure whole, String place) {
    if (!least && !d.allows(Allowance.TABLE_DEFAULTS)) {
      return need("Ib", null, Unit.AMPERE, new Pointer(place, "designCurrentA"));
    }
    return GuideDemand.of(load, whole, place, d);
  }

  /**
   * The voltage at which a load draws its power: its own rated one. A load that keeps its power
   * draws it at the circuit's where that is less. One rated for another voltage than the circuit
   * has, the tolerance of supplies aside, draws there what its power does not say.
   */
  private Figure voltage(Load load, String place, boolean spread) {
    boolean oneLine = live.threePhase() && live.neutral() && !spread;
    Figure nominal =
        oneLine
            ? NominalVoltage.lineToEarth(circuit, d).as("U")
            : NominalVoltage.ofCircuit(circuit, live, d);
    if (load.ratedVoltageV() == null || !nominal.known()) {
      return nominal;
    }
    Pointer at = new Pointer(place, "ratedVoltageV");
    Figure rated = d.given("U", load.ratedVoltageV(), Unit.VOLT, at);
    double tolerance = d.edition().constant(Constant.CMAX).number();
    if (!Comparator.atMost(rated.value(), tolerance * nominal.value())
        || !Comparator.atMost(nominal.value(), tolerance * rated.value())) {
      d.missing(NoteCode.VOLTAGE_BEYOND_CIRCUIT, at, nominal);
      return Figure.unknown("U", Unit.VOLT);
    }
    boolean resistive = load.kind() == Load.Kind.RESISTIVE || load.kind() == Load.Kind.FILAMENT;
    return resistive ? rated : Figure.lesser(rated, nominal);
  }

  /** A figure that is needed; where only the least is asked for nothing is called missing. */
  private Figure need(String symbol, Double value, Unit unit, Pointer at) {
    return least ? d.given(symbol, value, unit, at) : d.need(symbol, value, unit, at);
  }

  private Figure count(Load load, String place) {
    return load.count() == null
        ? one("n")
        : d.given("n", (double) load.count(), Unit.ONE, new Pointer(place, "count"));
  }

  private Figure diversity(Load load, String place) {
    return load.diversityFactor() == null
        ? one("kd")
        : d.given("kd", load.diversityFactor(), Unit.ONE, new Pointer(place, "diversityFactor"));
  }

  private Figure efficiency(Load load, String place) {
    Pointer at = new Pointer(place, "efficiencyPercent");
    Figure drawn = Figure.derived("η", 100, Unit.PERCENT);
    boolean powerIsDrawn = least || load.kind() != null && load.kind() != Load.Kind.MOTOR;
    if (load.efficiencyPercent() == null && powerIsDrawn) {
      return drawn;
    }
    if (load.efficiencyPercent() == null
        && load.kind() == null
        && d.allows(Allowance.TABLE_DEFAULTS)) {
      d.assume(NoteCode.ASSUMED_EFFICIENCY, at, drawn);
      return drawn;
    }
    return d.need("η", load.efficiencyPercent(), Unit.PERCENT, at);
  }

  /** Discharge and fluorescent lamps of which the watts alone are stated. */
  private boolean isLampOfNoData(Load load) {
    return load.kind() == Load.Kind.DISCHARGE
        && load.powerFactor() == null
        && load.efficiencyPercent() == null
        && !least
        && d.allows(Allowance.TABLE_DEFAULTS);
  }

  /** What such lamps draw for their watts, by guidance: a failure rests on no such figure. */
  private Figure lampInput(Figure power, String place) {
    Figure factor = d.constant("kl", Constant.LAMP_INPUT_DISCHARGE);
    d.assumeCurable(NoteCode.ASSUMED_LAMP_INPUT, new Pointer(place, "powerFactor"), factor);
    return d.working().step(LAMPS, factor, power.as("Plamps"));
  }

  /** Of a resistance 1 by its nature: nothing about the installation is assumed by that. */
  private Figure powerFactor(Load load, String place) {
    Pointer at = new Pointer(place, "powerFactor");
    boolean resistive = load.kind() == Load.Kind.RESISTIVE || load.kind() == Load.Kind.FILAMENT;
    if (load.powerFactor() == null && resistive) {
      d.assume(NoteCode.ASSUMED_UNITY_POWER_FACTOR, at);
      return one("cosφ");
    }
    if (load.powerFactor() == null && least) {
      return one("cosφ");
    }
    return d.need("cosφ", load.powerFactor(), Unit.ONE, at);
  }

  private static Figure one(String symbol) {
    return Figure.derived(symbol, 1, Unit.ONE);
  }
}
