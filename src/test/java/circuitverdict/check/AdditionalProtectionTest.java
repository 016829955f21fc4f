package circuitverdict.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a residual current device of 30 mA is owed, and what it must be (415.1). */
class AdditionalProtectionTest {
  private static final String RESIDUAL =
      "{\"operatingCurrentA\": 0.03, \"type\": \"A\", \"delay\": \"general\"}";

  private static final Scenario OVEN = Scenario.oven();

  /** A socket circuit of a dwelling. */
  private static final Scenario SOCKETS =
      OVEN.withJson(
              "/load",
              "{\"kind\": \"socket-outlets\", \"use\": \"other\", \"designCurrentA\": 20,"
                  + " \"powerFactor\": 1, \"connection\": \"socket-outlet\","
                  + " \"ratedCurrentA\": 13, \"residualWaveform\": \"pulsating-direct\","
                  + " \"protectiveConductorCurrentA\": 0.009}")
          .with("/premises/use", "domestic")
          .with("/premises/higherRiskResidential", false);

  private static Finding of(Scenario scenario) {
    return scenario.finding(CheckName.ADDITIONAL_PROTECTION);
  }

  private static Scenario rcbo(Scenario scenario) {
    return scenario.with("/device/standard", "IEC 61009-1").withJson("/device/residual", RESIDUAL);
  }

  private static Verdict verdict(Scenario scenario) {
    return of(scenario).verdict();
  }

  private static List<String> missing(Scenario scenario) {
    return of(scenario).missing().stream().map(note -> note.pointer().text()).toList();
  }

  private static boolean remarks(Scenario scenario, NoteCode code) {
    return of(scenario).remarks().stream().map(Note::code).anyMatch(code::equals);
  }

  @Test
  void aFixedOvenOnTheSurfaceOwesNothing() {
    assertEquals(Verdict.NOT_APPLICABLE, verdict(OVEN));
  }

  /** 411.3.3: socket-outlets up to 32 A; no exception in a dwelling or for ordinary persons. */
  @ParameterizedTest
  @CsvSource({
    "13, domestic, skilled-persons, DOES_NOT_COMPLY",
    "32, domestic, skilled-persons, DOES_NOT_COMPLY",
    "32.1, domestic, skilled-persons, NOT_APPLICABLE",
    "63, commercial, ordinary-persons, NOT_APPLICABLE",
    "16, commercial, ordinary-persons, DOES_NOT_COMPLY",
    "16, industrial, skilled-persons, NOT_DETERMINED",
  })
  void socketOutletsOweItByTheirRating(double rated, String use, String by, Verdict verdict) {
    Scenario circuit =
        SOCKETS
            .with("/load/ratedCurrentA", rated)
            .with("/premises/use", use)
            .with("/premises/operatedBy", by);
    assertEquals(verdict, verdict(circuit));
    Verdict fitted = verdict(rcbo(circuit));
    assertEquals(Verdict.COMPLIES, fitted);
  }

  @Test
  void aRiskAssessmentIsNamedWhereOneCanExcuse() {
    Scenario industrial =
        SOCKETS.with("/premises/use", "industrial").with("/premises/operatedBy", "skilled-persons");
    assertEquals(NoteCode.RISK_ASSESSMENT, of(industrial).missing().get(0).code());
    Scenario open =
        SOCKETS.without("/premises/use").with("/premises/operatedBy", "skilled-persons");
    assertEquals(Verdict.NOT_DETERMINED, verdict(open));
    assertTrue(missing(open).contains("/premises/use"), missing(open)::toString);
  }

  @Test
  void whatIsOwedAndNotFittedSaysSo() {
    assertTrue(remarks(SOCKETS, NoteCode.ADDITIONAL_PROTECTION_OWED));
    assertTrue(
        of(SOCKETS).clauses().stream().anyMatch(clause -> clause.reference().equals("411.3.3")));
  }

  @Test
  void theRatingOfTheOutletsDecidesOnlyWhereNothingIsFitted() {
    Scenario open = SOCKETS.without("/load/ratedCurrentA");
    assertEquals(Verdict.NOT_DETERMINED, verdict(open));
    assertEquals(List.of("/load/ratedCurrentA"), missing(open));
    assertEquals(Verdict.COMPLIES, verdict(rcbo(open)));
  }

