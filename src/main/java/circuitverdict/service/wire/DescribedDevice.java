package circuitverdict.service.wire;

import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashSet;
import java.util.List;

/**
 * A device whose marks and classified features supplement its members.
 *
 * @param device the device as it is judged
 * @param notes what is to be said of its marks, its features and its trade item number
 */
record DescribedDevice(JsonNode device, List<Note> notes) {

  /** The device of a request at a place; itself where it states nothing but members. */
  static DescribedDevice of(JsonNode stated, String place, Edition edition) {
    if (!isSupplemented(stated)) {
      return new DescribedDevice(stated, List.of());
    }
    DeviceMerge merge = new DeviceMerge(stated.deepCopy(), place);
    if (!stated.path("markings").isEmpty()) {
      FaceMarks.into(merge, stated, place, edition);
    }
    if (stated.has("features")) {
      ProductFeatures.into(merge, stated.path("features"), place, edition);
    }
    String number = stated.path("gtin").textValue();
    if (number != null && !TradeItemNumber.isRight(number)) {
      merge.note(NoteCode.GTIN_CHECK_DIGIT, new Pointer(place, "gtin"));
    }
    return new DescribedDevice(merge.merged(), List.copyOf(new LinkedHashSet<>(merge.notes())));
  }

  /** Whether anything beside its members tells of a device. */
  static boolean isSupplemented(JsonNode device) {
    return tellsOfMembers(device) || device.has("gtin");
  }

  /** Whether marks or features tell of its members. */
  static boolean tellsOfMembers(JsonNode device) {
    return !device.path("markings").isEmpty() || device.has("features");
  }
}
