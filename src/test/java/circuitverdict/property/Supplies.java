package circuitverdict.property;

import com.fasterxml.jackson.databind.node.ObjectNode;

/** Draws supplies: their stated currents and impedances are inputs apart, and mostly agree. */
final class Supplies {
  private static final String[] KINDS = {"threePhase", "twoPhase", "lineToNeutral", "lineToEarth"};

  private final Draw draw;

  Supplies(Draw draw) {
    this.draw = draw;
  }

  /** A supply for this many lines. */
  void supply(ObjectNode supply, int lines) {
    boolean origin = draw.percent(50);
    supply.put("point", origin ? "origin" : "board");
    String earthing = draw.of("TN-C-S", "TN-C-S", "TN-S", "TT");
    supply.put("earthing", earthing);
    supply.put("phases", lines == 3 ? Integer.valueOf(3) : draw.of(1, 1, 3));
    boolean own = draw.percent(20);
    supply.put("ownership", own ? "private" : "public");
    supply.put(
        "lineToEarthVoltageV",
        own && draw.percent(30) ? draw.of(110, 220, 240) : Integer.valueOf(230));
    supply.put("basis", draw.of("declared", "calculated-hot", "measured-cold", "measured-cold"));
    supply.put("instrumentUncertaintyPercent", draw.of(0, 2, 5, 10));
    loop(supply, earthing.equals("TT"), origin);
    currents(supply);
    if (!origin) {
      supply.put("voltageDropPercent", draw.of(0.0, 0.5, 1.0, 2.0));
    }
    if (draw.percent(25)) {
      supply.put("openPenProtection", draw.percent(60));
    }
  }

  private void loop(ObjectNode supply, boolean tt, boolean origin) {
    double loop = tt ? draw.between(2, 300) : draw.between(0.02, 2);
    supply.put("loopImpedanceOhm", loop);
    if (tt && draw.percent(70)) {
      supply.put(
          "earthElectrodeResistanceOhm",
          draw.percent(80) ? loop * draw.of(0.5, 0.9, 1.0) : draw.between(1, loop));
    }
    if (!origin && draw.percent(50)) {
      supply.put("originLoopImpedanceOhm", loop * draw.of(0.3, 0.8, 1.0));
    }
    if (draw.percent(10)) {
      supply.put("loopReactanceOhm", loop * draw.of(0.1, 0.6));
    }
    if (draw.percent(85)) {
      double neutral = tt ? draw.between(0.02, 1) : loop * draw.of(0.6, 0.95, 1.0);
      supply.put("lineToNeutralLoopImpedanceOhm", neutral);
      if (draw.percent(10)) {
        supply.put("lineToNeutralLoopReactanceOhm", neutral * 0.3);
      }
    }
  }

  /**
   * Whether stated currents and impedances can both be true: no fault at the far end is greater
   * than the greatest at the near one. Of figures that cannot, the principle does not speak.
   */
  static boolean agree(ObjectNode body) {
    Double voltage = Bodies.number(body, "/supply/lineToEarthVoltageV");
    double greatest = (voltage == null ? 230 : voltage) / least(body);
    for (String kind : KINDS) {
      Double stated = Bodies.number(body, "/supply/faultCurrents/" + kind + "/maximumA");
      if (stated != null && stated < greatest) {
        return false;
      }
    }
    // The loop of an earth electrode contains it.
    Double electrode = Bodies.number(body, "/supply/earthElectrodeResistanceOhm");
    Double loop = Bodies.number(body, "/supply/loopImpedanceOhm");
    if (electrode != null && loop != null && electrode > loop) {
      return false;
    }
    Double any = Bodies.number(body, "/supply/maximumFaultCurrentA");
    return any == null || any >= greatest && ofSomeKind(body, any);
  }

  /** The greatest of any kind is that of some kind, of one that is not stated or of one that is. */
  private static boolean ofSomeKind(ObjectNode body, double any) {
    boolean single = body.at("/supply/phases").intValue() == 1;
    for (String kind : KINDS) {
      Double stated = Bodies.number(body, "/supply/faultCurrents/" + kind + "/maximumA");
      boolean flows = !single || kind.startsWith("lineTo");
      boolean unbounded = stated == null && !kind.equals("twoPhase");
      if (flows && (unbounded || stated != null && stated >= any)) {
        return true;
      }
    }
    return false;
  }

  private static double least(ObjectNode body) {
    double least = Double.POSITIVE_INFINITY;
    for (String loop : new String[] {"loopImpedanceOhm", "lineToNeutralLoopImpedanceOhm"}) {
      Double stated = Bodies.number(body, "/supply/" + loop);
      least = stated == null ? least : Math.min(least, stated);
    }
    return least;
  }

  private void currents(ObjectNode supply) {
    Double neutral = Bodies.number(supply, "/lineToNeutralLoopImpedanceOhm");
    double stiff = neutral == null ? 0.3 : neutral;
    Double earth = Bodies.number(supply, "/loopImpedanceOhm");
    stiff = earth == null ? stiff : Math.min(stiff, earth);
    double greatest =
        draw.percent(15) ? draw.between(200, 20_000) : draw.of(1.0, 1.1, 1.5, 2.2) * 240 / stiff;
    greatest = Math.min(25_000, Math.rint(greatest));
    if (draw.percent(90)) {
      supply.put("maximumFaultCurrentA", greatest);
    }
    if (draw.percent(30)) {
      ObjectNode kinds = supply.putObject("faultCurrents");
      for (String kind : KINDS) {
        if (draw.percent(60)) {
          kinds.putObject(kind).put("maximumA", Math.rint(greatest * draw.of(0.6, 0.95, 1.0)));
        }
      }
    }
  }
}
