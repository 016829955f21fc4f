package circuitverdict.service.wire;

import circuitverdict.device.marking.DeviceMember;
import circuitverdict.device.marking.Mark;
import circuitverdict.device.marking.MarkingReader;
import circuitverdict.device.marking.Reading;
import circuitverdict.explain.NoteCode;
import circuitverdict.service.wire.DeviceMerge.Source;
import circuitverdict.standard.Edition;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/** The marks on the face of a device as a source of its members. */
final class FaceMarks {
  private FaceMarks() {}

  /** Adds to a device what its marks tell. */
  static void into(DeviceMerge merge, JsonNode stated, String place, Edition edition) {
    List<String> texts = new ArrayList<>();
    stated.path("markings").forEach(text -> texts.add(text.textValue()));
    String standard = stated.path("standard").textValue();
    Reading reading = new MarkingReader(edition).read(texts, List.of(), standard, place);
    reading.device().forEach((member, value) -> merge.take(Source.MARKS, member, value));
    if (narrowed(stated, merge.device(), edition)) {
      merge.strike(Source.MARKS, DeviceMember.LOWER_MULTIPLE);
      merge.strike(Source.MARKS, DeviceMember.UPPER_MULTIPLE);
    }
    reading.disputed().forEach((member, values) -> merge.doubt(Source.MARKS, member, values));
    if (unclear(reading, stated, merge.device())) {
      merge.leaveOpen();
    }
    keepResidual(reading, merge.device());
    for (Mark mark : reading.marks()) {
      if (mark.unread()) {
        merge.note(NoteCode.MARK_NOT_READ, mark.at());
      }
    }
    merge.notes().addAll(reading.contradictions());
    merge.notes().addAll(reading.remarks());
  }

  /** What a face tells as the contract's Device. */
  static ObjectNode device(Reading reading) {
    DeviceMerge merge = new DeviceMerge(JsonNodeFactory.instance.objectNode(), "");
    reading.device().forEach(merge::put);
    keepResidual(reading, merge.device());
    return merge.device();
  }

  /**
   * Whether something on the face that is not understood may say what a default would fill in: the
   * category of a fuse, a voltage that is no alternating one, anything of a device known by it
   * alone.
   */
  private static boolean unclear(Reading reading, JsonNode stated, JsonNode merged) {
    boolean ambiguous = false;
    boolean open = false;
    boolean direct = false;
    for (Mark mark : reading.marks()) {
      ambiguous |= mark.ambiguous();
      open |= mark.ambiguous() || mark.unread();
      direct |= mark.kind().equals("direct-voltage");
    }
    String standard = merged.path("standard").asText("");
    return ambiguous && !stated.has("standard")
        || open && standard.equals("BS 88-2") && !merged.has("utilizationCategory")
        || direct && !merged.has("ratedVoltageV");
  }

  /** A mark cannot narrow the band that a stated letter has by its standard. */
  private static boolean narrowed(JsonNode stated, JsonNode merged, Edition edition) {
    String letter = merged.path("characteristic").textValue();
    if (letter == null || stated.has("magneticMultiples") || !merged.has("magneticMultiples")) {
      return false;
    }
    Value upper = edition.table(TableName.MAGNETIC_BANDS).at("upper", letter);
    JsonNode marked = merged.path("magneticMultiples").path("upper");
    return upper != null && marked.isNumber() && marked.doubleValue() < upper.number();
  }

  /** A residual function of which nothing is known is not none: without one a circuit may fail. */
  private static void keepResidual(Reading reading, ObjectNode device) {
    boolean told = reading.disputed().containsKey(DeviceMember.RESIDUAL_CURRENT);
    if (told && !device.has("residual")) {
      device.putObject("residual");
    }
  }
}
