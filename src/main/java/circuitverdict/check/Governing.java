package circuitverdict.check;

import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Slice;
import circuitverdict.explain.Step;
import java.util.List;

/** The comparison that governs a finding, and the working that leads to it. */
final class Governing {
  private Governing() {}

  /** As below, but for the one that answers the question, unless another fails or is open alone. */
  static Comparison of(List<Comparison> comparisons, Comparison lead, Verdict verdict) {
    Comparison governing = of(comparisons, verdict);
    boolean leads = lead != null && verdict != Verdict.DOES_NOT_COMPLY;
    boolean same = leads && lead.verdict() == governing.verdict();
    return leads && (same || lead.verdict() == verdict) ? lead : governing;
  }

  /**
   * The failing comparison with the greatest excess, else the unknown one, else the least margin.
   * Null where facts alone fail: what was compared does not say why.
   */
  static Comparison of(List<Comparison> comparisons, Verdict verdict) {
    Comparison governing = null;
    for (Comparison each : comparisons) {
      boolean eligible =
          verdict == Verdict.COMPLIES
              || each.verdict() == verdict
              || verdict == Verdict.NOT_DETERMINED && each.verdict() != Verdict.COMPLIES;
      if (eligible && (governing == null || each.marginPercent() < governing.marginPercent())) {
        governing = each;
      }
    }
    boolean open = verdict == Verdict.NOT_DETERMINED && !comparisons.isEmpty();
    return governing == null && open ? comparisons.get(0) : governing;
  }

  /**
   * The steps, closed by the comparison itself, so that the last value is the one compared.
   *
   * @param told figures that the reader is told besides those compared
   */
  static List<Step> working(
      Comparison governing, List<Comparison> comparisons, List<Figure> told, Dossier d) {
    if (!d.working().records()) {
      return List.of();
    }
    Slice slice = d.working().slice();
    for (int i = 0; i < told.size(); i++) {
      slice.keep(told.get(i));
    }
    for (int i = 0; i < comparisons.size(); i++) {
      slice.keep(comparisons.get(i).compared());
      slice.keep(comparisons.get(i).limit());
    }
    return governing == null
        ? slice.steps()
        : slice.closedBy(
            Step.comparing(governing.compared(), governing.comparator(), governing.limit()));
  }
}
