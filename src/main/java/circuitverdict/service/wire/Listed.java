package circuitverdict.service.wire;

import circuitverdict.explain.Note;
import circuitverdict.select.DeviceSelection.Candidate;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;

/** The list that the candidates of a selection come from, and how each stands in the answer. */
interface Listed {
  /** What the list is called in a sentence. */
  String name();

  /** Where in the request a candidate stands, if it does, and the device itself. */
  void write(JsonGenerator json, Candidate candidate) throws IOException;

  /** What is to be said of a candidate beside its verdict. */
  List<Note> remarks(Candidate candidate);
}
