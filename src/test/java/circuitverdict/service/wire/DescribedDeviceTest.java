package circuitverdict.service.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.Note;
import circuitverdict.support.Scenario;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Marks supplement the members of a device; where the two differ the safe side counts. */
class DescribedDeviceTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  private static JsonNode json(String text) {
    try {
      return JSON.readTree(text.replace('\'', '"'));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static DescribedDevice marked(String device) {
    return DescribedDevice.of(json(device), "/device", Scenario.editions().inForce());
  }

  private static JsonNode judged(String device) {
    JsonNode judged = marked(device).device();
    ((com.fasterxml.jackson.databind.node.ObjectNode) judged).remove("markings");
    return judged;
  }

  private static Set<String> codes(DescribedDevice device) {
    return device.notes().stream().map(note -> note.code().code()).collect(Collectors.toSet());
  }

  private static List<String> places(DescribedDevice device, String code) {
    return device.notes().stream()
        .filter(note -> note.code().code().equals(code))
        .map(Note::pointer)
        .map(pointer -> pointer.text())
        .toList();
  }

  @Test
  void aDeviceWithoutMarksIsItself() {
    JsonNode device = json("{'standard': 'IEC 60898-1'}");
    DescribedDevice same = DescribedDevice.of(device, "/device", Scenario.editions().inForce());
    assertSame(device, same.device());
    assertTrue(same.notes().isEmpty());
  }

  @Test
  void marksSupplementTheMembersAndAreToldOneByOne() {
    String device =
        "{'standard': 'IEC 61009-1', 'markings': ['C16', '6000', '230/400V', '30mA', 'type A']}";
    assertEquals(
        json(
            "{'standard': 'IEC 61009-1', 'characteristic': 'C', 'ratedCurrentA': 16,"
                + " 'breakingCapacityA': 6000, 'ratedVoltageV': 400,"
                + " 'ratedLineToEarthVoltageV': 230,"
                + " 'residual': {'operatingCurrentA': 0.03, 'type': 'A'}}"),
        judged(device));
    assertEquals(
        List.of(
            "/device/characteristic",
            "/device/ratedCurrentA",
            "/device/breakingCapacityA",
            "/device/ratedVoltageV",
            "/device/ratedLineToEarthVoltageV",
            "/device/residual/operatingCurrentA",
            "/device/residual/type"),
        places(marked(device), "read-from-marking"));
  }

  /** What promises less counts: of capacities, classes and voltages the lesser. */
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "'breakingCapacityA': 10000, 6000, 'breakingCapacityA': 6000",
        "'breakingCapacityA': 6000, 10000, 'breakingCapacityA': 6000",
        "'energyClass': 3, 2, 'energyClass': 2",
        "'energyClass': 1, 3, 'energyClass': 1",
        "'ratedVoltageV': 690, Ue 400V, 'ratedVoltageV': 400",
        "'isolation': false, suitable for isolation, 'isolation': false",
        "'unidirectional': false, LINE LOAD, 'unidirectional': true"
      })
  void theOneThatPromisesLessCounts(String stated, String mark, String judged) {
    String device = "{" + stated + ", 'markings': ['" + mark + "']}";
    assertEquals(json("{" + judged + "}"), judged(device));
    assertTrue(codes(marked(device)).contains("mark-against-member"));
  }

  /** What is worse for one check is better for another: neither counts, and nothing passes. */
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "'ratedCurrentA': 32, In 16A",
        "'ratedCurrentA': 16, In 32A",
        "'poles': 1, 2P",
        "'utilizationCategory': 'gG', aM"
      })
  void whereThatDependsOnTheCheckNeitherCounts(String stated, String mark) {
    String device = "{" + stated + ", 'markings': ['" + mark + "']}";
    assertEquals(json("{}"), judged(device));
    assertEquals(Set.of("mark-against-member"), codes(marked(device)));
  }

  /** An empty residual function is one of which nothing is known; none would be a fact. */
  @Test
  void theResidualFunctionStaysWhereItsCurrentIsInDoubt() {
    assertEquals(
        json("{'residual': {}}"),
        judged("{'residual': {'operatingCurrentA': 0.3}, 'markings': ['30mA']}"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"IΔn 30", "IΔn 40mA", "30mA', '300mA"})
  void aResidualCurrentThatCannotBeReadIsNotNone(String mark) {
    assertEquals(
        json("{'standard': 'IEC 61009-1', 'residual': {}}"),
        judged("{'standard': 'IEC 61009-1', 'markings': ['" + mark + "']}"));
  }

  @Test
  void aLoweredCapacityLowersTheServiceCapacityToo() {
    assertEquals(
        json(
            "{'breakingCapacityA': 6000, 'serviceBreakingCapacityA': 6000,"
                + " 'residual': {'operatingCurrentA': 0.03}}"),
        judged(
            "{'breakingCapacityA': 10000, 'serviceBreakingCapacityA': 7500,"
                + " 'markings': ['6kA', '30mA']}"));
  }

  @Test
  void anotherStandardLeavesTheStandardOpen() {
    assertFalse(judged("{'standard': 'IEC 60898-1', 'markings': ['IEC 60947-2']}").has("standard"));
    assertEquals(
        "IEC 60947-2",
        judged("{'standard': 'IEC 60947-2', 'markings': ['IEC 60898-1', 'IEC 60947-2']}")
            .path("standard")
            .textValue());
  }

  @Test
  void equalMarksAreNoConflict() {
    String device = "{'characteristic': 'C', 'ratedCurrentA': 16, 'markings': ['C16']}";
    assertTrue(marked(device).notes().isEmpty());
    assertEquals(json("{'characteristic': 'C', 'ratedCurrentA': 16}"), judged(device));
  }

  /** Of two marks that disagree neither supplements; a stated member is held against both. */
  @Test
  void marksThatDisagreeAreHeldAgainstTheMember() {
    assertEquals(
        json("{'breakingCapacityA': 6000}"),
        judged("{'breakingCapacityA': 10000, 'markings': ['6kA', '10kA']}"));
    assertFalse(judged("{'markings': ['6kA', '10kA']}").has("breakingCapacityA"));
    assertTrue(codes(marked("{'markings': ['6kA', '10kA']}")).contains("marks-disagree"));
  }

  /** A mark that a stated member contradicts is not taken: together they would be refused. */
  @Test
  void aMarkThatTheMembersContradictIsNotTaken() {
    String device = "{'breakingCapacityA': 6000, 'markings': ['Ics 7.5kA']}";
    assertEquals(json("{'breakingCapacityA': 6000}"), judged(device));
    assertEquals(
        List.of("/device/serviceBreakingCapacityA"), places(marked(device), "mark-against-member"));
  }

  @Test
  void aMarkDoesNotNarrowTheBandOfAStatedLetter() {
    // IEC 60898-1 Table 7: type C trips at once at 10 In, whatever else is marked.
    assertFalse(judged("{'characteristic': 'C', 'markings': ['3-5In']}").has("magneticMultiples"));
    assertTrue(judged("{'characteristic': 'K', 'markings': ['8-12In']}").has("magneticMultiples"));
  }

  @Test
  void theStatedStandardDecidesWhatABareFigureIs() {
    assertEquals(
        10000,
        judged("{'standard': 'IEC 61008-1', 'markings': ['10000']}")
            .path("conditionalCapacityA")
            .intValue());
  }

  @Test
  void whatIsNotReadIsToldWithItsPlace() {
    DescribedDevice device = marked("{'markings': ['C16', 'HSB-0400/2', 'bakery', 'type C 16']}");
    assertEquals(
        List.of("/device/markings/1", "/device/markings/2"), places(device, "mark-not-read"));
  }
}
