package circuitverdict.service;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** Circuits of which every member is right by itself, and two cannot both be true. */
final class ContradictoryRequests {
  private static final String POINTS =
      "{\"device\": {\"letThrough\": [{\"prospectiveCurrentA\": 1000, \"energyA2s\": 1},"
          + " {\"prospectiveCurrentA\": 1000.0, \"energyA2s\": 2}]}}";

  private ContradictoryRequests() {}

  /** Merge patch of the contract's deck oven, and the place that must be named. */
  private record Contradiction(String name, String patch, String pointer) {}

  private static final List<Contradiction> CONTRADICTIONS =
      List.of(
          new Contradiction(
              "the origin's loop above the board's",
              "{\"supply\": {\"loopImpedanceOhm\": 0.3, \"originLoopImpedanceOhm\": 0.31}}",
              "/supply/originLoopImpedanceOhm"),
          new Contradiction(
              "a reactance above its impedance",
              "{\"supply\": {\"loopImpedanceOhm\": 0.3, \"loopReactanceOhm\": 0.31}}",
              "/supply/loopReactanceOhm"),
          new Contradiction(
              "a line-neutral reactance above its impedance",
              "{\"supply\": {\"lineToNeutralLoopReactanceOhm\": 0.27}}",
              "/supply/lineToNeutralLoopReactanceOhm"),
          kind("threePhase"),
          kind("twoPhase"),
          kind("lineToNeutral"),
          kind("lineToEarth"),
          // IEC 60909-0: Ik2 = √3/2·Ik3; Ik1 = 3·Ik3/(2 + Z0/Z1)
          ofThree("twoPhase", 2400),
          ofThree("lineToNeutral", 4800),
          ofThree("lineToEarth", 4800),
          new Contradiction(
              "a point that operates earliest after its latest",
              "{\"device\": {\"operatingTimes\": [{\"currentA\": 60, \"earliestS\": 5, \"latestS\": 4}]}}",
              "/device/operatingTimes/0"),
          new Contradiction(
              "a curve that rises with the current",
              "{\"device\": {\"operatingTimes\": [{\"currentA\": 60, \"earliestS\": 5},"
                  + " {\"currentA\": 50, \"latestS\": 4}]}}",
              "/device/operatingTimes/0"),
          new Contradiction(
              "a residence that is a factory",
              "{\"premises\": {\"use\": \"industrial\", \"higherRiskResidential\": true}}",
              "/premises/higherRiskResidential"),
          new Contradiction(
              "a voltage beside parts",
              "{\"load\": {\"kind\": \"mixed\", \"ratedVoltageV\": 230,"
                  + " \"parts\": [{\"designCurrentA\": 5}]}}",
              "/load/ratedVoltageV"),
          new Contradiction(
              "an outlet that cannot be overloaded",
              "{\"load\": {\"connection\": \"socket-outlet\", \"canOverload\": false}}",
              "/load/canOverload"),
          new Contradiction(
              "a part that draws nothing",
              "{\"load\": {\"kind\": \"mixed\", \"parts\": [{\"designCurrentA\": 5},"
                  + " {\"designCurrentA\": 5, \"diversityFactor\": 0}]}}",
              "/load/parts/1/diversityFactor"),
          new Contradiction(
              "a greatest number on one device twice",
              "{\"load\": {\"inrush\": {\"countLimits\": ["
                  + "{\"characteristic\": \"B\", \"ratedCurrentA\": 10, \"count\": 13},"
                  + " {\"characteristic\": \"B\", \"ratedCurrentA\": 10.0, \"count\": 14}]}}}",
              "/load/inrush/countLimits/1"),
          new Contradiction(
              "outlets among the parts that cannot overload",
              "{\"load\": {\"kind\": \"mixed\", \"canOverload\": false,"
                  + " \"parts\": [{\"kind\": \"socket-outlets\", \"designCurrentA\": 5}]}}",
              "/load/canOverload"),
          new Contradiction(
              "two limits of selectivity behind one device",
              "{\"device\": {\"selectivity\": [{\"upstreamId\": \"Q1\", \"limitCurrentA\": 900},"
                  + " {\"upstreamId\": \"Q1\", \"limitCurrentA\": 2000}]}}",
              "/device/selectivity/1"),
          // engineering.md 0, 5: public supplies in the UK are 230 V
          new Contradiction(
              "a public supply at 240 V",
              "{\"supply\": {\"ownership\": \"public\", \"lineToEarthVoltageV\": 240}}",
              "/supply/lineToEarthVoltageV"),
          // IEC 60898-1 clauses 1 and 4 (from memory)
          face(
              "more protected poles than poles",
              "\"poles\": 2, \"protectedPoles\": 3",
              "protectedPoles"),
          face("a breaker that protects nothing", "\"protectedPoles\": 0", "protectedPoles"),
          face(
              "two protected of three poles",
              "\"poles\": 3, \"protectedPoles\": 2",
              "protectedPoles"),
          face("a breaker that does not isolate", "\"isolation\": false", "isolation"),
          face(
              "a voltage to earth above that between lines",
              "\"ratedVoltageV\": 230, \"ratedLineToEarthVoltageV\": 400",
              "ratedLineToEarthVoltageV"),
          face(
              "a fuse with a direction",
              "\"standard\": \"BS 88-3\", \"unidirectional\": true",
              "unidirectional"),
          face(
              "two factors at one temperature",
              "\"derating\": [{\"ambientTemperatureC\": 40, \"factor\": 0.9},"
                  + " {\"ambientTemperatureC\": 40.0, \"factor\": 0.8}]",
              "derating/1"),
          new Contradiction(
              "a pole named twice",
              "{\"liveConductors\": [\"L1\", \"N\", \"L1\"]}",
              "/liveConductors/2"),
          new Contradiction("no line at all", "{\"liveConductors\": [\"N\"]}", "/liveConductors"),
          new Contradiction(
              "two lines of a single phase",
              "{\"liveConductors\": [\"L1\", \"L2\"]}",
              "/liveConductors"),
          new Contradiction(
              "a line that nothing returns from",
              "{\"liveConductors\": [\"L1\"]}",
              "/liveConductors"),
          new Contradiction(
              "an electrode above its loop",
              "{\"supply\": {\"earthing\": \"TT\", \"loopImpedanceOhm\": 80,"
                  + " \"earthElectrodeResistanceOhm\": 81}}",
              "/supply/earthElectrodeResistanceOhm"),
          new Contradiction(
              "a voltage drop up to the origin",
              "{\"supply\": {\"point\": \"origin\", \"voltageDropPercent\": 0.5}}",
              "/supply/voltageDropPercent"),
          new Contradiction(
              "no load at all", "{\"load\": {\"diversityFactor\": 0}}", "/load/diversityFactor"),
          means("singles", "core"),
          means("singles", "armour-and-core"),
          means("flat-twin-and-earth", "armour"),
          means("multicore", "armour"),
          means("multicore", "armour-and-core"),
          new Contradiction(
              "a further cable without the core that serves",
              "{\"furtherCables\": [{\"construction\": \"singles\", \"protectiveMeans\": \"core\"}]}",
              "/furtherCables/0/protectiveMeans"),
          new Contradiction(
              "socket-outlets on a distribution circuit",
              "{\"circuitKind\": \"distribution\", \"load\": {\"connection\": \"socket-outlet\"}}",
              "/circuitKind"),
          new Contradiction(
              "socket-outlets that cannot be overloaded",
              "{\"load\": {\"kind\": \"socket-outlets\", \"canOverload\": false}}",
              "/load/canOverload"),
          new Contradiction(
              "a ring of parallel cables",
              "{\"cable\": {\"arrangement\": \"ring\", \"parallelCables\": 2}}",
              "/cable/parallelCables"),
          new Contradiction(
              "a setting above the rating",
              "{\"device\": {\"settings\": {\"longTimeA\": 33}}}",
              "/device/settings/longTimeA"),
          new Contradiction(
              "an instantaneous setting below Ir",
              "{\"device\": {\"settings\": {\"longTimeA\": 32, \"instantaneousA\": 10}}}",
              "/device/settings/longTimeA"),
          new Contradiction(
              "a short-time setting below Ir",
              "{\"device\": {\"settings\": {\"longTimeA\": 32, \"shortTimeA\": 10}}}",
              "/device/settings/longTimeA"),
          new Contradiction(
              "an instantaneous release stated twice",
              "{\"device\": {\"settings\": {\"instantaneousA\": 320},"
                  + " \"magneticMultiples\": {\"upper\": 10}}}",
              "/device/magneticMultiples/upper"),
          // IEC 61009-1: general type and type S (from memory)
          new Contradiction(
              "an adjustable delay of a household device",
              "{\"device\": {\"standard\": \"IEC 61009-1\","
                  + " \"residual\": {\"operatingCurrentA\": 0.03, \"delay\": \"adjustable\"}}}",
              "/device/residual/delay"),
          new Contradiction(
              "a set delay of a household device",
              "{\"residualDevice\": {\"standard\": \"IEC 61008-1\","
                  + " \"residual\": {\"operatingCurrentA\": 0.03, \"delayS\": 0.1}}}",
              "/residualDevice/residual/delayS"),
          // contract, delayS: a set delay belongs to adjustable
          fixed("general"),
          fixed("S"),
          new Contradiction("a current twice", POINTS, "/device/letThrough/1"),
          new Contradiction(
              "a service capacity above the breaking capacity",
              "{\"device\": {\"serviceBreakingCapacityA\": 6001}}",
              "/device/serviceBreakingCapacityA"),
          new Contradiction(
              "magnetic limits the wrong way round",
              "{\"device\": {\"magneticMultiples\": {\"lower\": 10, \"upper\": 5}}}",
              "/device/magneticMultiples/lower"));

