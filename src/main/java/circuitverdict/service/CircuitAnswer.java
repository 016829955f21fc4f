package circuitverdict.service;

import circuitverdict.check.Check;
import circuitverdict.check.CircuitCheck;
import circuitverdict.check.Result;
import circuitverdict.check.Sentences;
import circuitverdict.circuit.Circuit;
import circuitverdict.explain.Note;
import circuitverdict.select.Limit;
import circuitverdict.select.Remedies;
import circuitverdict.select.Remedy;
import circuitverdict.select.Solver;
import circuitverdict.service.wire.AnswerJson;
import circuitverdict.service.wire.CircuitMapping;
import circuitverdict.service.wire.DescribedDevices;
import circuitverdict.service.wire.Json;
import circuitverdict.service.wire.Sourced;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;

/** The answer of the operations that run checks on one circuit. Pure: same request, same bytes. */
public final class CircuitAnswer {
  private final Edition edition;
  private final String version;
  private final List<Check> checks;

  /** Answers by these checks under an edition. */
  public CircuitAnswer(Edition edition, String version, List<Check> checks) {
    this.edition = edition;
    this.version = version;
    this.checks = checks;
  }

  /**
   * An answer.
   *
   * @param bytes its bytes; null where only what is found was asked for
   * @param circuit the circuit that was judged
   * @param result what was found
   */
  record Judged(byte[] bytes, Circuit circuit, Result result) {}

  /** The bytes of the answer to a valid body without contradictions. */
  public byte[] bytes(Sourced request, List<Note> unused, boolean full) {
    return judge(request, unused, full).bytes();
  }

  /** What is found alone, without an answer. */
  Judged found(Sourced request, boolean explain) {
    DescribedDevices described = DescribedDevices.of(request.body(), List.of(), edition);
    Circuit circuit = CircuitMapping.circuit(described.body());
    return new Judged(null, circuit, CircuitCheck.run(checks, circuit, edition, explain));
  }

  /** The answer with what it rests on. */
  Judged judge(Sourced request, List<Note> unused, boolean full) {
    JsonNode body = request.body();
    DescribedDevices described = DescribedDevices.of(body, unused, edition);
    Circuit circuit = CircuitMapping.circuit(described.body());
    Result result = CircuitCheck.run(checks, circuit, edition, full);
    List<Remedy> remedies =
        full ? described.lasting(new Remedies(circuit, edition, checks, result).all()) : List.of();
    List<Limit> limits = full ? new Solver(circuit, edition, checks, result).limits() : List.of();
    byte[] bytes =
        Json.object(
            json -> {
              AnswerJson answer = new AnswerJson(json, edition, full, request);
              answer.head(circuit.stage(), result.verdict(), result.reason(), Sentences.of(result));
              answer.findings(result.findings(), remedies);
              answer.limits(limits);
              answer.remedies(remedies);
              answer.notes(result.findings());
              answer.foot(described.notes(), version);
            });
    return new Judged(bytes, circuit, result);
  }
}
