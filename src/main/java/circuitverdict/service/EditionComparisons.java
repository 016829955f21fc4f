package circuitverdict.service;

import circuitverdict.check.CircuitCheck;
import circuitverdict.circuit.Circuit;
import circuitverdict.explain.Note;
import circuitverdict.select.EditionComparison;
import circuitverdict.service.BoardAnswer.Found;
import circuitverdict.service.edge.BoardBody;
import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.edge.Fault;
import circuitverdict.service.edge.Preference;
import circuitverdict.service.edge.Representation;
import circuitverdict.service.edge.SelectionSized;
import circuitverdict.service.wire.BoardContradictions;
import circuitverdict.service.wire.BoardItem;
import circuitverdict.service.wire.CircuitMapping;
import circuitverdict.service.wire.ComparisonJson;
import circuitverdict.service.wire.ComparisonJson.Boards;
import circuitverdict.service.wire.ComparisonJson.Placed;
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
import java.util.ArrayList;
import java.util.List;

/** The same circuit or board under two editions: what moves, and why? */
@Path("/v1/edition-comparisons")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class EditionComparisons {
  private static final String EDITIONS = "editions";
  private static final String CIRCUITS = "circuits";
  private static final int BOTH = 2;

  @Inject Engine engine;
  @Inject ContractReader bodies;

  /** One circuit, or a board, judged under both; on a worker thread, since it may be a board. */
  @POST
  @SelectionSized
  @Blocking
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
    if (!stated.path(CIRCUITS).isEmpty()) {
      return boards(stated, first, second, json);
    }
    Sourced request = Sourced.of(stated, second, full);
    List<Note> unused = UnusedMembers.ofComparison(request.body());
    DescribedDevices described = DescribedDevices.of(request.body(), unused, second);
    Circuit circuit = CircuitMapping.circuit(described.body());
    EditionComparison comparison = EditionComparison.of(circuit, first, second, CircuitCheck.all());
    return json.bytes(request, circuit.stage(), first, second, comparison, described.notes());
  }

  private byte[] boards(JsonNode stated, Edition first, Edition second, ComparisonJson json) {
    BoardBody body = BoardBody.valid(stated);
    Found from = new BoardAnswer(body, first, engine.version(), true).found();
    Found to = new BoardAnswer(body, second, engine.version(), true).found();
    List<Placed> moved = new ArrayList<>();
    moved.add(new Placed(null, EditionComparison.moved(from.findings(), to.findings())));
    for (int i = 0; i < from.items().size(); i++) {
      BoardItem one = from.items().get(i);
      BoardItem other = to.items().get(i);
      moved.add(
          new Placed(
              one.node().place(),
              EditionComparison.moved(one.result().findings(), other.result().findings())));
    }
    Boards boards =
        new Boards(
            BoardItem.verdict(from.findings(), from.items()),
            BoardItem.verdict(to.findings(), to.items()),
            moved);
    List<Note> unused = UnusedMembers.ofBoard(stated);
    Circuit.Stage stage = CircuitMapping.circuit(stated).stage();
    return json.boards(Sourced.plain(stated), stage, first, second, boards, unused);
  }

  /** The two editions name what decides, so that no third need be named. */
  private static List<Fault> contradictions(JsonNode request) {
    boolean board = !request.path(CIRCUITS).isEmpty();
    List<Fault> faults =
        new ArrayList<>(board ? BoardContradictions.of(request) : Contradictions.of(request));
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
