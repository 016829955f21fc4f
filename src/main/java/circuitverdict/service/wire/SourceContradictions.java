package circuitverdict.service.wire;

import circuitverdict.service.edge.Fault;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** Facts of a transformer and of the network before it that cannot all be true. */
final class SourceContradictions {
  /** Nominal voltage where none is stated: a fact of the contract. */
  private static final double USUAL_VOLTAGE_V = 230;

  /**
   * Rated voltages of transformers lie up to a tenth above nominal ones; more is another system.
   */
  private static final double VOLTAGE_APART = 0.15;

  private static final List<String> FIGURES =
      List.of(
          "loopImpedanceOhm",
          "loopReactanceOhm",
          "originLoopImpedanceOhm",
          "lineToNeutralLoopImpedanceOhm",
          "lineToNeutralLoopReactanceOhm",
          "maximumFaultCurrentA",
          "faultCurrents");

  private final List<Fault> faults = new ArrayList<>();

  private SourceContradictions() {}

  /** Those of the supply of a request. */
  static List<Fault> of(JsonNode supply) {
    SourceContradictions found = new SourceContradictions();
    if (supply.has("transformer")) {
      found.source(supply);
    }
    found.grid(supply.path("grid"));
    found.voltages(supply);
    return found.faults;
  }

  private void source(JsonNode supply) {
    for (String figure : FIGURES) {
      if (supply.has(figure)) {
        add("/supply/" + figure, "It follows from the transformer: state one of the two.");
      }
    }
    JsonNode transformer = supply.path("transformer");
    JsonNode loss = transformer.path("loadLossW");
    if (loss.isNumber() && transformer.has("resistanceToReactanceRatio")) {
      add(
          "/supply/transformer/resistanceToReactanceRatio",
          "The resistance follows from the load loss: state one of the two.");
    }
    JsonNode power = transformer.path("ratedPowerVA");
    JsonNode impedance = transformer.path("impedanceVoltagePercent");
    boolean stated = loss.isNumber() && power.isNumber() && impedance.isNumber();
    if (stated && 100 * loss.doubleValue() > impedance.doubleValue() * power.doubleValue()) {
      add("/supply/transformer/loadLossW", "The resistance cannot exceed the impedance.");
    }
  }

  /** Rated and nominal voltages of one side lie close together. */
  private void voltages(JsonNode supply) {
    JsonNode transformer = supply.path("transformer");
    double uo = supply.path("lineToEarthVoltageV").asDouble(USUAL_VOLTAGE_V);
    apart(
        transformer.path("secondaryVoltageV"),
        Math.sqrt(3) * uo,
        "/supply/transformer/secondaryVoltageV");
    JsonNode nominal = supply.path("grid").path("nominalVoltageV");
    if (nominal.isNumber()) {
      apart(
          transformer.path("primaryVoltageV"),
          nominal.doubleValue(),
          "/supply/transformer/primaryVoltageV");
    }
  }

  private void apart(JsonNode rated, double nominal, String pointer) {
    if (rated.isNumber() && Math.abs(rated.doubleValue() / nominal - 1) > VOLTAGE_APART) {
      add(pointer, "It is another voltage than the nominal one of the system that it stands in.");
    }
  }

  private void grid(JsonNode grid) {
    JsonNode least = grid.path("minimumShortCircuitPowerVA");
    JsonNode greatest = grid.path("maximumShortCircuitPowerVA");
    boolean stated = least.isNumber() && greatest.isNumber();
    if (stated && least.doubleValue() > greatest.doubleValue()) {
      add(
          "/supply/grid/minimumShortCircuitPowerVA",
          "The least short-circuit power cannot exceed the greatest.");
    }
  }

  private void add(String pointer, String detail) {
    faults.add(Fault.inBody(Contradictions.CONTRADICTION, detail, pointer));
  }
}
