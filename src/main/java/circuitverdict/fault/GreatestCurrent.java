package circuitverdict.fault;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Supply;
import circuitverdict.circuit.Supply.FaultCurrents;
import circuitverdict.conductor.NominalVoltage;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Shared.Topic;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import java.util.ArrayList;
import java.util.List;

/**
 * Greatest fault currents where the circuit begins, A (434.1): as stated, a reading widened by its
 * uncertainty; for a quotation the typical declared value of a single-phase service.
 */
public final class GreatestCurrent {
  private static final Formula WIDENED = Formula.of("If,max", Unit.AMPERE, "Im·(1 + u/100)");
  private static final Formula DOUBLE = Formula.of("If,max", Unit.AMPERE, "k3·Im");
  private static final Formula ELECTRODE = Formula.of("If,max", Unit.AMPERE, "Cmax·Uo/(RA/2)");

  private GreatestCurrent() {}

  /** One kind of fault: its greatest current where it is stated, else null, and its member. */
  private record Kind(Double ampere, Pointer at) {}

  /**
   * What a device of a way meets (434.5.1): the greatest of the kinds of fault that can flow in it.
   * A fault to neutral or to earth is broken by one pole alone, however many the device has, and
   * near a transformer it can exceed a fault of all three lines: so both count beside that, and for
   * two poles the one to earth counts beside the one to neutral. That goes beyond the paper, which
   * lets three poles meet the three-phase current and two poles the line–neutral one; what it lets
   * them meet serves before sign-off only, where nothing else is stated.
   *
   * @param live live conductors, or null where they are not known
   * @param poles poles of the device, or null where they are not stated
   */
  public static Figure ofWay(Circuit circuit, LiveConductors live, Integer poles, Dossier d) {
    Supply supply = circuit.supply();
    List<Kind> kinds = kinds(circuit, live);
    Figure stated = stated(kinds, supply, d);
    boolean bounded = supply.maximumFaultCurrentA() != null;
    List<Pointer> open = bounded ? heldByAnyKind(kinds, supply, live) : unstated(kinds, live);
    if (stated.known() && open.isEmpty() && !ofNoStatedKind(supply)) {
      return stated;
    }
    if (!bounded && live != null) {
      Figure usual = usual(supply, live, poles, d);
      if (usual.known()) {
        return Figure.greater(stated, usual);
      }
    }
    Figure any = ofAnyKind(supply, d);
    return any.known() && stated.known() ? Figure.greater(stated, any) : any;
  }

  /** The greatest of the stated kinds that can flow in a way; unknown where there is none. */
  public static Figure stated(Circuit circuit, LiveConductors live, Dossier d) {
    return stated(kinds(circuit, live), circuit.supply(), d);
  }

  private static Figure stated(List<Kind> kinds, Supply supply, Dossier d) {
    Kind greatest = null;
    for (Kind kind : kinds) {
      boolean greater =
          kind.ampere() != null && (greatest == null || kind.ampere() > greatest.ampere());
      greatest = greater ? kind : greatest;
    }
    return greatest == null
        ? Figure.unknown("If,max", Unit.AMPERE)
        : read(greatest.ampere(), greatest.at(), supply, d);
  }

  /**
   * The kinds for which the greatest of any kind stands in, because others that can flow in the way
   * are stated and less: it may be that of one of these, or of a fault that cannot flow here.
   */
  public static List<Pointer> heldByAnyKind(Circuit circuit, LiveConductors live) {
    return heldByAnyKind(kinds(circuit, live), circuit.supply(), live);
  }

  private static List<Pointer> heldByAnyKind(List<Kind> kinds, Supply supply, LiveConductors live) {
    Double any = supply.maximumFaultCurrentA();
    boolean stated = any != null && live != null && isOfOtherKind(kinds, supply, any);
    for (Kind kind : kinds) {
      stated |= kind.ampere() != null;
      if (any == null || kind.ampere() != null && kind.ampere() >= any) {
        return List.of();
      }
    }
    return stated ? unstated(kinds, live) : List.of();
  }

