package circuitverdict.service;

import circuitverdict.check.CircuitCheck;
import circuitverdict.circuit.Circuit;
import circuitverdict.select.DeviceSelection;
import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.edge.Preference;
import circuitverdict.service.edge.Representation;
import circuitverdict.service.edge.SelectionSized;
import circuitverdict.service.wire.CircuitMapping;
import circuitverdict.service.wire.Contradictions;
import circuitverdict.service.wire.DescribedDevices;
import circuitverdict.service.wire.Products;
import circuitverdict.service.wire.SelectionJson;
import circuitverdict.service.wire.Sourced;
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
  public Response select(byte[] body, @Context HttpHeaders headers) {
    JsonNode stated = bodies.read(body, "Circuit", Contradictions::of);
    Preference preference = Preference.of(headers);
    boolean full = !preference.isMinimal();
    Edition edition = engine.edition(stated);
    Sourced sourced = Sourced.of(stated, edition, full);
    JsonNode request = sourced.body();
    DescribedDevices described =
        DescribedDevices.of(request, UnusedMembers.ofSelection(request), edition);
    Circuit circuit = CircuitMapping.circuit(described.body());
    DeviceSelection selection =
        new DeviceSelection(circuit, edition, CircuitCheck.all(), order(request));
    if (!request.has("products")) {
      byte[] bytes =
          SelectionJson.ofSeries(edition, engine.version(), full)
              .bytes(sourced, circuit, selection.ofSeries(full), described.notes());
      return Representation.answer(preference, bytes);
    }
    Products products = Products.of(request, edition);
    byte[] bytes =
        SelectionJson.of(products, edition, engine.version(), full)
            .bytes(sourced, circuit, selection.of(products.devices(), full), described.notes());
    return Representation.answer(preference, bytes);
  }

  private static List<DeviceSelection.Order> order(JsonNode request) {
    List<DeviceSelection.Order> order = new ArrayList<>();
    for (JsonNode word : request.at("/preferences/order")) {
      order.add(SelectionJson.order(word.textValue()));
    }
    return order;
  }
}
