package circuitverdict.bench;

import circuitverdict.check.Check;
import circuitverdict.check.CheckName;
import circuitverdict.check.CircuitCheck;
import circuitverdict.check.Result;
import circuitverdict.circuit.Circuit;
import circuitverdict.standard.Edition;
import circuitverdict.support.Scenario;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
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
 * Checks on one circuit, with their working and without; neither JSON nor limits. Of all thirteen,
 * and of the nine that judge conductors and protection of the circuit itself: without selectivity,
 * inrush, additional protection and suitability.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@State(Scope.Benchmark)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 4, time = 2)
@Fork(value = 1, jvmArgsAppend = "-XX:+UseSerialGC")
public class EngineBenchmark {
  @Param({"oven", "motor"})
  String name;

  private static final Set<CheckName> BESIDE =
      EnumSet.of(
          CheckName.SELECTIVITY,
          CheckName.INRUSH,
          CheckName.ADDITIONAL_PROTECTION,
          CheckName.DEVICE_SUITABILITY);

  private final List<Check> nine =
      CircuitCheck.all().stream().filter(check -> !BESIDE.contains(check.name())).toList();
  private Circuit circuit;
  private Edition edition;

  /** Loads the edition and maps the circuit, which no measurement includes. */
  @Setup
  public void prepare() {
    Scenario scenario = Circuits.named(name);
    circuit = scenario.circuit();
    edition = scenario.edition();
  }

  /** Every check with its working: at most 25 µs is wanted. */
  @Benchmark
  public Result explained() {
    return CircuitCheck.explained(circuit, edition);
  }

  /** The nine, verdicts and figures only: at most 4 µs is wanted. */
  @Benchmark
  public Result verdicts() {
    return CircuitCheck.run(nine, circuit, edition, false);
  }

  /** All thirteen, verdicts and figures only. */
  @Benchmark
  public Result verdictsOfAll() {
    return CircuitCheck.verdicts(circuit, edition);
  }
}
