package circuitverdict.service.wire;

import circuitverdict.device.marking.DeviceMember;
import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A device to which other sources than its members add what they tell. Where a source and a stated
 * member differ, the one that promises less counts; neither does where what is worse for one check
 * is better for another.
 */
final class DeviceMerge {
  /** What supplements the members. */
  enum Source {
    MARKS(NoteCode.READ_FROM_MARKING, NoteCode.MARK_AGAINST_MEMBER),
    FEATURES(NoteCode.READ_FROM_FEATURE, NoteCode.FEATURE_AGAINST_MEMBER);

    private final NoteCode read;
    private final NoteCode against;

    Source(NoteCode read, NoteCode against) {
      this.read = read;
      this.against = against;
    }
  }

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
          DeviceMember.LOWER_MULTIPLE,
          DeviceMember.UPPER_MULTIPLE,
          DeviceMember.REFERENCE_TEMPERATURE,
          DeviceMember.LONG_TIME);

  private final ObjectNode device;
  private final String place;
  private final List<Note> notes = new ArrayList<>();
  private final Set<DeviceMember> struck = EnumSet.noneOf(DeviceMember.class);
  private boolean unclear;

  /** Supplements a device, which it changes, at a place in the request. */
  DeviceMerge(ObjectNode device, String place) {
    this.device = device;
    this.place = place;
  }

  private static JsonPointer at(DeviceMember member) {
    return JsonPointer.compile("/" + member.path());
  }

  ObjectNode device() {
    return device;
  }

  /** What was said of the device so far, in order; more may be added. */
  List<Note> notes() {
    return notes;
  }

  /** Notes that what is told leaves open what something would stand in for. */
  void leaveOpen() {
    unclear = true;
  }

  /** The device as it is judged: not at all where no default may fill in what is left open. */
  ObjectNode merged() {
    if (unclear) {
      device.remove("standard");
    }
    return device;
  }

  void note(NoteCode code, Pointer pointer) {
    notes.add(new Note(code, pointer, List.of()));
  }

  private void note(NoteCode code, DeviceMember member) {
    String path = place + "/" + member.path();
    int cut = path.lastIndexOf('/');
    note(code, new Pointer(path.substring(0, cut), path.substring(cut + 1)));
  }

  /** A member that a source tells of: taken where it is not stated, else held against it. */
  void take(Source source, DeviceMember member, Object value) {
    if (struck.contains(member)) {
      note(source.against, member);
      return;
    }
    if (isStated(member)) {
      against(source, member, value);
      return;
    }
    ObjectNode before = device.deepCopy();
    set(member, node(value));
    if (contradicts(before)) {
      restore(before);
      strike(source, member);
      unclear = true;
    } else {
      note(source.read, member);
    }
  }

  /** What a source says in several ways: what is stated holds only as far as none is worse. */
  void doubt(Source source, DeviceMember member, Set<Object> values) {
    unclear |= DEFAULTED.contains(member) && !isStated(member);
    for (Object value : values) {
      if (isStated(member)) {
        against(source, member, value);
      }
    }
    struck.add(member);
  }

  private boolean isStated(DeviceMember member) {
    return !device.at(at(member)).isMissingNode();
  }

  private boolean contradicts(ObjectNode before) {
    return Contradictions.ofDevice(device, "").size() > Contradictions.ofDevice(before, "").size();
  }

  private void restore(ObjectNode before) {
    device.removeAll();
    device.setAll(before);
  }

  private void against(Source source, DeviceMember member, Object value) {
    JsonNode stated = device.at(at(member));
    JsonNode marked = node(value);
    boolean same =
        stated.isNumber() && marked.isNumber()
            ? stated.doubleValue() == marked.doubleValue()
            : stated.equals(marked);
    if (same) {
      return;
    }
    ObjectNode before = device.deepCopy();
    boolean less = marked.doubleValue() < stated.doubleValue();
    switch (member.safe()) {
      case LESS -> {
        note(source.against, member);
        set(member, less ? marked : stated);
        holdService();
      }
      case MORE -> {
        note(source.against, member);
        set(member, less ? stated : marked);
      }
      case FALSE -> {
        note(source.against, member);
        set(member, NEW.booleanNode(false));
      }
      case TRUE -> {
        note(source.against, member);
        set(member, NEW.booleanNode(true));
      }
      case NEITHER -> {
        strike(source, member);
        // What nothing says no default may say in its place.
        unclear |= DEFAULTED.contains(member);
      }
    }
    if (member == DeviceMember.BREAKING_CAPACITY && isStated(DeviceMember.ENERGY_CLASS)) {
      // The figure of a class rises with the capacity: what is less for one is better for the
      // other.
      strike(source, DeviceMember.ENERGY_CLASS);
    }
    unclear |= contradicts(before);
  }

  /** A member that does not count, whatever else tells of it. */
  void strike(Source source, DeviceMember member) {
    note(source.against, member);
    struck.add(member);
    if (isStated(member)) {
      JsonPointer parent = at(member).head();
      ((ObjectNode) device.at(parent)).remove(name(member));
      // An empty residual function is not none; empty limits are.
      if (parent.matchesProperty("magneticMultiples") && device.at(parent).isEmpty()) {
        device.remove("magneticMultiples");
      }
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

  private static String name(DeviceMember member) {
    return at(member).last().getMatchingProperty();
  }

  /** A member that nothing is held against. */
  void put(DeviceMember member, Object value) {
    set(member, node(value));
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

  private static JsonNode node(Object value) {
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
}
