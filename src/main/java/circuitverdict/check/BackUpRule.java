package circuitverdict.check;

import circuitverdict.circuit.Assembly;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.conductor.NominalVoltage;
import circuitverdict.device.BreakingCapacity;
import circuitverdict.device.LetThrough;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Constant;
import java.util.Set;

/**
 * What may stand behind a device whose own capacity is exceeded: a declared combination with a
 * named upstream device that breaks the current itself (434.5.1), or the conditional rating of a
 * 230 V single-phase unit to 61439-3 with its maker's own devices behind a fuse of at most 100 A
 * (536.4.201).
 */
final class BackUpRule {
  private static final String BS_1361 = "BS 1361";
  private static final Set<String> SERVICE_FUSES = Set.of("BS 88-3", BS_1361);

  private static final Pointer LIMITED = new Pointer("/backUp", "limitedLetThroughA2s");
  private static final Pointer COMBINATION = new Pointer("/backUp", "combinationRatingA");

  private BackUpRule() {}

  /** Whether what stands behind the device decides: holds it, or would with what is missing. */
  static boolean decides(
      Circuit circuit,
      LiveConductors live,
      Figure current,
      Figure capacity,
      Judgement judgement,
      Dossier d) {
    Boolean pair = pair(circuit, current, capacity, judgement, d);
    if (Boolean.TRUE.equals(pair) || conditional(circuit, live, current, judgement, d)) {
      return true;
    }
    if (pair == null) {
      judgement.undetermined();
    }
    return pair == null;
  }

  /**
   * Whether the declared pair holds the current; null where it would with what is then noted as
   * missing.
   */
  private static Boolean pair(
      Circuit circuit, Figure current, Figure capacity, Judgement judgement, Dossier d) {
    if (!EnergyEvidence.evidenced(circuit)) {
      return false;
    }
    Double rating = circuit.backUp().combinationRatingA();
    if (rating == null) {
      return limited(circuit, current, capacity, judgement, d);
    }
    Figure combined = d.given("Icomb", rating, Unit.AMPERE, COMBINATION);
    if (!Comparator.atMost(current.value(), combined.value())) {
      return false;
    }
    Boolean broken = upstreamBreaks(circuit, current, d);
    if (Boolean.TRUE.equals(broken)) {
      held(circuit, current, judgement, d);
      judgement.compare("/device", current, Comparator.AT_MOST, combined);
    }
    return broken;
  }

  /**
   * Whether a declared let-through of the pair holds it: the device stands what its maker shows it
   * to let through at its own capacity. Without that figure nothing says what it stands, and at
   * sign-off nothing but the rating of the pair says up to which current it is declared.
   */
  private static Boolean limited(
      Circuit circuit, Figure current, Figure capacity, Judgement judgement, Dossier d) {
    Double energy = EnergyEvidence.backUp(circuit);
    if (energy == null) {
      return false;
    }
    Figure through = d.given("I²t", energy, Unit.AMPERE_SQUARED_SECOND, LIMITED);
    Figure stands = LetThrough.byMaker(circuit.device(), capacity, d);
    if (stands.known() && !Comparator.atMost(through.value(), stands.value())) {
      return false;
    }
    Boolean broken = upstreamBreaks(circuit, current, d);
    if (Boolean.FALSE.equals(broken)) {
      return false;
    }
    if (!stands.known()) {
      d.missing(
          NoteCode.MAKER_DATA_NEEDED,
          new Pointer(circuit.device().data().place(), "letThrough"),
          capacity);
      return null;
    }
    if (circuit.stage() == Circuit.Stage.SIGN_OFF) {
      d.missing(COMBINATION);
      return null;
    }
    if (broken != null) {
      held(circuit, current, judgement, d);
      judgement.compare("/device", through, Comparator.AT_MOST, stands);
    }
    return broken;
  }

  private static Boolean upstreamBreaks(Circuit circuit, Figure current, Dossier d) {
    Boolean breaks = EnergyEvidence.upstreamBreaks(circuit, current, d);
    if (breaks == null) {
      d.need(circuit.upstreamDevice().data().breakingCapacityA(), At.UPSTREAM_CAPACITY);
    }
    return breaks;
  }

  private static void held(Circuit circuit, Figure current, Judgement judgement, Dossier d) {
    ProtectiveDevice upstream = circuit.upstreamDevice();
    Figure breaks = BreakingCapacity.stated(upstream, d);
    Figure service = BreakingCapacity.service(upstream, breaks, d);
    d.remark(NoteCode.BACKED_UP);
    if (service.known() && !Comparator.atMost(current.value(), service.value())) {
      d.remark(NoteCode.ABOVE_SERVICE_CAPACITY, service);
    }
    judgement.compare(upstream.data().place(), current, Comparator.AT_MOST, breaks);
  }