  private static Contradiction fixed(String delay) {
    return new Contradiction(
        "a set delay beside the type " + delay,
        "{\"device\": {\"standard\": \"IEC 60947-2\", \"residual\": {\"operatingCurrentA\": 0.3,"
            + " \"delay\": \""
            + delay
            + "\", \"delayS\": 0.3}}}",
        "/device/residual/delayS");
  }

  private static Contradiction face(String name, String members, String member) {
    return new Contradiction(name, "{\"device\": {" + members + "}}", "/device/" + member);
  }

  private static Contradiction means(String construction, String means) {
    return new Contradiction(
        construction + " with " + means,
        "{\"cable\": {\"construction\": \""
            + construction
            + "\", \"protectiveMeans\": \""
            + means
            + "\"}}",
        "/cable/protectiveMeans");
  }

  private static Contradiction kind(String kind) {
    return new Contradiction(
        kind + " current above the greatest of any kind",
        "{\"supply\": {\"faultCurrents\": {\"" + kind + "\": {\"maximumA\": 1551}}}}",
        "/supply/faultCurrents/" + kind + "/maximumA");
  }

  private static Contradiction ofThree(String kind, int ampere) {
    return new Contradiction(
        kind + " beside three lines",
        "{\"supply\": {\"phases\": 3, \"maximumFaultCurrentA\": 9000, \"faultCurrents\":"
            + " {\"threePhase\": {\"maximumA\": 3000}, \""
            + kind
            + "\": {\"maximumA\": "
            + ampere
            + "}}}}",
        "/supply/faultCurrents/" + kind + "/maximumA");
  }

