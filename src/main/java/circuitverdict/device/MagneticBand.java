package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Edition;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/**
 * The band of instantaneous tripping of a breaker, multiples of In (IEC 60898-1 table 7): of types
 * B, C and D by the standard, widened by limits stated with the device; of other letters only as
 * stated.
 *
 * @param lower current up to which it does not trip instantaneously
 * @param upper current from which it does
 */
record MagneticBand(double lower, double upper) {

  /** The band; null where the letter is not stated, or is another one and its limits are not. */
  static MagneticBand of(Breaker breaker, Edition edition) {
    if (breaker.characteristic() == null) {
      return null;
    }
    Table bands = edition.table(TableName.MAGNETIC_BANDS);
    Value lower = bands.at("lower", breaker.characteristic());
    Double statedLower = breaker.multiples().lower();
    Double statedUpper = breaker.multiples().upper();
    if (lower == null) {
      // Without a lower limit test a alone says how far it does not trip, at once or later.
      double hold = edition.constant(Constant.BREAKER_TESTS_CONVENTIONAL_NON_TRIPPING).number();
      return statedUpper == null
          ? null
          : new MagneticBand(
              statedLower == null ? Math.min(hold, statedUpper) : statedLower, statedUpper);
    }
    double upper = bands.at("upper", breaker.characteristic()).number();
    return new MagneticBand(
        statedLower == null ? lower.number() : Math.min(lower.number(), statedLower),
        statedUpper == null ? upper : Math.max(upper, statedUpper));
  }
}
