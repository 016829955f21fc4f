package circuitverdict.service.wire;

import circuitverdict.check.BoardVerdict;
import circuitverdict.check.Finding;
import circuitverdict.check.Result;
import java.util.ArrayList;
import java.util.List;

/**
 * One circuit of a board, judged or refused.
 *
 * @param node the circuit in the request
 * @param etag the entity tag that its answer has by itself; null where it is refused
 * @param answer the answer as the call for one circuit gives it; null where it is refused
 * @param result what was found; null where it is refused
 * @param selectivity to the devices before the board that its answer has not upstream
 */
public record BoardItem(
    BoardNode node, String etag, byte[] answer, Result result, List<Upstream> selectivity) {

  /**
   * Selectivity to a device before the board.
   *
   * @param place JSON pointer of the device in the request
   * @param finding what is found with it as the device upstream of the circuit
   */
  public record Upstream(String place, Finding finding) {}

  /** One whose statements are not valid. */
  public static BoardItem refused(BoardNode node) {
    return new BoardItem(node, null, null, null, List.of());
  }

  /** The verdict on the board: of its circuits and of what is found beside them. */
  public static BoardVerdict verdict(List<Finding> findings, List<BoardItem> items) {
    List<Result> results = new ArrayList<>();
    List<Finding> beside = new ArrayList<>(findings);
    int invalid = 0;
    for (BoardItem item : items) {
      item.selectivity().forEach(each -> beside.add(each.finding()));
      if (item.result() == null) {
        invalid++;
      } else {
        results.add(item.result());
      }
    }
    return BoardVerdict.of(results, beside, invalid);
  }
}
