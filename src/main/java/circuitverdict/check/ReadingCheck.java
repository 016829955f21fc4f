package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Reading;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Shared;
import circuitverdict.explain.Working;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Edition;
import java.util.ArrayList;
import java.util.List;

/**
 * Readings of the tester against design and limits (643, Appendix 3): one finding for each, in
 * their order, about the reading that it names.
 */
public final class ReadingCheck {
  private ReadingCheck() {}

  /** Judges every reading of a circuit. */
  public static Result of(
      Circuit circuit, List<Reading> readings, Edition edition, boolean explain) {
    List<Finding> findings = new ArrayList<>(readings.size());
    for (Reading reading : readings) {
      Working working = explain ? Working.recording() : Working.silent();
      Dossier d =
          new Dossier(edition, CircuitCheck.allowance(circuit.stage()), working, new Shared());
      Judgement judgement =
          new Judgement(CheckName.COMMISSIONING, circuit, d, reading.place()).by(Clause.INSPECTION);
      boolean failed = Boolean.FALSE.equals(reading.satisfactory());
      findings.add(
          failed ? judgement.concludeBroken() : judge(reading, readings, circuit, judgement, d));
    }
    return Result.of(findings);
  }

  private static Finding judge(
      Reading reading, List<Reading> all, Circuit circuit, Judgement judgement, Dossier d) {
    return switch (reading.kind()) {
      case LOOP_IMPEDANCE -> new LoopReading(reading, all, circuit, judgement, d).judge();
      case R1_PLUS_R2, R2 -> new ContinuityReading(reading, circuit, judgement, d).judge();
      case RING_R1, RING_RN, RING_R2 ->
          new RingReading(reading, all, circuit, judgement, d).judge();
      case INSULATION -> PlainReading.insulation(reading, judgement, d);
      case FAULT_CURRENT -> PlainReading.faultCurrent(reading, circuit, judgement, d);
      case RESIDUAL_TRIP_TIME -> PlainReading.tripTime(reading, circuit, judgement, d);
      case POLARITY -> PlainReading.polarity(reading, judgement, d);
      case EARTH_ELECTRODE -> PlainReading.electrode(reading, circuit, judgement, d);
    };
  }
}
