package circuitverdict.service;

import circuitverdict.service.edge.NegativeRequests;
import io.quarkus.test.junit.QuarkusTest;

/** What {@code /v1/conductor-selections} refuses by the contract's schema of its body: a sample. */
@QuarkusTest
class ConductorSelectionsNegativeTest extends NegativeRequests {

  @Override
  protected String path() {
    return "/v1/conductor-selections";
  }

  @Override
  protected String schema() {
    return "Circuit";
  }

  @Override
  protected int step() {
    return 47;
  }
}
