package circuitverdict.quantity;

import java.util.HashMap;
import java.util.Map;

/** Units of the service, each with its symbol and the decimals a reader is shown first. */
public enum Unit {
  OHM("Ω", 2),
  OHM_PER_KM("Ω/km", 3),
  MILLIOHM_PER_M("mΩ/m", 2),
  OHM_SQUARE_MM_PER_KM("Ω·mm²/km", 2),
  AMPERE("A", 1),
  AMPERE_SQUARED_SECOND("A²s", 0),
  VOLT("V", 2),
  PERCENT("%", 2),
  PERCENT_PER_M("%/m", 3),
  SECOND("s", 2),
  METRE("m", 1),
  SQUARE_MM("mm²", 2),
  MILLIVOLT_PER_AMPERE_METRE("mV/A/m", 2),
  CELSIUS("°C", 0),
  PER_KELVIN("1/K", 4),
  WATT("W", 0),
  VOLT_AMPERE("VA", 0),
  HERTZ("Hz", 0),
  KELVIN_METRE_PER_WATT("K·m/W", 2),
  HEAT_FACTOR("A√s/mm²", 0),
  ONE("1", 3);

  private static final Map<String, Unit> BY_SYMBOL = new HashMap<>();

  static {
    for (Unit unit : values()) {
      BY_SYMBOL.put(unit.symbol, unit);
    }
  }

  private final String symbol;
  private final int decimals;

  Unit(String symbol, int decimals) {
    this.symbol = symbol;
    this.decimals = decimals;
  }

  /** Whether zeros at the end of the decimals are shown: where readers expect them. */
  boolean keepsZeros() {
    return this == OHM || this == PERCENT || this == VOLT;
  }

  /** The unit's symbol as printed, {@code 1} for a pure number. */
  public String symbol() {
    return symbol;
  }

  /** Decimals shown where more are not needed to keep the display true to the verdict. */
  public int decimals() {
    return decimals;
  }

  /**
   * The unit with this symbol.
   *
   * @throws IllegalArgumentException where there is none
   */
  public static Unit ofSymbol(String symbol) {
    Unit unit = BY_SYMBOL.get(symbol);
    if (unit == null) {
      throw new IllegalArgumentException("unknown unit " + symbol);
    }
    return unit;
  }
}
