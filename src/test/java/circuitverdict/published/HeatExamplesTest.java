package circuitverdict.published;

import static circuitverdict.check.CheckName.PROTECTIVE_CONDUCTOR;
import static circuitverdict.check.Verdict.NOT_DETERMINED;
import static circuitverdict.published.Bench.LINE_AND_NEUTRAL;
import static circuitverdict.published.Bench.WITHOUT_CMIN;
import static circuitverdict.published.Bench.WITH_CMIN;
import static circuitverdict.published.Bench.breaker;
import static circuitverdict.published.Bench.isTheSizeFor;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.conductor.HeatLimit;
import circuitverdict.conductor.ProtectiveConductors;
import circuitverdict.device.LetThrough;
import circuitverdict.device.OperatingCurrent;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.fault.FaultLoop;
import circuitverdict.fault.SupplyLoop;
import circuitverdict.quantity.Unit;
import circuitverdict.support.Scenario;

/** Published examples of the adiabatic equation: fault currents, energies and heat limits. */
class HeatExamplesTest {
  @WorkedExample(
      id = "C01",
      title = "Ring, separate 1.5 mm² cpc in plastic conduit, 30 A rewirable fuse",
      source = "Basic Electrical Installation Work, page image text 262 (and 261)",
      standard = "BS 7671:2008 17th Edition (Uo = 230 V, no Cmin)")
  void aSeparateConductorInPlasticConduitStandsTheRewireableFuse() {
    Scenario circuit = Bench.loop(conduit(1.5), 1.15).with("/cable/arrangement", "ring");
    assertEquals(200, least(circuit, WITHOUT_CMIN), 0.001);
    // 0.4 s is read from the fuse's curve at 200 A.
    double energy = 200 * 200 * 0.4;
    isTheSizeFor(1.0999, 115, energy, 0.0001);
    assertTrue(stands(conduit(1.5)) >= energy);
    assertTrue(stands(conduit(1)) < energy);
    // The least sizes of a conductor outside a wiring system do not apply inside one.
    assertFalse(ProtectiveConductors.alone(Bench.cable(conduit(1.5))));
  }

  private static Scenario conduit(double protective) {
    return breaker("B", 32)
        .with("/cable/construction", "singles")
        .with("/cable/protectiveMeans", "separate")
        .with("/cable/protectiveConductor", "copper")
        .with("/cable/protectiveCsaMm2", protective)
        .with("/cable/installation/referenceMethod", "B");
  }

  @WorkedExample(
      id = "C02",
      title = "Immersion heater, 15 A rewirable fuse, 90 A in 0.4 s",
      source = "Basic Electrical Installation Work, page image text 262",
      standard = "BS 7671:2008 17th Edition (Uo = 230 V, no Cmin)")
  void theRewireableFuseOperatesAtNinetyAmpereWithinFourTenths() {
    Scenario fuse = Bench.device("{\"standard\":\"BS 3036\",\"ratedCurrentA\":15}");
    double current =
        OperatingCurrent.within(fuse.circuit().device(), 0.4, Bench.dossier(WITHOUT_CMIN))
            .current()
            .value();
    assertEquals(90, current, 0.5);
    double energy = current * current * 0.4;
    isTheSizeFor(0.495, 115, energy, 0.01);
    assertTrue(stands(breaker("B", 6).with("/cable/protectiveCsaMm2", 1.5)) >= energy);
  }

  @WorkedExample(
      id = "C03",
      title = "Main earthing conductor: Ze 0.11 ohm, 0.01 s",
      source = "Adiabatic equation reg 543.1.3, page 3",
      standard = "BS 7671:2008 17th Edition (Uo = 230 V, no Cmin)")
  void theMainEarthingConductorByTheEquationAlone() {
    double current = least(Bench.loop(breaker("B", 32), 0.11), WITHOUT_CMIN);
    assertEquals(2090.9, current, 0.1);
    double energy = current * current * 0.01;
    isTheSizeFor(1.462, 143, energy, 0.001);
    // k 143: copper apart from other cables; the bonding size that governs is not judged here.
    assertEquals(143 * 143 * 1.5 * 1.5, stands(apart(1.5)), 1e-6);
    assertTrue(stands(apart(1.5)) >= energy);
    assertTrue(stands(apart(1)) < energy);
  }

  private static Scenario apart(double protective) {
    return conduit(protective).with("/cable/construction", "multicore");
  }

