package circuitverdict.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.Allowance;
import circuitverdict.explain.Figure;
import circuitverdict.fault.FaultNetwork.Point;
import circuitverdict.service.wire.CircuitMapping;
import circuitverdict.support.Scenario;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Three networks against a general-purpose open power-system library, named with its method and
 * factors in {@code published/reference-network.json} (IEC 60909-0:2016); recomputed by hand from
 * the standard's formulas to 1e-6. Held to 0.1 %.
 */
class ReferenceNetworkTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  record Case(String name, JsonNode network, int tolerance, String side, JsonNode buses) {
    @Override
    public String toString() {
      return name + ", " + tolerance + " %, " + side;
    }
  }

  static Stream<Case> cases() throws IOException {
    List<Case> cases = new ArrayList<>();
    try (InputStream in =
        ReferenceNetworkTest.class.getResourceAsStream("/published/reference-network.json")) {
      for (JsonNode network : JSON.readTree(in).path("cases")) {
        for (JsonNode result : network.path("results")) {
          cases.add(
              new Case(
                  network.path("name").textValue(),
                  network,
                  result.path("lowVoltageTolerancePercent").intValue(),
                  result.path("case").textValue(),
                  result.path("buses")));
        }
      }
    }
    assertEquals(12, cases.size());
    return cases.stream();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyBusWithinATenthOfAPercent(Case each) {
    boolean greatest = each.side().equals("max");
    // One reactance serves line and return path: of the line for faults between lines, else the
    // mean.
    List<Point> lines = points(each, false);
    List<Point> loops = points(each, true);
    List<String> buses = new ArrayList<>();
    buses.add("transformer-lv");
    each.network().path("feeders").forEach(feeder -> buses.add(feeder.path("to").textValue()));
    assertEquals(buses.size(), lines.size());
    for (int i = 0; i < buses.size(); i++) {
      JsonNode expected = each.buses().path(buses.get(i));
      PointCurrents ofLines = lines.get(i).currents();
      PointCurrents ofLoops = loops.get(i).currents();
      near(expected.path("ik_3ph_A"), side(ofLines.threePhase(), greatest));
      near(expected.path("ik_2ph_A"), side(ofLines.twoPhase(), greatest));
      near(expected.path("ik_1ph_A"), side(ofLoops.earth(), greatest));
      if (greatest) {
        near(expected.path("ip_3ph_A"), ofLines.threePhase().peak());
        near(expected.path("ip_2ph_A"), ofLines.twoPhase().peak());
      } else {
        // The loop is (2·Z1 + Z0)/3.
        double r = (2 * expected.path("rOhm").doubleValue() + expected.path("r0Ohm").doubleValue());
        double x = (2 * expected.path("xOhm").doubleValue() + expected.path("x0Ohm").doubleValue());
        Figure loop = ofLoops.earthLoop().impedance();
        assertEquals(Math.hypot(r, x) / 3, loop.value(), loop.value() * 0.001);
      }
    }
  }

  private static Figure side(PointCurrents.Kind kind, boolean greatest) {
    return greatest ? kind.greatest() : kind.least();
  }

  private static void near(JsonNode expected, Figure found) {
    assertTrue(expected.isNumber());
    assertEquals(
        expected.doubleValue(), found.value(), expected.doubleValue() * 0.001, found::toString);
  }

  private static List<Point> points(Case each, boolean loops) {
    ObjectNode body = JSON.createObjectNode();
    body.put("stage", "sign-off");
    ObjectNode supply = body.putObject("supply");
    supply.put("point", "origin").put("phases", 3).put("earthing", "TN-S");
    supply.put("ownership", "private").put("lineToEarthVoltageV", 400 / Math.sqrt(3));
    supply.put("voltageTolerancePercent", each.tolerance());
    JsonNode transformer = each.network().path("transformer");
    ObjectNode own = supply.putObject("transformer");
    own.put("ratedPowerVA", 1000 * transformer.path("ratedKva").doubleValue());
    own.put("primaryVoltageV", 1000 * transformer.path("ratedHvKv").doubleValue());
    own.put("secondaryVoltageV", 1000 * transformer.path("ratedLvKv").doubleValue());
    own.put("impedanceVoltagePercent", transformer.path("impedanceVoltagePercent").doubleValue());
    own.put("loadLossW", transformer.path("loadLossW").doubleValue());
    own.put(
        "zeroSequenceImpedancePercent",
        transformer.path("zeroSequenceImpedancePercent").doubleValue());
    own.put("count", transformer.path("parallel").asInt(1));
    JsonNode grid = each.network().path("grid");
    ObjectNode before = supply.putObject("grid");
    before.put("nominalVoltageV", 1000 * grid.path("nominalKv").doubleValue());
    before.put("maximumShortCircuitPowerVA", 1e6 * grid.path("maximumMva").doubleValue());
    before.put("minimumShortCircuitPowerVA", 1e6 * grid.path("minimumMva").doubleValue());
    before.put("resistanceToReactanceRatio", grid.path("rOverX").doubleValue());
    ObjectNode at = body;
    for (JsonNode feeder : each.network().path("feeders")) {
      at = at.putArray("circuits").addObject();
      at.set("cable", cable(feeder, loops));
    }
    return FaultNetwork.points(
        CircuitMapping.circuit(body),
        CircuitMapping.feeders(body),
        Scenario.edition("bs7671-2018-a4"),
        Allowance.NOTHING,
        true);
  }

  /** Figures per kilometre as the network has them; sizes are the greatest that they allow. */
  private static ObjectNode cable(JsonNode feeder, boolean loops) {
    ObjectNode cable = JSON.createObjectNode();
    cable.put("construction", "multicore").put("conductor", "copper");
    boolean hotter = feeder.path("conductorTemperatureC").intValue() == 90;
    cable.put("insulation", hotter ? "thermosetting-90" : "thermoplastic-70");
    double line = feeder.path("lineROhmPerKm20C").doubleValue();
    double back = feeder.path("returnROhmPerKm20C").doubleValue();
    cable.put("lineCsaMm2", Math.ceil(18 / line)).put("neutralCsaMm2", Math.ceil(18 / line));
    cable.put("protectiveCsaMm2", Math.ceil(18 / back)).put("protectiveMeans", "core");
    cable.put("lineResistanceOhmPerKm", line).put("protectiveResistanceOhmPerKm", back);
    double x = feeder.path("lineXOhmPerKm").doubleValue();
    double returnX = feeder.path("returnXOhmPerKm").doubleValue();
    cable.put("reactanceOhmPerKm", loops ? (x + returnX) / 2 : x);
    cable.put("parallelCables", feeder.path("parallel").asInt(1));
    return cable.put("lengthM", feeder.path("lengthM").doubleValue());
  }
}
