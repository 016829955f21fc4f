package circuitverdict.bench;

import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.edge.Preference;
import circuitverdict.service.edge.Representation;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
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
import java.io.IOException;

/**
 * Endpoints that compute nothing: they read the body as the real one does, and write an answer that
 * was made beforehand. Only the load comparison has them.
 */
@Path("/benchmark")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class NoOpResource {
  private static final JsonMapper MAPPER = new JsonMapper();
  private static volatile JsonNode answer;

  @Inject ContractReader bodies;

  /** What the endpoints answer from now on. */
  static void answerWith(byte[] json) throws IOException {
    answer = MAPPER.readTree(json);
  }

  /** With the entity tag and the headers of the real answer. */
  @POST
  @Path("/no-op")
  @NonBlocking
  public Response same(byte[] body, @Context HttpHeaders headers) throws IOException {
    bodies.read(body, "Circuit");
    return Representation.answer(Preference.of(headers), MAPPER.writeValueAsBytes(answer));
  }

  /** With nothing that the real answer could not do without. */
  @POST
  @Path("/bare-no-op")
  @NonBlocking
  public Response bare(byte[] body) throws IOException {
    bodies.read(body, "Circuit");
    return Response.ok(MAPPER.writeValueAsBytes(answer)).build();
  }
}
