package circuitverdict.service.wire;

import circuitverdict.explain.Note;
import circuitverdict.select.Remedy;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/**
 * A request whose devices are supplemented by the marks on their faces.
 *
 * @param body the request as it is judged
 * @param notes what is to be told of it: members not used, then what the marks say
 */
public record DescribedDevices(JsonNode body, List<Note> notes) {
  private static final List<String> DEVICES = List.of("device", "residualDevice", "upstreamDevice");

  /** A valid request; {@code unused} names what the operation does not read of it. */
  public static DescribedDevices of(JsonNode body, List<Note> unused, Edition edition) {
    ObjectNode judged = null;
    List<Note> notes = unused;
    for (String name : DEVICES) {
      boolean supplemented = DescribedDevice.isSupplemented(body.path(name));
      if (supplemented && unused.stream().noneMatch(note -> isAbout(note, "/" + name))) {
        DescribedDevice device = DescribedDevice.of(body.path(name), "/" + name, edition);
        judged =
            judged == null ? ((ObjectNode) body).objectNode().setAll((ObjectNode) body) : judged;
        judged.set(name, device.device());
        notes = new ArrayList<>(notes);
        notes.addAll(device.notes());
      }
    }
    return new DescribedDevices(judged == null ? body : judged, notes);
  }

  /**
   * The remedies that hold where the request is sent again with the change: of a device whose marks
   * or features tell of it none that changes its members, since those would speak against it.
   */
  public List<Remedy> lasting(List<Remedy> remedies) {
    return remedies.stream().filter(each -> !changesTold(each)).toList();
  }

  private boolean changesTold(Remedy remedy) {
    for (String name : List.of("device", "residualDevice")) {
      if (DescribedDevice.tellsOfMembers(body.path(name))
          && remedy.change().members().stream()
              .anyMatch(member -> member.pointer().startsWith("/" + name + "/"))) {
        return true;
      }
    }
    return false;
  }

  private static boolean isAbout(Note note, String pointer) {
    return note.pointer() != null && note.pointer().text().equals(pointer);
  }
}
