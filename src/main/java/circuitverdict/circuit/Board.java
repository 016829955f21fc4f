package circuitverdict.circuit;

import java.util.List;

/**
 * A board: the point where circuits leave, with the main switch or device before them all.
 *
 * @param place JSON pointer of the board in the request, empty for the request itself
 * @param here a circuit of no load that stands at the board: its supply, stage and requirements;
 *     its load is the stated one of the circuit that feeds the board, if any
 * @param incomer its main switch or device; null where none is stated
 * @param main the main devices at its busbars that open on a fault
 * @param before overcurrent devices that carry all of the board before its incomer, nearest first
 * @param assembly the assembly that houses it
 * @param diversityFactor share of the sum of its circuits that it draws at most; null where not
 *     stated
 * @param ways its circuits, in the order of the request
 * @param groups what shares a residual current device, in the order of the request
 */
public record Board(
    String place,
    Circuit here,
    ProtectiveDevice incomer,
    List<ProtectiveDevice> main,
    List<ProtectiveDevice> before,
    Assembly assembly,
    Double diversityFactor,
    List<Way> ways,
    List<Group> groups) {

  /**
   * A circuit of a board.
   *
   * @param place JSON pointer of the circuit in the request
   * @param lines numbers of the lines that it loads, 1 to 3; empty where they are not known
   * @param circuit the circuit as it is judged; null where what is stated of it is not valid
   * @param feedsBoard whether it feeds a board, which draws its load
   */
  public record Way(String place, List<Integer> lines, Circuit circuit, boolean feedsBoard) {}

  /**
   * Circuits that share a residual current device.
   *
   * @param device the device, placed where the request states it first
   * @param ways the circuits
   */
  public record Group(ProtectiveDevice device, List<Way> ways) {}

  /** The nearest overcurrent device before its incomer; null where none is stated. */
  public ProtectiveDevice upstream() {
    return before.isEmpty() ? null : before.get(0);
  }

  /** The same board on another supply. */
  public Board on(Supply supply) {
    return new Board(
        place, here.with(supply), incomer, main, before, assembly, diversityFactor, ways, groups);
  }
}