  /** 411.3.4 (2018): luminaires in dwellings. */
  @ParameterizedTest
  @CsvSource({
    "led, lighting, domestic, DOES_NOT_COMPLY",
    "led, lighting, commercial, NOT_APPLICABLE",
    "resistive, other, domestic, NOT_APPLICABLE",
    "led, other, domestic, NOT_DETERMINED",
    "resistive, lighting, domestic, DOES_NOT_COMPLY",
  })
  void luminairesOfDwellingsOweIt(String kind, String use, String premises, Verdict verdict) {
    Scenario circuit =
        OVEN.with("/load/kind", kind).with("/load/use", use).with("/premises/use", premises);
    assertEquals(verdict, verdict(circuit));
    // 411.3.4 came with the 18th Edition.
    assertEquals(Verdict.NOT_APPLICABLE, verdict(circuit.with("/edition", "bs7671-2008")));
  }

  /** 522.6.202 and .203 (from memory), .204: cables in walls. */
  @ParameterizedTest
  @CsvSource({
    "none, NOT_APPLICABLE",
    "deeper, NOT_APPLICABLE",
    "protected, NOT_APPLICABLE",
    "within-50-mm, DOES_NOT_COMPLY",
    "metallic-partition, DOES_NOT_COMPLY",
  })
  void concealedCablesOweIt(String concealment, Verdict verdict) {
    Scenario circuit = OVEN.with("/cable/installation/concealment", concealment);
    assertEquals(verdict, verdict(circuit));
    assertEquals(Verdict.COMPLIES, verdict(rcbo(circuit)));
    Scenario armoured =
        circuit
            .with("/cable/construction", "armoured-multicore")
            .with("/cable/protectiveMeans", "armour");
    assertEquals(Verdict.NOT_APPLICABLE, verdict(armoured));
  }

  @Test
  void aCableThatMayBeConcealedLeavesItOpenUnlessFitted() {
    Scenario open = OVEN.without("/cable/installation/concealment");
    assertEquals(Verdict.NOT_DETERMINED, verdict(open));
    assertEquals(List.of("/cable/installation/concealment"), missing(open));
    assertEquals(Verdict.COMPLIES, verdict(rcbo(open)));
  }

  /** 701.411.3.3; 703.411.3.3 and 702 from memory. */
  @ParameterizedTest
  @CsvSource({
    "bath-or-shower, resistive, DOES_NOT_COMPLY",
    "sauna, resistive, NOT_DETERMINED",
    "sauna, motor, DOES_NOT_COMPLY",
    "swimming-pool, motor, NOT_DETERMINED",
    "outdoors, resistive, NOT_APPLICABLE",
  })
  void specialLocationsOweIt(String location, String kind, Verdict verdict) {
    Scenario circuit =
        OVEN.with("/premises/locations", List.of(location))
            .with("/load/kind", kind)
            .with("/load/residualWaveform", "sinusoidal");
    assertEquals(verdict, verdict(circuit));
    if (verdict != Verdict.NOT_APPLICABLE) {
      assertEquals(Verdict.COMPLIES, verdict(rcbo(circuit)));
    }
  }

  @Test
  void locationsThatAreNotStatedLeaveItOpen() {
    Scenario open = OVEN.without("/premises/locations");
    assertEquals(Verdict.NOT_DETERMINED, verdict(open));
    assertTrue(missing(open).contains("/premises/locations"), missing(open)::toString);
  }

  /** 722.531.3: type B, or detection of 6 mA of direct current beside type A. */
  @ParameterizedTest
  @CsvSource({"B, COMPLIES", "A, NOT_DETERMINED", "F, NOT_DETERMINED", "AC, DOES_NOT_COMPLY"})
  void chargingPointsAskForTypeB(String type, Verdict verdict) {
    Scenario charging =
        OVEN.with("/load/kind", "vehicle-charging").with("/load/residualWaveform", "smooth-direct");
    assertEquals(Verdict.DOES_NOT_COMPLY, verdict(charging));
    assertEquals(verdict, verdict(rcbo(charging).with("/device/residual/type", type)));
  }

