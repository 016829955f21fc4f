package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** What a circuit's conductors are where the request leaves it to its structure. */
public final class Wiring {
  private Wiring() {}

  /** The live conductors: as stated, or line and neutral on a single-phase supply; else null. */
  public static LiveConductors live(Circuit circuit, Dossier d) {
    if (circuit.live() != null) {
      return circuit.live();
    }
    Integer phases = circuit.supply().phases();
    if (phases != null && phases == 1) {
      d.assume(NoteCode.ASSUMED_PHASES, At.LIVE);
      return new LiveConductors(1, true);
    }
    d.missing(phases == null ? At.PHASES : At.LIVE);
    return null;
  }

  /** All cables of the circuit in series; none where no cable is stated. */
  public static List<Cable> cables(Circuit circuit) {
    if (circuit.furtherCables().isEmpty()) {
      return List.of(circuit.cable());
    }
    List<Cable> cables = new ArrayList<>();
    cables.add(circuit.cable());
    cables.addAll(circuit.furtherCables());
    return cables;
  }

  /** The conductor's metal; copper may be assumed for a quotation, listed. */
  public static Cable.Metal metal(Cable cable, Dossier d) {
    Pointer at = new Pointer(cable.place(), "conductor");
    if (cable.conductor() == null && d.allows(Allowance.TYPICAL_VALUES)) {
      d.assume(NoteCode.ASSUMED_COPPER, at);
      return Cable.Metal.COPPER;
    }
    return d.need(cable.conductor(), at);
  }

  /** Cross-section of a line conductor, mm². */
  public static Figure lineCsa(Cable cable, Dossier d) {
    return d.need(
        "S", cable.lineCsaMm2(), Unit.SQUARE_MM, new Pointer(cable.place(), "lineCsaMm2"));
  }

  /**
   * Cross-section of the neutral, mm²: that of the line in a flat twin; where the construction
   * leaves it open it must be stated at sign-off.
   */
  public static Figure neutralCsa(Cable cable, Dossier d) {
    Pointer at = new Pointer(cable.place(), "neutralCsaMm2");
    if (cable.neutralCsaMm2() != null) {
      return d.given("S", cable.neutralCsaMm2(), Unit.SQUARE_MM, at);
    }
    if (cable.construction() == Cable.Construction.FLAT_TWIN_AND_EARTH) {
      return lineCsa(cable, d);
    }
    if (!d.allows(Allowance.TABLE_DEFAULTS)) {
      d.missing(at);
      return Figure.unknown("S", Unit.SQUARE_MM);
    }
    d.assume(NoteCode.ASSUMED_NEUTRAL_SIZE, at);
    return lineCsa(cable, d);
  }

  /**
   * Cross-section by which a cable is rated, mm²: on one phase the neutral carries what the line
   * does, so the smaller of the two counts; a smaller neutral of several lines is not judged.
   */
  public static Figure ratedCsa(Cable cable, LiveConductors live, Dossier d) {
    Figure line = lineCsa(cable, d);
    if (live == null || !live.neutral()) {
      return line;
    }
    Figure neutral = neutralCsa(cable, d);
    if (!line.known()) {
      return line;
    }
    boolean smaller = !Comparator.atMost(line.value(), neutral.value());
    if (live.lines() > 1 && neutral.known() && smaller) {
      d.missing(NoteCode.REDUCED_NEUTRAL, new Pointer(cable.place(), "neutralCsaMm2"));
      return Figure.unknown("S", Unit.SQUARE_MM);
    }
    return neutral.known() && !smaller ? line : neutral;
  }

  /** Length of a cable, m; of a ring the whole loop. */
  public static Figure length(Cable cable, Dossier d) {
    return d.need("L", cable.lengthM(), Unit.METRE, new Pointer(cable.place(), "lengthM"));
  }
}
