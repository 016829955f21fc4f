package circuitverdict.property;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Draws cables, in sizes that all tables of their kind hold. */
final class Cables {
  private static final List<Double> FLAT = List.of(1.0, 1.5, 2.5, 4.0, 6.0, 10.0, 16.0);
  private static final List<Double> SMALL = List.of(1.0, 1.5, 2.5, 4.0, 6.0, 10.0, 16.0);
  private static final List<Double> ALL =
      List.of(
          1.0, 1.5, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 35.0, 50.0, 70.0, 95.0, 120.0, 150.0, 185.0,
          240.0, 300.0);
  private static final List<Double> ARMOURED = ALL.subList(1, 9);
  private static final List<Double> CONDUIT = ALL.subList(11, 17);

  /** Resistivity, Ω·mm²/km (IEC 60949 table 1, from memory). */
  private static final double COPPER = 17.241;

  private static final double STEEL = 138;

  private final Draw draw;

  Cables(Draw draw) {
    this.draw = draw;
  }

  /** Sizes that every table of such a cable holds, rising. */
  static List<Double> sizes(String construction) {
    return switch (construction) {
      case "flat-twin-and-earth" -> FLAT;
      case "armoured-multicore" -> ARMOURED;
      case "singles" -> SMALL;
      default -> ALL;
    };
  }

  /** The usual protective conductor of a flat twin and earth (common practice). */
  static double flatProtective(double line) {
    return FLAT.get(Math.max(0, FLAT.indexOf(line) - (line > 2.5 ? 2 : 1)));
  }

  /** A cable that suits the live conductors, at most this long. */
  void cable(ObjectNode cable, int lines, boolean ring, double longestM) {
    String construction =
        lines == 1
            ? draw.of(
                "flat-twin-and-earth",
                "flat-twin-and-earth",
                "multicore",
                "armoured-multicore",
                "singles")
            : draw.of("multicore", "armoured-multicore", "singles");
    cable.put("construction", construction);
    cable.put("conductor", "copper");
    boolean flat = construction.equals("flat-twin-and-earth");
    cable.put("insulation", flat || draw.percent(60) ? "thermoplastic-70" : "thermosetting-90");
    List<Double> sizes = sizes(construction);
    int often = draw.percent(80) ? 6 : sizes.size();
    double line =
        sizes.get(ring ? draw.whole(1, 3) : draw.whole(0, Math.min(sizes.size() - 1, often)));
    cable.put("lineCsaMm2", line);
    if (!flat && draw.percent(80)) {
      cable.put(
          "neutralCsaMm2", draw.percent(85) ? line : ALL.get(Math.max(0, ALL.indexOf(line) - 1)));
    }
    protective(cable, construction, line);
    cable.put("lengthM", draw.between(1, longestM));
    cable.put("arrangement", ring ? "ring" : "radial");
    if (!ring && !flat && draw.percent(5)) {
      cable.put("parallelCables", draw.whole(1, 3));
    }
    if (draw.percent(10)) {
      cable.put("terminalTemperatureC", draw.of(70, 90));
    }
    stated(cable, line);
    installation(cable.putObject("installation"), construction, line);
  }

  /** Most of them about what physics lets a conductor have, some below it. */
  private void stated(ObjectNode cable, double line) {
    if (draw.percent(6)) {
      cable.put("lineResistanceOhmPerKm", COPPER / line * draw.between(0.8, 3));
    }
    if (draw.percent(6)) {
      double csa = cable.get("protectiveCsaMm2").doubleValue();
      cable.put("protectiveResistanceOhmPerKm", COPPER / csa * draw.between(0.8, 3));
    }
    if (draw.percent(6)) {
      cable.put("reactanceOhmPerKm", draw.between(0.05, 0.2));
    }
  }

  private void protective(ObjectNode cable, String construction, double line) {
    if (construction.equals("armoured-multicore")) {
      cable.put("protectiveMeans", draw.of("armour", "armour", "core", "armour-and-core"));
      double area = draw.between(15, 120);
      cable.put("armourAreaMm2", area);
      cable.put("armourResistanceOhmPerKm", STEEL / area * draw.between(0.8, 1.5));
    } else if (construction.equals("flat-twin-and-earth")) {
      cable.put("protectiveMeans", "core");
    } else {
      String own = construction.equals("singles") ? "separate" : "core";
      cable.put("protectiveMeans", draw.of(own, own, "separate", "steel-conduit"));
      cable.put("protectiveConductor", "copper");
      if (cable.get("protectiveMeans").textValue().equals("steel-conduit")) {
        cable.put("protectiveConductor", "steel");
      }
    }
    int down = draw.percent(50) ? 0 : draw.whole(0, 2);
    cable.put("protectiveCsaMm2", ALL.get(Math.max(0, ALL.indexOf(line) - down)));
    if (cable.get("protectiveMeans").textValue().equals("steel-conduit")) {
      double section = draw.of(CONDUIT);
      cable.put("protectiveCsaMm2", section);
      cable.put("protectiveResistanceOhmPerKm", STEEL / section * draw.between(0.8, 1.5));
    }
  }

  private void installation(ObjectNode laid, String construction, double line) {
    boolean flat = construction.equals("flat-twin-and-earth");
    boolean armoured = construction.equals("armoured-multicore");
    String method =
        flat
            ? draw.of("C", "C", "A", "100", "101", "102", "103")
            : armoured ? draw.of("C", "E", "D1", "D2") : draw.of("A", "B", "C", "C", "A1", "B2");
    laid.put("referenceMethod", method);
    if (draw.percent(85)) {
      laid.put(
          "concealment",
          draw.of("none", "none", "within-50-mm", "deeper", "protected", "metallic-partition"));
    }
    laid.put(
        "ambientTemperatureC",
        method.startsWith("D") ? draw.of(10, 15, 20, 25) : draw.of(25, 28, 30, 30, 35, 40, 47));
    laid.put("groupedCircuits", draw.percent(60) ? 1 : draw.whole(1, 9));
    if (draw.percent(60)) {
      laid.put("groupArrangement", draw.of("bunched", "touching", "spaced"));
    }
    if (line <= 10 && !method.startsWith("10") && draw.percent(15)) {
      laid.put("insulationLengthM", draw.of(0.0, 0.05, 0.1, 0.3, 0.5, 2.0));
    }
    if (method.startsWith("D")) {
      laid.put("soilThermalResistivityKMPerW", draw.of(1.0, 2.0, 2.5));
      laid.put("burialDepthM", draw.of(0.5, 0.8));
    }
  }
}
