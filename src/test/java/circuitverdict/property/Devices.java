package circuitverdict.property;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;

/** Draws protective devices. */
final class Devices {
  private static final Integer[] RATINGS = {6, 10, 13, 16, 20, 25, 32, 32, 32, 40, 50, 63, 80, 100};
  private static final Integer[] CAPACITIES = {3000, 4500, 6000, 6000, 10_000, 15_000, 25_000};
  private static final Map<String, Integer[]> FUSES =
      Map.of(
          "BS 88-2", new Integer[] {2, 4, 6, 10, 16, 20, 25, 32, 40, 50, 63, 80, 100},
          "BS 88-3", new Integer[] {5, 16, 20, 32, 45, 63, 80, 100},
          "BS 1361", new Integer[] {5, 15, 20, 30, 45, 60, 80, 100},
          "BS 3036", new Integer[] {5, 15, 20, 30, 45, 60, 100},
          "BS 1362", new Integer[] {3, 13});

  private final Draw draw;

  Devices(Draw draw) {
    this.draw = draw;
  }

  /** The circuit's device; of a ring one that its rule names. */
  void device(ObjectNode device, boolean ring) {
    int kind = ring ? 0 : draw.whole(0, 99);
    if (kind < 70) {
      breaker(device, ring);
    } else if (kind < 85) {
      fuse(device);
    } else {
      adjustable(device);
    }
    if (draw.percent(10)) {
      device.put("currentLimiting", draw.percent(60));
    }
    if (draw.percent(15)) {
      letThrough(device);
    }
  }

  private void breaker(ObjectNode device, boolean ring) {
    boolean residual = draw.percent(30);
    device.put("standard", residual ? "IEC 61009-1" : "IEC 60898-1");
    device.put("characteristic", draw.of("B", "B", "B", "C", "C", "D"));
    device.put("ratedCurrentA", ring && draw.percent(90) ? Integer.valueOf(32) : draw.of(RATINGS));
    if (draw.percent(95)) {
      int capacity = draw.of(CAPACITIES);
      device.put("breakingCapacityA", capacity);
      if (draw.percent(15)) {
        device.put("serviceBreakingCapacityA", capacity / 2);
      }
    }
    if (draw.percent(85)) {
      device.put("energyClass", draw.of(3, 3, 3, 2, 1));
    }
    if (draw.percent(80)) {
      device.put("poles", draw.whole(1, 4));
    }
    if (residual) {
      residual(device.putObject("residual"));
    }
  }

  private void fuse(ObjectNode device) {
    String standard =
        draw.of("BS 88-2", "BS 88-2", "BS 88-3", "BS 88-3", "BS 1361", "BS 3036", "BS 1362");
    device.put("standard", standard);
    device.put("ratedCurrentA", draw.of(FUSES.get(standard)));
    if (draw.percent(70)) {
      device.put("breakingCapacityA", draw.of(1000, 4000, 6000, 16_000, 33_000, 80_000));
    }
    if (standard.equals("BS 88-2") && draw.percent(80)) {
      device.put("utilizationCategory", draw.of("gG", "gG", "gG", "gM"));
    }
  }

  private void adjustable(ObjectNode device) {
    int rated = draw.of(16, 32, 63, 100, 160);
    device.put("standard", "IEC 60947-2");
    device.put("ratedCurrentA", rated);
    device.put("breakingCapacityA", draw.of(10_000, 25_000, 36_000));
    if (draw.percent(30)) {
      device.put("characteristic", draw.of("K", "Z"));
      ObjectNode multiples = device.putObject("magneticMultiples");
      multiples.put("lower", draw.of(2, 8));
      multiples.put("upper", draw.of(8, 14));
    }
    ObjectNode settings = device.putObject("settings");
    if (draw.percent(60)) {
      settings.put("longTimeA", draw.of(0.5, 0.8, 1.0) * rated);
    }
    if (draw.percent(40)) {
      settings.put("shortTimeA", draw.of(2.0, 5.0, 8.0) * rated);
      settings.put("shortTimeDelayS", draw.of(0.05, 0.1, 0.2, 0.4, 1.0));
    }
    if (draw.percent(70)) {
      settings.put("instantaneousA", draw.of(3.0, 5.0, 10.0, 14.0) * rated);
    }
    if (draw.percent(15)) {
      residual(device.putObject("residual"));
    }
  }

  /** A residual function. */
  void residual(ObjectNode residual) {
    if (draw.percent(95)) {
      residual.put("operatingCurrentA", draw.of(0.03, 0.03, 0.03, 0.1, 0.3, 0.5));
    }
    if (draw.percent(85)) {
      residual.put("type", draw.of("AC", "A", "A", "A", "F", "B"));
    }
    if (draw.percent(80)) {
      String delay = draw.of("general", "general", "general", "S", "adjustable");
      residual.put("delay", delay);
      if (delay.equals("adjustable")) {
        residual.put("delayS", draw.of(0.06, 0.3, 1.0));
      }
    }
  }

  /** A device upstream, mostly larger than most devices of circuits. */
  void upstream(ObjectNode device) {
    device.put("id", "Q1");
    switch (draw.whole(0, 5)) {
      case 0, 1 -> {
        device.put("standard", draw.of("IEC 60898-1", "IEC 61009-1"));
        device.put("characteristic", draw.of("B", "C", "D"));
        device.put("ratedCurrentA", draw.of(16, 32, 63, 100, 125));
      }
      case 2, 3 -> {
        device.put("standard", "BS 88-2");
        device.put("utilizationCategory", "gG");
        device.put("ratedCurrentA", draw.of(32, 63, 100, 160, 250, 400));
      }
      case 4 -> adjustable(device);
      default -> rccb(device);
    }
    boolean always = "IEC 61009-1".equals(device.path("standard").asText());
    if (always || draw.percent(15)) {
      residual(device.putObject("residual"));
    }
  }

  /** A residual device before the circuit. */
  void rccb(ObjectNode device) {
    device.put("standard", "IEC 61008-1");
    device.put("ratedCurrentA", draw.of(25, 40, 63, 80, 100));
    if (draw.percent(50)) {
      device.put("residualMakingBreakingA", draw.of(500, 1000, 3000));
    }
    if (draw.percent(70)) {
      device.put("conditionalCapacityA", draw.of(3000, 6000, 10_000));
    }
    residual(device.putObject("residual"));
  }

  private void letThrough(ObjectNode device) {
    ArrayNode points = device.putArray("letThrough");
    double current = draw.between(50, 2000);
    double energy = draw.between(300, 20_000);
    for (int i = draw.whole(2, 4); i > 0; i--) {
      ObjectNode point = points.addObject();
      point.put("prospectiveCurrentA", current);
      point.put("energyA2s", energy);
      current *= draw.between(1.5, 6);
      energy *= draw.between(0.9, 4);
    }
  }
}
