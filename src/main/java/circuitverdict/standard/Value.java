package circuitverdict.standard;

import circuitverdict.quantity.Unit;

/**
 * One value of a table.
 *
 * @param number the value in its unit
 * @param printed the number as it is written in the data
 * @param unit its unit
 * @param citation where it stands and how well it is known
 */
public record Value(double number, String printed, Unit unit, Citation citation) {

  Value carriedOver(String from) {
    return new Value(number, printed, unit, citation.carriedOver(from));
  }
}
