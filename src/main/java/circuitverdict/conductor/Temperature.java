package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Shared.Topic;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/** Operating temperatures and the factor that brings a resistance from 20 °C to them. */
public final class Temperature {
  private static final Formula FACTOR = Formula.of("Cθ", Unit.ONE, "1 + α·(θ − θ0)");
  private static final Formula SEPARATE = Formula.of("Cθ2", Unit.ONE, "1 + α·(θ − θ0)");

  private Temperature() {}

  /** Operating temperature of a cable's conductors, °C. */
  public static Figure operating(Cable cable, Dossier d) {
    Pointer at = new Pointer(cable.place(), "insulation");
    String insulation = d.need(cable.insulation(), at);
    if (insulation == null) {
      return Figure.unknown("θ", Unit.CELSIUS);
    }
    Value value = d.edition().table(TableName.TEMPERATURE).at("value", key(insulation));
    return d.tabled("θ", value, Unit.CELSIUS, at);
  }

  /** Factor from 20 °C to operating temperature. */
  public static Figure factor(Cable cable, Dossier d) {
    return d.once(
        Topic.TEMPERATURE_FACTOR,
        cable,
        inner ->
            inner
                .working()
                .step(FACTOR, coefficient(inner), operating(cable, inner), reference(inner)));
  }

  /** The greatest factor of a circuit's cables; unknown where one of them is. */
  public static Figure hottest(Circuit circuit, Dossier d) {
    Figure hottest = null;
    for (Cable cable : Wiring.cables(circuit)) {
      Figure factor = factor(cable, d);
      boolean first = hottest == null || !factor.known();
      hottest = first || hottest.known() && factor.value() > hottest.value() ? factor : hottest;
    }
    return hottest;
  }

  /** Factor from 20 °C for a separate, unbunched protective conductor at its own temperature. */
  public static Figure separateFactor(Dossier d) {
    Figure own = d.constant("θ", Constant.TEMPERATURE_SEPARATE_PROTECTIVE_CONDUCTOR);
    return d.working().step(SEPARATE, coefficient(d), own, reference(d));
  }

  private static Figure coefficient(Dossier d) {
    return d.constant("α", Constant.TEMPERATURE_RESISTANCE_COEFFICIENT);
  }

  private static Figure reference(Dossier d) {
    return d.constant("θ0", Constant.TEMPERATURE_REFERENCE_TEMPERATURE);
  }

  private static String key(String insulation) {
    return switch (insulation) {
      case "thermoplastic-70" -> "operating-temperature/thermoplastic-70";
      case "thermoplastic-90" -> "operating-temperature/thermoplastic-90";
      case "thermosetting-90" -> "operating-temperature/thermosetting-90";
      case "mineral-70" -> "operating-temperature/mineral-70";
      case "mineral-105" -> "operating-temperature/mineral-105";
      default -> insulation;
    };
  }
}
