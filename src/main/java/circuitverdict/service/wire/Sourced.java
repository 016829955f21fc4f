package circuitverdict.service.wire;

import circuitverdict.check.CircuitCheck;
import circuitverdict.circuit.Circuit;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Working;
import circuitverdict.fault.EarthElectrode;
import circuitverdict.fault.FaultNetwork;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/**
 * A request whose supply may name the transformer that feeds it: then the figures that follow from
 * it stand in its place, and the answer tells how they were found.
 *
 * @param body the request as it is judged
 * @param source the supply as found; null where the request states its figures
 * @param unused members beside the transformer that nothing rests on
 */
public record Sourced(JsonNode body, PointSupply source, List<Note> unused) {
  private static final String SUPPLY = "supply";

  /** What a source that is computed does not rest on. */
  private static final List<String> OF_READINGS = List.of("basis", "instrumentUncertaintyPercent");

  /** A request that is judged as it stands. */
  public static Sourced plain(JsonNode body) {
    return new Sourced(body, null, List.of());
  }

  /** A valid request without contradictions. */
  public static Sourced of(JsonNode body, Edition edition, boolean full) {
    JsonNode stated = body.path(SUPPLY);
    if (!stated.has("transformer")) {
      return plain(body);
    }
    Circuit circuit = CircuitMapping.circuit(body);
    List<FaultNetwork.Point> points =
        FaultNetwork.points(
            circuit, List.of(), edition, CircuitCheck.allowance(circuit.stage()), full);
    PointSupply source =
        PointSupply.of(stated, points)
            .get(0)
            .withDrop(stated.path("voltageDropPercent").asDouble(Double.NaN))
            .withElectrode(electrode(circuit, edition));
    ObjectNode judged = ((ObjectNode) body).objectNode();
    judged.setAll((ObjectNode) body);
    judged.set(SUPPLY, source.supply());
    List<Note> unused = new ArrayList<>();
    for (String name : OF_READINGS) {
      if (stated.has(name) && !stated.has("earthElectrodeResistanceOhm")) {
        Pointer at = new Pointer(At.SUPPLY, name);
        unused.add(new Note(NoteCode.MEMBER_NOT_USED, at, List.of()));
      }
    }
    return new Sourced(judged, source, unused);
  }

  /** The greatest that the stated electrode may be, Ω; it is no part of the transformer. */
  public static double electrode(Circuit circuit, Edition edition) {
    if (circuit.supply().earthElectrodeResistanceOhm() == null) {
      return Double.NaN;
    }
    Dossier d = new Dossier(edition, CircuitCheck.allowance(circuit.stage()), Working.silent());
    Figure electrode = EarthElectrode.greatest(circuit.supply(), d);
    return d.standsAtBest() ? Double.NaN : electrode.value();
  }
}