  @WorkedExample(
      id = "C05",
      title = "60 A BS 1361 submain: 442 A for 2 s against 6.0 mm² cpc",
      source = "Help with adiabatic equation",
      standard =
          "BS 7671:2008+A3:2015 onward / BS 7671:2018 18th Edition (Uo = 230 V, Cmin = 0.95)")
  void theTimeReadAtOneCurrentIsNeverCarriedToAnother() {
    Scenario submain =
        Bench.device("{\"standard\":\"BS 1361\",\"ratedCurrentA\":60,\"breakingCapacityA\":33000}")
            .with("/cable/lineCsaMm2", 16)
            .with("/cable/protectiveCsaMm2", 6)
            .with("/cable/lengthM", 1e-6)
            .with("/supply/point", "board")
            .with("/supply/instrumentUncertaintyPercent", 0)
            .with("/supply/loopImpedanceOhm", 0.43);
    // Only the part beyond the origin is heated: the more of it is known, the less is added.
    double all = supply(submain);
    double part = supply(submain.with("/supply/originLoopImpedanceOhm", 0.2));
    double none = supply(submain.with("/supply/originLoopImpedanceOhm", 0.43));
    assertTrue(all > part && part > none);
    assertEquals(0.43, none, 1e-9);
    assertEquals(0.43 - 0.2, (part - 0.2) / (all / 0.43), 1e-9);
    // For 2 s the 6 mm² stands the 442 A of the whole loop heated and not the uncorrected 535 A;
    // but
    // there the fuse is faster. No curve of it is held, so nothing is proved and nothing fails.
    assertTrue(stands(submain) >= 442.3 * 442.3 * 2);
    assertTrue(stands(submain) < 535 * 535 * 2);
    assertEquals(NOT_DETERMINED, submain.verdict(PROTECTIVE_CONDUCTOR));
    assertEquals(
        NOT_DETERMINED, submain.with("/edition", WITHOUT_CMIN).verdict(PROTECTIVE_CONDUCTOR));
  }

  private static double supply(Scenario scenario) {
    return SupplyLoop.earth(scenario.circuit(), Bench.dossier(WITH_CMIN)).value();
  }

  @WorkedExample(
      id = "C08",
      title = "B16 socket circuit, Zs = 0.26 ohm",
      source = "2365 level 3 unit 305 design project",
      standard = "BS 7671:2018 18th Edition")
  void theClassBoundsTheEnergyBelowATenthOfASecond() {
    Scenario circuit = Bench.loop(breaker("B", 16), 0.26);
    double current = least(circuit, WITHOUT_CMIN);
    assertEquals(884.6, current, 0.05);
    // 0.1 s promises no more than 2.43 mm²; the energy limiting class promises less energy.
    Scenario undeclared = circuit.without("/device/energyClass");
    isTheSizeFor(2.433, 115, energy(undeclared, current), 0.001);
    assertTrue(stands(circuit.with("/cable/protectiveCsaMm2", 2.5)) >= energy(undeclared, current));
    assertEquals(35_000, energy(circuit, current));
    assertTrue(energy(circuit, current) < energy(undeclared, current));
    // The threshold of 80 A is not the fault current: it would seem to want 0.22 mm².
    assertTrue(energy(undeclared, current) > 80 * 80 * 0.1);
  }

  private static double energy(Scenario scenario, double currentA) {
    Dossier d = Bench.dossier(WITH_CMIN);
    Figure current = Figure.derived("I", currentA, Unit.AMPERE);
    return LetThrough.of(scenario.circuit().device(), d).over(current, current).greatest().value();
  }

  @WorkedExample(
      id = "C12",
      title = "Adiabatic and non-adiabatic limit of a 95 mm² XLPE cable, 1 s",
      source = "Permissible short-circuit current (IEC 60949 example)",
      standard = "IEC 60949:1988, IEC 60364-5-54:2011")
  void ninetyFiveSquareMillimetresOfThermosettingCableCarryThirteenAndAHalfKiloampereForASecond() {
    Scenario cable =
        breaker("B", 32)
            .with("/cable/construction", "multicore")
            .with("/cable/insulation", "thermosetting-90")
            .with("/cable/lineCsaMm2", 95);
    double limit = HeatLimit.line(Bench.cable(cable), Bench.dossier(WITH_CMIN)).value();
    assertEquals(13_573, Math.sqrt(limit), 0.005 * 13_573);
    assertEquals(142.87, Math.sqrt(limit) / 95, 0.15);
    // The non-adiabatic gain of 2 % is not claimed.
    assertTrue(Math.sqrt(limit) < 13_864);
  }

  @WorkedExample(
      id = "I02",
      title = "Scope statement of the class number",
      source = "As simple as 1, 2, 3 (trade article)",
      standard = "BS EN 60898-1")
  void noClassIsInventedForTypeDOrAboveTheTable() {
    for (String letter : new String[] {"B", "C"}) {
      for (int capacity : new int[] {3000, 4500, 6000, 10_000}) {
        assertTrue(classLimit(letter, 32, capacity, 3) > 0);
      }
      assertNull(classLimit(letter, 32, 6000, 1));
      assertNull(classLimit(letter, 50, 6000, 3));
    }
    assertNull(classLimit("D", 16, 6000, 3));
  }

  private static Double classLimit(String letter, double rated, int capacity, int energyClass) {
    Scenario scenario =
        breaker(letter, rated)
            .with("/device/breakingCapacityA", capacity)
            .with("/device/energyClass", energyClass);
    Breaker breaker = (Breaker) scenario.circuit().device();
    var limit = LetThrough.classLimit(breaker, capacity, Bench.dossier(WITH_CMIN));
    return limit == null ? null : Double.valueOf(limit.number());
  }

  private static double least(Scenario scenario, String edition) {
    Dossier d = Bench.dossier(edition);
    return FaultLoop.earth(scenario.circuit(), LINE_AND_NEUTRAL, d)
        .leastCurrent(scenario.circuit(), d)
        .value();
  }

  private static double stands(Scenario scenario) {
    return HeatLimit.protective(Bench.cable(scenario), Bench.dossier(WITH_CMIN)).value();
  }
}
