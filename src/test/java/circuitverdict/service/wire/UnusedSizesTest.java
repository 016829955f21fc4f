package circuitverdict.service.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;

import circuitverdict.support.Scenario;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A size of what does not serve as protective conductor is told as not used. */
class UnusedSizesTest {
  @ParameterizedTest
  @CsvSource({
    "armour, protectiveCsaMm2",
    "armour-and-core, ",
    "core, armourAreaMm2 armourResistanceOhmPerKm",
    "separate, armourAreaMm2 armourResistanceOhmPerKm",
    "steel-conduit, armourAreaMm2 armourResistanceOhmPerKm",
    "steel-trunking, armourAreaMm2 armourResistanceOhmPerKm",
    "sheath, armourAreaMm2 armourResistanceOhmPerKm",
    ", "
  })
  void sizesThatDoNotServeAreTold(String means, String idle) {
    List<String> told = idle == null ? List.of() : List.of(idle.split(" "));
    for (String place : new String[] {"/cable", "/furtherCables/0"}) {
      assertEquals(told.stream().map(name -> place + "/" + name).toList(), told(means, place));
    }
  }

  private static List<String> told(String means, String place) {
    String cable =
        "{\"protectiveCsaMm2\": 10, \"armourAreaMm2\": 9, \"armourResistanceOhmPerKm\": 15"
            + (means == null ? "" : ", \"protectiveMeans\": \"" + means + "\"")
            + "}";
    String body =
        place.equals("/cable")
            ? "{\"cable\": " + cable + "}"
            : "{\"furtherCables\": [" + cable + "]}";
    return UnusedMembers.ofCheck(Scenario.of(body).json()).stream()
        .map(note -> note.pointer().text())
        .toList();
  }
}
