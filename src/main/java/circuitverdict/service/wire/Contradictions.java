package circuitverdict.service.wire;

import circuitverdict.service.edge.Fault;
import circuitverdict.service.edge.FaultCode;
import com.fasterxml.jackson.core.JsonPointer;
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

  /**
   * What rounding and readings may put between figures that belong together: a fact of the contract
   * (FaultCurrents), like the bounds of its members.
   */
  private static final double READING = 0.05;

  /** The one kind of residual function that has a set delay. */
  private static final String ADJUSTABLE = "adjustable";

  /** Their standards know a general type and type S only. */
  private static final Set<String> HOUSEHOLD_RESIDUAL = Set.of("IEC 61008-1", "IEC 61009-1");

  private static final List<String> DEVICES =
      List.of("device", "residualDevice", "upstreamDevice", "incomer");

  private static final Set<String> UNARMOURED =
      Set.of("flat-twin-and-earth", "multicore", "singles");

  private static final Set<String> WORKS = Set.of("industrial", "agricultural");

  private static final Set<String> ARMOUR = Set.of("armour", "armour-and-core");

  /** Of two members of one object the first cannot exceed the second. */
  private record AtMost(JsonPointer smaller, JsonPointer greater, String detail) {
    static AtMost of(String smaller, String greater, String detail) {
      return new AtMost(JsonPointer.compile(smaller), JsonPointer.compile(greater), detail);
    }
  }

  private static final List<AtMost> IN_SUPPLY =
      List.of(
          AtMost.of(
              "/originLoopImpedanceOhm",
              "/loopImpedanceOhm",
              "The loop impedance at the origin cannot exceed that at the board."),
          AtMost.of(
              "/loopReactanceOhm", "/loopImpedanceOhm", "A reactance cannot exceed its impedance."),
          AtMost.of(
              "/lineToNeutralLoopReactanceOhm",
              "/lineToNeutralLoopImpedanceOhm",
              "A reactance cannot exceed its impedance."),
          ofOneKind("threePhase"),
          ofOneKind("twoPhase"),
          ofOneKind("lineToNeutral"),
          ofOneKind("lineToEarth"));

  private static final List<AtMost> IN_TT_SUPPLY =
      List.of(
          AtMost.of(
              "/earthElectrodeResistanceOhm",
              "/loopImpedanceOhm",
              "The electrode is part of the earth fault loop and cannot exceed it."));

  private static final List<AtMost> IN_DEVICE =
      List.of(
          AtMost.of(
              "/serviceBreakingCapacityA",
              "/breakingCapacityA",
              "The service capacity cannot exceed the breaking capacity."),
          AtMost.of(
              "/magneticMultiples/lower",
              "/magneticMultiples/upper",
              "The lower magnetic limit cannot exceed the upper one."),
          AtMost.of(
              "/settings/longTimeA",
              "/ratedCurrentA",
              "The setting Ir cannot exceed the rated current."),
          AtMost.of(
              "/settings/longTimeA",
              "/settings/shortTimeA",
              "A short-time setting below Ir would trip the load itself."),
          AtMost.of(
              "/settings/longTimeA",
              "/settings/instantaneousA",
              "An instantaneous setting below Ir would trip the load itself."));

  private static AtMost ofOneKind(String kind) {
    return AtMost.of(
        "/faultCurrents/" + kind + "/maximumA",
        "/maximumFaultCurrentA",
        "The greatest fault current of any kind cannot be less than that of one kind.");
  }

  private final JsonNode body;
  private final List<Fault> faults = new ArrayList<>();

  private Contradictions(JsonNode body) {
    this.body = body;
  }

  /** Every contradiction of a circuit whose members are valid, or null where they are not. */
  public static List<Fault> of(JsonNode body) {
    Contradictions found = new Contradictions(body);
    found.stage();
    found.supply();
    found.faults.addAll(SourceContradictions.of(body.path("supply")));
    found.live();
    found.premises(body.path("premises"));
    found.faults.addAll(LoadContradictions.of(body));
    found.cable(body.path("cable"), "/cable");
    JsonNode further = body.path("furtherCables");
    for (int i = 0; i < further.size(); i++) {
      found.cable(further.get(i), "/furtherCables/" + i);
    }
    for (String device : DEVICES) {
      found.device(body.path(device), "/" + device);
    }
    JsonNode products = body.path("products");
    for (int i = 0; i < products.size(); i++) {
      found.device(products.get(i), "/products/" + i);
    }
    return found.faults;
  }

  /** Every contradiction of the cables of one circuit of a tree, likewise. */
  static List<Fault> ofCables(JsonNode circuit, String place) {
    Contradictions found = new Contradictions(circuit);
    found.cable(circuit.path("cable"), place + "/cable");
    JsonNode further = circuit.path("furtherCables");
    for (int i = 0; i < further.size(); i++) {
      found.cable(further.get(i), place + "/furtherCables/" + i);
    }
    return found.faults;
  }

  /** Every contradiction of a single device, likewise. */
  public static List<Fault> ofDevice(JsonNode body, String pointer) {
    Contradictions found = new Contradictions(body);
    found.device(body.at(pointer), pointer);
    return found.faults;
  }

  private void stage() {
    boolean signOff = "sign-off".equals(body.path("stage").textValue());
    if (signOff && !body.has("edition")) {
      faults.add(Fault.inBody(EDITION_REQUIRED, "At sign-off the edition must be named.", ""));
    }
  }

  private void supply() {
    JsonNode supply = body.path("supply");
    held(IN_SUPPLY, supply, "/supply");
    if ("TT".equals(supply.path("earthing").textValue())) {
      held(IN_TT_SUPPLY, supply, "/supply");
    }
    kinds(supply.path("faultCurrents"));
    boolean origin = "origin".equals(supply.path("point").textValue());
    if (origin && supply.path("voltageDropPercent").doubleValue() > 0) {
      add("/supply/voltageDropPercent", "Voltage drop is counted from the origin: there it is 0.");
    }
    if (supply.path("phases").intValue() == 2) {
      faults.add(
          Fault.inBody(
              FaultCode.UNKNOWN_VALUE.code(),
              "A supply has one phase or three.",
              "/supply/phases",
              List.of("1", "3")));
    }
    JsonNode voltage = supply.path("lineToEarthVoltageV");
    boolean isPublic = "public".equals(supply.path("ownership").textValue());
    if (isPublic && voltage.isNumber() && voltage.doubleValue() != PUBLIC_VOLTAGE_V) {
      add(
          "/supply/lineToEarthVoltageV",
          "Public supplies have a nominal 230 V; a reading is not it.");
    }
  }

  /**
   * What symmetrical components allow (IEC 60909-0), a twentieth left to rounding and readings: Ik2
   * is √3/2·Ik3, and no fault of one line exceeds 3/2·Ik3.
   */
  private void kinds(JsonNode kinds) {
    JsonNode three = kinds.path("threePhase").path("maximumA");
    JsonNode two = kinds.path("twoPhase").path("maximumA");
    if (!three.isNumber()) {
      return;
    }
    double ofTwo = Math.sqrt(3) / 2 * three.doubleValue();
    if (two.isNumber() && two.doubleValue() < ofTwo * (1 - READING)) {
      add(
          "/supply/faultCurrents/twoPhase/maximumA",
          "A fault between two lines has √3/2 of the current of one of three.");
    }
    for (String kind : new String[] {"lineToNeutral", "lineToEarth"}) {
      JsonNode one = kinds.path(kind).path("maximumA");
      if (one.isNumber() && one.doubleValue() > 1.5 * three.doubleValue() * (1 + READING)) {
        add(
            "/supply/faultCurrents/" + kind + "/maximumA",
            "A fault of one line has no more than 3/2 of the current of one of three.");
      }
    }
  }

  private void live() {
    Set<String> seen = new HashSet<>();
    JsonNode live = body.path("liveConductors");
    for (int i = 0; i < live.size(); i++) {
      if (!live.get(i).isTextual()) {
        // What is not a name may have been meant for any.
        return;
      }
      if (!seen.add(live.get(i).textValue())) {
        add("/liveConductors/" + i, "A live conductor is named twice.");
      }
    }
    int count = 0;
    for (String name : seen) {
      count += name.startsWith("L") ? 1 : 0;
    }
    if (live.isArray() && count == 0) {
      add("/liveConductors", "A circuit has at least one line conductor.");
    }
    JsonNode phases = body.path("supply").path("phases");
    if (count == 1 && seen.size() == 1) {
      add("/liveConductors", "A single line has a neutral or another line to return by.");
    }
    if (phases.isNumber() && phases.intValue() == 1 && count > 1) {
      add("/liveConductors", "A single-phase supply has one line conductor.");
    }
  }

  private void premises(JsonNode premises) {
    boolean works = WORKS.contains(premises.path("use").asText(""));
    if (works && premises.path("higherRiskResidential").booleanValue()) {
      add("/premises/higherRiskResidential", "Premises of this use are no residence.");
    }
  }

  /** What serves as protective conductor must be part of such a cable; a ring is one cable. */
  private void cable(JsonNode cable, String pointer) {
    String construction = cable.path("construction").asText();
    String means = cable.path("protectiveMeans").asText();
    if (construction.equals("singles") && means.equals("core")) {
      add(
          pointer + "/protectiveMeans",
          "Single-core cables have no core for a protective conductor: one of its own is separate.");
    }
    if (UNARMOURED.contains(construction) && ARMOUR.contains(means)) {
      add(pointer + "/protectiveMeans", "Cables of this construction have no armour.");
    }
    JsonNode laid = cable.path("installation");
    JsonNode light = laid.path("lightlyLoadedCircuits");
    JsonNode grouped = laid.path("groupedCircuits");
    if (light.isNumber() && grouped.isNumber() && light.intValue() >= grouped.intValue()) {
      add(
          pointer + "/installation/lightlyLoadedCircuits",
          "They are others of the grouped circuits, of which this one is one.");
    }
    boolean ring = "ring".equals(cable.path("arrangement").textValue());
    if (ring && cable.path("parallelCables").intValue() > 1) {
      add(pointer + "/parallelCables", "A ring is not a set of parallel cables.");
    }
  }

  private void device(JsonNode device, String pointer) {
    if (device.isMissingNode()) {
      return;
    }
    releases(device, pointer);
    held(IN_DEVICE, device, pointer);
    faults.addAll(SelectivityContradictions.of(device, pointer));
    faults.addAll(CurveContradictions.of(device, pointer));
    faults.addAll(FaceContradictions.of(device, pointer));
    Set<Double> currents = new HashSet<>();
    JsonNode points = device.path("letThrough");
    for (int i = 0; i < points.size(); i++) {
      JsonNode current = points.get(i).path("prospectiveCurrentA");
      if (current.isNumber() && !currents.add(current.doubleValue())) {
        add(pointer + "/letThrough/" + i, "Two points stand at the same prospective current.");
      }
    }
  }

  private void releases(JsonNode device, String pointer) {
    if (device.path("settings").path("instantaneousA").isNumber()
        && device.path("magneticMultiples").path("upper").isNumber()) {
      add(
          pointer + "/magneticMultiples/upper",
          "The instantaneous release is stated twice: by its setting and by its limits.");
    }
    JsonNode residual = device.path("residual");
    String delay = residual.path("delay").asText("");
    boolean adjustable = ADJUSTABLE.equals(delay);
    boolean set = residual.path("delayS").isNumber();
    if (HOUSEHOLD_RESIDUAL.contains(device.path("standard").asText(""))) {
      if (adjustable || set) {
        add(
            pointer + "/residual/" + (adjustable ? "delay" : "delayS"),
            "Residual functions to this standard are general or S, never adjustable.");
      }
    } else if (set && !delay.isEmpty() && !adjustable) {
      add(pointer + "/residual/delayS", "A residual function of a fixed type has no set delay.");
    }
  }

  private void held(List<AtMost> pairs, JsonNode object, String pointer) {
    for (AtMost pair : pairs) {
      JsonNode smaller = object.at(pair.smaller());
      if (!smaller.isNumber()) {
        continue;
      }
      JsonNode greater = object.at(pair.greater());
      if (greater.isNumber() && smaller.doubleValue() > greater.doubleValue()) {
        add(pointer + pair.smaller(), pair.detail());
      }
    }
  }

  private void add(String pointer, String detail) {
    faults.add(Fault.inBody(CONTRADICTION, detail, pointer));
  }
}
