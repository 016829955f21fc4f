package circuitverdict.select;

import circuitverdict.circuit.Circuit;
import java.util.List;

/** The cable clipped direct to a surface: reference method C. */
record ClippedDirect() implements Change {
  private static final String METHOD = "C";

  @Override
  public Circuit applyTo(Circuit circuit) {
    return circuit.with(circuit.cable().withMethod(METHOD));
  }

  @Override
  public List<Member> members() {
    return List.of(new Member("/cable/installation/referenceMethod", METHOD));
  }

  @Override
  public String words() {
    return "Clip the cable direct to a surface, outside insulation and conduit (method C).";
  }
}
