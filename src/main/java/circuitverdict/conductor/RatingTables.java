package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Tabulated rating It, A: Appendix 4, Tables 4D1A to 4E4A, or where the edition has them those of
 * annex B of IEC 60364-5-52 ({@link AnnexRatings}).
 */
final class RatingTables {
  static final String COOL = "thermoplastic-70";
  static final String HOT = "thermosetting-90";

  private static final Map<String, String> TWO = columns("/2");
  private static final Map<String, String> THREE = columns("/3");

  private RatingTables() {}

  /** Columns by reference method, for conductors that carry the load. */
  private static Map<String, String> columns(String loaded) {
    return Stream.of("A", "B", "C", "D1", "E", "F", "G", "100", "101", "102", "103")
        .collect(Collectors.toMap(method -> method, method -> (method + loaded).intern()));
  }

  /** It of the cable as laid; what is missing for it is noted. */
  static Figure tabulated(Cable cable, LiveConductors live, Dossier d) {
    String method =
        d.need(
            cable.installation().referenceMethod(),
            new Pointer(cable.installation().place(), "referenceMethod"));
    d.need(cable.construction(), new Pointer(cable.place(), "construction"));
    d.need(cable.insulation(), new Pointer(cable.place(), "insulation"));
    Figure size = Wiring.ratedCsa(cable, live, d);
    Cable.Metal metal = Wiring.metal(cable, d);
    if (method == null
        || live == null
        || cable.construction() == null
        || cable.insulation() == null
        || metal == null
        || !size.known()) {
      return Figure.unknown("It", Unit.AMPERE);
    }
    if (metal != Cable.Metal.COPPER) {
      d.missing(NoteCode.NOT_IN_TABLES, new Pointer(cable.place(), "conductor"));
      return Figure.unknown("It", Unit.AMPERE);
    }
    boolean annex = d.edition().has(TableName.TABLE_B_52_2);
    TableName name = annex ? AnnexRatings.name(cable, method, live, d) : name(cable, d);
    if (name == null) {
      d.missing(NoteCode.NOT_IN_TABLES, new Pointer(cable.place(), "insulation"));
      return Figure.unknown("It", Unit.AMPERE);
    }
    Table table = d.edition().table(name);
    Value rating =
        annex
            ? AnnexRatings.rating(table, cable, method, live, size.value())
            : rating(table, method, live.loaded(), size.value());
    Pointer at = new Pointer(cable.installation().place(), "referenceMethod");
    return d.working().look(d.tabled("It", rating, Unit.AMPERE, at));
  }

  /** Whether a 90 °C cable is held to the 70 °C table by its terminals (512.1.5). */
  static boolean heldByTerminals(Cable cable, Dossier d) {
    double hot =
        d.edition().constant(Constant.TEMPERATURE_OPERATING_TEMPERATURE_THERMOSETTING_90).number();
    boolean stands = cable.terminalTemperatureC() != null && cable.terminalTemperatureC() >= hot;
    return HOT.equals(cable.insulation()) && !stands;
  }

  /** Insulation by whose columns the cable is rated. */
  static String ratedAs(Cable cable, Dossier d) {
    return heldByTerminals(cable, d) ? COOL : cable.insulation();
  }

  private static TableName name(Cable cable, Dossier d) {
    String insulation = ratedAs(cable, d);
    boolean cool = COOL.equals(insulation);
    if (!cool && !HOT.equals(insulation)) {
      return null;
    }
    return switch (cable.construction()) {
      case FLAT_TWIN_AND_EARTH -> COOL.equals(cable.insulation()) ? TableName.TABLE_4D5 : null;
      case MULTICORE -> cool ? TableName.TABLE_4D2A : TableName.TABLE_4E2A;
      case ARMOURED_MULTICORE -> cool ? TableName.TABLE_4D4A : TableName.TABLE_4E4A;
      case SINGLES -> cool ? TableName.TABLE_4D1A : TableName.TABLE_4E1A;
      case MINERAL, FLEXIBLE -> null;
    };
  }

  /** Where the table tells arrangements apart that the request does not, the least of them. */
  private static Value rating(Table table, String method, int loaded, double size) {
    String column = (loaded == 3 ? THREE : TWO).get(method);
    if (column != null && table.has(column)) {
      return table.at(column, size);
    }
    if (method.equals("F") && loaded == 3) {
      return lesser(table, "F/3-flat", "F/3-trefoil", size);
    }
    if (method.equals("G")) {
      return lesser(table, "G/3-horizontal", "G/3-vertical", size);
    }
    return null;
  }

  static Value lesser(Table table, String one, String other, double size) {
    if (!table.has(one) || !table.has(other)) {
      return null;
    }
    Value a = table.at(one, size);
    Value b = table.at(other, size);
    return a == null || b == null ? null : a.number() <= b.number() ? a : b;
  }
}
