package circuitverdict.service;

import circuitverdict.service.edge.NegativeRequests;
import io.quarkus.test.junit.QuarkusTest;

/**
 * What {@code /v1/loop-impedance-limits} refuses by the contract's schema of its body, a sample.
 */
@QuarkusTest
class LoopImpedanceLimitsNegativeTest extends NegativeRequests {

  @Override
  protected String path() {
    return "/v1/loop-impedance-limits";
  }

  @Override
  protected String schema() {
    return "LoopImpedanceQuery";
  }

  @Override
  protected int step() {
    return 13;
  }
}
