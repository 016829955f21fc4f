package circuitverdict.support;

import circuitverdict.check.CheckName;
import circuitverdict.check.CircuitCheck;
import circuitverdict.check.Finding;
import circuitverdict.check.Result;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.Circuit;
import circuitverdict.service.wire.CircuitMapping;
import circuitverdict.standard.Edition;
import circuitverdict.standard.EditionLoader;
import circuitverdict.standard.Editions;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * A circuit for tests, described in the contract's own JSON and varied member by member. Immutable:
 * every variation is a new scenario.
 */
public final class Scenario {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Editions EDITIONS = EditionLoader.load();

  private final ObjectNode body;
  private final boolean openNeutral;

  private Scenario(ObjectNode body) {
    this(body, false);
  }

  private Scenario(ObjectNode body, boolean openNeutral) {
    this.body = body;
    this.openNeutral = openNeutral;
  }

  /** The editions, loaded once for all tests. */
  public static Editions editions() {
    return EDITIONS;
  }

  /** The edition with this id. */
  public static Edition edition(String id) {
    return EDITIONS.find(id).orElseThrow();
  }

  /**
   * The Harbour Street Bakery's deck oven at sign-off: B32 on 6/2.5 mm² flat twin, 22 m, TN-C-S.
   */
  public static Scenario oven() {
    return read("deck-oven");
  }

  /** A scenario kept in {@code src/test/resources/scenarios}. */
  public static Scenario read(String name) {
    try (InputStream in = Scenario.class.getResourceAsStream("/scenarios/" + name + ".json")) {
      return new Scenario((ObjectNode) JSON.readTree(in));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A scenario written in place. */
  public static Scenario of(String json) {
    try {
      return new Scenario((ObjectNode) JSON.readTree(json));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The same with one member set; objects on the way to it are made where they are missing. */
  public Scenario with(String pointer, Object value) {
    ObjectNode copy = body.deepCopy();
    JsonPointer at = JsonPointer.compile(pointer);
    ObjectNode parent = copy;
    for (JsonPointer step = at; step.tail() != null && !step.tail().matches(); step = step.tail()) {
      JsonNode next = parent.get(step.getMatchingProperty());
      parent =
          next instanceof ObjectNode object ? object : parent.putObject(step.getMatchingProperty());
    }
    parent.set(at.last().getMatchingProperty(), JSON.valueToTree(value));
    return new Scenario(copy, openNeutral);
  }

  /** The same with one member set to what this JSON says. */
  public Scenario withJson(String pointer, String json) {
    try {
      return with(pointer, JSON.readTree(json));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The same without one member. */
  public Scenario without(String pointer) {
    ObjectNode copy = body.deepCopy();
    JsonPointer at = JsonPointer.compile(pointer);
    JsonNode parent = copy.at(at.head());
    if (parent instanceof ObjectNode object) {
      object.remove(at.last().getMatchingProperty());
    }
    return new Scenario(copy, openNeutral);
  }

  /** The request body. */
  public ObjectNode json() {
    return body.deepCopy();
  }

  /**
   * The engine's circuit. A cable whose construction leaves its neutral open has one as large as
   * its line, unless {@link #withOpenNeutral()} leaves it open.
   */
  public Circuit circuit() {
    ObjectNode whole = body.deepCopy();
    if (!openNeutral) {
      closeNeutral(whole.path("cable"));
      whole.path("furtherCables").forEach(Scenario::closeNeutral);
    }
    return CircuitMapping.circuit(whole);
  }

  /** The same with neutrals that are not stated left open. */
  public Scenario withOpenNeutral() {
    return new Scenario(body, true);
  }

  private static void closeNeutral(JsonNode cable) {
    if (cable instanceof ObjectNode node && node.has("lineCsaMm2") && !node.has("neutralCsaMm2")) {
      node.set("neutralCsaMm2", node.get("lineCsaMm2"));
    }
  }

  /** The edition it names, or the one in force. */
  public Edition edition() {
    String id = body.path("edition").textValue();
    return id == null ? EDITIONS.inForce() : edition(id);
  }

  /** The result of all checks, with working. */
  public Result result() {
    return CircuitCheck.explained(circuit(), edition());
  }

  /** The finding of one check, with working. */
  public Finding finding(CheckName check) {
    return CircuitCheck.one(
        CircuitCheck.all().stream().filter(each -> each.name() == check).findFirst().orElseThrow(),
        circuit(),
        edition(),
        true);
  }

  /** The verdict of one check. */
  public Verdict verdict(CheckName check) {
    return finding(check).verdict();
  }

  @Override
  public String toString() {
    return body.toPrettyString();
  }
}
