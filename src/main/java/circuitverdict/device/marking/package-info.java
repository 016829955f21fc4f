/**
 * Reads the face of a device: the strings printed on it and symbols described in the trade's words.
 * What a mark means stands in the data of {@link circuitverdict.standard.Marks}; here is only how
 * it is written. Nothing is guessed: what could mean two things is told, and what no rule knows is
 * handed back as it stands.
 */
package circuitverdict.device.marking;
