package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Load;
import circuitverdict.circuit.Premises;
import circuitverdict.explain.At;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Edition;

/**
 * Luminaires in dwellings (411.3.4, since 2018): their final circuits owe additional protection.
 */
final class LuminaireDuty {
  private LuminaireDuty() {}

  static AdditionalDuty of(Circuit circuit, Edition edition) {
    Clause clause = Clause.LUMINAIRES;
    boolean known =
        edition.constant(Constant.ADDITIONAL_PROTECTION_LUMINAIRES_DOMESTIC).number() > 0;
    Premises.Use use = circuit.premises().use();
    boolean elsewhere = use != null && use != Premises.Use.DOMESTIC;
    Boolean lamps = lamps(circuit.load());
    boolean none = Boolean.FALSE.equals(lamps);
    if (!known || elsewhere || none || circuit.kind() == Circuit.Kind.DISTRIBUTION) {
      return AdditionalDuty.of(clause, false);
    }
    if (lamps == null) {
      return AdditionalDuty.open(clause, At.LOAD_USE);
    }
    return use == null
        ? AdditionalDuty.open(clause, At.PREMISES_USE)
        : AdditionalDuty.of(clause, true);
  }

  /** Whether it supplies luminaires; null where what is not stated decides. */
  private static Boolean lamps(Load load) {
    if (load.hasLighting()) {
      return true;
    }
    boolean lamp =
        load.has(Load.Kind.LED) || load.has(Load.Kind.DISCHARGE) || load.has(Load.Kind.FILAMENT);
    boolean other = load.use() == Load.Use.OTHER;
    if (lamp) {
      // Lamps that are not said to be lighting may be none.
      return null;
    }
    return other || onlyOther(load) ? Boolean.FALSE : null;
  }

  /** Whether every part is said to be no lighting. */
  private static boolean onlyOther(Load load) {
    boolean all = !load.parts().isEmpty();
    for (Load part : load.parts()) {
      all &= part.use() == Load.Use.OTHER || onlyOther(part);
    }
    return all;
  }
}
