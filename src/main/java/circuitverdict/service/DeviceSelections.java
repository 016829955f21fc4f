package circuitverdict.service;

import circuitverdict.check.CircuitCheck;
import circuitverdict.select.DeviceSelection;
import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.edge.Representation;
import circuitverdict.service.edge.SelectionSized;
import circuitverdict.service.wire.Contradictions;
import circuitverdict.service.wire.Products;
import circuitverdict.service.wire.SelectionJson;
import circuitverdict.service.wire.UnusedMembers;
import circuitverdict.standard.Edition;
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
import java.util.ArrayList;
import java.util.List;

/** Which devices may protect this circuit, best first, and why not the others? */
@Path("/v1/device-selections")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class DeviceSelections {
  @Inject Engine engine;
  @Inject ContractReader bodies;

  /** The caller's products, or else every device of the standard series, judged and ranked. */
  @POST
  @SelectionSized
  @NonBlocking
  public Response select(byte[] bytes, @Context HttpHeaders headers) {
    JsonNode body = bodies.read(bytes, "Circuit", Contradictions::of);
    Asked asked = Asked.of(body, headers, engine.edition(body), UnusedMembers::ofSelection);
    Edition edition = asked.edition();
    DeviceSelection selection =
        new DeviceSelection(asked.circuit(), edition, CircuitCheck.all(), order(body));
    boolean own = body.has("products");
    Products products = own ? Products.of(body, edition) : null;
    SelectionJson json =
        own
            ? SelectionJson.of(products, edition, engine.version(), asked.full())
            : SelectionJson.ofSeries(edition, engine.version(), asked.full());
    DeviceSelection.Selection found =
        own ? selection.of(products.devices(), asked.full()) : selection.ofSeries(asked.full());
    return Representation.answer(
        asked.preference(), json.bytes(asked.request(), asked.circuit(), found, asked.notes()));
  }

  private static List<DeviceSelection.Order> order(JsonNode request) {
    List<DeviceSelection.Order> order = new ArrayList<>();
    for (JsonNode word : request.at("/preferences/order")) {
      order.add(SelectionJson.order(word.textValue()));
    }
    return order;
  }
}