  /** 722.531.3.101: detection of 6 mA in the equipment (IEC 62955) serves beside type A or F. */
  @ParameterizedTest
  @CsvSource({
    "A, true, smooth-direct, COMPLIES",
    "A, true, , COMPLIES",
    "F, true, pulsating-direct, COMPLIES",
    "A, true, mixed-frequency, COMPLIES",
    "AC, true, smooth-direct, DOES_NOT_COMPLY",
    "A, false, smooth-direct, DOES_NOT_COMPLY",
    "B, false, smooth-direct, COMPLIES"
  })
  void directCurrentDetectionServesBesideTypeA(
      String type, boolean detects, String waveform, Verdict verdict) {
    Scenario charging =
        rcbo(OVEN.with("/load/kind", "vehicle-charging"))
            .with("/device/residual/type", type)
            .with("/load/directCurrentDetection", detects);
    assertEquals(
        verdict,
        verdict(
            waveform == null
                ? charging.without("/load/residualWaveform")
                : charging.with("/load/residualWaveform", waveform)));
  }

  /** Of parts each that may charge tells its own; a lamp beside it does not. */
  @Test
  void everyPartThatChargesTellsOfItsDetection() {
    String lamp = "{\"kind\": \"led\", \"designCurrentA\": 1, \"connection\": \"fixed\"}";
    String point =
        "{\"kind\": \"vehicle-charging\", \"ratedCurrentA\": 16, \"connection\": \"fixed\"%s}";
    Scenario mixed =
        rcbo(OVEN.with("/load/kind", "mixed").without("/load/designCurrentA"))
            .with("/load/residualWaveform", "smooth-direct")
            .with("/device/residual/type", "A");
    String told = point.formatted(", \"directCurrentDetection\": true");
    Scenario all = mixed.withJson("/load/parts", "[" + lamp + "," + told + "]");
    assertEquals(Verdict.COMPLIES, verdict(all));
    Scenario open = mixed.withJson("/load/parts", "[" + lamp + "," + point.formatted("") + "]");
    assertEquals(Verdict.NOT_DETERMINED, verdict(open));
    assertTrue(missing(open).contains("/load/directCurrentDetection"));
    String none = point.formatted(", \"directCurrentDetection\": false");
    Scenario failing = mixed.withJson("/load/parts", "[" + none + "," + lamp + "]");
    assertEquals(Verdict.DOES_NOT_COMPLY, verdict(failing));
  }

  /** 415.1.1: no more than 30 mA; 0.0301 A exceeds it. */
  @ParameterizedTest
  @CsvSource({"0.01, COMPLIES", "0.03, COMPLIES", "0.0301, DOES_NOT_COMPLY"})
  void moreThanThirtyMilliampereIsNoAdditionalProtection(double operating, Verdict verdict) {
    Scenario circuit =
        rcbo(SOCKETS)
            .with("/device/residual/operatingCurrentA", operating)
            .with("/load/protectiveConductorCurrentA", 0.001);
    assertEquals(verdict, verdict(circuit));
  }

  /** 415.1.1 with IEC 61008-1: 40 ms at 5 IΔn, which type S does not keep. */
  @Test
  void aDelayedDeviceIsNoAdditionalProtection() {
    assertEquals(
        Verdict.DOES_NOT_COMPLY, verdict(rcbo(SOCKETS).with("/device/residual/delay", "S")));
    Scenario open = rcbo(SOCKETS).without("/device/residual/delay");
    assertEquals(Verdict.NOT_DETERMINED, verdict(open));
    assertEquals(List.of("/device/residual/delay"), missing(open));
  }

  @Test
  void theMoreSensitiveOfTwoInARowServes() {
    Scenario both =
        rcbo(SOCKETS)
            .with("/device/residual/operatingCurrentA", 0.1)
            .withJson(
                "/residualDevice",
                "{\"standard\": \"IEC 61008-1\", \"ratedCurrentA\": 63, \"residual\": "
                    + RESIDUAL
                    + "}");
    assertEquals(Verdict.COMPLIES, verdict(both));
    assertTrue(remarks(both, NoteCode.STANDING_OF_OTHERS));
    assertEquals(
        Verdict.DOES_NOT_COMPLY,
        verdict(both.with("/residualDevice/residual/operatingCurrentA", 0.3)));
  }

