package circuitverdict.standard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.support.Scenario;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The edition of IEC 60364: its own tables, what it carries over, and what it is without. */
class IecTablesTest {
  private static final Edition IEC = Scenario.edition("iec60364");
  private static final Edition A2 = Scenario.edition("bs7671-2018-a2");

  /**
   * IEC 60364-5-52:2009, Tables B.52.2 to B.52.12: from memory, but B2 and C of B.52.4 (manuals),
   * and the columns seen as those of Tables 4E1A and 4E4A of BS 7671.
   */
  @ParameterizedTest
  @CsvSource({
    "B.52.2, A1, 1.5, 14.5, memory",
    "B.52.2, A2, 2.5, 18.5, memory",
    "B.52.2, B1, 25, 101, printed",
    "B.52.2, B2, 16, 69, memory",
    "B.52.2, C, 2.5, 27, memory",
    "B.52.2, D1, 10, 60, memory",
    "B.52.2, D2, 10, 64, memory",
    "B.52.3, A1, 70, 200, printed",
    "B.52.3, B1, 16, 100, printed",
    "B.52.3, C, 4, 45, memory",
    "B.52.3, D1, 300, 446, printed",
    "B.52.3, D2, 300, 502, memory",
    "B.52.4, A1, 25, 73, printed",
    "B.52.4, B2, 50, 118, printed",
    "B.52.4, B2, 150, 225, memory",
    "B.52.4, C, 35, 119, printed",
    "B.52.4, D2, 6, 41, memory",
    "B.52.5, B1, 185, 384, printed",
    "B.52.5, C, 6, 52, memory",
    "B.52.5, D1, 6, 44, printed",
    "B.52.10, E/2, 2.5, 30, memory",
    "B.52.10, E/3, 300, 497, memory",
    "B.52.10, F/3-trefoil, 25, 110, memory",
    "B.52.10, G/3-vertical, 25, 130, memory",
    "B.52.12, E/2, 16, 115, memory",
    "B.52.12, F/2, 25, 161, printed",
    "B.52.12, F/3-flat, 95, 342, printed",
    "B.52.12, G/3-horizontal, 240, 781, printed"
  })
  void ratings(String table, String column, double size, double ampere, String confidence) {
    Value value = IEC.table(table).at(column, size);
    assertEquals(ampere, value.number());
    assertEquals(confidence, value.citation().confidence().name().toLowerCase());
    assertEquals("Table " + table, value.citation().reference());
  }

  /** B.52.14 (memory; 40 to 55 °C of PVC by the manuals), B.52.15 and B.52.16 (memory). */
  @Test
  void factorsOfSurroundings() {
    assertEquals(1.06, IEC.table("B.52.14").at("thermoplastic-70", 25).number());
    assertEquals(1.15, IEC.table("B.52.14").at("thermosetting-90", 10).number());
    assertEquals(0.79, IEC.table("B.52.14").at("thermoplastic-70", 45).number());
    assertFalse(IEC.table("B.52.14").has("mineral-70"));
    assertEquals(0.93, IEC.table("B.52.15").at("90", 30).number());
    assertEquals(0.90, IEC.table("B.52.16").at("direct", 3).number());
    assertEquals(0.96, IEC.table("B.52.16").at("duct", 3).number());
  }

  /** Columns that tables of BS 7671 share with annex B, as the notes of the tables say. */
  @Test
  void whatWasSeenAsTablesOfTheOtherStandardIsTheSame() {
    same("B.52.3", "A1", "4E1A", "A/2");
    same("B.52.3", "B1", "4E1A", "B/2");
    same("B.52.3", "D1", "4E4A", "D1/2");
    same("B.52.5", "A1", "4E1A", "A/3");
    same("B.52.5", "B1", "4E1A", "B/3");
    same("B.52.5", "D1", "4E4A", "D1/3");
    for (Table.Column column : IEC.table("B.52.12").columns()) {
      if (!column.name().startsWith("E")) {
        same("B.52.12", column.name(), "4E1A", column.name());
      }
    }
    same("B.52.15", "70", "4B2", "70");
    same("B.52.16", "direct", "4B3", "direct");
    same("B.52.18", "nil", "4C2", "nil");
    same("B.52.19", "nil", "4C3", "nil");
  }

  /**
   * In the ground BS 7671 rates armoured cables by the figures of D1 (4D4A from memory, 4E4A seen),
   * so they are rated here; in air lower ones stand among those seen, so they are not determined.
   */
  @Test
  void armouredCablesAreRatedInTheGroundAlone() {
    same("B.52.2", "D1", "4D4A", "D1/2");
    same("B.52.4", "D1", "4D4A", "D1/3");
    assertEquals(96, IEC.table("B.52.5").at("C", 16).number());
    assertEquals(94, A2.table("4E4A").at("C/3", 16).number());
    assertEquals(741, IEC.table("B.52.12").at("E/2", 300).number());
    assertEquals(732, A2.table("4E4A").at("E/2", 300).number());
  }

