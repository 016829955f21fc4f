package circuitverdict.device.marking;

import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.standard.Edition;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What the marks of one face say of the members of the device, and where they disagree. */
final class Facts {
  private final Edition edition;
  private final String standard;
  private final Map<DeviceMember, Object> values = new EnumMap<>(DeviceMember.class);
  private final Map<DeviceMember, Pointer> places = new EnumMap<>(DeviceMember.class);
  private final Map<DeviceMember, Set<Object>> disputed = new EnumMap<>(DeviceMember.class);
  private final Set<Note> contradictions = new LinkedHashSet<>();
  private final Set<Note> remarks = new LinkedHashSet<>();

  Facts(Edition edition, String standard) {
    this.edition = edition;
    this.standard = standard;
  }

  Edition edition() {
    return edition;
  }

  /** The standard by which the marks are taken; null where none is known. */
  String standard() {
    return standard;
  }

  void say(DeviceMember member, Object value, Pointer at) {
    Object known = values.get(member);
    if (known == null && !disputed.containsKey(member)) {
      values.put(member, value);
      places.put(member, at);
    } else if (!value.equals(known)) {
      dispute(member, values.remove(member));
      dispute(member, value);
      contradict(NoteCode.MARKS_DISAGREE, at);
    }
  }

  /** The face tells of the member, but not what: no other mark settles it. */
  void doubt(DeviceMember member) {
    dispute(member, values.remove(member));
  }

  private void dispute(DeviceMember member, Object value) {
    Set<Object> said = disputed.computeIfAbsent(member, each -> new LinkedHashSet<>());
    if (value != null) {
      said.add(value);
    }
  }

  /** The lesser of what is said so far and this. */
  void sayLesser(DeviceMember member, double value, Pointer at) {
    if (!has(member) || number(member) > value) {
      values.put(member, value);
      places.put(member, at);
    }
  }

  boolean has(DeviceMember member) {
    return values.containsKey(member);
  }

  Object value(DeviceMember member) {
    return values.get(member);
  }

  String word(DeviceMember member) {
    return (String) values.get(member);
  }

  double number(DeviceMember member) {
    return values.get(member) instanceof Number number ? number.doubleValue() : Double.NaN;
  }

  Pointer place(DeviceMember member) {
    return places.get(member);
  }

  /** Two members that cannot both be true: none of these is taken. */
  void deny(NoteCode code, DeviceMember... members) {
    for (int i = members.length - 1; i >= 0; i--) {
      if (has(members[i])) {
        contradict(code, places.get(members[i]));
        break;
      }
    }
    for (DeviceMember member : members) {
      dispute(member, values.remove(member));
    }
  }

  void contradict(NoteCode code, Pointer at) {
    contradictions.add(new Note(code, at, List.of()));
  }

  void remark(NoteCode code, Pointer at) {
    remarks.add(new Note(code, at, List.of()));
  }

  Map<DeviceMember, Object> values() {
    return values;
  }

  /** What marks say of members that are not taken from them. */
  Map<DeviceMember, Set<Object>> disputed() {
    return disputed;
  }

  List<Note> contradictions() {
    return new ArrayList<>(contradictions);
  }

  List<Note> remarks() {
    return new ArrayList<>(remarks);
  }
}
