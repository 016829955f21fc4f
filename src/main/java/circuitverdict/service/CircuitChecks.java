package circuitverdict.service;

import circuitverdict.check.BreakingCapacityCheck;
import circuitverdict.check.Check;
import circuitverdict.check.CircuitCheck;
import circuitverdict.check.LetThroughEnergy;
import circuitverdict.check.ProtectiveConductorCheck;
import circuitverdict.check.Selectivity;
import circuitverdict.explain.Note;
import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.edge.Preference;
import circuitverdict.service.edge.Representation;
import circuitverdict.service.wire.Contradictions;
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
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Operations that run checks on one circuit: all of them, or those of one question. */
@Path("/v1")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class CircuitChecks {
  private static final List<Check> BREAKING = List.of(new BreakingCapacityCheck());
  private static final List<Check> LET_THROUGH =
      List.of(new LetThroughEnergy(), new ProtectiveConductorCheck());
  private static final List<Check> SELECTIVITY = List.of(new Selectivity(true));
  private static final Set<String> BREAKING_READS =
      Set.of("supply", "device", "upstreamDevice", "assembly", "backUp", "liveConductors");
  private static final Set<String> LET_THROUGH_READS =
      Set.of(
          "supply",
          "device",
          "upstreamDevice",
          "residualDevice",
          "backUp",
          "liveConductors",
          "cable",
          "furtherCables",
          "load",
          "requirements");

  private static final Set<String> SELECTIVITY_READS =
      Set.of(
          "supply",
          "device",
          "upstreamDevice",
          "residualDevice",
          "backUp",
          "liveConductors",
          "requirements");

  @Inject Engine engine;
  @Inject ContractReader bodies;

  /** Does this whole circuit comply, why, by how much, and what would mend it? */
  @POST
  @Path("/circuit-checks")
  @NonBlocking
  public Response check(byte[] body, @Context HttpHeaders headers) {
    return answer(body, CircuitCheck.all(), UnusedMembers::ofCheck, headers);
  }

  /** Can this device break the greatest fault current where it sits? */
  @POST
  @Path("/breaking-capacity-verdicts")
  @NonBlocking
  public Response breakingCapacity(byte[] body, @Context HttpHeaders headers) {
    return answer(
        body, BREAKING, circuit -> UnusedMembers.ofReading(circuit, BREAKING_READS), headers);
  }

  /** Do these conductors stand what this device lets through? */
  @POST
  @Path("/let-through-verdicts")
  @NonBlocking
  public Response letThrough(byte[] body, @Context HttpHeaders headers) {
    return answer(
        body, LET_THROUGH, circuit -> UnusedMembers.ofReading(circuit, LET_THROUGH_READS), headers);
  }

  /** Will only the downstream device open, and up to what current? */
  @POST
  @Path("/selectivity-verdicts")
  @NonBlocking
  public Response selectivity(byte[] body, @Context HttpHeaders headers) {
    return answer(
        body,
        SELECTIVITY,
        circuit -> UnusedMembers.ofSelectivity(circuit, SELECTIVITY_READS),
        headers);
  }

  private Response answer(
      byte[] body, List<Check> checks, Function<JsonNode, List<Note>> unused, HttpHeaders headers) {
    JsonNode circuit = bodies.read(body, "Circuit", Contradictions::of);
    Preference preference = Preference.of(headers);
    boolean full = !preference.isMinimal();
    Edition edition = engine.edition(circuit);
    Sourced request = Sourced.of(circuit, edition, full);
    byte[] bytes =
        new CircuitAnswer(edition, engine.version(), checks)
            .bytes(request, unused.apply(request.body()), full);
    return Representation.answer(preference, bytes);
  }
}
