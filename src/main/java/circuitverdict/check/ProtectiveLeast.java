package circuitverdict.check;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.conductor.ProtectiveConductors;
import circuitverdict.conductor.Wiring;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Constant;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/**
 * Least sizes of protective conductors: outside a cable, conduit or trunking 2.5 mm² if
 * mechanically protected, else 4 mm² (543.1.1); with a standing current above 10 mA high integrity
 * (543.7).
 */
final class ProtectiveLeast {
  private static final Formula EQUIVALENT = Formula.of("S,min", Unit.SQUARE_MM, "S0·k1/k2");

  private ProtectiveLeast() {}

  static void judge(Circuit circuit, Judgement judgement, Dossier d) {
    for (Cable cable : Wiring.cables(circuit)) {
      if (ProtectiveConductors.alone(cable)) {
        alone(cable, judgement, d);
      }
    }
    standing(circuit, judgement, d);
  }

  /**
   * Whether it is protected mechanically is not stated: between the two sizes nothing is decided.
   */
  private static void alone(Cable cable, Judgement judgement, Dossier d) {
    judgement.by(Clause.PROTECTIVE_LEAST);
    Figure actual = ProtectiveConductors.csa(cable, d);
    Figure open = equivalent(cable, Constant.LEAST_PROTECTIVE_SIZE_UNPROTECTED, d);
    Figure covered = equivalent(cable, Constant.LEAST_PROTECTIVE_SIZE_PROTECTED, d);
    boolean between =
        Comparator.AT_LEAST.holds(actual.value(), covered.value())
            && !Comparator.atMost(open.value(), actual.value());
    if (between) {
      d.missing(new Pointer(cable.place(), "protectiveCsaMm2"));
      judgement.undetermined();
      return;
    }
    boolean small = actual.known() && !Comparator.AT_LEAST.holds(actual.value(), covered.value());
    if (small) {
      judgement.certain();
    }
    judgement.compare(cable.place(), actual, Comparator.AT_LEAST, small ? covered : open);
  }

  /** The sizes are of copper: another metal needs more, as its factor k is less (Table 54.2). */
  private static Figure equivalent(Cable cable, Constant size, Dossier d) {
    Figure copper = d.constant("S,min", size);
    Cable.Metal metal = ProtectiveConductors.metal(cable, d);
    if (metal == Cable.Metal.COPPER) {
      return copper;
    }
    String insulation = d.need(cable.insulation(), new Pointer(cable.place(), "insulation"));
    Value k1 = factor(Cable.Metal.COPPER, insulation, copper, d);
    Value k2 = factor(metal, insulation, copper, d);
    return k1 == null || k2 == null
        ? Figure.unknown("S,min", Unit.SQUARE_MM)
        : d.working().step(EQUIVALENT, copper.as("S0"), Figure.of("k1", k1), Figure.of("k2", k2));
  }

  private static Value factor(Cable.Metal metal, String insulation, Figure size, Dossier d) {
    return metal == null || insulation == null
        ? null
        : d.edition()
            .table(TableName.K_PROTECTIVE)
            .at("k", "separate", metal.word(), insulation, size.value());
  }

  private static void standing(Circuit circuit, Judgement judgement, Dossier d) {
    Figure current =
        d.given(
            "Ipe", circuit.load().protectiveConductorCurrentA(), Unit.AMPERE, At.STANDING_CURRENT);
    double moderate = d.edition().constant(Constant.STANDING_CURRENT_MODERATE).number();
    double high = d.edition().constant(Constant.STANDING_CURRENT_HIGH).number();
    if (!current.known() || Comparator.atMost(current.value(), moderate)) {
      return;
    }
    judgement.by(Clause.STANDING_CURRENT);
    d.remark(NoteCode.STANDING_CURRENT, current);
    if (Comparator.atMost(current.value(), high)) {
      return;
    }
    Figure least = d.constant("S,min", Constant.STANDING_CURRENT_HIGH_CSA);
    for (Cable cable : Wiring.cables(circuit)) {
      Figure actual = ProtectiveConductors.section(cable, d);
      if (cable.ring() || Comparator.AT_LEAST.holds(actual.value(), least.value())) {
        continue;
      }
      d.missing(NoteCode.HIGH_INTEGRITY_NEEDED, ProtectiveConductors.sectionAt(cable), least);
      judgement.undetermined();
    }
  }
}
