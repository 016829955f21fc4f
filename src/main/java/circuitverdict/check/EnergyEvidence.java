package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.device.BreakingCapacity;
import circuitverdict.device.LetThrough;
import circuitverdict.device.ResidualTime;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;

/** What would settle a question of let-through energy, and what the caller gave for it. */
final class EnergyEvidence {
  private static final Formula MULTIPLE = Formula.of("mΔ", Unit.ONE, "Ief,min/IΔn");

  private EnergyEvidence() {}

  /**
   * Declared let-through of the pair with a named upstream device, A²s; null where there is none.
   */
  static Double backUp(Circuit circuit) {
    return evidenced(circuit) ? circuit.backUp().limitedLetThroughA2s() : null;
  }

  /**
   * The let-through of a device with that of its back-up, up to the current declared for the pair
   * and to what the device upstream breaks itself.
   */
  static LetThrough withBackUp(Circuit circuit, LetThrough energy, Figure greatest, Dossier d) {
    Double limited = backUp(circuit);
    Figure own = BreakingCapacity.stated(circuit.device(), d);
    if (limited == null || Comparator.atMost(greatest.value(), own.value())) {
      return energy;
    }
    Double combination = circuit.backUp().combinationRatingA();
    // Declared at the greatest current; at sign-off the rating of the pair must say up to which.
    boolean open = circuit.stage() == Circuit.Stage.SIGN_OFF || !greatest.known();
    Figure none = Figure.derived("I", 0, Unit.AMPERE);
    Figure rating =
        d.given("Icomb", combination, Unit.AMPERE, new Pointer("/backUp", "combinationRatingA"));
    Figure upTo = rating.known() ? rating : open ? none : greatest;
    Figure breaks = BreakingCapacity.stated(circuit.upstreamDevice(), d);
    if (!breaks.known()) {
      if (upTo.value() > 0) {
        d.missing(At.UPSTREAM_CAPACITY);
      }
      return energy.withBackUp(limited, none, false);
    }
    return energy.withBackUp(limited, Figure.lesser(upTo, breaks), rating.known());
  }

  /**
   * Whether the device upstream has the necessary breaking capacity itself (434.5.1); null where
   * what is not stated decides. A fuse's standard may promise less than the fuse breaks.
   */
  static Boolean upstreamBreaks(Circuit circuit, Figure current, Dossier d) {
    Figure breaks = BreakingCapacity.stated(circuit.upstreamDevice(), d);
    if (Comparator.atMost(current.value(), breaks.value())) {
      return true;
    }
    boolean stated = circuit.upstreamDevice().data().breakingCapacityA() != null;
    return stated && current.known() ? Boolean.FALSE : null;
  }

  /**
   * Whether back-up rests on evidence and on a named upstream device, by standard and rating, that
   * breaks overcurrents: a residual current device or a switch does not.
   */
  static boolean evidenced(Circuit circuit) {
    String evidence = circuit.backUp().evidence();
    ProtectiveDevice upstream = circuit.upstreamDevice();
    boolean overcurrent =
        upstream instanceof Breaker
            || upstream instanceof AdjustableBreaker
            || upstream instanceof Fuse;
    return evidence != null
        && !evidence.isBlank()
        && overcurrent
        && upstream.data().ratedCurrentA() != null;
  }

  /** Names the data that would settle it, and at which current. */
  static void ask(ProtectiveDevice device, Figure greatest, Dossier d) {
    Figure capacity = BreakingCapacity.stated(device, d);
    if (!capacity.known()) {
      d.missing(new Pointer(device.data().place(), "breakingCapacityA"));
    } else if (greatest.known() && !Comparator.atMost(greatest.value(), capacity.value())) {
      d.missing(NoteCode.BACK_UP_EVIDENCE_NEEDED, new Pointer("", "backUp"), greatest);
    }
    if (device instanceof Breaker breaker && LetThrough.lacksClass(breaker, capacity.value(), d)) {
      d.missing(
          NoteCode.ENERGY_CLASS_NEEDED,
          new Pointer(device.data().place(), "energyClass"),
          capacity);
    }
    if (greatest.known()) {
      d.missing(
          NoteCode.MAKER_DATA_NEEDED, new Pointer(device.data().place(), "letThrough"), greatest);
    } else {
      d.missing(At.MAXIMUM_CURRENT);
    }
  }

  /** A residual function breaks the earth fault within its own time, up to what it breaks. */
  static LetThrough withResidual(Circuit circuit, LetThrough energy, Figure least, Dossier d) {
    LetThrough all = energy;
    for (ProtectiveDevice residual : ResidualTime.all(circuit)) {
      if (residual.data().residual().operatingCurrentA() != null && least.known()) {
        all = withResidual(residual, all, least, d);
      }
    }
    return all;
  }

  private static LetThrough withResidual(
      ProtectiveDevice residual, LetThrough energy, Figure least, Dossier d) {
    Pointer at = new Pointer(residual.data().place() + "/residual", "operatingCurrentA");
    Figure operating =
        d.given("IΔn", residual.data().residual().operatingCurrentA(), Unit.AMPERE, at);
    Figure multiple = d.working().step(MULTIPLE, least, operating);
    return energy.withResidual(
        ResidualTime.latest(residual, multiple, d), ResidualTime.breaks(residual, d));
  }
}
