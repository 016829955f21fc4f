package circuitverdict.conductor;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.quantity.Unit;
import java.util.List;

/**
 * What a load draws when it starts, with all of it starting at once. Figures that are not known are
 * NaN; what is missing for them is noted where they are found.
 *
 * @param kind whether it starts at all, and how long the start lasts
 * @param current starting current Ist, r.m.s., A; of a load without a start the design current
 * @param duration how long it flows, s
 * @param peak greatest peak that it cannot exceed, A; unknown where nothing bounds it
 * @param guided current whose symmetrical peak common practice takes for the first peak, r.m.s., A
 * @param offset whether the peak is not stated and may be offset
 * @param energy energy of a pulse, A²s; unknown of a start that is none
 * @param held currents that certainly flow, each with its duration: of single motors and the like
 */
public record LoadStart(
    Kind kind,
    Figure current,
    Figure duration,
    Figure peak,
    Figure guided,
    boolean offset,
    Figure energy,
    List<Held> held) {

  /** How a load starts. */
  public enum Kind {
    /** It draws no more when it is switched on than when it runs. */
    STEADY,
    /** A pulse no longer than a half-wave. */
    PULSE,
    /** A start that lasts longer. */
    LASTING,
    /** Something that decides is missing. */
    UNKNOWN
  }

  /**
   * A current that flows for certain.
   *
   * @param current r.m.s., A
   * @param duration for how long, s
   */
  public record Held(Figure current, Figure duration) {}

  static final LoadStart UNKNOWN =
      new LoadStart(
          Kind.UNKNOWN,
          ampere(),
          Figure.unknown("tst", Unit.SECOND),
          ampere(),
          ampere(),
          false,
          Figure.unknown("I²t", Unit.AMPERE_SQUARED_SECOND),
          List.of());

  /** The start of the whole load of a circuit. */
  public static LoadStart of(Circuit circuit, LiveConductors live, Dossier d) {
    return new StartOfLoad(circuit, live, d).of(circuit.load(), At.LOAD);
  }

  private static Figure ampere() {
    return Figure.unknown("Ist", Unit.AMPERE);
  }
}
