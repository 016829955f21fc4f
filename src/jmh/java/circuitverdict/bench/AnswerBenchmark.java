package circuitverdict.bench;

import circuitverdict.check.CircuitCheck;
import circuitverdict.service.CircuitAnswer;
import circuitverdict.service.edge.Contract;
import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.wire.Contradictions;
import circuitverdict.service.wire.Sourced;
import circuitverdict.service.wire.UnusedMembers;
import circuitverdict.standard.Edition;
import circuitverdict.support.Scenario;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Bytes in, bytes out, without HTTP: a real answer against a no-op that reads the same body with
 * the same reader and writes the same answer from a tree made beforehand.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@State(Scope.Benchmark)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 4, time = 2)
@Fork(value = 1, jvmArgsAppend = "-XX:+UseSerialGC")
public class AnswerBenchmark {
  private static final JsonMapper MAPPER = new JsonMapper();
  private static final String VERSION = "benchmark";

  @Param({"oven", "failing-oven", "motor"})
  String name;

  private ContractReader reader;
  private Edition edition;
  private byte[] request;
  private JsonNode fullTree;
  private JsonNode minimalTree;

  /** Loads contract and edition, and the trees that the no-op writes. */
  @Setup
  public void prepare() throws IOException {
    Scenario scenario = Circuits.named(name);
    reader = new ContractReader(Contract.fromClassPath());
    edition = scenario.edition();
    request = scenario.json().toString().getBytes(StandardCharsets.UTF_8);
    fullTree = MAPPER.readTree(answer(true));
    minimalTree = MAPPER.readTree(answer(false));
  }

  /** The full answer, with working, limits and remedies. */
  @Benchmark
  public byte[] full() {
    return answer(true);
  }

  /** What {@code Prefer: return=minimal} gives. */
  @Benchmark
  public byte[] minimal() {
    return answer(false);
  }

  /** The no-op beside the full answer: equal bodies, nothing computed. */
  @Benchmark
  public byte[] noOpFull() throws IOException {
    return reader.read(request, "Circuit").isEmpty() ? null : MAPPER.writeValueAsBytes(fullTree);
  }

  /** The no-op beside the minimal answer. */
  @Benchmark
  public byte[] noOpMinimal() throws IOException {
    return reader.read(request, "Circuit").isEmpty() ? null : MAPPER.writeValueAsBytes(minimalTree);
  }

  /** Reading the body strictly and by the contract: the part that all of these share. */
  @Benchmark
  public JsonNode readOnly() {
    return reader.read(request, "Circuit");
  }

  private byte[] answer(boolean full) {
    JsonNode circuit = reader.read(request, "Circuit", Contradictions::of);
    return new CircuitAnswer(edition, VERSION, CircuitCheck.all())
        .bytes(Sourced.plain(circuit), UnusedMembers.ofCheck(circuit), full);
  }
}
