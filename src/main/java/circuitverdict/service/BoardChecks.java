package circuitverdict.service;

import circuitverdict.service.edge.BoardBody;
import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.edge.Preference;
import circuitverdict.service.edge.Representation;
import circuitverdict.service.edge.SelectionSized;
import circuitverdict.service.wire.BoardContradictions;
import circuitverdict.standard.Edition;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;

/** All circuits of a board, and of the boards that it feeds, together. */
@Path("/v1/board-checks")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class BoardChecks {
  @Inject Engine engine;
  @Inject ContractReader bodies;

  /** Every circuit judged; on a worker thread, since there may be a thousand. */
  @POST
  @SelectionSized
  @Blocking
  public Response check(byte[] body, @Context HttpHeaders headers) {
    BoardBody board = bodies.readBoard(body, BoardContradictions::of);
    Preference preference = Preference.of(headers);
    Edition edition = engine.edition(board.whole());
    byte[] bytes =
        new BoardAnswer(board, edition, engine.version(), !preference.isMinimal()).bytes();
    return Representation.answer(preference, bytes);
  }
}
