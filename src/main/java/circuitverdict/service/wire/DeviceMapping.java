package circuitverdict.service.wire;

import circuitverdict.circuit.DeviceData;
import circuitverdict.circuit.DeviceData.Declared;
import circuitverdict.circuit.DeviceData.LetThroughPoint;
import circuitverdict.circuit.DeviceData.OperatingTime;
import circuitverdict.circuit.Nameplate;
import circuitverdict.circuit.Nameplate.DeratingPoint;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.circuit.ProtectiveDevice.Multiples;
import circuitverdict.circuit.ProtectiveDevice.Other;
import circuitverdict.circuit.ProtectiveDevice.Rccb;
import circuitverdict.circuit.ProtectiveDevice.Settings;
import circuitverdict.circuit.Residual;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The contract's {@code Device} as the engine's protective device, by its standard. */
public final class DeviceMapping {
  private DeviceMapping() {}

  /** A device of a request. */
  public static ProtectiveDevice device(JsonNode node, String place) {
    return device(Members.of(node, place));
  }

  static ProtectiveDevice device(Members m) {
    DeviceData data = data(m);
    if (data.standard() == null) {
      return new Other(data);
    }
    return switch (data.standard()) {
      case "IEC 60898-1", "IEC 61009-1" ->
          new Breaker(data, m.term("characteristic"), m.integer("energyClass"), multiples(m));
      case "IEC 60947-2" -> adjustable(m, data);
      case "BS 88-2", "BS 88-3", "BS 3036", "BS 1361", "BS 1362" ->
          new Fuse(data, m.text("utilizationCategory"));
      case "IEC 61008-1" ->
          new Rccb(data, m.number("residualMakingBreakingA"), m.number("conditionalCapacityA"));
      default -> new Other(data);
    };
  }

  private static AdjustableBreaker adjustable(Members m, DeviceData data) {
    Members settings = m.object("settings");
    return new AdjustableBreaker(
        data,
        m.term("characteristic"),
        multiples(m),
        new Settings(
            settings.number("longTimeA"),
            settings.number("shortTimeA"),
            settings.number("shortTimeDelayS"),
            settings.number("instantaneousA")));
  }

  private static Multiples multiples(Members m) {
    Members multiples = m.object("magneticMultiples");
    return new Multiples(multiples.number("lower"), multiples.number("upper"));
  }

  private static DeviceData data(Members m) {
    return new DeviceData(
        m.place(),
        m.text("id"),
        m.term("standard"),
        m.number("ratedCurrentA"),
        m.number("breakingCapacityA"),
        m.number("serviceBreakingCapacityA"),
        m.integer("poles"),
        m.bool("currentLimiting"),
        m.has("residual") ? residual(m.object("residual")) : null,
        m.bool("arcFaultDetection"),
        letThrough(m),
        selectivity(m),
        operatingTimes(m),
        nameplate(m));
  }

  private static Nameplate nameplate(Members m) {
    return new Nameplate(
        m.number("ratedVoltageV"),
        m.number("ratedLineToEarthVoltageV"),
        m.integer("protectedPoles"),
        m.bool("isolation"),
        m.bool("unidirectional"),
        m.number("referenceTemperatureC"),
        m.has("derating") ? derating(m) : List.of());
  }

  private static List<DeratingPoint> derating(Members m) {
    List<DeratingPoint> points =
        new ArrayList<>(
            m.list(
                "derating",
                (node, place) ->
                    new DeratingPoint(
                        node.get("ambientTemperatureC").doubleValue(),
                        node.get("factor").doubleValue())));
    points.sort(Comparator.comparingDouble(DeratingPoint::ambientTemperatureC));
    return List.copyOf(points);
  }

  private static Residual residual(Members m) {
    return new Residual(
        m.word("type", Residual.Type.class),
        m.number("operatingCurrentA"),
        m.word("delay", Residual.Delay.class),
        m.number("delayS"));
  }

  private static List<Declared> selectivity(Members m) {
    return m.list(
        "selectivity",
        (node, place) ->
            new Declared(
                node.get("upstreamId").textValue(), node.get("limitCurrentA").doubleValue()));
  }

  private static List<OperatingTime> operatingTimes(Members m) {
    List<OperatingTime> points =
        new ArrayList<>(m.list("operatingTimes", (node, place) -> point(Members.of(node, place))));
    points.sort(Comparator.comparingDouble(OperatingTime::currentA));
    return List.copyOf(points);
  }

  private static OperatingTime point(Members m) {
    return new OperatingTime(
        m.place(), m.number("currentA"), m.number("earliestS"), m.number("latestS"));
  }

  private static List<LetThroughPoint> letThrough(Members m) {
    List<LetThroughPoint> points =
        new ArrayList<>(
            m.list(
                "letThrough",
                (node, place) ->
                    new LetThroughPoint(
                        node.get("prospectiveCurrentA").doubleValue(),
                        node.get("energyA2s").doubleValue())));
    points.sort(Comparator.comparingDouble(LetThroughPoint::prospectiveCurrentA));
    return List.copyOf(points);
  }
}
