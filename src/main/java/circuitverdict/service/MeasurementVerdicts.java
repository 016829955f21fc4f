package circuitverdict.service;

import circuitverdict.check.ReadingCheck;
import circuitverdict.check.Result;
import circuitverdict.circuit.Circuit;
import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.edge.Preference;
import circuitverdict.service.edge.Representation;
import circuitverdict.service.wire.CircuitMapping;
import circuitverdict.service.wire.Contradictions;
import circuitverdict.service.wire.DescribedDevices;
import circuitverdict.service.wire.ReadingsJson;
import circuitverdict.service.wire.Sourced;
import circuitverdict.service.wire.UnusedInReadings;
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
  public Response judge(byte[] body, @Context HttpHeaders headers) {
    JsonNode stated = bodies.read(body, "Circuit", Contradictions::of);
    Preference preference = Preference.of(headers);
    boolean full = !preference.isMinimal();
    Edition edition = engine.edition(stated);
    Sourced sourced = Sourced.of(stated, edition, full);
    JsonNode request = sourced.body();
    DescribedDevices described =
        DescribedDevices.of(request, UnusedInReadings.of(request), edition);
    Circuit circuit = CircuitMapping.circuit(described.body());
    Result result = ReadingCheck.of(circuit, CircuitMapping.readings(request), edition, full);
    byte[] bytes =
        new ReadingsJson(edition, engine.version(), full)
            .bytes(sourced, circuit.stage(), result, described.notes());
    return Representation.answer(preference, bytes);
  }
}
