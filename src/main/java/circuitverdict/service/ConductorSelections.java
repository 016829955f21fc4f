package circuitverdict.service;

import circuitverdict.check.CircuitCheck;
import circuitverdict.circuit.Circuit;
import circuitverdict.select.ConductorSelection;
import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.edge.Preference;
import circuitverdict.service.edge.Representation;
import circuitverdict.service.edge.SelectionSized;
import circuitverdict.service.wire.CircuitMapping;
import circuitverdict.service.wire.ConductorSelectionJson;
import circuitverdict.service.wire.Contradictions;
import circuitverdict.service.wire.DescribedDevices;
import circuitverdict.service.wire.Sourced;
import circuitverdict.service.wire.UnusedMembers;
import circuitverdict.standard.Edition;
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
  public Response select(byte[] body, @Context HttpHeaders headers) {
    JsonNode stated = bodies.read(body, "Circuit", Contradictions::of);
    Preference preference = Preference.of(headers);
    boolean full = !preference.isMinimal();
    Edition edition = engine.edition(stated);
    Sourced sourced = Sourced.of(stated, edition, full);
    JsonNode request = sourced.body();
    DescribedDevices described =
        DescribedDevices.of(request, UnusedMembers.ofConductors(request), edition);
    Circuit circuit = CircuitMapping.circuit(described.body());
    ConductorSelection.Selection selection =
        ConductorSelection.of(
            circuit, edition, CircuitCheck.all(), ConductorSelectionJson.weights(request), full);
    byte[] bytes =
        new ConductorSelectionJson(edition, engine.version(), full)
            .bytes(sourced, circuit, selection, described.notes());
    return Representation.answer(preference, bytes);
  }
}
