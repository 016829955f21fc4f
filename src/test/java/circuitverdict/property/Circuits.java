package circuitverdict.property;

import circuitverdict.service.wire.Contradictions;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Random;
import java.util.function.Function;

/** Draws circuits as the contract describes them: what a designer states, complete or with gaps. */
final class Circuits {
  private static final int GAPS = 12;
  private static final List<List<String>> PLACES =
      List.of(
          List.of("outdoors"),
          List.of("vehicle-charging"),
          List.of("bath-or-shower"),
          List.of("sauna"),
          List.of("swimming-pool"),
          List.of("outdoors", "vehicle-charging"));

  private final Draw draw;
  private final String stage;

  private Circuits(Random random, String stage) {
    this.draw = new Draw(random);
    this.stage = stage;
  }

  /** Circuits at any stage, some with gaps. */
  static Function<Random, ObjectNode> anyStage() {
    return random -> {
      String stage = new Draw(random).of("sign-off", "sign-off", "design", "quotation");
      return new Circuits(random, stage).drawn(true);
    };
  }

  /** Circuits at one stage, some with gaps. */
  static Function<Random, ObjectNode> at(String stage) {
    return random -> new Circuits(random, stage).drawn(true);
  }

  /** Circuits at one stage with everything stated that is usually asked for. */
  static Function<Random, ObjectNode> completeAt(String stage) {
    return random -> new Circuits(random, stage).drawn(false);
  }

  private ObjectNode drawn(boolean gaps) {
    while (true) {
      ObjectNode body = draw();
      if (gaps && draw.percent(40)) {
        leaveOut(body);
      }
      if (Contradictions.of(body).isEmpty() && Supplies.agree(body)) {
        return Suitabilities.added(body);
      }
    }
  }

  private ObjectNode draw() {
    ObjectNode body = Bodies.empty();
    body.put("edition", draw.of("bs7671-2018-a4", "bs7671-2018-a2", "bs7671-2008", "iec60364"));
    body.put("stage", stage);
    boolean ring = draw.percent(12);
    int lines = !ring && draw.percent(25) ? 3 : 1;
    ObjectNode supply = body.putObject("supply");
    new Supplies(draw).supply(supply, lines);
    if (draw.percent(85)) {
      body.put("circuitKind", draw.percent(80) ? "final" : "distribution");
    }
    live(body.putArray("liveConductors"), lines);
    load(body.putObject("load"), ring);
    new Cables(draw).cable(body.putObject("cable"), lines, ring, 45);
    if (draw.percent(12)) {
      new Cables(draw).cable(body.putArray("furtherCables").addObject(), lines, false, 45);
    }
    Devices devices = new Devices(draw);
    devices.device(body.putObject("device"), ring);
    if (draw.percent(20)) {
      devices.rccb(body.putObject("residualDevice"));
    }
    behind(body);
    ObjectNode premises = body.putObject("premises");
    premises.put("operatedBy", draw.of("ordinary-persons", "skilled-persons"));
    if (draw.percent(80)) {
      premises.put("use", draw.of("domestic", "commercial", "industrial", "public"));
    }
    if (draw.percent(50)) {
      premises.put("higherRiskResidential", draw.percent(30));
    }
    ArrayNode locations = premises.putArray("locations");
    if (draw.percent(40)) {
      draw.of(PLACES).forEach(locations::add);
    }
    if (draw.percent(30)) {
      body.putObject("requirements").put("evidence", draw.of("proved", "guidance"));
    }
    if (draw.percent(40)) {
      body.withObject("/requirements").put("inrush", draw.of("required", "required", "reported"));
    }
    if (draw.percent(50)) {
      body.withObject("/requirements").put("selectivity", draw.of("required", "preferred"));
    }
    return body;
  }

  private void live(ArrayNode live, int lines) {
    for (int i = 1; i <= lines; i++) {
      live.add("L" + i);
    }
    if (lines == 1 || draw.percent(50)) {
      live.add("N");
    }
  }

