package circuitverdict.check;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Load;
import circuitverdict.circuit.Supply;
import circuitverdict.conductor.Wiring;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/**
 * Limits of voltage drop that what is stated leaves possible, % (Appendix 4, 6.4): one where supply
 * and use are stated, else the strictest and the mildest of them.
 *
 * @param strictest the least limit possible
 * @param mildest the greatest limit possible
 * @param ownershipOpen whether the supply's ownership is not stated
 * @param useOpen whether the use is not stated
 * @param ownStrictest limit of a final circuit of a private supply by itself for the strictest use;
 *     null where there is none (Table 4Ab, note)
 * @param ownMildest the same for the mildest use
 */
record DropLimits(
    Figure strictest,
    Figure mildest,
    boolean ownershipOpen,
    boolean useOpen,
    Figure ownStrictest,
    Figure ownMildest) {
  private static final Formula ALLOWED =
      Formula.of("Δu,max", Unit.PERCENT, "Δu,tab + min(a·max(L − L0; 0); a,max)");

  static DropLimits of(Circuit circuit, Dossier d) {
    Supply.Ownership ownership = circuit.supply().ownership();
    Load.Use use = circuit.load().hasLighting() ? Load.Use.LIGHTING : circuit.load().use();
    boolean ownershipOpen = ownership == null;
    boolean useOpen = use == null;
    String strictOwner = ownership == Supply.Ownership.PRIVATE ? "private" : "public";
    String mildOwner = ownership == Supply.Ownership.PUBLIC ? "public" : "private";
    String strictUse = use == Load.Use.OTHER ? "other" : "lighting";
    String mildUse = use == Load.Use.LIGHTING ? "lighting" : "other";
    Figure strictest = allowed(circuit, strictOwner, strictUse, d);
    Figure mildest = ownershipOpen || useOpen ? allowed(circuit, mildOwner, mildUse, d) : strictest;
    boolean own =
        ownership == Supply.Ownership.PRIVATE && circuit.kind() != Circuit.Kind.DISTRIBUTION;
    return new DropLimits(
        strictest,
        mildest,
        ownershipOpen,
        useOpen,
        own ? allowed(circuit, "public", strictUse, d) : null,
        own ? allowed(circuit, "public", mildUse, d) : null);
  }

  boolean open() {
    return ownershipOpen || useOpen;
  }

  void noteMissing(Dossier d) {
    if (ownershipOpen) {
      d.missing(At.OWNERSHIP);
    }
    if (useOpen) {
      d.missing(At.LOAD_USE);
    }
  }

  private static Figure allowed(Circuit circuit, String ownership, String use, Dossier d) {
    Value tabled = d.edition().table(TableName.VOLTAGE_DROP_LIMITS).at("limit", ownership, use);
    Figure limit = Figure.of("Δu,tab", tabled);
    double length = length(circuit);
    Figure threshold = d.constant("L0", Constant.LENGTH_ALLOWANCE_THRESHOLD);
    if (Comparator.atMost(length, threshold.value())) {
      return d.working().look(limit.as("Δu,max"));
    }
    d.remark(NoteCode.LENGTH_ALLOWANCE);
    return d.working()
        .step(
            ALLOWED,
            limit,
            d.constant("a", Constant.LENGTH_ALLOWANCE_PER_METRE),
            Figure.derived("L", length, Unit.METRE),
            threshold,
            d.constant("a,max", Constant.LENGTH_ALLOWANCE_GREATEST));
  }

  /** Length that counts for the allowance: of a ring half the loop. */
  private static double length(Circuit circuit) {
    double length = 0;
    for (Cable cable : Wiring.cables(circuit)) {
      double own = cable.lengthM() == null ? 0 : cable.lengthM();
      length += cable.ring() ? own / 2 : own;
    }
    return length;
  }
}
