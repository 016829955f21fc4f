package circuitverdict.device.marking;

import circuitverdict.explain.Note;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the face of a device tells.
 *
 * @param device the members of the device that it tells, in the contract's order: numbers, whole
 *     numbers for counts and classes, words or booleans
 * @param disputed what the marks say of members that are not taken from them, since it contradicts
 * @param marks each mark with its meaning, in the order stated
 * @param missing what checks need of such a device and the face does not tell
 * @param contradictions marks that cannot all be true
 * @param remarks what else is to be said of the marks
 */
public record Reading(
    Map<DeviceMember, Object> device,
    Map<DeviceMember, Set<Object>> disputed,
    List<Mark> marks,
    List<Note> missing,
    List<Note> contradictions,
    List<Note> remarks) {}
