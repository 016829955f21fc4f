package circuitverdict.check;

import java.util.List;

/**
 * The verdict on a whole board: that of its circuits and of what is judged of it beside them, the
 * worst first. A circuit that is not valid leaves the whole undetermined.
 *
 * @param verdict overall
 * @param reason why it is not "complies"; null where it is
 */
public record BoardVerdict(Verdict verdict, Reason reason) {

  /**
   * Of a board.
   *
   * @param circuits what was found of each valid circuit
   * @param beside the findings beside them
   * @param invalid how many circuits are not valid
   */
  public static BoardVerdict of(List<Result> circuits, List<Finding> beside, int invalid) {
    Result own = Result.of(beside);
    boolean fails = own.verdict() == Verdict.DOES_NOT_COMPLY;
    boolean open = own.reason() == Reason.CHECK_NOT_DETERMINED;
    boolean any = own.reason() != Reason.NOTHING_COUNTED;
    for (Result circuit : circuits) {
      any = true;
      fails |= circuit.verdict() == Verdict.DOES_NOT_COMPLY;
      open |= circuit.verdict() == Verdict.NOT_DETERMINED;
    }
    if (fails) {
      return new BoardVerdict(Verdict.DOES_NOT_COMPLY, Reason.CHECK_FAILS);
    }
    if (invalid > 0) {
      return new BoardVerdict(Verdict.NOT_DETERMINED, Reason.CIRCUIT_NOT_VALID);
    }
    if (open) {
      return new BoardVerdict(Verdict.NOT_DETERMINED, Reason.CHECK_NOT_DETERMINED);
    }
    return any
        ? new BoardVerdict(Verdict.COMPLIES, null)
        : new BoardVerdict(Verdict.NOT_DETERMINED, Reason.NOTHING_COUNTED);
  }
}
