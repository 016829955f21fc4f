package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Value;

/**
 * Humidity of the air around the device (512.2.1 and the product standards' normal service
 * conditions, from memory): no more than 50 % at 40 °C, and 90 % at 20 °C. Between the two
 * temperatures, and where it is not stated, the lower counts. Moister air is for the maker to
 * answer. Examined only where it is stated.
 */
final class SuitableHumidity {
  private SuitableHumidity() {}

  static void hold(Circuit circuit, Judgement judgement, Dossier d) {
    Double stated = circuit.assembly().relativeHumidityPercent();
    if (stated == null) {
      return;
    }
    judgement.by(Clause.DEVICE_SURROUNDINGS);
    Figure humidity = new Figure("RH", stated, Unit.PERCENT, At.ASSEMBLY_HUMIDITY);
    Double ambient = circuit.assembly().ambientTemperatureC();
    Figure cool = column(circuit, "humidity-cool", d);
    Figure warm = column(circuit, "humidity-warm", d);
    boolean below = ambient != null && upTo(ambient, circuit, "temperature-cool", d);
    boolean within = ambient == null || upTo(ambient, circuit, "temperature-warm", d);
    Figure greatest = below ? cool : within ? warm : Figure.unknown("RH,max", Unit.PERCENT);
    if (greatest.known() && Comparator.atMost(stated, greatest.value())) {
      judgement.classed("/device", humidity, Comparator.AT_MOST, greatest);
      return;
    }
    boolean temperatureSettles =
        ambient == null && cool.known() && Comparator.atMost(stated, cool.value());
    if (temperatureSettles) {
      d.missing(At.ASSEMBLY_AMBIENT);
    } else {
      d.missing(NoteCode.HUMIDITY_BEYOND_STANDARD, At.ASSEMBLY_HUMIDITY, humidity);
    }
    judgement.undetermined();
  }

  private static Figure column(Circuit circuit, String column, Dossier d) {
    Value value = Suitability.of(circuit.device(), column, d);
    return value == null ? Figure.unknown("RH,max", Unit.PERCENT) : Figure.of("RH,max", value);
  }

  private static boolean upTo(double ambient, Circuit circuit, String column, Dossier d) {
    Value value = Suitability.of(circuit.device(), column, d);
    return value != null && Comparator.atMost(ambient, value.number());
  }
}
