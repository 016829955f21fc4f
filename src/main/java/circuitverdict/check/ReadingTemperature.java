package circuitverdict.check;

import circuitverdict.circuit.Reading;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;

/** What brings a reading's conductors from the temperature at which it was taken to operating. */
final class ReadingTemperature {
  private static final Formula MEASURED = Formula.of("Cm", Unit.ONE, "1 + α·(θm − θ0)");
  private static final Formula FROM = Formula.of("Cθ", Unit.ONE, "max(Ch/Cm; 1)");

  private ReadingTemperature() {}

  /**
   * The factor, of which that from 20 °C is given: 20 °C where no temperature is stated, and never
   * less than 1, since conductors hotter than they may be prove nothing.
   */
  static Figure factor(Reading reading, Figure fromReference, Dossier d) {
    if (reading.conductorTemperatureC() == null) {
      return fromReference.as("Cθ");
    }
    Pointer at = new Pointer(reading.place(), "conductorTemperatureC");
    Figure measured =
        d.working()
            .step(
                MEASURED,
                d.constant("α", Constant.TEMPERATURE_RESISTANCE_COEFFICIENT),
                d.given("θm", reading.conductorTemperatureC(), Unit.CELSIUS, at),
                d.constant("θ0", Constant.TEMPERATURE_REFERENCE_TEMPERATURE));
    return d.working().step(FROM, fromReference.as("Ch"), measured);
  }
}
