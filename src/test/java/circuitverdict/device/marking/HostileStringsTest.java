package circuitverdict.device.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.support.Scenario;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is sent as a mark is answered, and no figure is told that a device cannot have. */
class HostileStringsTest {
  private static final long SEED = Long.getLong("seed", 61_009L);
  private static final int LONG = 50_000;
  private static final String[] SCRAPS = {
    "C",
    "B",
    "16",
    "32",
    "6000",
    "6 000",
    "kA",
    "mA",
    "A",
    "In",
    "IΔn",
    "Icu",
    "Ics",
    "=",
    "%",
    "/",
    "-",
    "+",
    ",",
    ".",
    " ",
    "\u00a0",
    "\u2009",
    "~",
    "V",
    "230",
    "400",
    "IEC",
    "EN",
    "60898",
    "61009",
    "type",
    "class",
    "[",
    "]",
    "3",
    "gG",
    "M",
    "P",
    "N",
    "x",
    "Hz",
    "°",
    "in a square",
    "\u20de",
    "Ω",
    "\u0000",
    "\ud83d\udd0c",
    "½",
    "０",
    "…",
    "'",
    "Isd",
    "Ir",
    "tsd",
    "0",
    ":",
    "(",
    ")",
    "\u0661"
  };

  @Test
  @Timeout(value = 5, unit = TimeUnit.MINUTES)
  void randomStringsAreRead() {
    Random random = new Random(SEED);
    for (int i = 0; i < 10_000; i++) {
      List<String> face = new ArrayList<>();
      for (int k = random.nextInt(4); k >= 0; k--) {
        face.add(i % 2 == 0 ? scraps(random) : anything(random));
      }
      String said = "seed " + SEED + ", " + i + ": " + face;
      Reading reading = Faces.read(face, List.of());
      reading
          .device()
          .forEach(
              (member, value) -> {
                boolean can =
                    !(value instanceof Double number)
                        || Scenario.editions().inForce().marks().canBe(member.path(), number);
                assertTrue(can, () -> said + " " + member);
              });
      for (Mark mark : reading.marks()) {
        int at = Integer.parseInt(mark.at().member());
        assertTrue(face.get(at).contains(mark.text()), () -> said + " " + mark.text());
      }
      assertEquals(reading, Faces.read(face, List.of()), said);
    }
  }

  private static String scraps(Random random) {
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(10); i >= 0; i--) {
      text.append(SCRAPS[random.nextInt(SCRAPS.length)]);
      text.append(random.nextInt(3) == 0 ? " " : "");
    }
    return text.toString();
  }

  /** Any code points, halves of surrogate pairs too, which the contract refuses. */
  private static String anything(Random random) {
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(40); i >= 0; i--) {
      int bound = random.nextInt(3) == 0 ? Character.MAX_CODE_POINT : 0x2600;
      text.appendCodePoint(random.nextInt(bound));
    }
    return text.toString();
  }

  /** No measure: what grows with the square of the length would not end within the hour. */
  @ParameterizedTest
  @Timeout(value = 2, unit = TimeUnit.MINUTES)
  @ValueSource(
      strings = {
        "1",
        "C",
        "C16",
        "C16 ",
        "a",
        "a ",
        "1 ",
        "1.",
        "1,",
        "1 000",
        " ",
        "/",
        "(",
        "-",
        "1-",
        "1/",
        "EN ",
        "EN",
        "IEC/",
        "60898-",
        "60899 +A",
        "60898- ",
        "type ",
        "class ",
        "In",
        "In ",
        "I ",
        "[",
        "[3",
        "3\u20de",
        "230/",
        "230V",
        "x1y ",
        "x1y",
        "IΔn=",
        "M6",
        "1P+N",
        "1M1",
        "~",
        "½",
        "\ufdfa",
        "10-",
        "1..",
        "1 - - ",
        "gG",
        "Ics=7%",
        "rated ",
        "energy limiting "
      })
  void longStringsAreReadInTimeThatGrowsWithTheirLength(String part) {
    String text = part.repeat(LONG / part.length());
    assertTrue(Faces.read(text).marks().size() <= text.length());
  }
}
