package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.explain.Dossier;

/** One check of the wiring rules. */
public interface Check {
  /** Which check it is. */
  CheckName name();

  /** What it finds for a circuit; the dossier gathers what it needs. */
  Finding evaluate(Circuit circuit, Dossier d);
}
