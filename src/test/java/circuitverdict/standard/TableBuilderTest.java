package circuitverdict.standard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.quantity.Unit;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A table file is refused for every single thing that is incomplete or contradictory in it. */
class TableBuilderTest {
  private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());

  /** A complete table; every broken one below differs from it in one place. */
  private static final String WHOLE =
      """
      table: t
      title: a table
      standard: BS 7671:2018+A2:2022
      reference: Table T
      keys:
        - {name: kind, match: text}
        - {name: ratedCurrentA, unit: A, match: band}
      columns:
        - {name: value, unit: s}
        - {name: least, unit: s, sparse: true}
      confidence: printed
      seen: [S1]
      rows:
        - {at: [B, [0, 32]], values: [60, ~]}
        - {at: [B, [32, 63]], values: [1.20, 2]}
        - {at: [B, [63, any]], values: [120, 2], confidence: memory}
        - {at: [C, [any, 63]], values: [120, 2], cells: {least: {confidence: computed, unit: A, reference: Table U}}}
      """;

  private static Table build(String text) {
    try {
      return TableBuilder.build("t", YAML.readValue(text, TableFile.class), Set.of("S1", "S2"));
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String without(String part) {
    return with(part, "");
  }

  private static String with(String part, String instead) {
    assertTrue(WHOLE.contains(part), part);
    return WHOLE.replace(part, instead);
  }

  private static void refused(String text, String because) {
    RuntimeException refusal = assertThrows(RuntimeException.class, () -> build(text));
    assertTrue(refusal.getMessage().contains(because), refusal.getMessage());
  }

  @Test
  void theWholeTableIsRead() {
    Table table = build(WHOLE);
    assertEquals(4, table.rows().size());
    assertNull(table.at("least", "B", 10));
    Value value = table.at("value", "B", 50);
    assertEquals(1.2, value.number());
    assertEquals("1.20", value.printed());
    assertEquals(Unit.SECOND, value.unit());
    assertEquals(
        new Citation("BS 7671:2018+A2:2022", "Table T", Confidence.PRINTED, List.of("S1"), null),
        value.citation());
  }

  @Test
  void theNearestWordCountsCellThenRowThenColumnThenFile() {
    Table table = build(WHOLE);
    assertEquals(Confidence.MEMORY, table.at("value", "B", 100).citation().confidence());
    assertEquals(List.of(), table.at("value", "B", 100).citation().seen());
    Value cell = table.at("least", "C", 10);
    assertEquals(Confidence.COMPUTED, cell.citation().confidence());
    assertEquals("Table U", cell.citation().reference());
    assertEquals(Unit.AMPERE, cell.unit());
    assertEquals(Unit.SECOND, table.at("value", "C", 10).unit());
    assertEquals("Table T", table.at("value", "C", 10).citation().reference());
  }

  @Test
  void bandsAreOpenBelowAndClosedAbove() {
    Table table = build(WHOLE);
    assertNull(table.at("value", "B", 0));
    assertEquals(60, table.at("value", "B", 32).number());
    // Figures within 1e-12 of each other are equal: a computed one may meet a band.
    assertEquals(60, table.at("value", "B", Math.nextUp(32.0)).number());
    assertEquals(1.2, table.at("value", "B", 32 * (1 + 1e-11)).number());
    assertEquals(120, table.at("value", "B", 1e9).number());
    assertEquals(120, table.at("value", "C", -1e9).number());
    assertNull(table.at("value", "C", 64));
  }

  @Test
  void aValueWithoutUnitIsRefused() {
    refused(with("{name: value, unit: s}", "{name: value}"), "without unit");
  }

  @Test
  void aValueWithoutCitationIsRefused() {
    refused(without("standard: BS 7671:2018+A2:2022"), "standard is missing");
    refused(without("reference: Table T\n"), "reference is missing");
  }

  @Test
  void aValueWithoutConfidenceIsRefused() {
    refused(without("confidence: printed\n"), "without confidence");
  }

  @Test
  void anUnknownConfidenceIsRefused() {
    refused(with("confidence: printed", "confidence: certain"), "unknown confidence");
  }

  @Test
  void aPrintedValueThatWasSeenNowhereIsRefused() {
    refused(without("seen: [S1]\n"), "where it was seen");
    refused(with("seen: [S1]", "seen: []"), "where it was seen");
  }

  @Test
  void anUnknownSourceIsRefused() {
    refused(with("seen: [S1]", "seen: [S1, S9]"), "unknown source");
  }

  @Test
  void overlappingBandsAreRefused() {
    refused(with("[32, 63]", "[25, 63]"), "gap or overlap");
  }

  @Test
  void bandsWithAGapAreRefused() {
    refused(with("[32, 63]", "[40, 63]"), "gap or overlap");
  }

  @Test
  void bandsOutOfOrderInTheFileAreStillHeldTogether() {
    String swapped =
        with("at: [B, [32, 63]]", "at: [B, [X]]")
            .replace("at: [B, [0, 32]]", "at: [B, [32, 63]]")
            .replace("[X]", "[0, 32]");
    assertEquals(1.2, build(swapped).at("value", "B", 20).number());
    refused(swapped.replace("[0, 32]", "[0, 31]"), "gap or overlap");
  }

  @Test
  void aBandMustRise() {
    refused(with("[32, 63]", "[63, 32]"), "must rise");
    refused(with("[0, 32]", "[32, 32]"), "must rise");
  }

  @Test
  void aBandEndsInANumberOrInTheWordAny() {
    refused(with("[63, any]", "[63, more]"), "not in");
    refused(with("[63, any]", "63"), "a band is wanted");
    refused(with("[63, any]", "[63]"), "a band is wanted");
  }

  @Test
  void twoRowsWithTheSameKeysAreRefused() {
    refused(with("at: [B, [32, 63]]", "at: [B, [0, 32]]"), "two rows");
  }

  @Test
  void anEmptyCellInAColumnThatIsNotSparseIsRefused() {
    refused(with("[1.20, 2]", "[~, 2]"), "an empty cell");
  }

  @Test
  void aFileUnderAWrongNameIsRefused() {
    refused(with("table: t", "table: u"), "name");
    refused(without("table: t"), "name");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "title: a table | | title",
        "[60, ~] | [60] | cells do not fit",
        "[60, ~] | [60, 1, 2] | cells do not fit",
        "at: [B, [0, 32]] | at: [[0, 32]] | keys do not fit",
        "at: [B, [0, 32]] | at: [4, [0, 32]] | a word is wanted",
        "{name: kind, match: text} | {match: text} | name and match",
        "{name: kind, match: text} | {name: kind} | name and match",
        "{name: kind, match: text} | {name: kind, match: near} | NEAR",
        "{name: value, unit: s} | {unit: s} | needs a name",
        "{name: value, unit: s} | {name: value, unit: sec} | unknown unit",
        "cells: {least: | cells: {most: | not there"
      })
  void whatDoesNotFitIsRefused(String part, String instead, String because) {
    refused(with(part, instead == null ? "" : instead), because);
  }

  @Test
  void aTableWithoutKeysColumnsOrRowsIsRefused() {
    int keys = WHOLE.indexOf("keys:");
    int columns = WHOLE.indexOf("columns:");
    int confidence = WHOLE.indexOf("confidence:");
    int rows = WHOLE.indexOf("rows:");
    refused(WHOLE.substring(0, keys) + WHOLE.substring(columns), "keys are missing");
    refused(WHOLE.substring(0, columns) + WHOLE.substring(confidence), "columns are missing");
    refused(WHOLE.substring(0, rows), "rows are missing");
    refused(WHOLE.substring(0, rows) + "rows: []", "rows are missing");
  }

  @Test
  void aValueThatIsNotANumberIsRefused() {
    assertThrows(UncheckedIOException.class, () -> build(with("[1.20, 2]", "['1.20', 2]")));
  }

  @Test
  void anExactKeyMustBeANumber() {
    String exact =
        WHOLE.replace("match: band", "match: exact").replaceAll("\\[B, \\[(\\d+), \\w+]", "[B, $1");
    refused(exact, "a number is wanted");
    assertEquals(60, build(exact.replace("[any, 63]", "63")).at("value", "B", 0).number());
  }
}
