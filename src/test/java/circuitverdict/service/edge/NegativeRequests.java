package circuitverdict.service.edge;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/**
 * A sample of the derived cases, through HTTP. For an operation: extend, annotate with
 * {@code @QuarkusTest}, and name path and schema.
 */
public abstract class NegativeRequests {

  /** The operation's address. */
  protected abstract String path();

  /** The name of its body's schema in the contract. */
  protected abstract String schema();

  /** Every how manieth case is sent; prime, so that all kinds of case are among them. */
  protected int step() {
    return 23;
  }

  /** Whether such a fault refuses the whole request, and not a part of it alone. */
  protected boolean refusesTheWhole(NegativeCase negative) {
    return true;
  }

  @Test
  void refusesWhatTheContractRefuses() {
    List<NegativeCase> cases = NegativeCases.of(schema());
    List<Executable> checks = new ArrayList<>();
    for (int i = 0; i < cases.size(); i += step()) {
      NegativeCase negative = cases.get(i);
      if (!refusesTheWhole(negative)) {
        continue;
      }
      checks.add(() -> refuses(negative));
    }
    assertAll(checks);
  }

  private void refuses(NegativeCase negative) {
    Response answer = given().contentType("application/json").body(negative.body()).post(path());
    assertEquals(422, answer.statusCode(), negative::name);
    assertEquals("application/problem+json", answer.contentType(), negative::name);
    List<Map<String, Object>> errors = answer.jsonPath().getList("errors");
    assertTrue(
        errors.stream()
            .anyMatch(
                error ->
                    negative.code().equals(error.get("code"))
                        && negative.pointer().equals(error.get("pointer"))),
        () -> negative.name() + ": " + errors);
  }
}
