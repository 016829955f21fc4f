package circuitverdict.device.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A device printed as its face is read back as the same device. */
class RoundTripTest {
  private static final long SEED = Long.getLong("seed", 60_898L);
  private static final Double[] RATINGS = {
    6.0, 10.0, 13.0, 16.0, 20.0, 25.0, 32.0, 40.0, 50.0, 63.0
  };
  private static final Double[] CAPACITIES = {1500.0, 3000.0, 4500.0, 6000.0, 10000.0, 15000.0};
  private static final Double[] RESIDUAL = {0.006, 0.01, 0.03, 0.1, 0.3, 0.5};

  @Test
  void whatIsPrintedIsReadBack() {
    Random random = new Random(SEED);
    for (int i = 0; i < 3000; i++) {
      Map<DeviceMember, Object> device = device(random);
      List<String> face = FacePrinter.print(device, random);
      Reading reading = Faces.read(face, List.of());
      String said = "seed " + SEED + ", " + i + ": " + face;
      assertEquals(device, reading.device(), said);
      assertEquals(List.of(), reading.contradictions(), said);
      Set<String> codes = Faces.codes(reading.remarks());
      codes.removeAll(Set.of("class-without-figure", "mark-withdrawn"));
      assertEquals(Set.of(), codes, said);
    }
  }

  /** The same in one string. */
  @Test
  void oneStringTellsTheSame() {
    Random random = new Random(SEED);
    for (int i = 0; i < 1000; i++) {
      Map<DeviceMember, Object> device = device(random);
      String face = String.join(" ; ", FacePrinter.print(device, random));
      assertEquals(device, Faces.read(face).device(), face);
    }
  }

  @SafeVarargs
  private static <T> T one(Random random, T... of) {
    return of[random.nextInt(of.length)];
  }

  private static Map<DeviceMember, Object> device(Random random) {
    Map<DeviceMember, Object> device = new EnumMap<>(DeviceMember.class);
    String standard =
        one(
            random,
            "IEC 60898-1",
            "IEC 61009-1",
            "IEC 61008-1",
            "IEC 60947-2",
            "BS 88-2",
            "BS 88-3",
            "BS 3036",
            "BS 1361",
            "BS 1362",
            "BS 3871-1");
    device.put(DeviceMember.STANDARD, standard);
    device.put(DeviceMember.RATED_CURRENT, one(random, RATINGS));
    switch (standard) {
      case "IEC 60898-1", "IEC 61009-1" -> household(device, standard, random);
      case "IEC 61008-1" -> {
        residual(device, random);
        device.put(DeviceMember.CONDITIONAL_CAPACITY, one(random, 6000.0, 10000.0));
        maybe(device, random, DeviceMember.MAKING_BREAKING, 500.0, 630.0);
      }
      case "IEC 60947-2" -> industrial(device, random);
      case "BS 88-2" -> fuse(device, random);
      case "BS 3871-1" -> {
        device.put(DeviceMember.CHARACTERISTIC, one(random, "1", "2", "3", "4"));
        maybe(device, random, DeviceMember.BREAKING_CAPACITY, 1500.0, 3000.0, 6000.0, 9000.0);
      }
      default -> maybe(device, random, DeviceMember.BREAKING_CAPACITY, 16000.0, 33000.0);
    }
    voltages(device, random);
    return device;
  }

  private static void household(Map<DeviceMember, Object> device, String standard, Random random) {
    device.put(DeviceMember.CHARACTERISTIC, one(random, "B", "C", "D", "K", "Z"));
    maybe(device, random, DeviceMember.BREAKING_CAPACITY, CAPACITIES);
    maybe(device, random, DeviceMember.ENERGY_CLASS, 1.0, 2.0, 3.0);
    maybe(device, random, DeviceMember.REFERENCE_TEMPERATURE, 30.0, 40.0);
    maybe(device, random, DeviceMember.ISOLATION, true);
    maybe(device, random, DeviceMember.ARC_FAULT, true);
    maybe(device, random, DeviceMember.UNIDIRECTIONAL, true);
    if (standard.equals("IEC 61009-1")) {
      residual(device, random);
    }
  }

  private static void residual(Map<DeviceMember, Object> device, Random random) {
    device.put(DeviceMember.RESIDUAL_CURRENT, one(random, RESIDUAL));
    maybe(device, random, DeviceMember.RESIDUAL_TYPE, "AC", "A", "F", "B");
    maybe(device, random, DeviceMember.RESIDUAL_DELAY, "S");
  }

  private static void industrial(Map<DeviceMember, Object> device, Random random) {
    device.put(DeviceMember.RATED_CURRENT, one(random, 100.0, 160.0, 250.0, 630.0));
    device.put(DeviceMember.BREAKING_CAPACITY, one(random, 25000.0, 36000.0, 50000.0));
    maybe(device, random, DeviceMember.SERVICE_CAPACITY, 18000.0, 25000.0);
    maybe(device, random, DeviceMember.LONG_TIME, 80.0, 100.0);
    maybe(device, random, DeviceMember.SHORT_TIME, 600.0, 800.0);
    maybe(device, random, DeviceMember.SHORT_TIME_DELAY, 0.1, 0.2);
    maybe(device, random, DeviceMember.CATEGORY, "A", "B");
    if (random.nextBoolean()) {
      device.put(DeviceMember.LOWER_MULTIPLE, 8.0);
      device.put(DeviceMember.UPPER_MULTIPLE, 12.0);
    } else {
      maybe(device, random, DeviceMember.INSTANTANEOUS, 1000.0, 1600.0);
    }
  }

  private static void fuse(Map<DeviceMember, Object> device, Random random) {
    device.put(DeviceMember.CATEGORY, one(random, "gG", "gM", "aM"));
    if (device.get(DeviceMember.CATEGORY).equals("gM")) {
      device.put(DeviceMember.CHARACTERISTIC_CURRENT, one(random, 80.0, 100.0));
    }
    maybe(device, random, DeviceMember.BREAKING_CAPACITY, 50000.0, 80000.0);
  }

  private static void voltages(Map<DeviceMember, Object> device, Random random) {
    switch (random.nextInt(4)) {
      case 0 -> {
        device.put(DeviceMember.VOLTAGE, 230.0);
        device.put(DeviceMember.VOLTAGE_TO_EARTH, 230.0);
        maybe(device, random, DeviceMember.POLES, 1.0, 2.0);
      }
      case 1 -> {
        device.put(DeviceMember.VOLTAGE, 400.0);
        device.put(DeviceMember.VOLTAGE_TO_EARTH, 230.0);
        maybe(device, random, DeviceMember.POLES, 1.0, 2.0, 3.0, 4.0);
      }
      case 2 -> {
        device.put(DeviceMember.VOLTAGE, 400.0);
        maybe(device, random, DeviceMember.POLES, 2.0, 3.0, 4.0);
      }
      default -> {
        // No voltage is marked.
      }
    }
  }

  @SafeVarargs
  private static <T> void maybe(
      Map<DeviceMember, Object> device, Random random, DeviceMember member, T... values) {
    if (random.nextBoolean()) {
      device.put(member, one(random, values));
    }
  }
}
