package circuitverdict.service;

import circuitverdict.service.edge.NegativeCase;
import circuitverdict.service.edge.NegativeRequests;
import io.quarkus.test.junit.QuarkusTest;

/** What {@code /v1/board-checks} refuses by the contract's schema of its body: a sample. */
@QuarkusTest
class BoardChecksNegativeTest extends NegativeRequests {

  @Override
  protected String path() {
    return "/v1/board-checks";
  }

  @Override
  protected String schema() {
    return "Circuit";
  }

  @Override
  protected int step() {
    return 41;
  }

  /** What is wrong with one circuit is answered with the rest. */
  @Override
  protected boolean refusesTheWhole(NegativeCase negative) {
    return !negative.pointer().startsWith("/circuits/");
  }
}
