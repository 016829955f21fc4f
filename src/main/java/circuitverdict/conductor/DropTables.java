package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.standard.Edition;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;

/** Which table of voltage drop (Appendix 4) speaks of a cable. */
final class DropTables {
  private DropTables() {}

  /** The table, or null where none is held. */
  static Table of(Cable cable, Edition edition) {
    if (cable.construction() == null || cable.insulation() == null) {
      return null;
    }
    boolean cool = cable.insulation().equals("thermoplastic-70");
    boolean hot = cable.insulation().equals("thermosetting-90");
    if (!cool && !hot) {
      return null;
    }
    return switch (cable.construction()) {
      case FLAT_TWIN_AND_EARTH -> cool ? edition.table(TableName.TABLE_4D5) : null;
      case MULTICORE, ARMOURED_MULTICORE ->
          edition.table(cool ? TableName.TABLE_4D2B : TableName.TABLE_4E4B);
      case SINGLES -> edition.table(cool ? TableName.TABLE_4D1B : TableName.TABLE_4E1B);
      case MINERAL, FLEXIBLE -> null;
    };
  }
}
