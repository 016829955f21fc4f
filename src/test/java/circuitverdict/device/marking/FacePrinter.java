package circuitverdict.device.marking;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Prints a structured device as its face, in one of the usual spellings of each mark. */
final class FacePrinter {
  private final Random random;
  private final Map<DeviceMember, Object> left;
  private final List<String> face = new ArrayList<>();

  private FacePrinter(Map<DeviceMember, Object> device, Random random) {
    this.left = new EnumMap<>(device);
    this.random = random;
  }

  /** The strings on the face of this device, in any order. */
  static List<String> print(Map<DeviceMember, Object> device, Random random) {
    FacePrinter printer = new FacePrinter(device, random);
    printer.all();
    Collections.shuffle(printer.face, random);
    return printer.face;
  }

  private void all() {
    String standard = (String) left.remove(DeviceMember.STANDARD);
    String number = standard.substring(standard.indexOf(' ') + 1);
    String body =
        standard.startsWith("BS") ? "BS %s" : one("IEC %s", "BS EN %s", "IEC/EN %s", "%s");
    face.add(body.formatted(number));
    ratings();
    capacities(standard);
    voltages();
    residual();
    settings();
    others();
    if (!left.isEmpty()) {
      throw new AssertionError("no mark for " + left);
    }
  }

  private void ratings() {
    String letter = (String) left.remove(DeviceMember.CHARACTERISTIC);
    String rated = figure(DeviceMember.RATED_CURRENT);
    String category = (String) left.remove(DeviceMember.CATEGORY);
    String curve = figure(DeviceMember.CHARACTERISTIC_CURRENT);
    if (curve != null) {
      face.add(rated + "M" + curve);
    } else if (letter != null && Character.isDigit(letter.charAt(0))) {
      face.add("Type " + letter);
      face.add(rated + "A");
    } else if (letter != null) {
      face.add(
          one("%1$s%2$s", "%1$s %2$s", "type %1$s %2$s A", "%1$s%2$sA").formatted(letter, rated));
    } else if ("A".equals(category) || "B".equals(category)) {
      face.add("Cat. " + category);
      face.add("In " + rated + " A");
    } else if (category != null) {
      face.add(one("%s %s", "%s%s").formatted(category, rated));
    } else {
      face.add(one("In %sA", "In = %s A", "%sA").formatted(rated));
    }
    String lower = figure(DeviceMember.LOWER_MULTIPLE);
    String upper = figure(DeviceMember.UPPER_MULTIPLE);
    if (upper != null) {
      face.add(one("%s-%sIn", "%s…%s x In").formatted(lower, upper));
    }
  }

  private void capacities(String standard) {
    Double breaking = (Double) left.remove(DeviceMember.BREAKING_CAPACITY);
    boolean adjustable = standard.equals("IEC 60947-2");
    if (breaking != null && standard.equals("BS 3871-1")) {
      face.add("M" + Faces.plain(breaking / 1000));
    } else if (breaking != null) {
      String kilo = Faces.plain(breaking / 1000).replace('.', random.nextBoolean() ? '.' : ',');
      String whole = Faces.plain(breaking);
      String symbol = adjustable ? "Icu " : standard.startsWith("IEC") ? "Icn " : "";
      face.add(adjustable || random.nextBoolean() ? symbol + kilo + "kA" : "[" + whole + "]");
    }
    say(DeviceMember.SERVICE_CAPACITY, "Ics=%sA", "Ics %s A");
    say(DeviceMember.CONDITIONAL_CAPACITY, "Inc %s A", "[%s]");
    say(DeviceMember.MAKING_BREAKING, "IΔm %s A");
    say(DeviceMember.ENERGY_CLASS, "%s", "[%s]", "class %s", "%s in a square");
  }

  private void voltages() {
    String toEarth = figure(DeviceMember.VOLTAGE_TO_EARTH);
    String between = figure(DeviceMember.VOLTAGE);
    if (between != null && between.equals(toEarth) || between != null && toEarth == null) {
      face.add(one("%sV~", "%s V AC", "Ue %s V").formatted(between));
    } else if (between != null) {
      face.add(one("%s/%sV~", "%s/%s V", "~ %s/%s V").formatted(toEarth, between));
    }
  }

  private void residual() {
    Double current = (Double) left.remove(DeviceMember.RESIDUAL_CURRENT);
    if (current != null) {
      String ampere = Faces.plain(current).replace('.', ',');
      String milli = Faces.plain((double) Math.round(current * 1000));
      face.add(random.nextBoolean() ? "IΔn " + ampere + " A" : milli + "mA");
    }
    Object type = left.remove(DeviceMember.RESIDUAL_TYPE);
    if (type != null) {
      face.add("RCD type " + type);
    }
    if (left.remove(DeviceMember.RESIDUAL_DELAY) != null) {
      face.add(one("[S]", "type S"));
    }
  }

  private void settings() {
    say(DeviceMember.LONG_TIME, "Ir %s A", "Ir=%sA");
    say(DeviceMember.SHORT_TIME, "Isd %s A");
    say(DeviceMember.SHORT_TIME_DELAY, "tsd %s s");
    say(DeviceMember.INSTANTANEOUS, "Ii %s A");
  }

  private void others() {
    say(DeviceMember.POLES, "%sP", "%s-pole");
    say(DeviceMember.REFERENCE_TEMPERATURE, "%s °C", "%s°C");
    flag(DeviceMember.ISOLATION, "suitable for isolation");
    flag(DeviceMember.ARC_FAULT, "AFDD");
    flag(DeviceMember.UNIDIRECTIONAL, one("LINE LOAD", "IN/OUT"));
  }

  private void say(DeviceMember member, String... spellings) {
    String figure = figure(member);
    if (figure != null) {
      face.add(one(spellings).formatted(figure));
    }
  }

  private void flag(DeviceMember member, String mark) {
    if (left.remove(member) != null) {
      face.add(mark);
    }
  }

  private String figure(DeviceMember member) {
    Object value = left.remove(member);
    return value == null ? null : Faces.plain(value);
  }

  private String one(String... spellings) {
    return spellings[random.nextInt(spellings.length)];
  }
}
