package circuitverdict.check;

import circuitverdict.explain.Dossier;
import circuitverdict.explain.Note;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Shown;
import java.util.ArrayList;
import java.util.List;

/** What an electrician would say of a finding, made from its own figures. */
public final class Sentences {
  private Sentences() {}

  /** One sentence about a finding. */
  public static String of(Finding finding) {
    return of(finding, finding.governing() == null ? null : finding.governing().shown());
  }

  /** The same, with the texts of its governing comparison; null where it has none to show. */
  public static String of(Finding finding, Shown shown) {
    String title = finding.check().title();
    return switch (finding.verdict()) {
      case COMPLIES -> title + " complies" + strength(finding) + figures(finding, shown) + ".";
      case DOES_NOT_COMPLY ->
          title + " does not comply" + figures(finding, shown) + "." + facts(finding);
      case NOT_DETERMINED -> title + " is not determined" + wanted(finding) + ".";
      case NOT_APPLICABLE -> title + " does not apply here.";
    };
  }

  /** One sentence about a whole result. */
  public static String of(Result result) {
    if (result.verdict() == Verdict.COMPLIES) {
      return "Complies with every check made" + closest(result) + ".";
    }
    List<String> failing = titles(result, Verdict.DOES_NOT_COMPLY);
    List<String> open = titles(result, Verdict.NOT_DETERMINED);
    if (!failing.isEmpty()) {
      String rest = open.isEmpty() ? "" : "; not determined: " + String.join(", ", open);
      return "Does not comply: " + String.join(", ", failing) + rest + ".";
    }
    if (open.isEmpty()) {
      return "Not determined: no check that counts applies.";
    }
    return "Not determined: " + String.join(", ", open) + ".";
  }

  private static List<String> titles(Result result, Verdict verdict) {
    List<String> titles = new ArrayList<>();
    for (Finding finding : result.findings()) {
      if (finding.counted() && finding.verdict() == verdict) {
        titles.add(finding.check().title().toLowerCase(java.util.Locale.ROOT));
      }
    }
    return titles;
  }

  private static String closest(Result result) {
    Finding closest = null;
    for (Finding finding : result.findings()) {
      boolean figures = finding.counted() && finding.governing() != null;
      if (figures && (closest == null || margin(finding) < margin(closest))) {
        closest = finding;
      }
    }
    if (closest == null) {
      return "";
    }
    return "; the closest is "
        + closest.check().title().toLowerCase(java.util.Locale.ROOT)
        + ", with a margin of "
        + Shown.plain(Math.floor(margin(closest)))
        + " %";
  }

  private static double margin(Finding finding) {
    return finding.governing().marginPercent();
  }

  private static String strength(Finding finding) {
    if (finding.strength() == Dossier.Strength.DEEMED) {
      return ", deemed by clause";
    }
    return finding.strength() == Dossier.Strength.GUIDANCE ? ", by guidance" : "";
  }

  private static String figures(Finding finding, Shown shown) {
    if (shown == null) {
      return "";
    }
    Comparison c = finding.governing();
    String unit = unit(c);
    boolean holds = c.verdict() != Verdict.DOES_NOT_COMPLY;
    String relation =
        c.comparator() == Comparator.AT_MOST
            ? (holds ? " is within " : " exceeds ")
            : (holds ? " reaches " : " falls short of ");
    return ": "
        + c.actual().symbol()
        + " "
        + shown.actual()
        + unit
        + relation
        + c.limit().symbol()
        + " "
        + shown.limit()
        + unit;
  }

  /** What is broken by facts, where no figure says it: it stands first among the remarks. */
  private static String facts(Finding finding) {
    return finding.governing() != null || finding.remarks().isEmpty()
        ? ""
        : " " + finding.remarks().get(0).code().text();
  }

  private static String unit(Comparison comparison) {
    String symbol = comparison.actual().unit().symbol();
    return symbol.equals("1") ? "" : " " + symbol;
  }

  private static String wanted(Finding finding) {
    List<String> wanted = new ArrayList<>();
    for (Note note : finding.missing()) {
      String label = Labels.of(note);
      if (!wanted.contains(label)) {
        wanted.add(label);
      }
    }
    return wanted.isEmpty()
        ? ""
        : ": wanted " + String.join(", ", wanted.subList(0, Math.min(4, wanted.size())));
  }
}