  private void load(ObjectNode load, boolean ring) {
    String kind =
        ring
            ? draw.of("socket-outlets", "socket-outlets", "resistive", "motor", "vehicle-charging")
            : draw.of(
                "resistive",
                "resistive",
                "motor",
                "led",
                "socket-outlets",
                "vehicle-charging",
                "electronic");
    load.put("kind", kind);
    load.put(
        "use", kind.equals("led") ? "lighting" : draw.of("other", "other", "other", "lighting"));
    load.put(
        "connection",
        kind.equals("socket-outlets")
            ? "socket-outlet"
            : draw.of("fixed", "fixed", "socket-outlet"));
    if (!kind.equals("socket-outlets") || draw.percent(40)) {
      if (draw.percent(70)) {
        load.put("designCurrentA", draw.between(1, 60));
      } else {
        load.put("ratedPowerW", draw.between(300, 15_000));
        load.put("efficiencyPercent", draw.of(85, 90, 100));
        load.put("count", draw.whole(1, 2));
      }
    }
    if (kind.equals("vehicle-charging")) {
      load.put("ratedCurrentA", draw.of(16, 32));
    }
    double factor = draw.of(0.8, 0.9, 0.95, 1.0);
    load.put("powerFactor", kind.equals("resistive") ? 1 : factor);
    if (draw.percent(60)) {
      new Starts(draw).inrush(load);
    }
    if (draw.percent(8)) {
      load.put("canOverload", draw.percent(30));
    }
    if (draw.percent(15)) {
      load.put("thirdHarmonicPercent", draw.of(5, 14, 20, 35, 50));
    }
    if (draw.percent(10)) {
      load.put("protectiveConductorCurrentA", draw.of(0.001, 0.005, 0.02));
    }
    if (kind.equals("socket-outlets") && draw.percent(80)) {
      load.put("ratedCurrentA", draw.of(13, 13, 16, 32, 63));
    }
    if (draw.percent(80)) {
      load.put(
          "residualWaveform",
          draw.of("sinusoidal", "pulsating-direct", "mixed-frequency", "smooth-direct"));
    }
    if (kind.equals("vehicle-charging") && draw.percent(70)) {
      load.put("directCurrentDetection", draw.percent(80));
    }
  }

  /** What stands behind the device. */
  private void behind(ObjectNode body) {
    if (draw.percent(30)) {
      ObjectNode upstream = body.putObject("upstreamDevice");
      upstream.put("standard", draw.of("BS 88-3", "BS 1361", "BS 88-2"));
      upstream.put("ratedCurrentA", draw.of(60, 80, 100, 200));
      if (draw.percent(60)) {
        upstream.put("breakingCapacityA", draw.of(6000, 16_500, 33_000, 80_000));
      }
    } else if (draw.percent(60)) {
      new Devices(draw).upstream(body.putObject("upstreamDevice"));
      if (draw.percent(15) && body.path("device") instanceof ObjectNode device) {
        ObjectNode declared = device.putArray("selectivity").addObject();
        declared.put("upstreamId", draw.of("Q1", "Q2"));
        declared.put("limitCurrentA", draw.of(300, 1000, 3000, 10_000));
      }
    }
    if (draw.percent(15)) {
      ObjectNode assembly = body.putObject("assembly");
      assembly.put("standard", draw.of("IEC 61439-3", "IEC 61439-3", "IEC 61439-2"));
      assembly.put("conditionalRatingA", draw.of(10_000, 16_000, 25_000));
      assembly.put("maximumUpstreamFuseA", draw.of(80, 100));
      assembly.put("deviceDeclared", draw.percent(80));
    }
    if (draw.percent(10)) {
      ObjectNode backUp = body.putObject("backUp");
      backUp.put("limitedLetThroughA2s", draw.between(5_000, 200_000));
      backUp.put("combinationRatingA", draw.of(10_000, 16_000, 25_000));
      backUp.put("evidence", "maker's table");
    }
  }

  /** Leaves out a few members: a caller seldom states everything. */
  private void leaveOut(ObjectNode body) {
    for (int i = draw.whole(1, 3); i > 0; i--) {
      String pointer = draw.of(Bodies.pointers(body));
      boolean kept = pointer.equals("/edition") || pointer.equals("/stage");
      if (!kept && body.at(pointer).isValueNode()) {
        ObjectNode less = Bodies.without(body, pointer);
        body.removeAll();
        body.setAll(less);
      }
    }
    if (draw.percent(GAPS)) {
      body.remove(draw.of("premises", "residualDevice", "liveConductors", "circuitKind"));
    }
  }
}
