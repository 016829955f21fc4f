package circuitverdict.service.edge;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PreferenceTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      value = {
        "return=minimal|MINIMAL",
        "Return = \"minimal\"|MINIMAL",
        "respond-async, wait=10, return=minimal; foo=bar|MINIMAL",
        "return=representation|REPRESENTATION",
        "return=representation, return=minimal|REPRESENTATION",
        "note=\"return=minimal, x\"|NONE",
        "return=everything|NONE",
        "return=everything, return=minimal|MINIMAL",
        "return|NONE",
        ",;=,|NONE",
        "\"|NONE",
        "''|NONE",
      })
  void readsLeniently(String line, Preference preference) {
    assertEquals(preference, Preference.of(List.of(line)));
  }
}