  /** All of them, for a circuit check; the first also for the other operations. */
  static List<BadRequest> all() {
    List<BadRequest> requests = new ArrayList<>();
    for (Contradiction each : CONTRADICTIONS) {
      requests.add(request("/v1/circuit-checks", each));
    }
    for (String path :
        List.of(
            "/v1/device-selections",
            "/v1/breaking-capacity-verdicts",
            "/v1/let-through-verdicts",
            "/v1/selectivity-verdicts")) {
      requests.add(request(path, CONTRADICTIONS.get(0)));
    }
    requests.add(withoutEdition());
    requests.add(ofTwoPhases());
    return requests;
  }

  private static BadRequest request(String path, Contradiction each) {
    JsonNode oven = Variations.tree(Calls.ofContract("checkCircuit", "complies").body());
    String body = Variations.patched(oven, Variations.tree(each.patch())).toString();
    return new BadRequest(
        each.name() + ", " + path,
        422,
        "invalid-request",
        "contradiction",
        each.pointer(),
        body,
        () -> Http.post(path, body));
  }

  /** At sign-off the edition must be named (contract.md, Circuit); the parent is pointed at. */
  private static BadRequest withoutEdition() {
    String body = "{\"stage\": \"sign-off\"}";
    return new BadRequest(
        "sign-off without edition",
        422,
        "invalid-request",
        "edition-required",
        "",
        body,
        () -> Http.post("/v1/circuit-checks", body));
  }

  /** The bounds of the contract cannot say "1 or 3". */
  private static BadRequest ofTwoPhases() {
    String body = "{\"supply\": {\"phases\": 2}}";
    return new BadRequest(
        "a supply of two phases",
        422,
        "invalid-request",
        "unknown-value",
        "/supply/phases",
        body,
        () -> Http.post("/v1/circuit-checks", body));
  }
}
