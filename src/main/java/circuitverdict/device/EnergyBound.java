package circuitverdict.device;

import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;

/**
 * One thing that is known of the energy a device lets through. Over a stretch of currents that none
 * of its corners divides it gives the greatest and the least energy, A²s: infinity and zero where
 * it says nothing. What holds at its lower end holds in all of it: a corner belongs to the stretch
 * above it.
 */
interface EnergyBound {
  /** Adds the currents at which what it says changes. */
  void addTo(Corners corners);

  /** A corner of its own with its source, or found by a step; null where it has none to tell. */
  default Figure corner(double ampere, Dossier d) {
    return null;
  }

  /** Greatest energy over the stretch. */
  double greatest(double from, double to);

  /** Least energy over the stretch that is certain to be reached somewhere in it. */
  double least(double from, double to);

  /** Whether over the stretch it settles the energy both ways, before any other bound. */
  default boolean settles(double from, double to) {
    return false;
  }

  /**
   * The greatest energy over the stretch as a figure, with its working.
   *
   * @param end the current at the stretch's upper end, as the reader knows it
   */
  Figure explain(double from, double to, Figure end, Dossier d);

  /** The least energy over the stretch, where it is any, as a figure with its working. */
  default Figure explainLeast(double from, double to, Figure end, Dossier d) {
    return explain(from, to, end, d);
  }
}
