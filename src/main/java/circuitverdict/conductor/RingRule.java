package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Value;

/**
 * When the rule for ring final circuits applies (433.1.204): a ring of copper, 2.5 mm² (1.5 mm²
 * mineral) or more, behind a 30 A or 32 A device to a standard named by 433.1.201 or BS 3036.
 */
final class RingRule {
  private RingRule() {}

  static boolean covers(Circuit circuit, Figure rated, Dossier d) {
    Cable ring = circuit.cable();
    if (!ring.ring() || ring.lineCsaMm2() == null || ring.conductor() == Cable.Metal.ALUMINIUM) {
      return false;
    }
    boolean thirty =
        rated.value() == d.edition().constant(Constant.RING_CIRCUIT_RATING_30).number();
    boolean thirtyTwo =
        rated.value() == d.edition().constant(Constant.RING_CIRCUIT_RATING_32).number();
    Constant size =
        ring.construction() == Cable.Construction.MINERAL
            ? Constant.RING_CIRCUIT_LEAST_CSA_MINERAL
            : Constant.RING_CIRCUIT_LEAST_CSA;
    return (thirty || thirtyTwo)
        && named(circuit, d)
        && ring.lineCsaMm2() >= d.edition().constant(size).number();
  }

  private static boolean named(Circuit circuit, Dossier d) {
    String standard = circuit.device().data().standard();
    if (standard == null) {
      return false;
    }
    Value deemed = d.edition().table("overload-deemed").at("deemed", standard);
    return deemed != null || standard.equals("BS 3036");
  }
}
