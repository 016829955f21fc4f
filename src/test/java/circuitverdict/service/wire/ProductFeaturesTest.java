package circuitverdict.service.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.standard.ProductModel;
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

/**
 * Classified features supplement the members of a device (classes and features of ETIM 10.0, by
 * code). What is not known is told as not read.
 */
class ProductFeaturesTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String CURRENT = "{'feature': 'EF000227', 'value': '16'}";
  private static final String LETTER = "{'feature': 'EF000889', 'value': 'C'}";
  private static final String POLES = "{'feature': 'EF008618', 'value': '3'}";

  private static DescribedDevice device(String members, String productClass, String... features) {
    String text =
        "{"
            + members
            + "'features': {'class': '"
            + productClass
            + "', 'values': ["
            + String.join(",", features)
            + "]}}";
    try {
      JsonNode stated = JSON.readTree(text.replace('\'', '"'));
      return DescribedDevice.of(stated, "/products/2", Scenario.editions().inForce());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Set<String> codes(DescribedDevice device) {
    return device.notes().stream().map(note -> note.code().code()).collect(Collectors.toSet());
  }

  private static List<String> places(DescribedDevice device, String code) {
    return device.notes().stream()
        .filter(note -> note.code().code().equals(code))
        .map(note -> note.pointer().text())
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"EC000042", "EC000003", "EC000905"})
  void knownFeaturesAreRead(String productClass) {
    DescribedDevice read = device("", productClass, CURRENT, LETTER, POLES);
    assertEquals(16, read.device().path("ratedCurrentA").doubleValue());
    assertEquals("C", read.device().path("characteristic").textValue());
    assertEquals(3, read.device().path("poles").intValue());
    assertFalse(read.device().has("standard"), "a class is no standard");
    assertEquals(Set.of("read-from-feature"), codes(read));
    assertEquals(
        List.of("/products/2/ratedCurrentA", "/products/2/characteristic", "/products/2/poles"),
        places(read, "read-from-feature"));
  }

  @Test
  void anUnknownClassTellsNothing() {
    DescribedDevice read = device("", "EC000001", CURRENT, LETTER, POLES);
    assertEquals(List.of("/products/2/features/class"), places(read, "features-not-read"));
    assertEquals(Set.of("features-not-read"), codes(read));
    assertFalse(read.device().has("ratedCurrentA"));
  }

  /** Codes of values, ranges, other units, letters without limits, parts of a pole. */
  @ParameterizedTest
  @CsvSource({
    "EF000227, 16-20, ",
    "EF000227, '16,0', ",
    "EF000227, 1e3, ",
    "EF000227, 0, ",
    "EF000227, 999999, ",
    "EF000227, 16, EU570448",
    "EF000227, '', ",
    "EF000227, ' 16', ",
    "EF000889, EV000123, ",
    "EF000889, c, ",
    "EF000889, C, EU570459",
    "EF008618, 1.5, ",
    "EF008618, 9, ",
    "EF008618, 3, EU570459",
    "EF001000, 16, "
  })
  void whatIsNotKnownIsToldAndNotGuessed(String feature, String value, String unit) {
    String more = unit == null ? "" : ", 'unit': '" + unit + "'";
    String stated = "{'feature': '" + feature + "', 'value': '" + value + "'" + more + "}";
    DescribedDevice read = device("", "EC000042", LETTER.replace("C", "B"), stated);
    assertEquals(
        List.of("/products/2/features/values/1/feature"), places(read, "feature-not-read"));
    assertFalse(read.device().has("ratedCurrentA"));
    assertFalse(read.device().has("poles"));
    assertEquals("B", read.device().path("characteristic").textValue());
  }

  /** A letter of the model of which nothing is known contradicts every other. */
  @Test
  void anotherLetterOfTheModelContradicts() {
    DescribedDevice read =
        device("'characteristic': 'B',", "EC000042", LETTER.replace("'C'", "'KM'"));
    assertFalse(read.device().has("characteristic"));
    assertEquals(Set.of("feature-not-read", "feature-against-member"), codes(read));
    // Said in two ways neither is taken, nor what follows.
    String b = LETTER.replace("'C'", "'B'");
    assertFalse(device("", "EC000042", b, LETTER, b).device().has("characteristic"));
  }

  /** What has a residual function is none of that class. */
  @Test
  void theClassOfBreakersHasNoResidualFunction() {
    String members = "'standard': 'IEC 60947-2', 'residual': {'operatingCurrentA': 0.03},";
    assertFalse(device(members, "EC000042", CURRENT).device().has("standard"));
    assertTrue(device(members, "EC000905", CURRENT).device().has("standard"));
  }

  @ParameterizedTest
  @CsvSource({"0.5, 0.5", "16, 16", "12.5, 12.5", "125, 125"})
  void theRatedCurrentIsInAmperes(String value, double ampere) {
    String stated = "{'feature': 'EF000227', 'unit': 'EU570459', 'value': '" + value + "'}";
    assertEquals(
        ampere, device("", "EC000042", stated).device().path("ratedCurrentA").doubleValue());
  }

  /** More is worse for one check and less for another: neither of two figures counts. */
  @Test
  void aConflictIsToldAndNeitherCounts() {
    DescribedDevice read =
        device("'ratedCurrentA': 20, 'characteristic': 'C',", "EC000042", CURRENT, LETTER);
    assertEquals(List.of("/products/2/ratedCurrentA"), places(read, "feature-against-member"));
    assertFalse(read.device().has("ratedCurrentA"));
    assertEquals("C", read.device().path("characteristic").textValue());
    DescribedDevice marked = device("'markings': ['C20'],", "EC000042", CURRENT, LETTER);
    assertEquals(List.of("/products/2/ratedCurrentA"), places(marked, "feature-against-member"));
    assertFalse(marked.device().has("ratedCurrentA"));
  }

  /** A class names no standard, but a standard that such a product cannot have does not count. */
  @ParameterizedTest
  @CsvSource({
    "EC000042, IEC 60898-1, true",
    "EC000042, IEC 60947-2, true",
    "EC000042, IEC 61008-1, false",
    "EC000042, IEC 61009-1, false",
    "EC000042, BS 88-2, false",
    "EC000003, IEC 61008-1, true",
    "EC000003, IEC 60898-1, false",
    "EC000905, IEC 61009-1, true",
    "EC000905, IEC 60898-1, false"
  })
  void aClassHoldsAgainstAStandard(String productClass, String standard, boolean fits) {
    DescribedDevice read = device("'standard': '" + standard + "',", productClass, CURRENT);
    assertEquals(fits, read.device().has("standard"));
    List<String> told = fits ? List.of() : List.of("/products/2/standard");
    assertEquals(told, places(read, "feature-against-member"));
  }

  /** What the features would make of the members is no contradiction of the request. */
  @Test
  void aFeatureThatCannotBeTrueIsNotTaken() {
    DescribedDevice read =
        device("'standard': 'IEC 61009-1', 'protectedPoles': 4,", "EC000905", POLES);
    assertEquals(List.of("/products/2/poles"), places(read, "feature-against-member"));
    assertFalse(read.device().has("poles"));
  }

  @Test
  void aWrongCheckDigitIsTold() throws IOException {
    for (String digits : List.of("6291041500213", "6291041500214")) {
      JsonNode stated = JSON.readTree("{\"gtin\": \"" + digits + "\"}");
      DescribedDevice read = DescribedDevice.of(stated, "/device", Scenario.editions().inForce());
      assertEquals(digits.endsWith("3"), read.notes().isEmpty());
      assertTrue(digits.endsWith("3") || codes(read).equals(Set.of("gtin-check-digit")));
      assertEquals(stated, read.device());
    }
  }

  /** The six codes that are read, and no other. */
  @Test
  void theModelHoldsWhatWasVerified() {
    ProductModel model = Scenario.editions().inForce().products();
    assertEquals(Set.of("EC000042", "EC000003", "EC000905"), model.classes().keySet());
    assertEquals(Set.of("EF000889", "EF000227", "EF008618"), model.features().keySet());
    assertTrue(model.model().startsWith("ETIM"));
  }
}
