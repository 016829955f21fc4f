package circuitverdict.service;

import circuitverdict.service.edge.NegativeRequests;
import io.quarkus.test.junit.QuarkusTest;

/** What {@code /v1/edition-comparisons} refuses by the contract's schema of its body: a sample. */
@QuarkusTest
class EditionComparisonsNegativeTest extends NegativeRequests {

  @Override
  protected String path() {
    return "/v1/edition-comparisons";
  }

  @Override
  protected String schema() {
    return "Circuit";
  }

  @Override
  protected int step() {
    return 41;
  }
}
