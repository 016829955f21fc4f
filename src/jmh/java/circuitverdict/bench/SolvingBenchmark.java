package circuitverdict.bench;

import circuitverdict.check.CircuitCheck;
import circuitverdict.check.Result;
import circuitverdict.circuit.Circuit;
import circuitverdict.select.Limit;
import circuitverdict.select.Remedies;
import circuitverdict.select.Remedy;
import circuitverdict.select.Solver;
import circuitverdict.standard.Edition;
import circuitverdict.support.Scenario;
import java.util.List;
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
 * What a full answer solves backwards: the limits of any circuit, the remedies of a failing one.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@State(Scope.Benchmark)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 4, time = 2)
@Fork(value = 1, jvmArgsAppend = "-XX:+UseSerialGC")
public class SolvingBenchmark {
  @Param({"oven", "failing-oven", "failing-motor"})
  String name;

  private Circuit circuit;
  private Edition edition;
  private Result before;

  /** Loads the edition and checks the circuit once, which no measurement includes. */
  @Setup
  public void prepare() {
    Scenario scenario = Circuits.named(name);
    circuit = scenario.circuit();
    edition = scenario.edition();
    before = CircuitCheck.verdicts(circuit, edition);
  }

  /** Greatest length, loop impedance and fault current. */
  @Benchmark
  public List<Limit> limits() {
    return new Solver(circuit, edition, CircuitCheck.all()).limits();
  }

  /** Every remedy, each tried on all checks; nothing is looked for where nothing fails. */
  @Benchmark
  public List<Remedy> remedies() {
    return new Remedies(circuit, edition, CircuitCheck.all(), before).all();
  }
}
