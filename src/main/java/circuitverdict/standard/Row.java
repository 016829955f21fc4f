package circuitverdict.standard;

import circuitverdict.quantity.Comparator;
import java.util.List;

/**
 * One row of a table.
 *
 * @param keys its keys in the order of the table's key columns
 * @param values its values in the order of the table's columns; null where a sparse column is empty
 */
public record Row(List<Key> keys, List<Value> values) {

  /**
   * One key of a row.
   *
   * @param text the word, or null for a number
   * @param above lower end, not included; equal to {@code to} for an exact key
   * @param to upper end, included
   */
  public record Key(String text, double above, double to) {
    /** Words are found by identity where they can be. */
    public Key {
      text = text == null ? null : text.intern();
    }

    /** The only number that it covers; NaN where it is a word or a band. */
    double exact() {
      return text == null && above == to ? to : Double.NaN;
    }

    boolean covers(double number) {
      return text == null && (above == to ? number == to : inBand(number));
    }

    /**
     * A computed figure may meet a band: at its end, rounding put aside, it still belongs to it.
     */
    private boolean inBand(double number) {
      return !Comparator.atMost(number, above) && Comparator.atMost(number, to);
    }

    /** The key as the tables are served: a word, a number or a band. */
    public String shown() {
      if (text != null) {
        return text;
      }
      return above == to ? plain(to) : "above " + plain(above) + " to " + plain(to);
    }

    private static String plain(double number) {
      if (Double.isInfinite(number)) {
        return number > 0 ? "any" : "any below";
      }
      return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }
  }
}
