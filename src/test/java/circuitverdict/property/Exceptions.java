package circuitverdict.property;

import circuitverdict.check.CheckName;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Inputs whose absence says something at sign-off too, by the engineering basis. */
final class Exceptions {
  private Exceptions() {}

  /** Structure is taken as described: what is not named is not there (principle 2). */
  static boolean structure(String pointer) {
    return pointer.equals("/edition")
        || pointer.equals("/stage")
        || pointer.startsWith("/furtherCables")
        || pointer.equals("/cable/parallelCables")
        || pointer.endsWith("/insulationLengthM")
        || pointer.startsWith("/liveConductors/")
        || pointer.startsWith("/premises/locations/")
        || pointer.equals("/device/residual")
        || pointer.equals("/residualDevice")
        || pointer.equals("/upstreamDevice/residual")
        || pointer.equals("/upstreamDevice/settings/shortTimeA")
        || pointer.equals("/load/count")
        || pointer.equals("/load/protectiveConductorCurrentA");
  }

  /** Where absence is a statement of another kind. */
  static boolean named(String pointer, ObjectNode body) {
    return defaultCurrent(pointer, body)
        || ownFigure(pointer)
        || loadItself(pointer)
        || charging(pointer, body)
        || standingCurrent(pointer, body)
        || finalCircuit(pointer, body)
        || start(pointer, body)
        || declared(pointer)
        || pointer.equals("/device/letThrough"); // ranks first and settles both ways (section 5)
  }

  /** What the maker declares of a pair ranks before guidance, which speaks again without it. */
  private static boolean declared(String pointer) {
    return pointer.equals("/device/selectivity") || pointer.equals("/upstreamDevice/id");
  }

  /**
   * What the suitability of the device asks only where it is stated: the air and the dust around it
   * and the declaration for an assembly that is described. What it asks of a residual device falls
   * with it; a rated voltage of the caller's own stands in place of the standard's least.
   */
  static boolean ofSuitability(CheckName check, String pointer) {
    return check == CheckName.DEVICE_SUITABILITY
        && (pointer.equals("/assembly")
            || pointer.equals("/assembly/ambientTemperatureC")
            || pointer.equals("/assembly/relativeHumidityPercent")
            || pointer.equals("/premises")
            || pointer.equals("/premises/pollutionDegree")
            || pointer.equals("/residualDevice")
            || pointer.equals("/device/ratedVoltageV")
            || pointer.equals("/device/ratedLineToEarthVoltageV"));
  }

  /**
   * The one default: Ib is In for circuits of socket-outlets, rings too, of which no load is stated
   * (principle 2).
   */
  private static boolean defaultCurrent(String pointer, ObjectNode body) {
    return "socket-outlets".equals(Bodies.text(body, "/load/kind"))
        && (pointer.equals("/load/designCurrentA")
            || pointer.equals("/load/ratedPowerW")
            || pointer.equals("/load/ratedCurrentA"));
  }

  /**
   * 543.7 is owed where a standing current is stated (section 5), and falls with the whole load.
   */
  private static boolean standingCurrent(String pointer, ObjectNode body) {
    boolean counted = body.at("/load/count").isNumber();
    return pointer.equals("/load")
        && (counted || body.at("/load/protectiveConductorCurrentA").isNumber());
  }

  /** A circuit of socket-outlets is final by definition (Part 2), on a ring by its rule. */
  private static boolean finalCircuit(String pointer, ObjectNode body) {
    return pointer.equals("/circuitKind")
        && "ring".equals(Bodies.text(body, "/cable/arrangement"))
        && ("socket-outlets".equals(Bodies.text(body, "/load/kind"))
            || "socket-outlet".equals(Bodies.text(body, "/load/connection")));
  }

  /** A figure of the caller's own stands in place of a table's, which counts again without it. */
  private static boolean ownFigure(String pointer) {
    return pointer.endsWith("/lineResistanceOhmPerKm")
        || pointer.endsWith("/protectiveResistanceOhmPerKm")
        || pointer.endsWith("/armourResistanceOhmPerKm");
  }

  /**
   * Of charging points a stated current stands in place of that which their ratings give; and where
   * nothing says that they are such, their power counts, which is rounded up.
   */
  private static boolean charging(String pointer, ObjectNode body) {
    boolean charging = "vehicle-charging".equals(Bodies.text(body, "/load/kind"));
    boolean rated = body.at("/load/ratedCurrentA").isNumber();
    boolean powered = body.at("/load/ratedPowerW").isNumber();
    return charging
        && (pointer.equals("/load/designCurrentA") && rated
            || pointer.equals("/load/kind") && powered);
  }

  /**
   * A resistance and a charging point have no start by their kind; the maker's numbers settle it
   * both ways; a short-time release that is not named is not there.
   */
  private static boolean start(String pointer, ObjectNode body) {
    String kind = Bodies.text(body, "/load/kind");
    boolean none = "resistive".equals(kind) || "vehicle-charging".equals(kind);
    return none && pointer.startsWith("/load/inrush")
        || pointer.startsWith("/load/inrush/countLimits")
        || pointer.equals("/device/settings/shortTimeA");
  }

  /** What makes a load draw more than its rated power at its voltage is part of what it is. */
  private static boolean loadItself(String pointer) {
    return pointer.equals("/load/efficiencyPercent")
        || pointer.equals("/load/residualWaveform")
        || pointer.equals("/load/thirdHarmonicPercent");
  }
}
