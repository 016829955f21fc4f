package circuitverdict.service.edge;

import java.util.List;

/**
 * The request cannot be evaluated, through the caller's doing: answered as a problem of status 4xx
 * with everything that is wrong. Thrown often and caught once, so it records no stack.
 */
public final class InvalidRequest extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient Problem problem;

  /** With the kind's usual status, and a detail that sums the faults up. */
  public InvalidRequest(ProblemCatalogue type, List<Fault> faults) {
    this(type.status(), type, faults);
  }

  /** With a status of its own, for instance 404 for an unknown edition in the address. */
  public InvalidRequest(int status, ProblemCatalogue type, List<Fault> faults) {
    this(new Problem(type, status, summary(type, faults), faults));
  }

  /** With the problem as it is to be answered. */
  public InvalidRequest(Problem problem) {
    super(problem.detail(), null, false, false);
    this.problem = problem;
  }

  /** There is nothing at this address; {@code detail} says what was looked for. */
  public static InvalidRequest notFound(String detail) {
    ProblemCatalogue type = ProblemCatalogue.NOT_FOUND;
    return new InvalidRequest(new Problem(type, type.status(), detail, List.of()));
  }

  /** What is answered. */
  public Problem problem() {
    return problem;
  }

  /** The HTTP status. */
  public int status() {
    return problem.status();
  }

  /** The kind of problem. */
  public ProblemCatalogue type() {
    return problem.kind();
  }

  /** Everything wrong with the request. */
  public List<Fault> faults() {
    return problem.errors();
  }

  private static String summary(ProblemCatalogue type, List<Fault> faults) {
    if (faults.isEmpty()) {
      return type.meaning();
    }
    if (faults.size() == 1) {
      return faults.get(0).detail();
    }
    if (faults.size() >= Faults.LIMIT) {
      return "Many things are wrong with the request; the first " + Faults.LIMIT + " are listed.";
    }
    return faults.size() + " things are wrong with the request; all are listed.";
  }
}
