package circuitverdict.service;

import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.edge.Fault;
import circuitverdict.service.edge.Preference;
import circuitverdict.service.edge.QueryReader;
import circuitverdict.service.edge.Representation;
import circuitverdict.service.edge.SelectionSized;
import circuitverdict.service.wire.Contradictions;
import circuitverdict.service.wire.LoopLimitJson;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.smallrye.common.annotation.NonBlocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.ArrayList;
import java.util.List;

/** What is the greatest Zs for this device and disconnection time, hot and as read cold? */
@Path("/v1/loop-impedance-limits")
@Produces(MediaType.APPLICATION_JSON)
public class LoopImpedanceLimits {
  private static final String PATH = "/v1/loop-impedance-limits";

  @Inject Engine engine;
  @Inject ContractReader bodies;
  @Inject QueryReader queries;

  /** One device, by query. */
  @GET
  @NonBlocking
  public Response one(@Context UriInfo uri, @Context HttpHeaders headers) {
    ObjectNode query = queries.read(PATH, uri.getQueryParameters());
    ObjectNode device = JsonNodeFactory.instance.objectNode();
    for (String member : new String[] {"standard", "characteristic", "ratedCurrentA"}) {
      if (query.has(member)) {
        device.set(member, query.get(member));
      }
    }
    if (query.has("residualOperatingCurrentA")) {
      device.putObject("residual").set("operatingCurrentA", query.get("residualOperatingCurrentA"));
    }
    if (query.has("magneticMultipleUpper")) {
      device.putObject("magneticMultiples").set("upper", query.get("magneticMultipleUpper"));
    }
    ArrayNode items = JsonNodeFactory.instance.arrayNode();
    ObjectNode item = items.addObject();
    item.set("device", device);
    item.set("disconnectionTimeS", query.get("disconnectionTimeS"));
    Preference preference = Preference.of(headers);
    byte[] bytes = bytes(query, items, preference);
    return Representation.cacheable(headers, preference, bytes);
  }

  /** A list of devices; one that cannot be answered does not fail the rest. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @SelectionSized
  @NonBlocking
  public Response list(byte[] body, @Context HttpHeaders headers) {
    JsonNode request = bodies.read(body, "LoopImpedanceQuery", LoopImpedanceLimits::contradictions);
    Preference preference = Preference.of(headers);
    return Representation.answer(preference, bytes(request, request.path("items"), preference));
  }

  private static List<Fault> contradictions(JsonNode request) {
    List<Fault> faults = new ArrayList<>();
    for (int i = 0; i < request.path("items").size(); i++) {
      faults.addAll(Contradictions.ofDevice(request, "/items/" + i + "/device"));
    }
    return faults;
  }

  private byte[] bytes(JsonNode request, JsonNode items, Preference preference) {
    JsonNode voltage = request.path("lineToEarthVoltageV");
    return new LoopLimitJson(engine.edition(request), engine.version(), !preference.isMinimal())
        .bytes(items, voltage.isNumber() ? voltage.doubleValue() : null);
  }
}