  /** Whether a stated kind that cannot flow in the way accounts for the greatest of any kind. */
  private static boolean isOfOtherKind(List<Kind> kinds, Supply supply, double any) {
    for (Kind kind : kinds(supply.faultCurrents(), new LiveConductors(3, true))) {
      boolean reaches = kind.ampere() != null && kind.ampere() >= any;
      if (reaches && !has(kinds, kind.at())) {
        return true;
      }
    }
    return false;
  }

  private static boolean has(List<Kind> kinds, Pointer at) {
    for (Kind kind : kinds) {
      if (kind.at() == at) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether every kind that the supply has is stated below the greatest of any kind. That one is of
   * some kind, so one of them is stated too small, and nothing says which: it counts itself.
   */
  private static boolean ofNoStatedKind(Supply supply) {
    if (supply.phases() == null || supply.maximumFaultCurrentA() == null) {
      return false;
    }
    boolean three = supply.phases() == 3;
    double any = supply.maximumFaultCurrentA();
    for (Kind kind : kinds(supply.faultCurrents(), new LiveConductors(three ? 3 : 1, true))) {
      boolean unstated = kind.ampere() == null && kind.at() != At.TWO_PHASE_CURRENT;
      if (unstated || kind.ampere() != null && kind.ampere() >= any) {
        return false;
      }
    }
    return true;
  }

  /**
   * Kinds that can flow in the way, are not stated, and are bounded by none that is: a fault
   * between two lines does not exceed that of all three.
   */
  private static List<Pointer> unstated(List<Kind> kinds, LiveConductors live) {
    List<Pointer> unstated = new ArrayList<>(4);
    for (Kind kind : kinds) {
      boolean bounded = live.lines() == 3 && kind.at() == At.TWO_PHASE_CURRENT;
      if (kind.ampere() == null && !bounded) {
        unstated.add(kind.at());
      }
    }
    return unstated;
  }

  /** The kinds of fault that can flow in a way; none where its live conductors are not known. */
  private static List<Kind> kinds(Circuit circuit, LiveConductors live) {
    return live == null ? List.of() : kinds(circuit.supply().faultCurrents(), live);
  }

  private static List<Kind> kinds(FaultCurrents stated, LiveConductors live) {
    List<Kind> kinds = new ArrayList<>(4);
    if (live.lines() == 3) {
      kinds.add(new Kind(stated.threePhaseA(), At.THREE_PHASE_CURRENT));
    }
    if (live.lines() > 1) {
      kinds.add(new Kind(stated.twoPhaseA(), At.TWO_PHASE_CURRENT));
    }
    if (live.neutral() || live.lines() == 1) {
      kinds.add(new Kind(stated.lineToNeutralA(), At.NEUTRAL_CURRENT));
    }
    kinds.add(new Kind(stated.lineToEarthA(), At.EARTH_CURRENT));
    return kinds;
  }

  /**
   * What by the paper serves alone before sign-off: for three lines the three-phase current, or
   * twice the line–neutral one, listed; for two poles on one line the line–neutral one.
   */
  private static Figure usual(Supply supply, LiveConductors live, Integer poles, Dossier d) {
    FaultCurrents stated = supply.faultCurrents();
    boolean three = live.lines() == 3;
    boolean twoPole = live.lines() == 1 && poles != null && poles >= 2;
    if (!d.allows(Allowance.TABLE_DEFAULTS) || !three && !twoPole) {
      return Figure.unknown("If,max", Unit.AMPERE);
    }
    if (three && stated.threePhaseA() != null) {
      return read(stated.threePhaseA(), At.THREE_PHASE_CURRENT, supply, d);
    }
    if (stated.lineToNeutralA() == null) {
      return Figure.unknown("If,max", Unit.AMPERE);
    }
    Figure single = read(stated.lineToNeutralA(), At.NEUTRAL_CURRENT, supply, d);
    if (!three) {
      return single;
    }
    Figure multiple = d.constant("k3", Constant.THREE_PHASE_FROM_LINE_NEUTRAL);
    Figure twice = d.working().step(DOUBLE, multiple, single.as("Im"));
    // An upper bound: it carries a compliance, never a failure.
    d.assumeCurable(NoteCode.ASSUMED_THREE_PHASE_CURRENT, At.THREE_PHASE_CURRENT, twice);
    return twice;
  }

  /**
   * Greatest earth fault current: as stated, else in TN the greatest of any kind; in TT, where
   * there is no metallic path to a TN earth, what half the electrode's resistance, the least that
   * it may be, lets flow, listed.
   */
  public static Figure toEarth(Circuit circuit, Dossier d) {
    Supply supply = circuit.supply();
    Double stated = supply.faultCurrents().lineToEarthA();
    boolean tt = supply.earthing() == Supply.Earthing.TT;
    if (stated != null) {
      Figure earth = read(stated, At.EARTH_CURRENT, supply, d);
      return tt || !ofNoStatedKind(supply) ? earth : Figure.greater(earth, ofAnyKind(supply, d));
    }
    if (tt && supply.earthElectrodeResistanceOhm() != null && d.allows(Allowance.TABLE_DEFAULTS)) {
      Figure electrode = EarthElectrode.least(supply, d).as("RA");
      if (electrode.value() > 0) {
        return throughElectrode(circuit, electrode, d);
      }
    }
    return ofAnyKind(supply, d);
  }

  private static Figure throughElectrode(Circuit circuit, Figure electrode, Dossier d) {
    Figure factor = d.constant("Cmax", Constant.CMAX);
    Figure voltage = NominalVoltage.lineToEarth(circuit, d);
    Figure current = d.working().step(ELECTRODE, factor, voltage, electrode);
    d.assumeCurable(NoteCode.ASSUMED_TT_FAULT_CURRENT, At.EARTH_CURRENT, current);
    return current;
  }

  /** The greatest of any kind as it is stated; unknown, and not called missing, where it is not. */
  public static Figure statedOfAnyKind(Supply supply, Dossier d) {
    return supply.maximumFaultCurrentA() == null
        ? Figure.unknown("If,max", Unit.AMPERE)
        : ofAnyKind(supply, d);
  }

  private static Figure ofAnyKind(Supply supply, Dossier d) {
    return d.once(Topic.GREATEST_OF_ANY_KIND, supply, inner -> findOfAnyKind(supply, inner));
  }

  private static Figure findOfAnyKind(Supply supply, Dossier d) {
    if (supply.maximumFaultCurrentA() != null) {
      return read(supply.maximumFaultCurrentA(), At.MAXIMUM_CURRENT, supply, d);
    }
    boolean single =
        supply.phases() != null
            && supply.phases() == 1
            && d.edition().has(Constant.SUPPLY_TYPICAL_FAULT_CURRENT_SINGLE_PHASE);
    if (single && SupplyLoop.atOrigin(supply, d) && d.allows(Allowance.TYPICAL_VALUES)) {
      Figure typical = d.constant("If,max", Constant.SUPPLY_TYPICAL_FAULT_CURRENT_SINGLE_PHASE);
      d.assumeCurable(NoteCode.TYPICAL_FAULT_CURRENT, At.MAXIMUM_CURRENT, typical);
      return d.working().look(typical);
    }
    d.missing(At.MAXIMUM_CURRENT);
    Uncertainty.ask(supply, d);
    return Figure.unknown("If,max", Unit.AMPERE);
  }

  static Figure read(double ampere, Pointer at, Supply supply, Dossier d) {
    Figure stated = new Figure("If,max", ampere, Unit.AMPERE, at);
    if (!SupplyBasis.serves(supply, NoteCode.TYPICAL_FAULT_CURRENT, d)) {
      return Figure.unknown("If,max", Unit.AMPERE);
    }
    if (!Uncertainty.measured(supply)) {
      return d.working().look(stated);
    }
    Figure uncertainty = Uncertainty.of(supply, d);
    return uncertainty.value() == 0
        ? d.working().look(stated)
        : d.working().step(WIDENED, stated.as("Im"), uncertainty);
  }
}
