package circuitverdict.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Value;
import circuitverdict.support.Scenario;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What may stand in for an input at which stage, and that every stand-in and gap is told once. */
class DossierTest {
  private static final Pointer AT = new Pointer("/supply", "loopImpedanceOhm");

  private static Dossier dossier(Allowance allowance) {
    return new Dossier(Scenario.editions().inForce(), allowance, Working.recording());
  }

  private static Value typical() {
    return Scenario.editions().inForce().constant("supply-typical", "loop/TN-C-S");
  }

  private static Figure orAssume(Dossier d, Double value, Allowance least) {
    return d.orAssume("Ze", value, AT, typical(), least, NoteCode.TYPICAL_LOOP_IMPEDANCE);
  }

  @ParameterizedTest
  @CsvSource({
    // What the stage allows, what the stand-in is, whether it may stand in (principle 2).
    "NOTHING, NOTHING, true",
    "NOTHING, TABLE_DEFAULTS, false",
    "NOTHING, TYPICAL_VALUES, false",
    "TABLE_DEFAULTS, NOTHING, true",
    "TABLE_DEFAULTS, TABLE_DEFAULTS, true",
    "TABLE_DEFAULTS, TYPICAL_VALUES, false",
    "TYPICAL_VALUES, NOTHING, true",
    "TYPICAL_VALUES, TABLE_DEFAULTS, true",
    "TYPICAL_VALUES, TYPICAL_VALUES, true"
  })
  void eachStageAllowsItsOwnStandInsAndNoMore(Allowance stage, Allowance needed, boolean allowed) {
    Dossier d = dossier(stage);
    assertEquals(allowed, d.allows(needed));
    Figure figure = orAssume(d, null, needed);
    assertEquals(allowed, figure.known());
    assertEquals(allowed ? 1 : 0, d.assumptions().size());
    assertEquals(allowed ? 0 : 1, d.missing().size());
    assertEquals(Unit.OHM, figure.unit());
  }

  @Test
  void aStatedValueIsTakenAndNothingIsAssumed() {
    Dossier d = dossier(Allowance.TYPICAL_VALUES);
    Figure figure = orAssume(d, 0.2, Allowance.TYPICAL_VALUES);
    assertEquals(new Figure("Ze", 0.2, Unit.OHM, AT), figure);
    assertTrue(d.assumptions().isEmpty());
    assertTrue(d.typical().isEmpty());
  }

  @Test
  void anAssumptionNamesTheMemberTheFigureAndItsSource() {
    Dossier d = dossier(Allowance.TYPICAL_VALUES);
    Figure figure = orAssume(d, null, Allowance.TYPICAL_VALUES);
    // 0.35 Ω: typical declared maximum of TN-C-S supplies, ENA ER P23.
    assertEquals(0.35, figure.value());
    assertEquals(typical().citation(), figure.source());
    assertEquals(
        List.of(new Note(NoteCode.TYPICAL_LOOP_IMPEDANCE, AT, List.of(figure))), d.assumptions());
  }

  @Test
  void onlyTypicalValuesAreListedAsTypical() {
    Dossier d = dossier(Allowance.TYPICAL_VALUES);
    orAssume(d, null, Allowance.TABLE_DEFAULTS);
    assertTrue(d.typical().isEmpty());
    orAssume(d, null, Allowance.TYPICAL_VALUES);
    assertEquals(List.of(AT), d.typical());
    d.assumeCurable(NoteCode.TYPICAL_FAULT_CURRENT, At.MAXIMUM_CURRENT);
    assertEquals(List.of(AT, At.MAXIMUM_CURRENT), d.typical());
  }

  @Test
  void theSameGapAssumptionAndRemarkAreToldOnce() {
    Dossier d = dossier(Allowance.TYPICAL_VALUES);
    d.missing(AT);
    d.need("Ze", null, Unit.OHM, AT);
    d.need((String) null, AT);
    d.assume(NoteCode.ASSUMED_COPPER, At.CABLE_ITSELF);
    d.assume(NoteCode.ASSUMED_COPPER, At.CABLE_ITSELF);
    d.remark(NoteCode.DEEMED);
    d.remark(NoteCode.DEEMED);
    assertEquals(1, d.missing().size());
    assertEquals(1, d.assumptions().size());
    assertEquals(1, d.remarks().size());
    d.missing(NoteCode.NOT_IN_TABLES, AT);
    d.assume(NoteCode.ASSUMED_COPPER, At.DEVICE_ITSELF);
    d.remark(NoteCode.BY_GUIDANCE);
    assertEquals(2, d.missing().size());
    assertEquals(2, d.assumptions().size());
    assertEquals(2, d.remarks().size());
  }

  @Test
  void aGivenFigureThatIsNotStatedIsUnknownButNotMissing() {
    Dossier d = dossier(Allowance.NOTHING);
    assertFalse(d.given("Ics", null, Unit.AMPERE, AT).known());
    assertEquals(6000, d.given("Ics", 6000.0, Unit.AMPERE, AT).value());
    assertTrue(d.missing().isEmpty());
  }

  @Test
  void aNeededFigureThatIsNotStatedIsUnknownAndMissing() {
    Dossier d = dossier(Allowance.TYPICAL_VALUES);
    assertFalse(d.need("In", null, Unit.AMPERE, AT).known());
    assertNull(d.need((String) null, AT));
    assertEquals(List.of(new Note(NoteCode.MISSING_INPUT, AT, List.of())), d.missing());
    Dossier other = dossier(Allowance.NOTHING);
    assertEquals(32, other.need("In", 32.0, Unit.AMPERE, AT).value());
    assertEquals("B", other.need("B", AT));
    assertTrue(other.missing().isEmpty());
  }

  @Test
  void aTableWithoutTheValueIsMissingAsSuch() {
    Dossier d = dossier(Allowance.TYPICAL_VALUES);
    assertEquals(0.35, d.tabled("Ze", typical(), Unit.OHM, AT).value());
    assertTrue(d.missing().isEmpty());
    assertFalse(d.tabled("Ze", null, Unit.OHM, AT).known());
    assertEquals(NoteCode.NOT_IN_TABLES, d.missing().get(0).code());
  }

  @Test
  void aBlockedDossierSaysSoAndWhy() {
    Dossier d = dossier(Allowance.NOTHING);
    assertFalse(d.blocked());
    d.block(AT);
    assertTrue(d.blocked());
    assertEquals(List.of(new Note(NoteCode.NOT_IN_TABLES, AT, List.of())), d.missing());
  }

  @Test
  void theProofIsAsStrongAsItsWeakestPart() {
    Dossier d = dossier(Allowance.NOTHING);
    assertSame(Dossier.Strength.RULE, d.strength());
    d.restsOn(Dossier.Strength.GUIDANCE);
    d.restsOn(Dossier.Strength.DEEMED);
    d.restsOn(Dossier.Strength.RULE);
    assertSame(Dossier.Strength.GUIDANCE, d.strength());
    Dossier other = dossier(Allowance.NOTHING);
    other.restsOn(Dossier.Strength.DEEMED);
    assertSame(Dossier.Strength.DEEMED, other.strength());
  }

  @Test
  void aConstantOfTheEditionComesWithItsCitation() {
    Figure cmin = dossier(Allowance.NOTHING).constant("Cmin", Constant.CMIN);
    // Cmin 0.95: 411.4.4 since Amendment 3 of 2015.
    assertEquals(0.95, cmin.value());
    assertEquals("Cmin", cmin.symbol());
    assertEquals(
        Scenario.editions().inForce().constant("voltage", "cmin").citation(), cmin.source());
  }
}
