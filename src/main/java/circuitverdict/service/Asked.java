package circuitverdict.service;

import circuitverdict.circuit.Circuit;
import circuitverdict.explain.Note;
import circuitverdict.service.edge.Preference;
import circuitverdict.service.wire.CircuitMapping;
import circuitverdict.service.wire.DescribedDevices;
import circuitverdict.service.wire.Sourced;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.databind.JsonNode;
import jakarta.ws.rs.core.HttpHeaders;
import java.util.List;
import java.util.function.Function;

/**
 * What an operation on one circuit was asked: its supply as found, its devices with their marks.
 *
 * @param preference how much the caller wants
 * @param edition under which it is judged
 * @param request the request with what follows from its source
 * @param notes what is to be told of members and marks
 * @param circuit the circuit
 */
record Asked(
    Preference preference, Edition edition, Sourced request, List<Note> notes, Circuit circuit) {

  /** A valid body without contradictions; {@code unused} tells what of it is not read. */
  static Asked of(
      JsonNode body, HttpHeaders headers, Edition edition, Function<JsonNode, List<Note>> unused) {
    Preference preference = Preference.of(headers);
    Sourced request = Sourced.of(body, edition, !preference.isMinimal());
    DescribedDevices described =
        DescribedDevices.of(request.body(), unused.apply(request.body()), edition);
    Circuit circuit = CircuitMapping.circuit(described.body());
    return new Asked(preference, edition, request, described.notes(), circuit);
  }

  boolean full() {
    return !preference.isMinimal();
  }
}
