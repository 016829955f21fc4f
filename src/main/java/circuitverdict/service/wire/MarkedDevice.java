package circuitverdict.service.wire;

import circuitverdict.device.marking.DeviceMember;
import circuitverdict.device.marking.Mark;
import circuitverdict.device.marking.MarkingReader;
import circuitverdict.device.marking.Reading;
import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.standard.Edition;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A device whose marks supplement its members. Where a mark and a stated member differ, the one
 * that promises less counts; neither does where what is worse for one check is better for another.
 *
 * @param device the device as it is judged
 * @param notes what is to be said of its marks
 */
record MarkedDevice(JsonNode device, List<Note> notes) {
  private static final JsonNodeFactory NEW = JsonNodeFactory.instance;

  /** Members for which something stands in where they are not stated. */
  private static final Set<DeviceMember> DEFAULTED =
      EnumSet.of(
          DeviceMember.CATEGORY,
          DeviceMember.VOLTAGE,
          DeviceMember.VOLTAGE_TO_EARTH,
          DeviceMember.BREAKING_CAPACITY,
          DeviceMember.POLES,
          DeviceMember.PROTECTED_POLES,
          DeviceMember.REFERENCE_TEMPERATURE,
          DeviceMember.LONG_TIME);

  /** The device of a request at a place; itself where it states no marks. */
  static MarkedDevice of(JsonNode stated, String place, Edition edition) {
    JsonNode markings = stated.path("markings");
    if (markings.isEmpty()) {
      return new MarkedDevice(stated, List.of());
    }
    List<String> texts = new ArrayList<>();
    markings.forEach(text -> texts.add(text.textValue()));
    String standard = stated.path("standard").textValue();
    Reading reading = new MarkingReader(edition).read(texts, List.of(), standard, place);
    Merge merge = new Merge(stated.deepCopy(), place);
    reading.device().forEach(merge::take);
    if (narrowed(stated, merge.device, edition)) {
      merge.drop(DeviceMember.LOWER_MULTIPLE);
      merge.drop(DeviceMember.UPPER_MULTIPLE);
    }
    reading.disputed().forEach(merge::doubt);
    if (merge.unclear || unclear(reading, stated, merge.device)) {
      // What the face leaves open no default may fill in: such a device is not judged.
      merge.device.remove("standard");
    }
    keepResidual(reading, merge.device);
    for (Mark mark : reading.marks()) {
      if (mark.unread()) {
        merge.note(NoteCode.MARK_NOT_READ, mark.at());
      }
    }
    merge.notes.addAll(reading.contradictions());
    merge.notes.addAll(reading.remarks());
    List<Note> distinct = new ArrayList<>(new java.util.LinkedHashSet<>(merge.notes));
    return new MarkedDevice(merge.device, distinct);
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
    return upper != null
        && merged.path("magneticMultiples").path("upper").asDouble() < upper.number();
  }

  /** What a face tells as the contract's Device. */
  static ObjectNode device(Reading reading) {
    Merge merge = new Merge(NEW.objectNode(), "");
    reading.device().forEach((member, value) -> merge.set(member, json(value)));
    keepResidual(reading, merge.device);
    return merge.device;
  }

  /** A residual function of which nothing is known is not none: without one a circuit may fail. */
  private static void keepResidual(Reading reading, ObjectNode device) {
    boolean told = reading.disputed().containsKey(DeviceMember.RESIDUAL_CURRENT);
    if (told && !device.has("residual")) {
      device.putObject("residual");
    }
  }

  private static JsonNode json(Object value) {
    if (value instanceof Boolean bool) {
      return NEW.booleanNode(bool);
    }
    if (value instanceof Double number) {
      return number == Math.rint(number)
          ? NEW.numberNode(number.intValue())
          : NEW.numberNode(number);
    }
    return NEW.textNode((String) value);
  }

  private static final class Merge {
    private final ObjectNode device;
    private final String place;
    private final List<Note> notes = new ArrayList<>();
    private boolean unclear;

    Merge(ObjectNode device, String place) {
      this.device = device;
      this.place = place;
    }

    private static JsonPointer at(DeviceMember member) {
      return JsonPointer.compile("/" + member.path());
    }

    void note(NoteCode code, Pointer pointer) {
      notes.add(new Note(code, pointer, List.of()));
    }

    private void note(NoteCode code, DeviceMember member) {
      String path = place + "/" + member.path();
      int cut = path.lastIndexOf('/');
      note(code, new Pointer(path.substring(0, cut), path.substring(cut + 1)));
    }

    void take(DeviceMember member, Object value) {
      if (!device.at(at(member)).isMissingNode()) {
        against(member, value);
        return;
      }
      ObjectNode before = device.deepCopy();
      int contradictions = Contradictions.ofDevice(before, "").size();
      set(member, json(value));
      if (Contradictions.ofDevice(device, "").size() <= contradictions) {
        note(NoteCode.READ_FROM_MARKING, member);
      } else {
        device.removeAll();
        device.setAll(before);
        note(NoteCode.MARK_AGAINST_MEMBER, member);
      }
    }

    /** What is stated holds only as far as no mark says worse. */
    void doubt(DeviceMember member, Set<Object> values) {
      unclear |= DEFAULTED.contains(member) && device.at(at(member)).isMissingNode();
      for (Object value : values) {
        if (!device.at(at(member)).isMissingNode()) {
          against(member, value);
        }
      }
    }

    private void against(DeviceMember member, Object value) {
      JsonNode stated = device.at(at(member));
      JsonNode marked = json(value);
      boolean same =
          stated.isNumber() && marked.isNumber()
              ? stated.doubleValue() == marked.doubleValue()
              : stated.equals(marked);
      if (same) {
        return;
      }
      note(NoteCode.MARK_AGAINST_MEMBER, member);
      boolean less = marked.doubleValue() < stated.doubleValue();
      switch (member.safe()) {
        case LESS -> {
          set(member, less ? marked : stated);
          holdService();
        }
        case MORE -> set(member, less ? stated : marked);
        case FALSE -> set(member, NEW.booleanNode(false));
        case TRUE -> set(member, NEW.booleanNode(true));
        case NEITHER -> ((ObjectNode) device.at(at(member).head())).remove(name(member));
      }
    }

    /** Ics exceeds no breaking capacity, so neither one that was lowered. */
    private void holdService() {
      JsonNode breaking = device.path("breakingCapacityA");
      JsonNode service = device.path("serviceBreakingCapacityA");
      if (breaking.isNumber() && service.doubleValue() > breaking.doubleValue()) {
        device.set("serviceBreakingCapacityA", breaking);
      }
    }

    void drop(DeviceMember member) {
      note(NoteCode.MARK_AGAINST_MEMBER, member);
      device.remove(at(member).getMatchingProperty());
    }

    private static String name(DeviceMember member) {
      return at(member).last().getMatchingProperty();
    }

    private void set(DeviceMember member, JsonNode value) {
      JsonPointer head = at(member).head();
      ObjectNode parent = device;
      if (!head.matches()) {
        String name = head.getMatchingProperty();
        parent = device.get(name) instanceof ObjectNode object ? object : device.putObject(name);
      }
      parent.set(name(member), value);
    }
  }
}
