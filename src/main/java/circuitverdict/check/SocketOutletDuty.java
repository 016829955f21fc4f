package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Load;
import circuitverdict.circuit.Premises;
import circuitverdict.explain.At;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Edition;
import java.util.List;

/**
 * Socket-outlets (411.3.3): final circuits of outlets up to 32 A owe additional protection; in 2008
 * those up to 20 A, and up to 32 A what feeds mobile equipment outdoors, as an outlet there may. A
 * documented risk assessment can excuse it where neither a dwelling nor ordinary persons are
 * concerned; no request states one.
 */
final class SocketOutletDuty {
  private static final String ORDINARY = "ordinary-persons";

  private SocketOutletDuty() {}

  static AdditionalDuty of(Circuit circuit, Edition edition) {
    Clause clause = Clause.SOCKET_OUTLETS;
    Boolean small = small(circuit, edition);
    if (small == null) {
      return AdditionalDuty.open(clause, deciding(circuit.load()));
    }
    if (!small) {
      return mobileOutdoors(circuit, edition);
    }
    Premises premises = circuit.premises();
    if (premises.use() == Premises.Use.DOMESTIC || ORDINARY.equals(premises.operatedBy())) {
      return AdditionalDuty.of(clause, true);
    }
    if (premises.operatedBy() == null) {
      return AdditionalDuty.open(clause, At.OPERATED_BY);
    }
    return premises.use() == null
        ? AdditionalDuty.open(clause, At.PREMISES_USE)
        : AdditionalDuty.unless(clause, NoteCode.RISK_ASSESSMENT, At.PREMISES_USE);
  }

  private static AdditionalDuty mobileOutdoors(Circuit circuit, Edition edition) {
    double greatest =
        edition.constant(Constant.ADDITIONAL_PROTECTION_MOBILE_OUTDOORS_GREATEST_CURRENT).number();
    boolean concerned =
        circuit.kind() != Circuit.Kind.DISTRIBUTION
            && !Boolean.FALSE.equals(small(circuit.load(), greatest));
    List<String> locations = circuit.premises().locations();
    return concerned && locations == null
        ? AdditionalDuty.open(Clause.SOCKET_OUTLETS, At.LOCATIONS)
        : AdditionalDuty.of(Clause.SOCKET_OUTLETS, concerned && locations.contains("outdoors"));
  }

  /**
   * Whether it is a final circuit with an outlet up to the rating of the clause; null where what is
   * not stated decides.
   */
  static Boolean small(Circuit circuit, Edition edition) {
    if (circuit.kind() == Circuit.Kind.DISTRIBUTION) {
      return false;
    }
    double greatest =
        edition.constant(Constant.ADDITIONAL_PROTECTION_SOCKET_GREATEST_CURRENT).number();
    return small(circuit.load(), greatest);
  }

  private static Boolean small(Load load, double greatest) {
    if (load.parts().isEmpty()) {
      return ofOne(load, greatest);
    }
    boolean byOutlet =
        load.connection() == Load.Connection.SOCKET_OUTLET
            || load.kind() == Load.Kind.SOCKET_OUTLETS;
    Boolean any = byOutlet ? ofOne(load, greatest) : Boolean.FALSE;
    if (Boolean.TRUE.equals(any)) {
      return true;
    }
    for (Load part : load.parts()) {
      Boolean each = small(part, greatest);
      if (Boolean.TRUE.equals(each)) {
        return true;
      }
      any = each == null ? null : any;
    }
    // What connects the whole says it of parts that do not.
    return any == null && load.onlyFixed() ? Boolean.FALSE : any;
  }

  private static Boolean ofOne(Load load, double greatest) {
    if (load.onlyFixed()) {
      return false;
    }
    Double rated = load.ratedCurrentA();
    if (rated == null) {
      return null;
    }
    boolean within = Comparator.atMost(rated, greatest);
    return load.hasSocketOutlet() ? Boolean.valueOf(within) : within ? null : Boolean.FALSE;
  }

  private static Pointer[] deciding(Load load) {
    return new Pointer[] {load.hasSocketOutlet() ? At.OUTLET_RATING : At.CONNECTION};
  }
}
