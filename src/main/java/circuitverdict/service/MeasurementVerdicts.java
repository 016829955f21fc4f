package circuitverdict.service;

import circuitverdict.check.ReadingCheck;
import circuitverdict.check.Result;
import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.edge.Representation;
import circuitverdict.service.wire.CircuitMapping;
import circuitverdict.service.wire.Contradictions;
import circuitverdict.service.wire.ReadingsJson;
import circuitverdict.service.wire.UnusedInReadings;
import com.fasterxml.jackson.databind.JsonNode;
import io.smallrye.common.annotation.NonBlocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;

/** Do the tester's readings bear the design out, and are they plausible? */
@Path("/v1/measurement-verdicts")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class MeasurementVerdicts {
  @Inject Engine engine;
  @Inject ContractReader bodies;

  /** Every reading of a circuit. */
  @POST
  @NonBlocking
  public Response judge(byte[] bytes, @Context HttpHeaders headers) {
    JsonNode body = bodies.read(bytes, "Circuit", Contradictions::of);
    Asked asked = Asked.of(body, headers, engine.edition(body), UnusedInReadings::of);
    Result result =
        ReadingCheck.of(
            asked.circuit(), CircuitMapping.readings(body), asked.edition(), asked.full());
    return Representation.answer(
        asked.preference(),
        new ReadingsJson(asked.edition(), engine.version(), asked.full())
            .bytes(asked.request(), asked.circuit().stage(), result, asked.notes()));
  }
}
