package circuitverdict.property;

import circuitverdict.service.wire.Contradictions;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/** A body and the worse ones that follow it. */
final class Steps {
  private static final int MOST = 4;

  final ObjectNode body;
  final Draw draw;
  private final List<ObjectNode> all = new ArrayList<>();

  Steps(ObjectNode body, Draw draw) {
    this.body = body;
    this.draw = draw;
  }

  /** All bodies, each no better than the one before it. */
  List<ObjectNode> all() {
    return all;
  }

  String cable() {
    boolean further = body.at("/furtherCables/0").isObject() && draw.percent(40);
    return further ? "/furtherCables/0" : "/cable";
  }

  /** Multiplies a number by factors between two, again and again. */
  void raise(String pointer, double least, double most) {
    Double value = Bodies.number(body, pointer);
    if (value == null) {
      return;
    }
    double now = value * draw.between(1 / most, 1);
    for (int i = 0; i <= MOST; i++) {
      add(Bodies.with(body, pointer, now));
      now = Math.max(now, 1e-3) * draw.between(least, Math.pow(most, 0.6));
    }
  }

  /** Takes what is listed in its order, leaving some out. */
  void listed(String pointer, List<?> worse) {
    if (body.at(pointer).isMissingNode()) {
      return;
    }
    for (Object each : worse) {
      if (draw.percent(60)) {
        add(Bodies.with(body, pointer, each));
      }
    }
  }

  /** Leaves a member out. */
  void dropped(String pointer) {
    if (!body.at(pointer).isMissingNode()) {
      add(Bodies.without(body, pointer));
    }
  }

  /** Raises all energies of the maker's points alike. */
  void energies(String pointer) {
    double factor = draw.between(0.05, 1);
    for (int step = 0; step <= MOST; step++) {
      ObjectNode copy = body.deepCopy();
      if (!(copy.at(pointer) instanceof ArrayNode points)) {
        return;
      }
      for (int i = 0; i < points.size(); i++) {
        String at = pointer + "/" + i + "/energyA2s";
        Double energy = Bodies.number(copy, at);
        if (energy == null) {
          return;
        }
        Bodies.set(copy, at, energy * factor);
      }
      add(copy);
      factor *= draw.between(1.0005, 5);
    }
  }

  private void add(ObjectNode each) {
    if (Contradictions.of(each).isEmpty() && Supplies.agree(each)) {
      all.add(each);
    }
  }
}
