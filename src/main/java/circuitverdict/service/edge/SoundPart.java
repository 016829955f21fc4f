package circuitverdict.service.edge;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What of a body the contract finds nothing wrong with. A value that breaks the contract is null in
 * it: nothing else can be said to contradict that one.
 */
final class SoundPart {
  /** Of these the value itself is wrong, not what it holds, lacks or stands beside. */
  private static final Set<String> OF_THE_VALUE =
      EnumSet.of(
              FaultCode.WRONG_TYPE,
              FaultCode.NOT_AN_INTEGER,
              FaultCode.BELOW_MINIMUM,
              FaultCode.ABOVE_MAXIMUM,
              FaultCode.TOO_SHORT,
              FaultCode.TOO_LONG,
              FaultCode.PATTERN_MISMATCH,
              FaultCode.UNKNOWN_VALUE)
          .stream()
          .map(FaultCode::code)
          .collect(Collectors.toUnmodifiableSet());

  private SoundPart() {}

  static JsonNode of(JsonNode body, List<Fault> faults) {
    JsonNode sound = body.deepCopy();
    for (Fault fault : faults) {
      if (OF_THE_VALUE.contains(fault.code())) {
        JsonPointer at = JsonPointer.compile(fault.pointer());
        if (at.matches()) {
          return MissingNode.getInstance();
        }
        clear(sound.at(at.head()), at.last());
      }
    }
    return sound;
  }

  private static void clear(JsonNode parent, JsonPointer last) {
    if (parent instanceof ObjectNode object) {
      object.set(last.getMatchingProperty(), NullNode.getInstance());
    } else if (parent instanceof ArrayNode array) {
      array.set(last.getMatchingIndex(), NullNode.getInstance());
    }
  }
}
