package circuitverdict.standard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;

/** Looking up a table: the row itself or nothing, and the next row only where a rule says so. */
class TableTest {
  private static final Edition EDITION = Scenario.edition("bs7671-2018-a2");

  @Test
  void whatTheTableDoesNotHoldIsNothing() {
    Table resistance = EDITION.table("conductor-resistance");
    // 2.5 mm² copper class 1: 7.41 Ω/km, IEC 60228 Table 1.
    assertEquals(7.41, resistance.at("copper/class-1", 2.5).number());
    assertNull(resistance.at("copper/class-1", 3));
    assertNull(resistance.at("copper/class-1", 500));
    assertNull(resistance.at("silver", 2.5));
    assertTrue(resistance.has("aluminium"));
    assertFalse(resistance.has("silver"));
  }

  @Test
  void anAmbientBetweenRowsTakesTheNextHotterOne() {
    Table ambient = EDITION.table("4B1");
    // Table 4B1: 35 °C 0.94, 40 °C 0.87.
    assertEquals(0.94, ambient.atOrAbove("thermoplastic-70", 35).number());
    assertEquals(0.87, ambient.atOrAbove("thermoplastic-70", 35.5).number());
    assertNull(ambient.atOrAbove("thermoplastic-70", 60.1));
    // 90 °C insulation goes on to 80 °C: 0.41.
    assertEquals(0.41, ambient.atOrAbove("thermosetting-90", 76).number());
  }

  @Test
  void aGroupBetweenRowsTakesTheNextLargerOne() {
    Table grouping = EDITION.table("4C1");
    // Table 4C1, bunched: 9 circuits 0.50, 12 circuits 0.45.
    assertEquals(0.50, grouping.atOrAbove("factor", "bunched", 9).number());
    assertEquals(0.45, grouping.atOrAbove("factor", "bunched", 10).number());
    assertNull(grouping.atOrAbove("factor", "bunched", 21));
    assertNull(grouping.atOrAbove("factor", "heaped", 2));
  }

  @Test
  void everyKeyMustFit() {
    // R1 + R2 of 2.5/1.5 mm² 19.51 mΩ/m: On-Site Guide Table I1.
    assertEquals(19.51, EDITION.table("r1-plus-r2").at("resistance", 2.5, 1.5).number());
    assertNull(EDITION.table("r1-plus-r2").at("resistance", 1.5, 2.5));
    Table live = EDITION.table("k-live");
    assertEquals(115, live.at("k", "copper", "thermoplastic-70", 300).number());
    assertEquals(103, live.at("k", "copper", "thermoplastic-70", 301).number());
    assertNull(live.at("k", "aluminium", "mineral-70", 16));
    Table protective = EDITION.table("k-protective");
    assertEquals(143, protective.at("k", "separate", "copper", "thermoplastic-70", 4).number());
    assertNull(protective.at("k", "armour", "copper", "thermoplastic-70", 4));
    Table energy = EDITION.table("energy-limits");
    assertEquals(35000, energy.at("B", 16, 6000, 3).number());
    assertEquals(45000, energy.at("B", 20, 6000, 3).number());
    assertNull(energy.at("B", 16, 6000, 1));
    assertNull(energy.at("B", 16, 5000, 3));
    Table drop = EDITION.table("voltage-drop-limits");
    assertEquals(3, drop.at("limit", "public", "lighting").number());
    assertNull(drop.at("limit", "public", "heating"));
  }

  @Test
  void aWordIsFoundByItsLettersTooNotOnlyAsTheObjectOfTheTable() {
    Table live = EDITION.table(TableName.K_LIVE);
    String copper = new StringBuilder("copper").toString();
    String plastic = new StringBuilder("thermoplastic-70").toString();
    assertEquals(115, live.at(new StringBuilder("k").toString(), copper, plastic, 300).number());
    assertNull(live.at("k", new StringBuilder("silver").toString(), plastic, 300));
    assertNull(live.at("k", copper, new StringBuilder("paper-80").toString(), 300));
  }

  @Test
  void everyNameOfATableIsThatOfATableThatIsServed() {
    for (TableName name : TableName.values()) {
      assertEquals(name.id(), EDITION.table(name).id());
    }
  }

  /** On-Site Guide (from memory): 1.0 mm² up to 3 kA, 2.5 mm² above; 1e-12 of it is equal. */
  @Test
  void aBandReachesToItsEndWhateverBinaryRoundingAdds() {
    Table guidance = EDITION.table("energy-guidance");
    assertEquals(1.0, guidance.at("B", 6, 3000).number());
    assertEquals(1.0, guidance.at("B", 6, Math.nextUp(3000.0)).number());
    assertEquals(2.5, guidance.at("B", 6, 3000 * (1 + 1e-11)).number());
    assertEquals(2.5, guidance.at("B", 6, Math.nextUp(6000.0)).number());
    assertNull(guidance.at("B", 6, 6000 * (1 + 1e-11)));
    assertNull(guidance.at("B", 6, 0));
  }

  @Test
  void keysAreServedAsWordNumberOrBand() {
    assertEquals("B", EDITION.table("41.3").rows().get(0).keys().get(0).shown());
    assertEquals("3", EDITION.table("41.3").rows().get(0).keys().get(1).shown());
    assertEquals("0.03", EDITION.table("41.5").rows().get(0).keys().get(0).shown());
    assertEquals("above 50 to 120", EDITION.table("41.1").rows().get(0).keys().get(1).shown());
    assertEquals("above 400 to any", EDITION.table("41.1").rows().get(3).keys().get(1).shown());
    assertEquals(
        "above any below to 15",
        EDITION.table("third-harmonic").rows().get(0).keys().get(0).shown());
  }
}
