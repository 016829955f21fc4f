package circuitverdict.service;

import circuitverdict.check.CircuitCheck;
import circuitverdict.circuit.Circuit;
import circuitverdict.explain.Note;
import circuitverdict.select.EditionComparison;
import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.edge.Fault;
import circuitverdict.service.edge.Preference;
import circuitverdict.service.edge.Representation;
import circuitverdict.service.wire.CircuitMapping;
import circuitverdict.service.wire.ComparisonJson;
import circuitverdict.service.wire.Contradictions;
import circuitverdict.service.wire.DescribedDevices;
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

/** The same circuit under two editions: what moves, and why? */
@Path("/v1/edition-comparisons")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class EditionComparisons {
  private static final String EDITIONS = "editions";
  private static final int BOTH = 2;

  @Inject Engine engine;
  @Inject ContractReader bodies;

  /** One circuit, judged under both. */
  @POST
  @NonBlocking
  public Response compare(byte[] body, @Context HttpHeaders headers) {
    JsonNode request = bodies.read(body, "Circuit", EditionComparisons::contradictions);
    Preference preference = Preference.of(headers);
    return Representation.answer(preference, bytes(request, !preference.isMinimal()));
  }

  private byte[] bytes(JsonNode stated, boolean full) {
    ComparisonJson json = new ComparisonJson(engine.version(), full);
    JsonNode named = stated.path(EDITIONS);
    if (named.size() < BOTH) {
      Circuit circuit = CircuitMapping.circuit(stated);
      List<Note> unused = UnusedMembers.ofComparison(stated);
      return json.incomplete(
          Sourced.plain(stated), circuit.stage(), engine.edition(stated), unused);
    }
    Edition first = engine.editions().find(named.get(0).textValue()).orElseThrow();
    Edition second = engine.editions().find(named.get(1).textValue()).orElseThrow();
    Sourced request = Sourced.of(stated, second, full);
    List<Note> unused = UnusedMembers.ofComparison(request.body());
    DescribedDevices described = DescribedDevices.of(request.body(), unused, second);
    Circuit circuit = CircuitMapping.circuit(described.body());
    EditionComparison comparison = EditionComparison.of(circuit, first, second, CircuitCheck.all());
    return json.bytes(request, circuit.stage(), first, second, comparison, described.notes());
  }

  /** The two editions name what decides, so that no third need be named. */
  private static List<Fault> contradictions(JsonNode request) {
    List<Fault> faults = new ArrayList<>(Contradictions.of(request));
    JsonNode named = request.path(EDITIONS);
    if (named.size() == BOTH) {
      faults.removeIf(fault -> fault.code().equals(Contradictions.EDITION_REQUIRED));
      if (named.get(0).equals(named.get(1))) {
        faults.add(
            Fault.inBody(
                Contradictions.CONTRADICTION,
                "An edition is not compared with itself.",
                "/editions/1"));
      }
    }
    return faults;
  }
}
