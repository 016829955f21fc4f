package circuitverdict.service.edge;

import com.fasterxml.jackson.databind.JsonNode;
import io.smallrye.common.annotation.Blocking;
import io.smallrye.common.annotation.NonBlocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.ServiceUnavailableException;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.nio.charset.StandardCharsets;

/** A resource of the tests alone, of the kinds that the service has. */
@Path("/v1/test-edge")
@Produces(MediaType.APPLICATION_JSON)
public class EdgeTestResource {

  @Inject ContractReader bodies;
  @Inject QueryReader queries;

  @POST
  @Path("/circuits")
  @NonBlocking
  @Consumes(MediaType.APPLICATION_JSON)
  public Response circuit(byte[] body, @Context HttpHeaders headers) {
    JsonNode circuit = bodies.read(body, "Circuit");
    return Representation.answer(Preference.of(headers), bytes(circuit));
  }

  @POST
  @Path("/boards")
  @Blocking
  @SelectionSized
  @Consumes(MediaType.APPLICATION_JSON)
  public Response board(byte[] body, @Context HttpHeaders headers) {
    return circuit(body, headers);
  }

  @GET
  @Path("/constants")
  @NonBlocking
  public Response constants(@Context HttpHeaders headers) {
    return Representation.cacheable(headers, "{\"x\":1}".getBytes(StandardCharsets.UTF_8));
  }

  @GET
  @Path("/limits")
  @NonBlocking
  public Response limits(@Context UriInfo uri, @Context HttpHeaders headers) {
    JsonNode query = queries.read("/v1/loop-impedance-limits", uri.getQueryParameters());
    return Representation.cacheable(headers, Preference.of(headers), bytes(query));
  }

  @GET
  @Path("/failing")
  @NonBlocking
  public Response failing() {
    throw new IllegalStateException("secret of circuitverdict.service");
  }

  @GET
  @Path("/unavailable")
  @NonBlocking
  public Response unavailable() {
    throw new ServiceUnavailableException();
  }

  private static byte[] bytes(JsonNode json) {
    return json.toString().getBytes(StandardCharsets.UTF_8);
  }
}
