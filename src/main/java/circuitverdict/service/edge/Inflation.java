package circuitverdict.service.edge;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.zip.GZIPInputStream;

/** Inflates gzip bodies, never beyond the limit: a small body cannot unfold into a great one. */
final class Inflation {

  private Inflation() {}

  /**
   * The inflated bytes.
   *
   * @throws InvalidRequest status 400 where the data is not whole gzip, 413 where it inflates
   *     beyond {@code limit}
   */
  static byte[] gunzip(byte[] compressed, int limit) {
    byte[] inflated;
    try (InputStream gzip = new GZIPInputStream(new ByteArrayInputStream(compressed), 4096)) {
      inflated = gzip.readNBytes(limit + 1);
    } catch (IOException e) {
      FaultCode code = FaultCode.BROKEN_COMPRESSION;
      List<Fault> faults =
          List.of(Fault.inHeader(code.code(), code.meaning(), "Content-Encoding", null));
      throw new InvalidRequest(ProblemCatalogue.MALFORMED_REQUEST, faults);
    }
    if (inflated.length > limit) {
      throw tooLarge(limit);
    }
    return inflated;
  }

  /** The refusal of a body longer than {@code limit}. */
  static InvalidRequest tooLarge(long limit) {
    String detail = "The body may have at most " + limit + " bytes, counted after inflation.";
    List<Fault> faults = List.of(Fault.inBody(FaultCode.BODY_TOO_LARGE.code(), detail, ""));
    return new InvalidRequest(ProblemCatalogue.BODY_TOO_LARGE, faults);
  }
}
