package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Pure: the same request gives the same bytes in another virtual machine that is set up otherwise.
 */
class SameBytesTest {

  /** Turkish has its own lower case of I; German writes decimals with a comma; Thai other years. */
  static Stream<List<String>> machines() {
    return Stream.of(
        List.of(
            "-Duser.language=tr",
            "-Duser.country=TR",
            "-Duser.timezone=Pacific/Kiritimati",
            "-Dfile.encoding=ISO-8859-1"),
        List.of(
            "-Duser.language=th",
            "-Duser.country=TH",
            "-Duser.variant=TH",
            "-Duser.timezone=America/St_Johns",
            "-Dfile.encoding=US-ASCII",
            "-XX:+UnlockExperimentalVMOptions",
            "-XX:hashCode=2"),
        List.of(
            "-Duser.language=de",
            "-Duser.country=DE",
            "-Dline.separator=\r\n",
            "-XX:TieredStopAtLevel=1"));
  }

  @ParameterizedTest
  @MethodSource("machines")
  void anotherMachineAnswersTheSameBytes(List<String> options, @TempDir Path directory)
      throws IOException, InterruptedException {
    Path out = directory.resolve("digests");
    List<String> command = new java.util.ArrayList<>();
    command.add(System.getProperty("java.home") + File.separator + "bin" + File.separator + "java");
    command.addAll(options);
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.add(AnswerDigests.class.getName());
    Process process =
        new ProcessBuilder(command)
            .directory(directory.toFile())
            .redirectError(directory.resolve("errors").toFile())
            .redirectOutput(out.toFile())
            .start();
    assertEquals(0, process.waitFor(), () -> read(directory.resolve("errors")));
    List<String> there = Files.readString(out, StandardCharsets.US_ASCII).lines().toList();
    assertEquals(ascii(AnswerDigests.lines()), there);
  }

  @Test
  void thisMachineAnswersTheSameBytesAgain() {
    List<String> lines = AnswerDigests.lines();
    assertTrue(lines.size() > 150, lines.size() + " answers");
    assertEquals(lines, AnswerDigests.lines());
  }

  /** The names of examples may hold signs that ASCII has not; the digests do not. */
  private static List<String> ascii(List<String> lines) {
    return lines.stream().map(line -> line.replaceAll("[^\\x00-\\x7f]", "?")).toList();
  }

  private static String read(Path file) {
    try {
      return Files.readString(file, StandardCharsets.ISO_8859_1);
    } catch (IOException e) {
      return e.toString();
    }
  }
}
