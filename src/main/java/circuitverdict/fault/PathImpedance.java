package circuitverdict.fault;

import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Source;

/**
 * Impedance of the path of one kind of fault, from the source to a point.
 *
 * @param kind the kind of fault
 * @param cold whether it is for greatest currents, conductors at 20 °C
 * @param apart a part of which only the modulus is known, Ω; zero where there is none
 * @param resistance of the rest, Ω
 * @param reactance of the rest, Ω
 */
record PathImpedance(
    FaultKind kind, boolean cold, Figure apart, Figure resistance, Figure reactance) {
  private static final Figure NONE = Figure.derived("Zo", 0, Unit.OHM);

  /** One of known resistance and reactance. */
  static PathImpedance of(FaultKind kind, boolean cold, Figure resistance, Figure reactance) {
    FaultKind.Path path = kind.path(cold);
    return new PathImpedance(
        kind,
        cold,
        NONE,
        resistance.as(path.resistance().symbol()),
        reactance.as(path.reactance().symbol()));
  }

  /** One of which only the modulus is known. */
  static PathImpedance ofModulus(FaultKind kind, boolean cold, Figure modulus) {
    FaultKind.Path path = kind.path(cold);
    return new PathImpedance(
        kind,
        cold,
        modulus.as("Zo"),
        Figure.derived(path.resistance().symbol(), 0, Unit.OHM),
        Figure.derived(path.reactance().symbol(), 0, Unit.OHM));
  }

  /** The same as found at the point before. */
  PathImpedance from(Source before) {
    return new PathImpedance(
        kind, cold, from(apart, before), from(resistance, before), from(reactance, before));
  }

  private static Figure from(Figure figure, Source before) {
    return figure.value() == 0
        ? figure
        : new Figure(figure.symbol(), figure.value(), figure.unit(), before);
  }

  PathImpedance plus(Figure partResistance, Figure partReactance, Dossier d) {
    FaultKind.Path path = kind.path(cold);
    return new PathImpedance(
        kind,
        cold,
        apart,
        d.working().step(path.resistance(), resistance.as("Ro"), partResistance.as("Rc")),
        d.working().step(path.reactance(), reactance.as("Xo"), partReactance.as("Xc")));
  }

  /** Whether resistance and reactance are known apart. */
  boolean resolved() {
    return apart.value() == 0;
  }

  /** Its modulus, or the bound of it that is worse for its currents, Ω. */
  Figure modulus(Dossier d) {
    FaultKind.Path path = kind.path(cold);
    return resolved()
        ? d.working().step(path.modulus(), resistance, reactance)
        : d.working().step(path.bounded(), apart, resistance, reactance);
  }
}