  /** 531.3.3: AC sinusoidal, A pulsating, F mixed frequencies, B smooth direct current. */
  @ParameterizedTest
  @CsvSource({
    "sinusoidal, AC, DOES_NOT_COMPLY",
    "sinusoidal, A, COMPLIES",
    "pulsating-direct, A, COMPLIES",
    "mixed-frequency, A, DOES_NOT_COMPLY",
    "mixed-frequency, F, COMPLIES",
    "smooth-direct, F, DOES_NOT_COMPLY",
    "smooth-direct, B, COMPLIES",
  })
  void theTypeDetectsTheWaveform(String waveform, String type, Verdict verdict) {
    Scenario circuit =
        rcbo(SOCKETS).with("/load/residualWaveform", waveform).with("/device/residual/type", type);
    assertEquals(verdict, verdict(circuit));
  }

  /** 531.3.3 (2022): type AC for fixed equipment without direct current, as immersion heaters. */
  @Test
  void typeAcServesFixedHeaters() {
    Scenario heater =
        rcbo(OVEN.with("/cable/installation/concealment", "within-50-mm"))
            .with("/device/residual/type", "AC");
    assertEquals(Verdict.COMPLIES, verdict(heater));
    assertEquals(Verdict.NOT_DETERMINED, verdict(heater.without("/load/connection")));
    assertEquals(Verdict.NOT_DETERMINED, verdict(heater.with("/load/kind", "electronic")));
  }

  @Test
  void aTypeOrAWaveformThatIsNotStatedLeavesItOpen() {
    Scenario noType = rcbo(SOCKETS).without("/device/residual/type");
    assertEquals(List.of("/device/residual/type"), missing(noType));
    Scenario noWaveform = rcbo(SOCKETS).without("/load/residualWaveform");
    assertEquals(List.of("/load/residualWaveform"), missing(noWaveform));
    assertEquals(Verdict.COMPLIES, verdict(noWaveform.with("/device/residual/type", "B")));
  }

  /** 531.3.2 (from memory): 30 % of 30 mA are 9 mA. */
  @ParameterizedTest
  @CsvSource({"0.0089, COMPLIES", "0.009, COMPLIES", "0.0091, DOES_NOT_COMPLY"})
  void standingCurrentKeepsBelowAThird(double standing, Verdict verdict) {
    assertEquals(
        verdict, verdict(rcbo(SOCKETS).with("/load/protectiveConductorCurrentA", standing)));
  }

  @Test
  void standingCurrentThatIsNotStatedIsRemarkedOn() {
    Scenario open = rcbo(SOCKETS).without("/load/protectiveConductorCurrentA");
    assertEquals(Verdict.COMPLIES, verdict(open));
    assertTrue(remarks(open, NoteCode.STANDING_NOT_STATED));
  }

  /** 421.1.7 (2022): socket-outlets up to 32 A on one phase in higher-risk residences. */
  @Test
  void arcFaultDetectionIsOwedInHigherRiskResidences() {
    Scenario flat = rcbo(SOCKETS).with("/premises/higherRiskResidential", true);
    assertEquals(Verdict.NOT_DETERMINED, verdict(flat));
    assertEquals(List.of("/device/arcFaultDetection"), missing(flat));
    assertEquals(Verdict.COMPLIES, verdict(flat.with("/device/arcFaultDetection", true)));
    Scenario without = flat.with("/device/arcFaultDetection", false);
    assertEquals(Verdict.DOES_NOT_COMPLY, verdict(without));
    assertTrue(remarks(without, NoteCode.ARC_FAULT_OWED));
    assertEquals(Verdict.COMPLIES, verdict(without.with("/edition", "bs7671-2008")));
    Scenario open = flat.without("/premises/higherRiskResidential");
    assertTrue(missing(open).contains("/premises/higherRiskResidential"), missing(open)::toString);
    assertEquals(Verdict.COMPLIES, verdict(open.with("/premises/use", "industrial")));
    assertEquals(Verdict.COMPLIES, verdict(open.with("/stage", "quotation")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"/device", "/device/standard"})
  void withoutADeviceNothingIsKnown(String member) {
    assertEquals(Verdict.NOT_DETERMINED, verdict(SOCKETS.without(member)));
  }
}
