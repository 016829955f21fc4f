package circuitverdict.property;

import static circuitverdict.check.CheckName.ADDITIONAL_PROTECTION;
import static circuitverdict.check.CheckName.BREAKING_CAPACITY;
import static circuitverdict.check.CheckName.COMMISSIONING;
import static circuitverdict.check.CheckName.CONDUCTOR_RATING;
import static circuitverdict.check.CheckName.DEVICE_SUITABILITY;
import static circuitverdict.check.CheckName.EARTH_FAULT_DISCONNECTION;
import static circuitverdict.check.CheckName.INRUSH;
import static circuitverdict.check.CheckName.LET_THROUGH_ENERGY;
import static circuitverdict.check.CheckName.OVERLOAD_PROTECTION;
import static circuitverdict.check.CheckName.PROTECTIVE_CONDUCTOR;
import static circuitverdict.check.CheckName.SELECTIVITY;
import static circuitverdict.check.CheckName.VOLTAGE_DROP;

import circuitverdict.check.CheckName;
import circuitverdict.check.Finding;
import circuitverdict.check.Reason;
import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;

/**
 * One thing made worse step by step (engineering basis, principle 7). Each gives a body and worse
 * ones after it; nothing else changes.
 */
enum Worsening {
  MORE_LOOP_IMPEDANCE(
      EARTH_FAULT_DISCONNECTION, LET_THROUGH_ENERGY, PROTECTIVE_CONDUCTOR, COMMISSIONING) {
    @Override
    void worsen(Steps steps) {
      steps.raise("/supply/loopImpedanceOhm", 1.0005, 12);
    }
  },
  MORE_NEUTRAL_LOOP_IMPEDANCE(LET_THROUGH_ENERGY) {
    @Override
    void worsen(Steps steps) {
      steps.raise("/supply/lineToNeutralLoopImpedanceOhm", 1.0005, 12);
    }
  },
  MORE_ELECTRODE_RESISTANCE() {
    @Override
    void worsen(Steps steps) {
      steps.raise("/supply/earthElectrodeResistanceOhm", 1.0005, 12);
    }

    @Override
    boolean speaksOf(String check, ObjectNode worse) {
      // In TT the greatest earth fault current follows from it: it is lowered too, not one thing
      // alone.
      return !check.equals("protective-conductor") && !check.equals("earth-fault-disconnection");
    }
  },
  MORE_UNCERTAINTY(EARTH_FAULT_DISCONNECTION, BREAKING_CAPACITY, LET_THROUGH_ENERGY) {
    @Override
    void worsen(Steps steps) {
      steps.raise("/supply/instrumentUncertaintyPercent", 1.05, 8);
    }
  },
  GREATER_FAULT_CURRENT(BREAKING_CAPACITY, LET_THROUGH_ENERGY, PROTECTIVE_CONDUCTOR, SELECTIVITY) {
    @Override
    void worsen(Steps steps) {
      steps.raise(
          steps.draw.of(
              "/supply/maximumFaultCurrentA",
              "/supply/maximumFaultCurrentA",
              "/supply/faultCurrents/threePhase/maximumA",
              "/supply/faultCurrents/twoPhase/maximumA",
              "/supply/faultCurrents/lineToNeutral/maximumA",
              "/supply/faultCurrents/lineToEarth/maximumA"),
          1.0005,
          10);
    }
  },
  LONGER_CABLE(VOLTAGE_DROP, EARTH_FAULT_DISCONNECTION, LET_THROUGH_ENERGY, PROTECTIVE_CONDUCTOR) {
    @Override
    void worsen(Steps steps) {
      steps.raise(steps.cable() + "/lengthM", 1.0005, 15);
    }

    @Override
    boolean speaksOf(String check, ObjectNode worse) {
      return !check.equals("voltage-drop") || metres(worse) <= 100;
    }
  },
  HIGHER_AMBIENT(OVERLOAD_PROTECTION, CONDUCTOR_RATING, LET_THROUGH_ENERGY) {
    @Override
    void worsen(Steps steps) {
      steps.listed(
          steps.cable() + "/installation/ambientTemperatureC",
          List.of(10.0, 15.0, 20.0, 25.0, 30.0, 31.0, 35.0, 40.0, 45.0, 50.0, 55.0, 60.0, 75.0));
    }
  },
  MORE_GROUPED_CIRCUITS(OVERLOAD_PROTECTION, CONDUCTOR_RATING) {
    @Override
    void worsen(Steps steps) {
      steps.listed(
          steps.cable() + "/installation/groupedCircuits", List.of(1, 2, 3, 4, 5, 6, 7, 9, 12, 20));
    }
  },
  MORE_INSULATION(OVERLOAD_PROTECTION, CONDUCTOR_RATING) {
    @Override
    void worsen(Steps steps) {
      steps.raise(steps.cable() + "/installation/insulationLengthM", 1.05, 8);
    }
  },
  WORSE_REFERENCE_METHOD(OVERLOAD_PROTECTION, CONDUCTOR_RATING) {
    @Override
    void worsen(Steps steps) {
      String cable = steps.cable();
      String laid = cable + "/installation";
      boolean flat = "flat-twin-and-earth".equals(Bodies.text(steps.body, cable + "/construction"));
      if (flat && steps.body.at(laid + "/insulationLengthM").isMissingNode()) {
        // Table 4D5, from the greatest rating of a size to its least.
        steps.listed(laid + "/referenceMethod", List.of("C", "102", "100", "A", "101", "103"));
      }
    }
  },
  SMALLER_PROTECTIVE_CONDUCTOR(EARTH_FAULT_DISCONNECTION, PROTECTIVE_CONDUCTOR) {
    @Override
    void worsen(Steps steps) {
      List<Double> falling = new ArrayList<>(Cables.sizes(""));
      Collections.reverse(falling);
      steps.listed(steps.cable() + "/protectiveCsaMm2", falling);
    }
  },
  SMALLER_LINE_CONDUCTOR(OVERLOAD_PROTECTION, CONDUCTOR_RATING, VOLTAGE_DROP, LET_THROUGH_ENERGY) {
    @Override
    void worsen(Steps steps) {
      String cable = steps.cable();
      String construction = Bodies.text(steps.body, cable + "/construction");
      // A stated resistance is an input apart: it does not follow the size.
      boolean stated = steps.body.at(cable + "/lineResistanceOhmPerKm").isNumber();
      if (construction != null && !stated) {
        List<Double> falling = new ArrayList<>(Cables.sizes(construction));
        Collections.reverse(falling);
        // A line made as small as its neutral puts the neutral right.
        Double neutral = Bodies.number(steps.body, cable + "/neutralCsaMm2");
        falling.removeIf(size -> neutral != null && size > neutral);
        steps.listed(cable + "/lineCsaMm2", falling);
      }
    }

    @Override
    boolean speaksOf(String check, ObjectNode worse) {
      // Table 54.7 compares the protective conductor with the line: there only the former is
      // varied.
      return !check.equals("protective-conductor");
    }

    @Override
    boolean excuses(Finding open) {
      // Nothing is extrapolated: a size that a table lacks is not known, a smaller one it has is.
      // Nor is a neutral judged that is smaller than its line, until that is as small.
      return open.reason() == Reason.MISSING_INPUT
          || open.missing().stream()
              .map(Note::code)
              .anyMatch(Set.of(NoteCode.REDUCED_NEUTRAL, NoteCode.NOT_IN_TABLES)::contains);
    }
  },
  LESS_LIMITING_CLASS(LET_THROUGH_ENERGY, PROTECTIVE_CONDUCTOR) {
    @Override
    void worsen(Steps steps) {
      steps.listed("/device/energyClass", List.of(3, 2, 1));
      steps.dropped("/device/energyClass");
    }
  },
  NO_LONGER_CURRENT_LIMITING(LET_THROUGH_ENERGY) {
    @Override
    void worsen(Steps steps) {
      steps.listed("/device/currentLimiting", List.of(true, false));
    }
  },
  MORE_LET_THROUGH(LET_THROUGH_ENERGY, PROTECTIVE_CONDUCTOR) {
    @Override
    void worsen(Steps steps) {
      steps.energies("/device/letThrough");
    }

    @Override
    boolean speaksOf(String check, ObjectNode worse) {
      // What a device is shown to let through it is also shown to stand (434.5.1).
      return !check.equals("breaking-capacity");
    }
  },
  LOWER_BREAKING_CAPACITY(BREAKING_CAPACITY, LET_THROUGH_ENERGY) {
    @Override
    void worsen(Steps steps) {
      steps.listed(
          "/device/breakingCapacityA",
          List.of(80_000, 36_000, 25_000, 20_000, 15_000, 10_000, 6000, 4500, 3000, 1500));
    }

    @Override
    boolean speaksOf(String check, ObjectNode worse) {
      // The class promises by the row of the device's own Icn, less energy for a lower one;
      // evidence
      // of a pair is given for the very device.
      boolean byClass = worse.at("/device/energyClass").isNumber();
      boolean paired = worse.has("backUp");
      return !paired && (check.equals("breaking-capacity") || !byClass);
    }
  },
  LOWER_BREAKING_CAPACITY_UPSTREAM() {
    @Override
    void worsen(Steps steps) {
      steps.listed(
          "/upstreamDevice/breakingCapacityA", List.of(80_000, 33_000, 16_500, 10_000, 6000, 1000));
    }
  },
  SMALLER_RATING_UPSTREAM(SELECTIVITY) {
    @Override
    void worsen(Steps steps) {
      steps.listed(
          steps.draw.of("/upstreamDevice/ratedCurrentA", "/upstreamDevice/settings/longTimeA"),
          List.of(400, 250, 160, 125, 100, 80, 63, 50, 40, 32, 25, 20, 16));
    }

    @Override
    boolean speaksOf(String check, ObjectNode worse) {
      // A fuse small enough may stand behind an assembly.
      return check.equals("selectivity");
    }

    @Override
    boolean excuses(Finding open) {
      // Nothing is extrapolated: a rating that a table lacks is not known, a smaller one is.
      return open.reason() == Reason.MISSING_INPUT;
    }
  },
  LOWER_SETTING_UPSTREAM() {
    @Override
    void worsen(Steps steps) {
      steps.listed(
          steps.draw.of(
              "/upstreamDevice/settings/instantaneousA", "/upstreamDevice/settings/shortTimeA"),
          List.of(5000, 2000, 1000, 600, 400, 200));
    }
  },
  SHORTER_DELAY_UPSTREAM() {
    @Override
    void worsen(Steps steps) {
      steps.listed(
          steps.draw.of(
              "/upstreamDevice/settings/shortTimeDelayS", "/upstreamDevice/residual/delayS"),
          List.of(1.0, 0.5, 0.2, 0.1, 0.05, 0.01));
    }
  },
  MORE_SENSITIVE_UPSTREAM(SELECTIVITY) {
    @Override
    void worsen(Steps steps) {
      steps.listed(
          "/upstreamDevice/residual/operatingCurrentA", List.of(1.0, 0.5, 0.3, 0.1, 0.03, 0.01));
    }
  },
  LOWER_DECLARED_LIMIT(SELECTIVITY) {
    @Override
    void worsen(Steps steps) {
      steps.listed("/device/selectivity/0/limitCurrentA", List.of(9000, 4000, 2000, 1000, 300));
    }
  },
  LOWER_RESIDUAL_CAPACITY(PROTECTIVE_CONDUCTOR) {
    @Override
    void worsen(Steps steps) {
      steps.listed("/residualDevice/residualMakingBreakingA", List.of(6000, 3000, 1000, 500));
      steps.dropped("/residualDevice/residualMakingBreakingA");
    }
  },
  LOWER_CONDITIONAL_CAPACITY(DEVICE_SUITABILITY) {
    @Override
    void worsen(Steps steps) {
      steps.listed("/residualDevice/conditionalCapacityA", List.of(10_000, 6000, 3000, 1000));
      steps.dropped("/residualDevice/conditionalCapacityA");
    }
  },
  SMALLER_RESIDUAL_DEVICE(DEVICE_SUITABILITY) {
    @Override
    void worsen(Steps steps) {
      steps.listed("/residualDevice/ratedCurrentA", List.of(100, 80, 63, 40, 25, 16));
    }
  },
  LESS_SENSITIVE_RESIDUAL_DEVICE(EARTH_FAULT_DISCONNECTION, ADDITIONAL_PROTECTION) {
    @Override
    void worsen(Steps steps) {
      steps.listed(
          steps.draw.of("/device", "/residualDevice") + "/residual/operatingCurrentA",
          List.of(0.01, 0.03, 0.1, 0.3, 0.5, 1.0));
    }

    @Override
    boolean speaksOf(String check, ObjectNode worse) {
      // A less sensitive one stands more of what flows without a fault (531.3.2).
      boolean standing = worse.at("/load/protectiveConductorCurrentA").isNumber();
      return !standing || !check.equals("additional-protection");
    }
  },
  SIMPLER_RESIDUAL_TYPE(ADDITIONAL_PROTECTION) {
    @Override
    void worsen(Steps steps) {
      steps.listed(
          steps.draw.of("/device", "/residualDevice") + "/residual/type",
          List.of("B", "F", "A", "AC"));
    }
  },
  HARDER_RESIDUAL_WAVEFORM(ADDITIONAL_PROTECTION) {
    @Override
    void worsen(Steps steps) {
      steps.listed(
          "/load/residualWaveform",
          List.of("sinusoidal", "pulsating-direct", "mixed-frequency", "smooth-direct"));
    }
  },
  MORE_STANDING_CURRENT(ADDITIONAL_PROTECTION) {
    @Override
    void worsen(Steps steps) {
      steps.raise("/load/protectiveConductorCurrentA", 1.0005, 8);
    }
  },
  GREATER_DESIGN_CURRENT(OVERLOAD_PROTECTION, CONDUCTOR_RATING, VOLTAGE_DROP) {
    @Override
    void worsen(Steps steps) {
      steps.raise("/load/designCurrentA", 1.0005, 5);
    }
  },
  GREATER_STARTING_CURRENT(INRUSH) {
    @Override
    void worsen(Steps steps) {
      steps.raise("/load/inrush/currentMultiple", 1.0005, 5);
    }
  },
  GREATER_STARTING_PEAK(INRUSH) {
    @Override
    void worsen(Steps steps) {
      steps.raise("/load/inrush/peakCurrentA", 1.0005, 5);
    }
  },
  LONGER_START(INRUSH) {
    @Override
    void worsen(Steps steps) {
      steps.raise("/load/inrush/durationS", 1.0005, 12);
    }
  },
  MORE_SENSITIVE_LETTER(INRUSH) {
    @Override
    void worsen(Steps steps) {
      steps.listed("/device/characteristic", List.of("D", "C", "B"));
    }

    @Override
    boolean speaksOf(String check, ObjectNode worse) {
      // To a fault the more sensitive device is the better one.
      return check.equals("inrush") && !worse.at("/device/characteristic").asText().matches("[KZ]");
    }
  },
  MORE_DROP_BEFORE(VOLTAGE_DROP) {
    @Override
    void worsen(Steps steps) {
      steps.raise("/supply/voltageDropPercent", 1.0005, 6);
    }
  },
  FEWER_POLES(DEVICE_SUITABILITY) {
    @Override
    void worsen(Steps steps) {
      steps.listed(
          steps.draw.of(
              "/device/poles", "/device/poles", "/residualDevice/poles", "/incomer/poles"),
          List.of(4, 3, 2, 1));
    }

    @Override
    boolean speaksOf(String check, ObjectNode worse) {
      // A greatest current between conductors that fewer poles do not meet is another matter.
      return check.equals("device-suitability");
    }
  },
  LOWER_RATED_VOLTAGE(DEVICE_SUITABILITY) {
    @Override
    void worsen(Steps steps) {
      steps.listed("/device/ratedVoltageV", List.of(690, 440, 415, 400, 240, 230, 110));
    }
  },
  HIGHER_AMBIENT_IN_THE_ASSEMBLY(DEVICE_SUITABILITY) {
    @Override
    void worsen(Steps steps) {
      steps.listed(
          "/assembly/ambientTemperatureC", List.of(10, 20, 25, 30, 31, 35, 38, 40, 45, 50, 55));
    }
  },
  MORE_POLLUTION(DEVICE_SUITABILITY) {
    @Override
    void worsen(Steps steps) {
      steps.listed("/premises/pollutionDegree", List.of(1, 2, 3, 4));
    }
  },
  MORE_HUMIDITY(DEVICE_SUITABILITY) {
    @Override
    void worsen(Steps steps) {
      steps.listed("/assembly/relativeHumidityPercent", List.of(30, 50, 70, 90, 95));
    }
  },
  NO_DIRECT_CURRENT_DETECTION(ADDITIONAL_PROTECTION) {
    @Override
    void worsen(Steps steps) {
      steps.listed("/load/directCurrentDetection", List.of(true, false));
    }
  },
  LESS_TRAINED_USERS(DEVICE_SUITABILITY) {
    @Override
    void worsen(Steps steps) {
      steps.listed(
          "/premises/operatedBy",
          List.of("skilled-persons", "instructed-persons", "ordinary-persons"));
    }
  };

  private final Set<CheckName> turns;

  Worsening(CheckName... turns) {
    this.turns = Set.of(turns);
  }

  /** Checks that it must have been seen to turn, lest the property be tried on nothing. */
  Set<CheckName> turns() {
    return turns;
  }

  /** Makes the thing worse, step by step. */
  abstract void worsen(Steps steps);

  /** Whether a check is held open by what the tables lack of a thing, not by the thing itself. */
  boolean excuses(Finding open) {
    return false;
  }

  /** Whether the principle speaks of this check. */
  boolean speaksOf(String check, ObjectNode worse) {
    return true;
  }

  private static double metres(ObjectNode body) {
    double metres = 0;
    for (String at : new String[] {"/cable/lengthM", "/furtherCables/0/lengthM"}) {
      Double own = Bodies.number(body, at);
      metres += own == null ? 0 : own;
    }
    return metres;
  }
}
