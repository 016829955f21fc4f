package circuitverdict.service;

import circuitverdict.service.edge.NegativeRequests;
import io.quarkus.test.junit.QuarkusTest;

/** What {@code /v1/marking-readings} refuses by the contract's schema of its body, all of it. */
@QuarkusTest
class MarkingReadingsNegativeTest extends NegativeRequests {

  @Override
  protected String path() {
    return "/v1/marking-readings";
  }

  @Override
  protected String schema() {
    return "MarkingQuery";
  }

  @Override
  protected int step() {
    return 1;
  }
}
