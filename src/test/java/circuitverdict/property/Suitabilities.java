package circuitverdict.property;

import circuitverdict.service.wire.Contradictions;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Random;

/**
 * Adds to a drawn circuit what decides whether its device suits: its face, the place, the main
 * switch. By numbers of their own, so that the rest of the circuits stays what it is.
 */
final class Suitabilities {
  private static final List<List<String>> PLACES =
      List.of(List.of("caravan-park"), List.of("marina", "outdoors"));

  private final Draw draw;
  private final ObjectNode body;

  private Suitabilities(Draw draw, ObjectNode body) {
    this.draw = draw;
    this.body = body;
  }

  /** The circuit with such members, some of them left out. */
  static ObjectNode added(ObjectNode body) {
    int own = body.toString().hashCode();
    while (true) {
      ObjectNode copy = body.deepCopy();
      new Suitabilities(new Draw(new Random(own++)), copy).add();
      if (Contradictions.of(copy).isEmpty()) {
        return copy;
      }
    }
  }

  private void add() {
    if (body.get("device") instanceof ObjectNode device) {
      face(device);
    }
    if (body.get("residualDevice") instanceof ObjectNode residual) {
      often(85, residual, "poles", draw.of(2, 2, 4));
      often(20, residual, "unidirectional", draw.percent(30));
    }
    if (body.get("supply") instanceof ObjectNode supply) {
      often(50, supply, "localGeneration", draw.percent(30));
    }
    if (draw.percent(20)) {
      ObjectNode incomer = body.putObject("incomer");
      often(95, incomer, "standard", draw.of("IEC 60947-3", "IEC 60947-2", "IEC 60898-1"));
      often(90, incomer, "poles", draw.whole(1, 4));
      often(70, incomer, "isolation", draw.percent(85));
    }
    if (body.get("premises") instanceof ObjectNode premises) {
      often(15, premises, "pollutionDegree", draw.whole(1, 4));
      if (premises.has("locations") && draw.percent(8)) {
        ArrayNode locations = premises.putArray("locations");
        draw.of(PLACES).forEach(locations::add);
      }
    }
    if (draw.percent(25)) {
      ObjectNode assembly =
          body.get("assembly") instanceof ObjectNode given ? given : body.putObject("assembly");
      often(85, assembly, "deviceDeclared", draw.percent(85));
      often(70, assembly, "ambientTemperatureC", draw.of(20, 25, 30, 33, 38, 45, 55));
      often(30, assembly, "relativeHumidityPercent", draw.of(30, 50, 70, 90, 95));
    }
  }

  /** What else its face says; of some devices less than a circuit wants. */
  private void face(ObjectNode device) {
    if (!device.path("standard").asText("").startsWith("IEC 6")) {
      often(50, device, "poles", draw.whole(1, 4));
    }
    if ("IEC 60947-2".equals(device.path("standard").asText())) {
      often(80, device, "poles", draw.whole(1, 4));
    }
    often(30, device, "ratedVoltageV", draw.of(110, 230, 240, 400, 400, 415, 690));
    often(10, device, "ratedLineToEarthVoltageV", draw.of(110, 230, 240));
    often(15, device, "protectedPoles", draw.whole(1, 4));
    often(15, device, "isolation", draw.percent(80));
    often(40, device, "unidirectional", draw.percent(30));
    often(10, device, "referenceTemperatureC", draw.of(30, 40));
    if (draw.percent(30)) {
      ArrayNode points = device.putArray("derating");
      double factor = 1;
      for (int ambient : new int[] {35, 40, 50}) {
        factor *= draw.between(0.85, 1);
        points.addObject().put("ambientTemperatureC", ambient).put("factor", factor);
      }
    }
  }

  private void often(int percent, ObjectNode object, String member, Object value) {
    if (draw.percent(percent)) {
      Bodies.set(object, "/" + member, value);
    }
  }
}
