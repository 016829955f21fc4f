package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.explain.Dossier;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/**
 * Tabulated rating It, A (IEC 60364-5-52 annex B): Tables B.52.2 to B.52.5 by insulation and loaded
 * conductors for methods A1 to D2, B.52.10 and B.52.12 for cables free in air.
 */
final class AnnexRatings {
  private AnnexRatings() {}

  /** The table that speaks of the cable as laid; null where none does. */
  static TableName name(Cable cable, String method, LiveConductors live, Dossier d) {
    String insulation = RatingTables.ratedAs(cable, d);
    boolean cool = RatingTables.COOL.equals(insulation);
    boolean foreign =
        switch (cable.construction()) {
          case FLAT_TWIN_AND_EARTH, MULTICORE, ARMOURED_MULTICORE, SINGLES -> false;
          case MINERAL, FLEXIBLE -> true;
        };
    if (foreign || !cool && !RatingTables.HOT.equals(insulation)) {
      return null;
    }
    if (free(method)) {
      return cool ? TableName.TABLE_B_52_10 : TableName.TABLE_B_52_12;
    }
    if (live.loaded() == 3) {
      return cool ? TableName.TABLE_B_52_4 : TableName.TABLE_B_52_5;
    }
    return cool ? TableName.TABLE_B_52_2 : TableName.TABLE_B_52_3;
  }

  /**
   * E is of multicore cables, F and G are of single cores; null where the table has no value. Annex
   * B has no columns of armoured cables: in the ground BS 7671 rates them as it does others, but in
   * air it rates some sizes lower, so that there nothing is known.
   */
  static Value rating(Table table, Cable cable, String method, LiveConductors live, double size) {
    boolean singles = cable.construction() == Cable.Construction.SINGLES;
    boolean armoured = cable.construction() == Cable.Construction.ARMOURED_MULTICORE;
    boolean three = live.loaded() == 3;
    if (armoured && !cable.installation().buried()) {
      return null;
    }
    return switch (method) {
      case "E" -> singles ? null : table.at(three ? "E/3" : "E/2", size);
      case "F" -> {
        if (!singles) {
          yield null;
        }
        yield three
            ? RatingTables.lesser(table, "F/3-flat", "F/3-trefoil", size)
            : table.at("F/2", size);
      }
      case "G" ->
          singles ? RatingTables.lesser(table, "G/3-horizontal", "G/3-vertical", size) : null;
      default -> table.at(method, size);
    };
  }

  private static boolean free(String method) {
    return method.equals("E") || method.equals("F") || method.equals("G");
  }
}