  /** Whether the conditional rating decides: holds, or would with what is not stated. */
  static boolean conditional(
      Circuit circuit, LiveConductors live, Figure current, Judgement judgement, Dossier d) {
    Assembly assembly = circuit.assembly();
    if (!d.edition().has(Constant.ASSEMBLY_CONDITIONAL_GREATEST_CURRENT)) {
      return false;
    }
    Figure greatest = d.constant("Icc", Constant.ASSEMBLY_CONDITIONAL_GREATEST_CURRENT);
    if (!"IEC 61439-3".equals(assembly.standard())
        || assembly.conditionalRatingA() == null
        || Boolean.FALSE.equals(assembly.deviceDeclared())
        || !Comparator.atMost(current.value(), greatest.value())) {
      return false;
    }
    Figure rating =
        d.given(
            "Icc",
            assembly.conditionalRatingA(),
            Unit.AMPERE,
            new Pointer("/assembly", "conditionalRatingA"));
    Figure bound = Figure.lesser(rating, greatest);
    if (!Comparator.atMost(current.value(), bound.value())) {
      return false;
    }
    Boolean singlePhase = singlePhase(circuit, live, d);
    Boolean fused = fused(circuit, assembly, current, d);
    if (Boolean.FALSE.equals(singlePhase) || Boolean.FALSE.equals(fused)) {
      return false;
    }
    judgement.by(Clause.CONDITIONAL_RATING);
    if (singlePhase == null || fused == null || assembly.deviceDeclared() == null) {
      if (singlePhase == null) {
        d.missing(At.PHASES);
      }
      if (fused == null) {
        noteFuse(circuit.upstreamDevice(), assembly, d);
      }
      d.need(assembly.deviceDeclared(), At.DEVICE_DECLARED);
      judgement.undetermined();
      return true;
    }
    d.remark(NoteCode.CONDITIONAL_RATING, bound);
    judgement.compare("/device", current, Comparator.AT_MOST, bound);
    return true;
  }

  /** All that is not stated of the fuse before it, for the caller to state at once. */
  private static void noteFuse(ProtectiveDevice upstream, Assembly assembly, Dossier d) {
    if (upstream == null) {
      d.missing(At.UPSTREAM);
    } else {
      String place = upstream.data().place();
      d.need(upstream.data().standard(), new Pointer(place, "standard"));
      d.need(upstream.data().ratedCurrentA(), new Pointer(place, "ratedCurrentA"));
      capable(upstream, d);
    }
    d.need(assembly.maximumUpstreamFuseA(), new Pointer("/assembly", "maximumUpstreamFuseA"));
  }

  private static Boolean singlePhase(Circuit circuit, LiveConductors live, Dossier d) {
    Integer phases = circuit.supply().phases();
    if (phases == null) {
      return live != null && live.lines() > 1 ? Boolean.FALSE : null;
    }
    double nominal = d.edition().constant(Constant.NOMINAL_LINE_TO_EARTH).number();
    Figure voltage = NominalVoltage.lineToEarth(circuit, d);
    if (phases != 1 || voltage.known() && voltage.value() != nominal) {
      return false;
    }
    return voltage.known() ? Boolean.TRUE : null;
  }

  /**
   * Whether the fuse before it is one that the rule names, no larger than it allows; null where
   * what is not stated decides. What is stated may break the rule whatever the rest is. Of BS 1361
   * the rule names type II alone, which its breaking capacity tells from type I.
   */
  private static Boolean fused(Circuit circuit, Assembly assembly, Figure current, Dossier d) {
    ProtectiveDevice upstream = circuit.upstreamDevice();
    if (upstream == null) {
      return null;
    }
    String standard = upstream.data().standard();
    Double rated = upstream.data().ratedCurrentA();
    Double breaks = upstream.data().breakingCapacityA();
    Double most = assembly.maximumUpstreamFuseA();
    double greatest = d.edition().constant(Constant.ASSEMBLY_CONDITIONAL_GREATEST_FUSE).number();
    double typeTwo = BreakingCapacity.ofStandard(BS_1361, greatest, d.edition());
    boolean broken =
        standard != null && !SERVICE_FUSES.contains(standard)
            || BS_1361.equals(standard) && breaks != null && !Comparator.atMost(typeTwo, breaks)
            || breaks != null && !Comparator.atMost(current.value(), breaks)
            || rated != null && !Comparator.atMost(rated, greatest)
            || rated != null && most != null && !Comparator.atMost(rated, most);
    if (broken) {
      return false;
    }
    boolean stated = standard != null && rated != null && most != null;
    return stated && capable(upstream, d) ? Boolean.TRUE : null;
  }

  /**
   * Whether what the fuse breaks is known: stated, or that of the greater type, which its rating
   * shows. What stands in for a fuse of either type grants nothing.
   */
  private static boolean capable(ProtectiveDevice upstream, Dossier d) {
    Figure breaks = BreakingCapacity.of(upstream, d);
    String standard = upstream.data().standard();
    if (!breaks.known() || standard == null || BreakingCapacity.own(upstream, breaks)) {
      return breaks.known();
    }
    double greatest = d.edition().constant(Constant.ASSEMBLY_CONDITIONAL_GREATEST_FUSE).number();
    double typeTwo = BreakingCapacity.ofStandard(standard, greatest, d.edition());
    if (Comparator.atMost(typeTwo, breaks.value())) {
      return true;
    }
    d.missing(At.UPSTREAM_CAPACITY);
    return false;
  }
}
