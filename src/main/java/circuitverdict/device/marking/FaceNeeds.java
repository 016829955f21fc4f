package circuitverdict.device.marking;

import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.standard.Marks;
import circuitverdict.standard.TableName;
import java.util.ArrayList;
import java.util.List;

/** What checks need of a device and its face does not tell. */
final class FaceNeeds {
  private static final String DEVICE = "/device";
  private static final String OR = "\\|";

  private FaceNeeds() {}

  static List<Note> missing(Facts facts, Marks marks) {
    List<String> needs = new ArrayList<>(marks.needs(facts.standard()));
    if (!facts.has(DeviceMember.STANDARD)) {
      needs.remove(DeviceMember.STANDARD.path());
      needs.add(0, DeviceMember.STANDARD.path());
    }
    if (withoutBand(facts)) {
      needs.add(DeviceMember.UPPER_MULTIPLE.path());
    }
    List<Note> missing = new ArrayList<>();
    for (String need : needs) {
      String[] alternatives = need.split(OR);
      boolean told = false;
      for (String path : alternatives) {
        told |= facts.has(DeviceMember.ofPath(path));
      }
      if (!told) {
        missing.add(new Note(NoteCode.MISSING_INPUT, pointer(alternatives[0]), List.of()));
      }
    }
    return missing;
  }

  /** A letter whose limits no standard knows; an adjustable breaker has them among its needs. */
  private static boolean withoutBand(Facts facts) {
    String letter = facts.word(DeviceMember.CHARACTERISTIC);
    return letter != null
        && !MarkedStandard.INDUSTRIAL.equals(facts.standard())
        && Character.isLetter(letter.charAt(0))
        && facts.edition().table(TableName.MAGNETIC_BANDS).at("upper", letter) == null;
  }

  private static Pointer pointer(String path) {
    int cut = path.lastIndexOf('/');
    return cut < 0
        ? new Pointer(DEVICE, path)
        : new Pointer(DEVICE + "/" + path.substring(0, cut), path.substring(cut + 1));
  }
}
