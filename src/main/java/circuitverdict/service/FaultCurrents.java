package circuitverdict.service;

import circuitverdict.check.CircuitCheck;
import circuitverdict.circuit.Circuit;
import circuitverdict.explain.Note;
import circuitverdict.fault.FaultNetwork;
import circuitverdict.fault.FaultNetwork.Point;
import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.edge.Preference;
import circuitverdict.service.edge.Representation;
import circuitverdict.service.edge.SelectionSized;
import circuitverdict.service.wire.CircuitMapping;
import circuitverdict.service.wire.NetworkContradictions;
import circuitverdict.service.wire.NetworkJson;
import circuitverdict.service.wire.UnusedInNetwork;
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
import java.util.List;

/** From source and feeders: greatest and least fault currents and loops at each point. */
@Path("/v1/fault-currents")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class FaultCurrents {
  @Inject Engine engine;
  @Inject ContractReader bodies;

  /** Every point of a tree of circuits. */
  @POST
  @SelectionSized
  @NonBlocking
  public Response points(byte[] body, @Context HttpHeaders headers) {
    JsonNode request = bodies.read(body, "Circuit", NetworkContradictions::of);
    Preference preference = Preference.of(headers);
    boolean full = !preference.isMinimal();
    Edition edition = engine.edition(request);
    Circuit circuit = CircuitMapping.circuit(request);
    List<Point> points =
        FaultNetwork.points(
            circuit,
            CircuitMapping.feeders(request),
            edition,
            CircuitCheck.allowance(circuit.stage()),
            full);
    List<Note> unused = UnusedInNetwork.of(request);
    byte[] bytes =
        new NetworkJson(edition, engine.version(), full)
            .bytes(request, circuit.stage(), points, unused);
    return Representation.answer(preference, bytes);
  }
}
