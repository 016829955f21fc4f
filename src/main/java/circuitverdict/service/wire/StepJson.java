package circuitverdict.service.wire;

import circuitverdict.explain.Figure;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Step;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Citation;
import circuitverdict.standard.Source;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;

/** Steps of a working and the sources of figures, written from stretches that recur. */
final class StepJson {
  private StepJson() {}

  static void write(JsonGenerator json, List<Step> steps) throws IOException {
    json.writeFieldName("working");
    array(Json.value(json), steps);
  }

  /** The steps as an array. */
  static void array(Out out, List<Step> steps) {
    out.put('[');
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      if (i > 0) {
        out.put(',');
      }
      out.put(Stretches.step(step)).plain(step.substitution());
      out.put(Stretches.TEXT_END_VALUE).number(step.result().value());
      out.put(Stretches.unit(step.result().unit()));
      if (!sources(out, step.operands())) {
        // A factor that stands for what is not there says so.
        out.put(Stretches.NO_SOURCES);
      }
      out.put('}');
    }
    out.put(']');
  }

  /**
   * Goes on in an object with each source once, in the order of the figures; earlier steps are
   * named by their symbol. Says whether there was any.
   */
  static boolean sources(Out out, List<Figure> figures) {
    boolean open = false;
    for (int i = 0; i < figures.size(); i++) {
      Figure figure = figures.get(i);
      if (neutral(figure) || toldBefore(figures, i)) {
        continue;
      }
      if (open) {
        out.put(',');
      } else {
        out.put(Stretches.SOURCES);
      }
      out.put(source(figure.source(), figure.symbol()));
      open = true;
    }
    if (open) {
      out.put(']');
    }
    return open;
  }

  /** A factor of one, also as 100 %, or nothing, that stands for what is not there. */
  private static boolean neutral(Figure figure) {
    boolean percent = figure.unit() == Unit.PERCENT;
    boolean unit = figure.value() == 0 || figure.value() == (percent ? 100 : 1);
    return figure.source() instanceof Figure.Derived && unit;
  }

  private static boolean toldBefore(List<Figure> figures, int index) {
    Figure figure = figures.get(index);
    for (int i = 0; i < index; i++) {
      Figure other = figures.get(i);
      boolean derived = figure.source() instanceof Figure.Derived;
      if (derived
          ? other.symbol().equals(figure.symbol())
          : other.source().equals(figure.source())) {
        return true;
      }
    }
    return false;
  }

  private static byte[] source(Source source, String symbol) {
    if (source instanceof Citation citation) {
      return Stretches.citation(citation);
    }
    return source instanceof Pointer pointer
        ? Stretches.source(pointer)
        : Stretches.earlier(symbol);
  }
}
