package circuitverdict.service;

import circuitverdict.service.edge.Contract;
import circuitverdict.service.edge.InvalidRequest;
import circuitverdict.service.edge.Representation;
import circuitverdict.service.wire.CodesJson;
import circuitverdict.service.wire.EditionJson;
import circuitverdict.standard.Edition;
import io.smallrye.common.annotation.NonBlocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;

/** Every number with its source and confidence; every code and listed value with its meaning. */
@Path("/v1")
@Produces(MediaType.APPLICATION_JSON)
public class Catalogue {
  @Inject Engine engine;
  @Inject Contract contract;

  /** All editions, newest first. */
  @GET
  @Path("/editions")
  @NonBlocking
  public Response editions(@Context HttpHeaders headers) {
    return Representation.cacheable(headers, EditionJson.list(engine.editions()));
  }

  /** One edition. */
  @GET
  @Path("/editions/{edition}")
  @NonBlocking
  public Response edition(@PathParam("edition") String id, @Context HttpHeaders headers) {
    return Representation.cacheable(headers, EditionJson.detail(find(id)));
  }

  /** One table of an edition. */
  @GET
  @Path("/editions/{edition}/tables/{table}")
  @NonBlocking
  public Response table(
      @PathParam("edition") String id,
      @PathParam("table") String table,
      @Context HttpHeaders headers) {
    Edition edition = find(id);
    if (!edition.has(table)) {
      throw InvalidRequest.notFound("The edition " + edition.id() + " has no such table.");
    }
    return Representation.cacheable(
        headers, EditionJson.table(edition, edition.table(table), engine.editions().sources()));
  }

  /** The catalogue of codes. */
  @GET
  @Path("/codes")
  @NonBlocking
  public Response codes(@Context HttpHeaders headers) {
    return Representation.cacheable(
        headers, CodesJson.bytes(contract.closedLists(), engine.editions().inForce().marks()));
  }

  private Edition find(String id) {
    return engine.editions().find(id).orElseThrow(() -> engine.unknown(404, id));
  }
}
