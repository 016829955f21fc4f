package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.explain.Dossier;

/** One check of the wiring rules. */
public interface Check {
  /** Which check it is. */
  CheckName name();

  /** Whether what it finds enters the overall verdict, where it applies at all. */
  default boolean counts(Circuit circuit) {
    return true;
  }

  /** What it finds for a circuit; the dossier gathers what it needs. */
  Finding evaluate(Circuit circuit, Dossier d);
}
