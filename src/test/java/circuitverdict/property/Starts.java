package circuitverdict.property;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Draws what loads draw when they start. */
final class Starts {
  private final Draw draw;

  Starts(Draw draw) {
    this.draw = draw;
  }

  /** The start of a load of known kind. */
  void inrush(ObjectNode load) {
    switch (load.path("kind").asText()) {
      case "motor" -> motor(load);
      case "led", "electronic" -> pulse(load);
      default -> {
        if (draw.percent(20)) {
          ObjectNode inrush = load.putObject("inrush");
          inrush.put("currentMultiple", draw.between(1, 10));
          inrush.put("durationS", draw.between(0.001, 3));
        }
      }
    }
  }

  private void motor(ObjectNode load) {
    ObjectNode inrush = load.putObject("inrush");
    inrush.put(
        "starting", draw.of("direct-on-line", "direct-on-line", "star-delta", "soft-starter"));
    double multiple = draw.between(1.05, 9);
    inrush.put("currentMultiple", multiple);
    inrush.put("durationS", draw.between(0.05, 20));
    if (load.has("designCurrentA") && draw.percent(40)) {
      // No offset wave peaks at more than twice the symmetrical one.
      double symmetrical = Math.sqrt(2) * multiple * load.path("designCurrentA").doubleValue();
      inrush.put("peakCurrentA", symmetrical * draw.between(1, 1.9));
    }
  }

  private void pulse(ObjectNode load) {
    ObjectNode inrush = load.putObject("inrush");
    inrush.put("peakCurrentA", draw.between(1, 200));
    inrush.put("durationS", draw.between(0.00005, 0.02));
    if (draw.percent(20)) {
      ArrayNode limits = inrush.putArray("countLimits");
      int count = draw.whole(1, 3);
      for (String letter : new String[] {"B", "C", "D"}) {
        ObjectNode limit = limits.addObject();
        limit.put("characteristic", letter);
        limit.put("ratedCurrentA", 16);
        limit.put("count", count);
        count += draw.whole(0, 2);
      }
    }
  }
}
