package circuitverdict.service.edge;

import io.quarkus.test.junit.QuarkusTest;

@QuarkusTest
class EdgeNegativeTest extends NegativeRequests {

  @Override
  protected String path() {
    return "/v1/test-edge/circuits";
  }

  @Override
  protected String schema() {
    return "Circuit";
  }
}
