package circuitverdict.bench;

import circuitverdict.check.CircuitCheck;
import circuitverdict.check.Result;
import circuitverdict.circuit.Circuit;
import circuitverdict.service.CircuitAnswer;
import circuitverdict.service.edge.Contract;
import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.wire.CircuitMapping;
import circuitverdict.standard.Edition;
import circuitverdict.standard.EditionLoader;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * The engine alone, and whole answers from bytes to bytes beside a twin that reads the same body
 * and writes an equal answer without working it out.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class EngineBenchmark {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final ContractReader reader = new ContractReader(Contract.fromClassPath());
  private Edition edition;
  private byte[] body;
  private Circuit circuit;
  private JsonNode equalAnswer;

  /** The deck oven at sign-off. */
  @Setup
  public void read() throws IOException {
    edition = EditionLoader.load().inForce();
    try (InputStream in = EngineBenchmark.class.getResourceAsStream("/scenarios/deck-oven.json")) {
      body = in.readAllBytes();
    }
    circuit = CircuitMapping.circuit(reader.read(body, "Circuit"));
    equalAnswer = JSON.readTree(fullAnswer());
  }

  /** Every check with its working. */
  @Benchmark
  public Result explained() {
    return CircuitCheck.explained(circuit, edition);
  }

  /** Every check, verdicts only. */
  @Benchmark
  public Result verdicts() {
    return CircuitCheck.verdicts(circuit, edition);
  }

  /** Request bytes to answer bytes, in full. */
  @Benchmark
  public byte[] fullAnswer() {
    return answer(true);
  }

  /** Request bytes to answer bytes, minimal. */
  @Benchmark
  public byte[] minimalAnswer() {
    return answer(false);
  }

  /** The same bytes in and out with nothing worked out between. */
  @Benchmark
  public byte[] nothingBetween() throws IOException {
    JsonNode read = reader.read(body, "Circuit");
    return read.isEmpty() ? body : JSON.writeValueAsBytes(equalAnswer);
  }

  private byte[] answer(boolean full) {
    JsonNode request = reader.read(body, "Circuit");
    return new CircuitAnswer(edition, "1.0.0", CircuitCheck.all()).bytes(request, List.of(), full);
  }
}
