package circuitverdict.service.edge;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.List;

/**
 * Reads one JSON value from bytes, by RFC 8259 and nothing beyond: UTF-8 only, no comments, no NaN,
 * no duplicate members, nothing after the value. What it refuses is a problem of status 400 that
 * names line and column; no message of the parser reaches a caller.
 */
final class StrictJson {

  static final int MAXIMUM_DEPTH = 40;
  private static final int MAXIMUM_NUMBER_LENGTH = 100;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .disable(JsonFactory.Feature.CHARSET_DETECTION)
          .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(MAXIMUM_DEPTH)
                  .maxNumberLength(MAXIMUM_NUMBER_LENGTH)
                  .build())
          .build();

  private static final JsonMapper MAPPER = new JsonMapper(FACTORY);

  private StrictJson() {}

  /** The value; throws {@link InvalidRequest} where there is not exactly one. */
  static JsonNode read(byte[] body) {
    if (Utf8.isBlank(body)) {
      throw refusal(FaultCode.EMPTY_BODY, FaultCode.EMPTY_BODY.meaning(), "");
    }
    int broken = Utf8.firstFault(body);
    if (broken >= 0) {
      String detail = "The body is not UTF-8 at its byte " + (broken + 1) + ".";
      throw refusal(FaultCode.MALFORMED_TEXT, detail, "");
    }
    try (JsonParser parser = FACTORY.createParser(body)) {
      return read(parser);
    } catch (IOException e) {
      // Only opening and closing can come here, and bytes in memory do neither with effect.
      throw refusal(FaultCode.MALFORMED_JSON, FaultCode.MALFORMED_JSON.meaning(), "");
    }
  }

  private static JsonNode read(JsonParser parser) throws IOException {
    try {
      JsonNode value = MAPPER.readTree(parser);
      JsonToken further = parser.nextToken();
      if (further == null) {
        return value;
      }
      String detail = "Something follows the JSON value" + at(parser.currentTokenLocation());
      throw refusal(FaultCode.MALFORMED_JSON, detail, "");
    } catch (StreamConstraintsException e) {
      throw beyondBounds(parser);
    } catch (JsonEOFException e) {
      String detail = "The body ends before its JSON does" + at(parser.currentLocation());
      throw refusal(FaultCode.MALFORMED_JSON, detail, "");
    } catch (JsonProcessingException e) {
      throw malformed(parser, e);
    }
  }

  private static InvalidRequest malformed(JsonParser parser, JsonProcessingException fault) {
    String message = String.valueOf(fault.getOriginalMessage());
    if (message.startsWith("Duplicate ")) {
      // The parser has just read the second of the two names.
      String pointer = parser.getParsingContext().pathAsPointer().toString();
      String detail = "The member stands twice in its object" + at(parser.currentTokenLocation());
      return refusal(FaultCode.DUPLICATE_MEMBER, detail, pointer);
    }
    String what =
        message.startsWith("Non-standard token")
            ? "JSON has no NaN and no infinity; there is one"
            : "The body is not JSON";
    return refusal(FaultCode.MALFORMED_JSON, what + at(fault.getLocation()), "");
  }

  private static InvalidRequest beyondBounds(JsonParser parser) {
    String where = at(parser.currentLocation());
    if (parser.getParsingContext().getNestingDepth() >= MAXIMUM_DEPTH) {
      String detail = "Objects and arrays nest deeper than " + MAXIMUM_DEPTH + " levels" + where;
      return refusal(FaultCode.TOO_DEEP, detail, "");
    }
    return refusal(FaultCode.MALFORMED_JSON, "A number or a name is absurdly long" + where, "");
  }

  private static String at(JsonLocation location) {
    return " at line " + location.getLineNr() + ", column " + location.getColumnNr() + ".";
  }

  private static InvalidRequest refusal(FaultCode code, String detail, String pointer) {
    List<Fault> faults = List.of(Fault.inBody(code.code(), detail, pointer));
    return new InvalidRequest(ProblemCatalogue.MALFORMED_JSON, faults);
  }
}
