package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/**
 * The conventional operating current I2 (433.1.1(iii)), amperes: the current that operates the
 * device for certain within its conventional time.
 */
public final class ConventionalCurrent {
  private static final Formula I2 = Formula.of("I2", Unit.AMPERE, "kf·In");

  private static final Formula I1 = Formula.of("I1", Unit.AMPERE, "knf·In");

  private ConventionalCurrent() {}

  /**
   * The conventional non-operating current, A: what the device carries for certain; unknown, and
   * not called missing, where the tables hold no multiple for it.
   */
  public static Figure carried(ProtectiveDevice device, Figure rated, Dossier d) {
    Value multiple =
        d.edition()
            .table(TableName.CONVENTIONAL_CURRENTS)
            .at("non-fusing", device.data().standard(), rated.value());
    return multiple == null
        ? Figure.unknown("I1", Unit.AMPERE)
        : d.working().step(I1, Figure.of("knf", multiple), rated);
  }

  /** I2; unknown, and not called missing, where the tables hold no multiple for the device. */
  public static Figure of(ProtectiveDevice device, Figure rated, Dossier d) {
    Value multiple =
        d.edition()
            .table(TableName.CONVENTIONAL_CURRENTS)
            .at("fusing", device.data().standard(), rated.value());
    if (multiple == null) {
      return Figure.unknown("I2", Unit.AMPERE);
    }
    return d.working().step(I2, Figure.of("kf", multiple), rated);
  }
}
