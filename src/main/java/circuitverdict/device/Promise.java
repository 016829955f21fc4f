package circuitverdict.device;

import circuitverdict.explain.Figure;

/**
 * A current and a time that go together: from this current on a device opens within the time, or up
 * to it the device holds at least so long.
 *
 * @param current the current, A
 * @param timeS the time, s; infinite where it holds for ever
 */
public record Promise(Figure current, double timeS) {}
