package circuitverdict.service;

import circuitverdict.service.edge.NegativeRequests;
import io.quarkus.test.junit.QuarkusTest;

/** What {@code /v1/measurement-verdicts} refuses by the contract's schema of its body: a sample. */
@QuarkusTest
class MeasurementVerdictsNegativeTest extends NegativeRequests {

  @Override
  protected String path() {
    return "/v1/measurement-verdicts";
  }

  @Override
  protected String schema() {
    return "Circuit";
  }

  @Override
  protected int step() {
    return 53;
  }
}
