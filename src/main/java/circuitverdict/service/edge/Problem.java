package circuitverdict.service.edge;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * A problem as answered: RFC 9457, media type {@value #MEDIA_TYPE}. Texts are cut to the lengths of
 * the contract, and what is not well-formed Unicode is replaced: a problem can always be written.
 *
 * @param kind decides type and title
 * @param status the HTTP status
 * @param detail what is wrong this time; never a class name, path or host
 * @param errors the faults, possibly none
 */
public record Problem(ProblemCatalogue kind, int status, String detail, List<Fault> errors) {

  /** Media type of every problem. */
  public static final String MEDIA_TYPE = "application/problem+json";

  private static final int DETAIL_LENGTH = 600;
  private static final int FAULT_LENGTH = 300;
  private static final int NAME_LENGTH = 60;
  private static final int ALLOWED_COUNT = 100;
  private static final JsonFactory JSON = new JsonFactory();

  public Problem {
    errors = List.copyOf(errors);
  }

  /** A problem of the kind's usual status without a list of faults. */
  public static Problem of(ProblemCatalogue kind) {
    return new Problem(kind, kind.status(), kind.meaning(), List.of());
  }

  /** A problem for a bare status, for instance one that the framework chose. */
  public static Problem ofStatus(int status) {
    ProblemCatalogue kind = ProblemCatalogue.ofStatus(status);
    // A status of 5xx that is not in the catalogue says nothing that the caller could use.
    int answered = kind == ProblemCatalogue.INTERNAL_ERROR ? kind.status() : status;
    return new Problem(kind, answered, kind.meaning(), List.of());
  }

  /** The problem as a JSON document in UTF-8. */
  public byte[] toJson() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(512);
    try (JsonGenerator json = JSON.createGenerator(bytes)) {
      write(json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /** Writes the problem as one JSON object, for answers that hold problems of their own. */
  public void write(JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("type", kind.type());
    json.writeStringField("title", kind.title());
    json.writeNumberField("status", status);
    json.writeStringField("detail", Text.fit(detail, DETAIL_LENGTH));
    if (!errors.isEmpty()) {
      json.writeArrayFieldStart("errors");
      for (Fault fault : errors) {
        write(json, fault);
      }
      json.writeEndArray();
    }
    json.writeEndObject();
  }

  private static void write(JsonGenerator json, Fault fault) throws IOException {
    json.writeStartObject();
    json.writeStringField("code", fault.code());
    json.writeStringField("detail", Text.fit(fault.detail(), FAULT_LENGTH));
    if (fault.pointer() != null) {
      json.writeStringField("pointer", Text.fitPointer(fault.pointer(), FAULT_LENGTH));
    }
    if (fault.parameter() != null) {
      json.writeStringField("parameter", Text.fit(fault.parameter(), NAME_LENGTH));
    }
    if (fault.header() != null) {
      json.writeStringField("header", Text.fit(fault.header(), NAME_LENGTH));
    }
    if (fault.allowed() != null) {
      json.writeArrayFieldStart("allowed");
      int count = Math.min(fault.allowed().size(), ALLOWED_COUNT);
      for (int i = 0; i < count; i++) {
        json.writeString(Text.fit(fault.allowed().get(i), NAME_LENGTH));
      }
      json.writeEndArray();
    }
    json.writeEndObject();
  }
}
