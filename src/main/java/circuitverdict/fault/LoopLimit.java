package circuitverdict.fault;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.conductor.NominalVoltage;
import circuitverdict.device.OperatingCurrent;
import circuitverdict.device.ResidualTime;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.Shared.Topic;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/**
 * The greatest earth fault loop impedance for a device, Ω (411.4.4). The exact expression decides;
 * for fuses, whose printed impedance is the standard's own figure, no more than that.
 *
 * @param impedance Zs,max
 * @param printed as the wiring rules print it, or null
 */
public record LoopLimit(Figure impedance, Value printed) {
  private static final Formula EXACT = Formula.of("Zs,max", Unit.OHM, "Cmin·Uo/Ia");
  private static final Formula OF_TABLE = Formula.of("Zs,max", Unit.OHM, "min(Cmin·Uo/Ia; Zs,tab)");
  private static final Formula IN_TIME = Formula.of("Zs,max", Unit.OHM, "Cmin·Uo/(mΔ·IΔn)");
  private static final Formula RESIDUAL = Formula.of("Zs,max", Unit.OHM, "UL/IΔn");

  /** The limit for the circuit's device within a time, s; unknown where that is not known. */
  public static LoopLimit within(Circuit circuit, Figure time, Dossier d) {
    return d.once(Topic.LOOP_LIMIT, time, inner -> find(circuit, time, inner));
  }

  private static LoopLimit find(Circuit circuit, Figure time, Dossier d) {
    if (!time.known()) {
      return unknown();
    }
    Figure voltage = NominalVoltage.lineToEarth(circuit, d);
    return of(OperatingCurrent.within(circuit.device(), time.value(), d), voltage, d);
  }

  /** The limit for an operating current at a nominal voltage. */
  public static LoopLimit of(OperatingCurrent operating, Figure voltage, Dossier d) {
    Figure factor = d.constant("Cmin", Constant.CMIN);
    boolean common =
        voltage.value() == d.edition().constant(Constant.NOMINAL_LINE_TO_EARTH).number();
    Value printed = common ? operating.printed() : null;
    Figure limit =
        printed != null && operating.tableLimits()
            ? d.working()
                .step(OF_TABLE, factor, voltage, operating.current(), Figure.of("Zs,tab", printed))
            : d.working().step(EXACT, factor, voltage, operating.current());
    return new LoopLimit(limit, printed);
  }

  /** The limit for a residual operating current (411.5.3, Table 41.5). */
  public static LoopLimit ofResidual(Figure operatingCurrent, Dossier d) {
    Figure touch = d.constant("UL", Constant.TOUCH_VOLTAGE);
    Value printed = d.edition().table(TableName.TABLE_41_5).at("printed", operatingCurrent.value());
    return new LoopLimit(d.working().step(RESIDUAL, touch, operatingCurrent), printed);
  }

  /**
   * The limit for a residual function that is to break within a time: that of its operating
   * current, or the lower one at which its break time is still short enough; unknown where either
   * is.
   */
  public static Figure ofResidual(
      ProtectiveDevice device, Figure operating, double timeS, Figure voltage, Dossier d) {
    Figure touch = ofResidual(operating, d).impedance();
    Figure multiple = ResidualTime.leastMultipleWithin(device, timeS, d);
    Figure fast =
        d.working().step(IN_TIME, d.constant("Cmin", Constant.CMIN), voltage, multiple, operating);
    return fast.known() && touch.known()
        ? Figure.lesser(touch, fast)
        : Figure.unknown("Zs,max", Unit.OHM);
  }

  /** No limit known. */
  public static LoopLimit unknown() {
    return new LoopLimit(Figure.unknown("Zs,max", Unit.OHM), null);
  }
}
