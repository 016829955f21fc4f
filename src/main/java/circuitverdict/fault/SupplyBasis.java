package circuitverdict.fault;

import circuitverdict.circuit.Supply;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;

/**
 * What the figures of a supply rest on: typical ones serve a quotation, such as were computed with
 * stand-ins a design, and no failure rests on either.
 */
final class SupplyBasis {
  private SupplyBasis() {}

  /**
   * Whether figures may be used at this stage; if not, that they are so is noted as missing.
   *
   * @param typical what is said of a typical figure
   */
  static boolean serves(Supply supply, NoteCode typical, Dossier d) {
    Supply.Basis basis = supply.basis();
    boolean stands = basis == Supply.Basis.TYPICAL || basis == Supply.Basis.ESTIMATED;
    if (!stands) {
      return true;
    }
    boolean estimated = basis == Supply.Basis.ESTIMATED;
    if (!d.allows(estimated ? Allowance.TABLE_DEFAULTS : Allowance.TYPICAL_VALUES)) {
      d.missing(At.BASIS);
      return false;
    }
    d.assumeCurable(estimated ? NoteCode.ESTIMATED_SUPPLY : typical, At.BASIS);
    return true;
  }
}
