package circuitverdict.service;

import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.edge.Preference;
import circuitverdict.service.edge.Representation;
import circuitverdict.service.wire.MarkingJson;
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

/** What do the marks on the face of a device mean, and what is missing or contradictory? */
@Path("/v1/marking-readings")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class MarkingReadings {
  @Inject Engine engine;
  @Inject ContractReader bodies;

  /** Strings and symbols of one face, in any order. */
  @POST
  @NonBlocking
  public Response read(byte[] body, @Context HttpHeaders headers) {
    JsonNode request = bodies.read(body, "MarkingQuery");
    Preference preference = Preference.of(headers);
    byte[] bytes =
        new MarkingJson(engine.edition(request), engine.version(), !preference.isMinimal())
            .bytes(request);
    return Representation.answer(preference, bytes);
  }
}
