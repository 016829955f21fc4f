package circuitverdict.bench;

import circuitverdict.service.BoardAnswer;
import circuitverdict.service.edge.Contract;
import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.wire.BoardContradictions;
import circuitverdict.standard.Edition;
import circuitverdict.standard.EditionLoader;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
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
 * Bytes in, bytes out, without HTTP: a thousand circuits of one board, or the three boards of the
 * tests 166 times over, 996 circuits on 333 boards.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@State(Scope.Benchmark)
@Warmup(iterations = 6, time = 3)
@Measurement(iterations = 4, time = 3)
@Fork(
    value = 1,
    jvmArgsAppend = {"-XX:+UseSerialGC", "-Xmx1g"})
public class BoardBenchmark {
  private static final int TIMES = 166;
  private static final int MOST = 1_000;
  private static final String VERSION = "benchmark";

  @Param({"one", "many"})
  String boards;

  private ContractReader reader;
  private Edition edition;
  private byte[] request;

  /** Loads contract and edition, and builds the board. */
  @Setup
  public void prepare() throws IOException {
    reader = new ContractReader(Contract.fromClassPath());
    edition = EditionLoader.load().inForce();
    try (InputStream in = getClass().getResourceAsStream("/boards/three-level.json")) {
      ObjectNode board = (ObjectNode) new JsonMapper().readTree(in);
      ArrayNode circuits = (ArrayNode) board.get("circuits");
      boolean many = boards.equals("many");
      JsonNode first = many ? circuits.get(0) : circuits.get(0).at("/circuits/1");
      circuits.removeAll();
      for (int i = 0; i < (many ? TIMES : MOST); i++) {
        circuits.add(first);
      }
      request = board.toString().getBytes(StandardCharsets.UTF_8);
    }
  }

  /** What {@code Prefer: return=minimal} gives. */
  @Benchmark
  public byte[] minimal() {
    return answer(false);
  }

  /** The full answer, with working, limits and remedies of every circuit. */
  @Benchmark
  public byte[] full() {
    return answer(true);
  }

  private byte[] answer(boolean full) {
    return new BoardAnswer(
            reader.readBoard(request, BoardContradictions::of), edition, VERSION, full)
        .bytes();
  }
}
