package circuitverdict.service.wire;

import circuitverdict.check.Reason;
import circuitverdict.check.Verdict;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Note;
import circuitverdict.quantity.Shown;
import circuitverdict.select.LoopQuestion;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Greatest loop impedances as the contract writes them. */
public final class LoopLimitJson {
  private static final ObjectMapper ECHO = new ObjectMapper();

  private final Edition edition;
  private final String version;
  private final boolean full;

  /** Writes limits under an edition. */
  public LoopLimitJson(Edition edition, String version, boolean full) {
    this.edition = edition;
    this.version = version;
    this.full = full;
  }

  /**
   * The bytes of the answer.
   *
   * @param items the items asked for: device, disconnectionTimeS
   * @param voltageV nominal Uo, V; null for the edition's
   */
  public byte[] bytes(JsonNode items, Double voltageV) {
    List<LoopQuestion> answers = new ArrayList<>();
    List<DescribedDevice> marked = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      JsonNode item = items.get(i);
      String place = "/items/" + i + "/device";
      marked.add(DescribedDevice.of(item.path("device"), place, edition));
      answers.add(
          LoopQuestion.ask(
              DeviceMapping.device(marked.get(i).device(), place),
              item.path("disconnectionTimeS").doubleValue(),
              voltageV,
              edition,
              full));
    }
    return Json.object(
        json -> {
          AnswerJson answer = new AnswerJson(json, edition, full, null);
          long open = answers.stream().filter(each -> each.verdict() != Verdict.COMPLIES).count();
          answer.head(
              null,
              open == 0 ? Verdict.COMPLIES : Verdict.NOT_DETERMINED,
              open == 0 ? null : Reason.NO_LIMIT,
              open == 0
                  ? "A limit is given for every device asked."
                  : "No limit is known for " + open + " of the devices asked.");
          json.writeArrayFieldStart("items");
          for (int i = 0; i < answers.size(); i++) {
            item(json, items.get(i), "/items/" + i + "/device", marked.get(i), answers.get(i));
          }
          json.writeEndArray();
          answer.foot(List.of(), version);
        });
  }

  private void item(
      JsonGenerator json, JsonNode asked, String place, DescribedDevice marked, LoopQuestion answer)
      throws IOException {
    json.writeStartObject();
    json.writeFieldName("device");
    json.writeRawValue(ECHO.writeValueAsString(asked.path("device")));
    Json.number(json, "disconnectionTimeS", asked.path("disconnectionTimeS").doubleValue());
    json.writeStringField("verdict", answer.verdict().word());
    if (answer.reason() != null) {
      json.writeStringField("reason", answer.reason().word());
    }
    known(json, "operatingCurrentA", answer.operating());
    limit(json, "loopImpedanceOhm", "shownLoopImpedanceOhm", answer.limit());
    if (answer.printed() != null) {
      Json.number(json, "printedLoopImpedanceOhm", answer.printed().number());
    }
    limit(json, "measuredLoopImpedanceOhm", "shownMeasuredLoopImpedanceOhm", answer.reading());
    known(json, "residualLoopImpedanceOhm", answer.residual());
    Json.citations(json, "clauses", answer.clauses());
    if (full) {
      StepJson.write(json, answer.dossier().working().steps());
    }
    Json.notes(json, "missing", answer.dossier().missing(), full);
    List<Note> remarks = new ArrayList<>(answer.dossier().remarks());
    remarks.addAll(marked.notes());
    remarks.addAll(UnusedMembers.ofItem(asked.path("device"), place));
    Json.notes(json, "remarks", remarks, full);
    json.writeEndObject();
  }

  private void limit(JsonGenerator json, String name, String shown, Figure figure)
      throws IOException {
    known(json, name, figure);
    if (full && figure.known()) {
      Json.number(json, shown, Double.parseDouble(Shown.down(figure.value(), figure.unit())));
    }
  }

  private static void known(JsonGenerator json, String name, Figure figure) throws IOException {
    if (figure.known()) {
      Json.number(json, name, figure.value());
    }
  }
}
