package circuitverdict.check;

import static circuitverdict.support.Facts.assumptions;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.open;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A ring whose kind of load is not stated: at sign-off nothing that is left out helps (engineering
 * basis, principle 7). Ib := In and the rule for rings are for stated socket-outlets.
 */
class RingKindTest {
  /** Whatever a fuller description does not meet, the same without the kind does not meet. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "{'kind': 'filament'}",
        "{'kind': 'filament', 'designCurrentA': 30}",
        "{'kind': 'filament', 'designCurrentA': 30, 'count': 1}",
        "{'kind': 'filament', 'ratedPowerW': 5000, 'designCurrentA': 20}",
        "{'kind': 'filament', 'ratedPowerW': 9000}",
        "{'kind': 'motor', 'ratedPowerW': 3000, 'powerFactor': 0.8}",
        "{'kind': 'motor', 'ratedPowerW': 3000, 'powerFactor': 1, 'designCurrentA': 13}",
        "{'kind': 'vehicle-charging', 'ratedCurrentA': 13}",
        "{'kind': 'vehicle-charging', 'ratedCurrentA': 32, 'count': 2}",
        "{'kind': 'vehicle-charging', 'designCurrentA': 13}",
        "{'kind': 'mixed', 'designCurrentA': 20}"
      })
  void leavingOutTheKindDoesNotHelp(String json) {
    for (double size : new double[] {2.5, 4}) {
      Scenario load =
          RingCircuitTest.ring()
              .with("/cable/lineCsaMm2", size)
              .withJson("/load", json.replace('\'', '"'))
              .with("/load/use", "other")
              .with("/load/connection", "socket-outlet");
      Scenario without = load.without("/load/kind");
      for (CheckName check : CheckName.ofCircuits()) {
        Verdict stated = load.verdict(check);
        if (stated == Verdict.DOES_NOT_COMPLY || stated == Verdict.NOT_DETERMINED) {
          assertNotEquals(Verdict.COMPLIES, without.verdict(check), () -> check + " " + json);
        }
      }
    }
  }

  /** An outlet may serve a charging point or one large item: its kind is asked for. */
  @Test
  void kindIsAskedForBesideTheConnection() {
    Scenario outlets = RingLoadTest.feeding(null, "socket-outlet");
    for (CheckName check :
        new CheckName[] {CheckName.OVERLOAD_PROTECTION, CheckName.CONDUCTOR_RATING}) {
      open(outlets.finding(check), "/load/kind");
      fails(outlets.with("/cable/installation/referenceMethod", "101").finding(check));
      complies(outlets.with("/cable/lineCsaMm2", 4).finding(check));
      complies(outlets.with("/load/kind", "socket-outlets").finding(check));
    }
  }

  /** Unlike loads may be anything, plugged in or not, until their parts are stated. */
  @Test
  void partsOfAMixedLoadAreAskedFor() {
    Scenario mixed = RingLoadTest.feeding("mixed", "socket-outlet");
    open(mixed.finding(CheckName.OVERLOAD_PROTECTION), "/load/parts");
    complies(
        mixed
            .withJson("/load/parts", "[{\"kind\": \"socket-outlets\", \"ratedCurrentA\": 13}]")
            .finding(CheckName.OVERLOAD_PROTECTION));
  }

  /** Of a ring without a kind no current follows: that of its device is for outlets. */
  @ParameterizedTest
  @CsvSource({"socket-outlet", ","})
  void ratingIsNotTheCurrentOfAnUnknownKind(String connection) {
    Scenario ring = RingCircuitTest.ring().without("/load/connection").without("/load/kind");
    Scenario load = connection == null ? ring : ring.with("/load/connection", connection);
    for (CheckName check :
        new CheckName[] {CheckName.OVERLOAD_PROTECTION, CheckName.VOLTAGE_DROP}) {
      Finding found = open(load.finding(check), "/load/kind", "/load/designCurrentA");
      assertFalse(assumptions(found).contains(NoteCode.DESIGN_CURRENT_IS_RATING));
      Finding stated = load.with("/load/kind", "socket-outlets").finding(check);
      assertTrue(assumptions(complies(stated)).contains(NoteCode.DESIGN_CURRENT_IS_RATING));
    }
    assertEquals(
        Verdict.NOT_DETERMINED, load.without("/load").verdict(CheckName.OVERLOAD_PROTECTION));
  }
}
