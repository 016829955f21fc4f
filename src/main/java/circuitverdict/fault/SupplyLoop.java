package circuitverdict.fault;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Supply;
import circuitverdict.conductor.NominalVoltage;
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
 * Loop impedances at the point that feeds the circuit, at operating temperature, Ω. A reading taken
 * cold is widened by the instrument's uncertainty and brought to operating temperature on the part
 * beyond the origin, or on all of it where that part is not known.
 */
public final class SupplyLoop {
  private static final String EARTH = "Zdb";
  private static final String NEUTRAL = "Zdb,n";
  private static final Formula WIDENED = Formula.of(EARTH, Unit.OHM, "Zm·(1 + u/100)");
  private static final Formula ALL_COLD = Formula.of(EARTH, Unit.OHM, "Zm·Chot·(1 + u/100)");
  private static final Formula PART_COLD =
      Formula.of(EARTH, Unit.OHM, "(Ze + (Zm − Ze)·Chot)·(1 + u/100)");

  private static final Formula LEAST_NEUTRAL = Formula.of("Iln,min", Unit.AMPERE, "Cmin·Uo/Zdb,n");
  private static final Formula LEAST = Formula.of("Ief,min", Unit.AMPERE, "Cmin·Uo/Zdb");
  private static final Formula WITH_ELECTRODE = Formula.of(EARTH, Unit.OHM, "Zn + RA");

  private SupplyLoop() {}

  /** Earth fault loop impedance Zdb (Ze at the origin). */
  public static Figure earth(Circuit circuit, Dossier d) {
    Supply supply = circuit.supply();
    if (supply.loopImpedanceOhm() == null) {
      return typical(supply, d);
    }
    return hot(supply.loopImpedanceOhm(), At.LOOP, supply, supply.originLoopImpedanceOhm(), d);
  }

  /**
   * Line–neutral loop impedance; in TN at the origin the earth loop may stand for it in a design,
   * listed.
   */
  public static Figure neutral(Circuit circuit, Dossier d) {
    Supply supply = circuit.supply();
    Double stated = supply.lineToNeutralLoopImpedanceOhm();
    if (stated != null) {
      return hot(stated, At.NEUTRAL_LOOP, supply, null, d).as(NEUTRAL);
    }
    boolean tn = supply.earthing() != null && supply.earthing().tn();
    if (tn && atOrigin(supply, d) && d.allows(Allowance.TABLE_DEFAULTS)) {
      Figure earth = earth(circuit, d);
      if (earth.known()) {
        d.assume(NoteCode.EARTH_LOOP_STANDS_IN, At.NEUTRAL_LOOP, earth);
      }
      return earth.as(NEUTRAL);
    }
    d.missing(At.NEUTRAL_LOOP);
    return Figure.unknown(NEUTRAL, Unit.OHM);
  }

  /**
   * What a tester reads cold at the supply point, Ω: the reading itself, else the loop as known.
   */
  public static Figure asRead(Circuit circuit, Figure hot, Dossier d) {
    Supply supply = circuit.supply();
    boolean reading = supply.basis() == null || supply.basis() == Supply.Basis.MEASURED_COLD;
    return reading && supply.loopImpedanceOhm() != null
        ? d.given("Zread", supply.loopImpedanceOhm(), Unit.OHM, At.LOOP)
        : hot.as("Zread");
  }

  /** Least earth fault current at the supply point itself, A. */
  public static Figure leastCurrent(Circuit circuit, Dossier d) {
    return d.working()
        .step(
            LEAST,
            d.constant("Cmin", Constant.CMIN),
            NominalVoltage.lineToEarth(circuit, d),
            earth(circuit, d));
  }

  /** Least fault current between line and neutral at the supply point itself, A. */
  public static Figure leastNeutralCurrent(Circuit circuit, Dossier d) {
    return d.working()
        .step(
            LEAST_NEUTRAL,
            d.constant("Cmin", Constant.CMIN),
            NominalVoltage.lineToEarth(circuit, d),
            neutral(circuit, d));
  }

  /**
   * Whether the circuit is fed from the origin. A quotation without a loop impedance starts there.
   */
  static boolean atOrigin(Supply supply, Dossier d) {
    if (supply.point() != null) {
      return supply.point() == Supply.Point.ORIGIN;
    }
    return supply.loopImpedanceOhm() == null && d.allows(Allowance.TYPICAL_VALUES);
  }

  private static Figure typical(Supply supply, Dossier d) {
    boolean quoted =
        d.allows(Allowance.TYPICAL_VALUES) && d.edition().has(TableName.SUPPLY_TYPICAL);
    if (!atOrigin(supply, d) || !quoted) {
      d.missing(At.LOOP);
      Uncertainty.ask(supply, d);
      return Figure.unknown(EARTH, Unit.OHM);
    }
    if (supply.earthing() == null) {
      d.missing(At.EARTHING);
      return Figure.unknown(EARTH, Unit.OHM);
    }
    if (supply.point() == null) {
      d.assume(NoteCode.ASSUMED_ORIGIN, At.POINT);
    }
    Value value =
        d.edition().table(TableName.SUPPLY_TYPICAL).at("value", "loop/" + supply.earthing().word());
    Figure loop = Figure.of(EARTH, value);
    if (supply.earthing() == Supply.Earthing.TT) {
      // The typical figure is the supply's own part: the installation's electrode comes on top.
      Figure electrode = EarthElectrode.greatest(supply, d).as("RA");
      loop = d.working().step(WITH_ELECTRODE, loop.as("Zn"), electrode);
    }
    d.assumeCurable(NoteCode.TYPICAL_LOOP_IMPEDANCE, At.LOOP, loop);
    return d.working().look(loop);
  }

  private static Figure hot(double ohm, Pointer at, Supply supply, Double origin, Dossier d) {
    Supply.Basis basis = supply.basis();
    if (!SupplyBasis.serves(supply, NoteCode.TYPICAL_LOOP_IMPEDANCE, d)) {
      return Figure.unknown(EARTH, Unit.OHM);
    }
    Figure stated = new Figure(EARTH, ohm, Unit.OHM, at);
    if (basis != null && basis != Supply.Basis.MEASURED_COLD) {
      return d.working().look(stated);
    }
    if (basis == null) {
      d.assumeCurable(NoteCode.ASSUMED_MEASURED_COLD, At.BASIS);
    }
    Figure measured = stated.as("Zm");
    Figure uncertainty = Uncertainty.of(supply, d);
    if (supply.point() == Supply.Point.ORIGIN) {
      return d.working().step(WIDENED, measured, uncertainty);
    }
    if (supply.point() == null) {
      d.assumeCurable(NoteCode.ASSUMED_BOARD, At.POINT);
    }
    d.remark(NoteCode.MEASURED_RAISED);
    Figure factor = d.constant("Chot", Constant.COLD_LOOP_CORRECTION);
    if (origin == null) {
      return d.working().step(ALL_COLD, measured, factor, uncertainty);
    }
    Figure outside = d.given("Ze", origin, Unit.OHM, At.ORIGIN_LOOP);
    return d.working().step(PART_COLD, outside, measured, factor, uncertainty);
  }
}
