package circuitverdict.service;

import circuitverdict.service.edge.Fault;
import circuitverdict.service.edge.InvalidRequest;
import circuitverdict.service.edge.ProblemCatalogue;
import circuitverdict.standard.Edition;
import circuitverdict.standard.EditionLoader;
import circuitverdict.standard.Editions;
import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.runtime.Startup;
import jakarta.inject.Singleton;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** The editions, loaded when the service starts, and its version. */
@Startup
@Singleton
public class Engine {
  private final Editions editions = EditionLoader.load();

  @ConfigProperty(name = "quarkus.application.version")
  String version;

  /** All editions. */
  public Editions editions() {
    return editions;
  }

  /** Version of the service. */
  public String version() {
    return version;
  }

  /**
   * The edition that a request names, or the one in force.
   *
   * @throws InvalidRequest where there is no such edition; it lists those there are
   */
  public Edition edition(JsonNode body) {
    String id = body.path("edition").textValue();
    if (id == null) {
      return editions.inForce();
    }
    return editions.find(id).orElseThrow(() -> unknown(422, id));
  }

  /** The problem of an edition that there is not. */
  public InvalidRequest unknown(int status, String id) {
    List<String> ids = editions.all().stream().map(Edition::id).toList();
    String detail = "There is no such edition.";
    Fault fault =
        status == 404
            ? Fault.inParameter("unknown-value", detail, "edition", ids)
            : Fault.inBody("unknown-value", detail, "/edition", ids);
    return new InvalidRequest(status, ProblemCatalogue.UNKNOWN_EDITION, List.of(fault));
  }
}
