package circuitverdict.service.wire;

import circuitverdict.service.edge.Fault;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Facts of a request that cannot all be true, and what a stage demands: refused with 422. */
public final class Contradictions {
  /** Code of facts that cannot all be true. */
  public static final String CONTRADICTION = "contradiction";

  /** Code of a member that the stage demands. */
  public static final String EDITION_REQUIRED = "edition-required";

  /** Nominal voltage of public supplies, V: a fact of the contract, checked before any edition. */
  private static final double PUBLIC_VOLTAGE_V = 230;

  /** Their standards know a general type and type S only. */
  private static final Set<String> HOUSEHOLD_RESIDUAL = Set.of("IEC 61008-1", "IEC 61009-1");

  private final JsonNode body;
  private final List<Fault> faults = new ArrayList<>();

  private Contradictions(JsonNode body) {
    this.body = body;
  }

  /** Every contradiction of a circuit. */
  public static List<Fault> of(JsonNode body) {
    Contradictions found = new Contradictions(body);
    found.stage();
    found.supply();
    found.live();
    if (body.at("/load/diversityFactor").isNumber()
        && body.at("/load/diversityFactor").doubleValue() == 0) {
      found.add("/load/diversityFactor", "A diversity factor of 0 leaves no load to protect.");
    }
    for (String device : new String[] {"device", "residualDevice", "upstreamDevice"}) {
      found.device("/" + device);
    }
    return found.faults;
  }

  /** Every contradiction of a single device. */
  public static List<Fault> ofDevice(JsonNode body, String pointer) {
    Contradictions found = new Contradictions(body);
    found.device(pointer);
    return found.faults;
  }

  private void stage() {
    boolean signOff = "sign-off".equals(body.path("stage").textValue());
    if (signOff && !body.has("edition")) {
      faults.add(Fault.inBody(EDITION_REQUIRED, "At sign-off the edition must be named.", ""));
    }
  }

  private void supply() {
    atMost(
        "/supply/originLoopImpedanceOhm",
        "/supply/loopImpedanceOhm",
        "The loop impedance at the origin cannot exceed that at the board.");
    atMost(
        "/supply/loopReactanceOhm",
        "/supply/loopImpedanceOhm",
        "A reactance cannot exceed its impedance.");
    atMost(
        "/supply/lineToNeutralLoopReactanceOhm",
        "/supply/lineToNeutralLoopImpedanceOhm",
        "A reactance cannot exceed its impedance.");
    if ("TT".equals(body.at("/supply/earthing").textValue())) {
      atMost(
          "/supply/earthElectrodeResistanceOhm",
          "/supply/loopImpedanceOhm",
          "The electrode is part of the earth fault loop and cannot exceed it.");
    }
    boolean origin = "origin".equals(body.at("/supply/point").textValue());
    if (origin && body.at("/supply/voltageDropPercent").doubleValue() > 0) {
      add("/supply/voltageDropPercent", "Voltage drop is counted from the origin: there it is 0.");
    }
    for (String kind : new String[] {"threePhase", "twoPhase", "lineToNeutral", "lineToEarth"}) {
      atMost(
          "/supply/faultCurrents/" + kind + "/maximumA",
          "/supply/maximumFaultCurrentA",
          "The greatest fault current of any kind cannot be less than that of one kind.");
    }
    JsonNode voltage = body.at("/supply/lineToEarthVoltageV");
    boolean isPublic = "public".equals(body.at("/supply/ownership").textValue());
    if (isPublic && voltage.isNumber() && voltage.doubleValue() != PUBLIC_VOLTAGE_V) {
      add(
          "/supply/lineToEarthVoltageV",
          "Public supplies have a nominal 230 V; a reading is not it.");
    }
  }

  private void live() {
    Set<String> seen = new HashSet<>();
    JsonNode live = body.path("liveConductors");
    for (int i = 0; i < live.size(); i++) {
      if (!seen.add(live.get(i).textValue())) {
        add("/liveConductors/" + i, "A live conductor is named twice.");
      }
    }
    boolean lines = seen.stream().anyMatch(name -> name.startsWith("L"));
    if (live.isArray() && !lines) {
      add("/liveConductors", "A circuit has at least one line conductor.");
    }
    JsonNode phases = body.at("/supply/phases");
    long count = seen.stream().filter(name -> name.startsWith("L")).count();
    if (count == 1 && seen.size() == 1) {
      add("/liveConductors", "A single line has a neutral or another line to return by.");
    }
    if (phases.isNumber() && phases.intValue() == 1 && count > 1) {
      add("/liveConductors", "A single-phase supply has one line conductor.");
    }
  }

  private void device(String pointer) {
    releases(pointer);
    atMost(
        pointer + "/serviceBreakingCapacityA",
        pointer + "/breakingCapacityA",
        "The service capacity cannot exceed the breaking capacity.");
    atMost(
        pointer + "/magneticMultiples/lower",
        pointer + "/magneticMultiples/upper",
        "The lower magnetic limit cannot exceed the upper one.");
    atMost(
        pointer + "/settings/longTimeA",
        pointer + "/ratedCurrentA",
        "The setting Ir cannot exceed the rated current.");
    Set<Double> currents = new HashSet<>();
    JsonNode points = body.at(pointer + "/letThrough");
    for (int i = 0; i < points.size(); i++) {
      if (!currents.add(points.get(i).path("prospectiveCurrentA").doubleValue())) {
        add(pointer + "/letThrough/" + i, "Two points stand at the same prospective current.");
      }
    }
  }

  private void releases(String pointer) {
    JsonNode device = body.at(pointer);
    if (device.at("/settings/instantaneousA").isNumber()
        && device.at("/magneticMultiples/upper").isNumber()) {
      add(
          pointer + "/magneticMultiples/upper",
          "The instantaneous release is stated twice: by its setting and by its limits.");
    }
    if (!HOUSEHOLD_RESIDUAL.contains(device.path("standard").asText(""))) {
      return;
    }
    boolean adjustable = "adjustable".equals(device.at("/residual/delay").textValue());
    boolean set = device.at("/residual/delayS").isNumber();
    if (adjustable || set) {
      add(
          pointer + "/residual/" + (adjustable ? "delay" : "delayS"),
          "Residual functions to this standard are general or S, never adjustable.");
    }
  }

  private void atMost(String smaller, String greater, String detail) {
    JsonNode a = body.at(smaller);
    JsonNode b = body.at(greater);
    if (a.isNumber() && b.isNumber() && a.doubleValue() > b.doubleValue()) {
      add(smaller, detail);
    }
  }

  private void add(String pointer, String detail) {
    faults.add(Fault.inBody(CONTRADICTION, detail, pointer));
  }
}
