package circuitverdict.service;

import circuitverdict.check.CircuitCheck;
import circuitverdict.select.ConductorSelection;
import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.edge.Representation;
import circuitverdict.service.edge.SelectionSized;
import circuitverdict.service.wire.ConductorSelectionJson;
import circuitverdict.service.wire.Contradictions;
import circuitverdict.service.wire.UnusedMembers;
import com.fasterxml.jackson.databind.JsonNode;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;

/** Which smallest conductors serve this load and device as installed? */
@Path("/v1/conductor-selections")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class ConductorSelections {
  @Inject Engine engine;
  @Inject ContractReader bodies;

  /** Every size judged; on a worker thread, since a device may be selected with each. */
  @POST
  @SelectionSized
  @Blocking
  public Response select(byte[] bytes, @Context HttpHeaders headers) {
    JsonNode body = bodies.read(bytes, "Circuit", Contradictions::of);
    Asked asked = Asked.of(body, headers, engine.edition(body), UnusedMembers::ofConductors);
    ConductorSelection.Selection selection =
        ConductorSelection.of(
            asked.circuit(),
            asked.edition(),
            CircuitCheck.all(),
            ConductorSelectionJson.weights(body),
            asked.full());
    return Representation.answer(
        asked.preference(),
        new ConductorSelectionJson(asked.edition(), engine.version(), asked.full())
            .bytes(asked.request(), asked.circuit(), selection, asked.notes()));
  }
}
