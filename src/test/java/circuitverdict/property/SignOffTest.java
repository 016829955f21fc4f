package circuitverdict.property;

import circuitverdict.check.CheckName;
import circuitverdict.check.Finding;
import circuitverdict.check.Result;
import circuitverdict.service.wire.Contradictions;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * At sign-off nothing that is left out helps (engineering basis, principles 2 and 7): without any
 * one input no check that does not comply or is not determined turns into one that does.
 */
class SignOffTest {
  private static final int FEW = 10;

  @Test
  void leavingOutAnInputNeverTurnsACheckIntoCompliance() {
    Property.holds("left out at sign-off", Circuits.at("sign-off"), SignOffTest::refute);
  }

  /** A few members: ten thousand circuits leave out each of them often enough. */
  private static List<String> some(List<String> pointers, Draw draw) {
    List<String> some = new ArrayList<>();
    for (int i = 0; i < FEW && !pointers.isEmpty(); i++) {
      some.add(draw.of(pointers));
    }
    return some;
  }

  private static String refute(ObjectNode body, Random random) {
    Result whole = Verdicts.result(body);
    for (String pointer : some(Bodies.pointers(body), new Draw(random))) {
      if (Exceptions.structure(pointer)) {
        continue;
      }
      ObjectNode less = Bodies.without(body, pointer);
      if (!Contradictions.of(less).isEmpty()) {
        continue;
      }
      Result without = Verdicts.result(less);
      for (CheckName name : CheckName.ofCircuits()) {
        Finding before = whole.of(name);
        Finding now = without.of(name);
        if (before.counted()
            && Verdicts.stands(before.verdict())
            && !Verdicts.stands(now.verdict())
            && !Exceptions.named(pointer, body)
            && !Exceptions.ofSuitability(name, pointer)) {
          return name.word()
              + " without "
              + pointer
              + "\n  "
              + Verdicts.line(before)
              + "\n  "
              + Verdicts.line(now);
        }
      }
    }
    return null;
  }
}
