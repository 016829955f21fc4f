package circuitverdict.circuit;

import java.util.List;

/**
 * A circuit.
 *
 * @param stage what the answer is for
 * @param kind final or distribution; null where not stated
 * @param supply the point that feeds it
 * @param live its live conductors; null where not stated
 * @param load what it feeds
 * @param cable its cable, or the first of several in series
 * @param furtherCables cables in series after the first; on a ring the spur at its worst point
 * @param device its overcurrent device; null where there is none yet
 * @param residualDevice a residual current device apart from it; null where none is stated
 * @param upstreamDevice the device upstream; null where none is stated
 * @param incomer the main switch or device of the board; null where none is stated
 * @param assembly the assembly that houses the device
 * @param backUp evidence that the device is backed up
 * @param premises where it is and who uses it
 * @param requirements what the caller demands beyond the rules
 */
public record Circuit(
    Stage stage,
    Kind kind,
    Supply supply,
    LiveConductors live,
    Load load,
    Cable cable,
    List<Cable> furtherCables,
    ProtectiveDevice device,
    ProtectiveDevice residualDevice,
    ProtectiveDevice upstreamDevice,
    ProtectiveDevice incomer,
    Assembly assembly,
    BackUp backUp,
    Premises premises,
    Requirements requirements) {

  /** What the answer is for: how much may be assumed. */
  public enum Stage {
    QUOTATION,
    DESIGN,
    SIGN_OFF
  }

  /** Final circuit or distribution circuit (Table 41.1). */
  public enum Kind {
    FINAL,
    DISTRIBUTION
  }

  /** The same circuit with another device. */
  public Circuit with(ProtectiveDevice other) {
    return new Circuit(
        stage,
        kind,
        supply,
        live,
        load,
        cable,
        furtherCables,
        other,
        residualDevice,
        upstreamDevice,
        incomer,
        assembly,
        backUp,
        premises,
        requirements);
  }

  /** The same circuit with another residual device. */
  public Circuit withResidual(ProtectiveDevice other) {
    return new Circuit(
        stage,
        kind,
        supply,
        live,
        load,
        cable,
        furtherCables,
        device,
        other,
        upstreamDevice,
        incomer,
        assembly,
        backUp,
        premises,
        requirements);
  }

  /** The same circuit behind another device. */
  public Circuit withUpstream(ProtectiveDevice other) {
    return new Circuit(
        stage,
        kind,
        supply,
        live,
        load,
        cable,
        furtherCables,
        device,
        residualDevice,
        other,
        incomer,
        assembly,
        backUp,
        premises,
        requirements);
  }

  /** The same circuit with another first cable. */
  public Circuit with(Cable other) {
    return new Circuit(
        stage,
        kind,
        supply,
        live,
        load,
        other,
        furtherCables,
        device,
        residualDevice,
        upstreamDevice,
        incomer,
        assembly,
        backUp,
        premises,
        requirements);
  }

  /** The same circuit on another supply. */
  public Circuit with(Supply other) {
    return new Circuit(
        stage,
        kind,
        other,
        live,
        load,
        cable,
        furtherCables,
        device,
        residualDevice,
        upstreamDevice,
        incomer,
        assembly,
        backUp,
        premises,
        requirements);
  }
}