  /** A larger conductor carries more, a cooler method too, and three loaded no more than two. */
  @Test
  void ratingsRiseWithSizeAndFallWithLoadedConductors() {
    for (String[] pair : new String[][] {{"B.52.2", "B.52.4"}, {"B.52.3", "B.52.5"}}) {
      for (Table.Column column : IEC.table(pair[0]).columns()) {
        double before = 0;
        for (Row row : IEC.table(pair[0]).rows()) {
          double size = row.keys().get(0).to();
          double two = IEC.table(pair[0]).at(column.name(), size).number();
          assertTrue(two > before, pair[0] + column.name() + size);
          assertTrue(IEC.table(pair[1]).at(column.name(), size).number() <= two);
          before = two;
        }
      }
    }
  }

  private static void same(String table, String column, String other, String theirs) {
    for (Row row : IEC.table(table).rows()) {
      Value mine = IEC.table(table).at(column, row.keys().get(0).to());
      Value seen = A2.table(other).at(theirs, row.keys().get(0).to());
      if (mine != null) {
        assertEquals(seen.number(), mine.number(), table + column + row.keys());
      }
    }
  }

  /** IEC 60269-1 Table 3: the gate for 5 s; never less than what BS 7671 takes. */
  @Test
  void generalPurposeFusesTakeTheGate() {
    for (Row row : IEC.table("fuse-gates").rows()) {
      double rated = row.keys().get(0).to();
      Value own = IEC.table("fuse-operating-currents").at("current-5", "BS 88-2", rated);
      assertEquals(IEC.table("fuse-gates").at("greatest-5", rated).number(), own.number());
    }
    for (Row row : A2.table("fuse-operating-currents").rows()) {
      for (String column : List.of("current-0.4", "current-5")) {
        String standard = row.keys().get(0).text();
        double rated = row.keys().get(1).to();
        Value theirs = A2.table("fuse-operating-currents").at(column, standard, rated);
        Value own = IEC.table("fuse-operating-currents").at(column, standard, rated);
        // Below the least gate no current of 0.4 s is held, and nothing stands for it.
        boolean held = theirs != null && own != null;
        assertTrue(!held || own.number() >= theirs.number() || rated < 6, standard + rated);
      }
    }
  }

  @Test
  void whatIsCarriedOverIsMarkedAndNothingElseIs() {
    Set<String> carried = new TreeSet<>();
    for (Table table : IEC.tables()) {
      for (Row row : table.rows()) {
        for (Value value : row.values()) {
          if (value != null && value.citation().carriedOverFrom() != null) {
            assertEquals("bs7671-2018-a2", value.citation().carriedOverFrom());
            carried.add(table.id());
          }
        }
      }
    }
    Set<String> listed = new TreeSet<>();
    IEC.head().carriedOver().tables().forEach(id -> listed.add(id.asText()));
    assertEquals(listed, carried);
    // Nothing of the appendices of BS 7671 and of guidance to it comes along.
    assertTrue(carried.stream().noneMatch(id -> id.matches("4[A-E].*|41\\..*|r1-.*|ring.*")));
  }

  /** Each table of Amendment 2 is its own here, carried over, known by another name, or refused. */
  @Test
  void noTableIsForgotten() {
    for (Table table : A2.tables()) {
      String id = table.id();
      boolean here = IEC.has(IEC.head().idOf(id));
      assertTrue(here ^ IEC.head().lacks(id) || id.equals("r1-plus-r2"), id);
    }
  }

  @Test
  void whatItIsWithoutAnswersNothing() {
    assertFalse(IEC.has(TableName.TABLE_4D5));
    assertNull(IEC.table(TableName.TABLE_4D5).at("C/2", 6));
    assertFalse(IEC.has(Constant.RING_CIRCUIT_RATING_32));
    assertThrows(IllegalStateException.class, () -> IEC.constant(Constant.RING_CIRCUIT_RATING_32));
    assertFalse(IEC.has(Clause.CONCEALED_CABLES));
    assertTrue(IEC.has(Clause.LUMINAIRES));
    assertFalse(A2.has(TableName.TABLE_B_52_2));
    assertTrue(A2.has(TableName.TABLE_4D5));
    assertTrue(A2.has(Clause.CONCEALED_CABLES));
  }

  @Test
  void tablesAnswerToTheNamesThatRulesKnow() {
    assertEquals("B.52.17", IEC.table(TableName.TABLE_4C1).id());
    assertEquals("54.2", IEC.table(TableName.TABLE_54_7).id());
    assertEquals("4C1", A2.table(TableName.TABLE_4C1).id());
  }

  /** A table that is neither there nor said to be lacking stops the start of the service. */
  @Test
  void whatIsLackingMustBeSaid() {
    String path = "iec60364/edition.yaml";
    String whole = BrokenData.file(path);
    for (String id : List.of("41.3", "ring-circuit", "4D5", "supply-typical")) {
      String refusal = BrokenData.refusal(path, whole.replace("    - \"" + id + "\"\n", ""));
      assertTrue(refusal != null && refusal.contains("has no table " + id), refusal);
    }
    String unnamed = BrokenData.refusal(path, whole.replace("  \"4B1\": \"B.52.14\"\n", ""));
    assertTrue(unnamed.contains("has no table 4B1"), unnamed);
  }
}
