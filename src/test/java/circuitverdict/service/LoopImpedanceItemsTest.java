package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Lists of loop impedance limits: what they read of a device and what they tell. */
@QuarkusTest
class LoopImpedanceItemsTest {
  private static final String SELECTIVE =
      "{'standard': 'IEC 61009-1', 'characteristic': 'B', 'ratedCurrentA': 32,"
          + " 'residual': {'operatingCurrentA': 0.3, 'delay': 'S', 'type': 'A'},"
          + " 'id': 'RCBO 7', 'breakingCapacityA': 6000, 'poles': 2}";

  /** 2 IΔn within 0.2 s (IEC 61009-1, type S): Cmin · 60 V / 0.6 A, less than 50 V / 0.3 A. */
  @Test
  void theLimitOfAResidualFunctionIsThatOfTheStatedVoltage() {
    JsonNode item = ask(SELECTIVE, 0.2, ", 'lineToEarthVoltageV': 60");
    assertEquals(95, item.path("residualLoopImpedanceOhm").doubleValue(), 1e-9);
  }

  @Test
  void whatIsNotReadOfADeviceIsTold() {
    Set<String> told = new TreeSet<>();
    for (JsonNode remark : ask(SELECTIVE, 0.4, "").path("remarks")) {
      if (remark.path("code").asText().equals("member-not-used")) {
        told.add(remark.path("pointer").textValue());
      }
    }
    String device = "/items/0/device";
    assertEquals(
        Set.of(device + "/breakingCapacityA", device + "/poles", device + "/residual/type"), told);
  }

  private static JsonNode ask(String device, double timeS, String besides) {
    String item = "{'device': " + device + ", 'disconnectionTimeS': " + timeS + "}";
    String body = "{'items': [" + item + "]" + besides + "}";
    return Http.post("/v1/loop-impedance-limits", body.replace('\'', '"')).json().at("/items/0");
  }
}
