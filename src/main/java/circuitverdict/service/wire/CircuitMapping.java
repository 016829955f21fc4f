package circuitverdict.service.wire;

import circuitverdict.circuit.Assembly;
import circuitverdict.circuit.BackUp;
import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Feeder;
import circuitverdict.circuit.Grid;
import circuitverdict.circuit.Installation;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Load;
import circuitverdict.circuit.LoadInrush;
import circuitverdict.circuit.LoadInrush.CountLimit;
import circuitverdict.circuit.Premises;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.Reading;
import circuitverdict.circuit.Requirements;
import circuitverdict.circuit.Supply;
import circuitverdict.circuit.Supply.FaultCurrents;
import circuitverdict.circuit.Transformer;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** The contract's {@code Circuit}, already valid, as the engine's. */
public final class CircuitMapping {
  private CircuitMapping() {}

  /** The circuit of a request body. */
  public static Circuit circuit(JsonNode body) {
    return circuit(Members.of(body, ""), body);
  }

  /** The tree of a request body: itself, where it has a cable, and the circuits that it feeds. */
  public static List<Feeder> feeders(JsonNode body) {
    List<Feeder> fed = fed(body, "", body);
    return body.has("cable") ? List.of(feeder(body, "", fed, body)) : fed;
  }

  /**
   * The circuits of the tree that feed boards, by place: {@code feeds} tells which do. Each stands
   * with what it feeds of them.
   */
  public static List<Feeder> boards(JsonNode body, Predicate<String> feeds) {
    List<Feeder> fed = boards(body, "", body, feeds);
    return body.has("cable") ? List.of(feeder(body, "", fed, body)) : fed;
  }

  private static List<Feeder> boards(
      JsonNode node, String place, JsonNode body, Predicate<String> feeds) {
    List<Feeder> boards = new ArrayList<>();
    JsonNode circuits = node.path("circuits");
    for (int i = 0; i < circuits.size(); i++) {
      String here = place + "/circuits/" + i;
      if (feeds.test(here)) {
        JsonNode each = circuits.get(i);
        boards.add(feeder(each, here, boards(each, here, body, feeds), body));
      }
    }
    return boards;
  }

  /** The readings of a request body. */
  public static List<Reading> readings(JsonNode body) {
    return Members.of(body, "").list("readings", (node, place) -> reading(Members.of(node, place)));
  }

  private static Reading reading(Members m) {
    return new Reading(
        m.place(),
        m.word("kind", Reading.Kind.class),
        m.list("between", (node, place) -> node.textValue()),
        m.text("place"),
        m.number("resistanceOhm"),
        m.number("currentA"),
        m.number("timeS"),
        m.bool("satisfactory"),
        m.number("testMultiple"),
        m.number("conductorTemperatureC"),
        m.number("instrumentUncertaintyPercent"));
  }

  private static List<Feeder> fed(JsonNode node, String place, JsonNode body) {
    return Members.of(node, place)
        .list("circuits", (each, at) -> feeder(each, at, fed(each, at, body), body));
  }

  private static Feeder feeder(JsonNode node, String place, List<Feeder> fed, JsonNode body) {
    String reference = node.path("reference").textValue();
    return new Feeder(place, reference, circuit(Members.of(node, place), body), fed);
  }

  /** A circuit of the tree: supply and stage are those of the request. */
  private static Circuit circuit(Members m, JsonNode body) {
    Members whole = Members.of(body, "");
    Circuit.Stage stage = whole.word("stage", Circuit.Stage.class);
    return new Circuit(
        stage == null ? Circuit.Stage.SIGN_OFF : stage,
        m.word("circuitKind", Circuit.Kind.class),
        supply(whole.object("supply")),
        live(m),
        load(m.object("load")),
        cable(m.object("cable")),
        m.list("furtherCables", (node, place) -> cable(Members.of(node, place))),
        device(m, "device"),
        device(m, "residualDevice"),
        device(m, "upstreamDevice"),
        device(m, "incomer"),
        assembly(m),
        backUp(m.object("backUp")),
        premises(m.object("premises")),
        requirements(m.object("requirements")));
  }

  private static ProtectiveDevice device(Members m, String name) {
    return m.has(name) ? DeviceMapping.device(m.object(name)) : null;
  }

  private static LiveConductors live(Members m) {
    List<String> names = m.list("liveConductors", (node, place) -> node.textValue());
    if (names.isEmpty()) {
      return null;
    }
    boolean neutral = names.contains("N");
    return new LiveConductors(names.size() - (neutral ? 1 : 0), neutral);
  }

  private static Supply supply(Members m) {
    Members currents = m.object("faultCurrents");
    return new Supply(
        m.word("point", Supply.Point.class),
        m.word("earthing", Supply.Earthing.class),
        m.integer("phases"),
        m.number("lineToEarthVoltageV"),
        m.number("frequencyHz"),
        m.word("ownership", Supply.Ownership.class),
        m.word("basis", Supply.Basis.class),
        m.number("loopImpedanceOhm"),
        m.number("loopReactanceOhm"),
        m.number("originLoopImpedanceOhm"),
        m.number("lineToNeutralLoopImpedanceOhm"),
        m.number("lineToNeutralLoopReactanceOhm"),
        m.number("maximumFaultCurrentA"),
        new FaultCurrents(
            currents.object("threePhase").number("maximumA"),
            currents.object("twoPhase").number("maximumA"),
            currents.object("lineToNeutral").number("maximumA"),
            currents.object("lineToEarth").number("maximumA")),
        m.number("instrumentUncertaintyPercent"),
        m.number("voltageDropPercent"),
        m.number("earthElectrodeResistanceOhm"),
        m.bool("openPenProtection"),
        m.bool("localGeneration"),
        source(m));
  }

  private static Supply.Source source(Members m) {
    return new Supply.Source(
        m.has("transformer") ? transformer(m.object("transformer")) : null,
        m.has("grid") ? grid(m.object("grid")) : null,
        m.number("voltageTolerancePercent"));
  }

  private static Transformer transformer(Members m) {
    return new Transformer(
        m.number("ratedPowerVA"),
        m.number("primaryVoltageV"),
        m.number("secondaryVoltageV"),
        m.number("impedanceVoltagePercent"),
        m.number("loadLossW"),
        m.number("resistanceToReactanceRatio"),
        m.number("zeroSequenceImpedancePercent"),
        m.integer("count"));
  }

  private static Grid grid(Members m) {
    return new Grid(
        m.number("nominalVoltageV"),
        m.number("maximumShortCircuitPowerVA"),
        m.number("minimumShortCircuitPowerVA"),
        m.number("resistanceToReactanceRatio"));
  }

  private static Load load(Members m) {
    return new Load(
        m.word("kind", Load.Kind.class),
        m.word("use", Load.Use.class),
        m.number("designCurrentA"),
        m.number("voltageDropCurrentA"),
        m.word("demandRule", Load.DemandRule.class),
        m.number("ratedPowerW"),
        m.number("ratedVoltageV"),
        m.number("efficiencyPercent"),
        m.number("powerFactor"),
        m.integer("count"),
        m.number("diversityFactor"),
        m.word("connection", Load.Connection.class),
        m.number("ratedCurrentA"),
        m.bool("canOverload"),
        inrush(m.object("inrush")),
        m.number("thirdHarmonicPercent"),
        m.number("protectiveConductorCurrentA"),
        m.word("residualWaveform", Load.Waveform.class),
        m.bool("directCurrentDetection"),
        m.list("parts", (node, place) -> load(Members.of(node, place))));
  }

  private static LoadInrush inrush(Members m) {
    return new LoadInrush(
        m.word("starting", LoadInrush.Starting.class),
        m.number("currentMultiple"),
        m.number("peakCurrentA"),
        m.number("durationS"),
        m.list("countLimits", (node, place) -> countLimit(Members.of(node, place))));
  }

  private static CountLimit countLimit(Members m) {
    return new CountLimit(m.term("characteristic"), m.number("ratedCurrentA"), m.integer("count"));
  }

  private static Cable cable(Members m) {
    return new Cable(
        m.place(),
        m.word("construction", Cable.Construction.class),
        m.word("conductor", Cable.Metal.class),
        m.term("insulation"),
        m.number("lineCsaMm2"),
        m.number("neutralCsaMm2"),
        m.number("protectiveCsaMm2"),
        m.word("protectiveMeans", Cable.ProtectiveMeans.class),
        m.word("protectiveConductor", Cable.Metal.class),
        m.number("armourAreaMm2"),
        m.number("armourResistanceOhmPerKm"),
        m.integer("parallelCables"),
        m.number("lengthM"),
        m.word("arrangement", Cable.Arrangement.class),
        m.number("lineResistanceOhmPerKm"),
        m.number("protectiveResistanceOhmPerKm"),
        m.number("reactanceOhmPerKm"),
        m.number("terminalTemperatureC"),
        installation(m.object("installation")));
  }

  private static Installation installation(Members m) {
    return new Installation(
        m.place(),
        m.term("referenceMethod"),
        m.number("ambientTemperatureC"),
        m.integer("groupedCircuits"),
        m.integer("lightlyLoadedCircuits"),
        m.bool("mixedSizes"),
        m.bool("simultaneousOverload"),
        m.word("groupArrangement", Installation.Group.class),
        m.number("insulationLengthM"),
        m.number("soilThermalResistivityKMPerW"),
        m.number("burialDepthM"),
        m.word("concealment", Installation.Concealment.class));
  }

  private static Assembly assembly(Members circuit) {
    Members m = circuit.object("assembly");
    return new Assembly(
        circuit.has("assembly"),
        m.text("standard"),
        m.number("conditionalRatingA"),
        m.number("maximumUpstreamFuseA"),
        m.number("ambientTemperatureC"),
        m.number("relativeHumidityPercent"),
        m.bool("deviceDeclared"));
  }

  private static BackUp backUp(Members m) {
    return new BackUp(
        m.number("limitedLetThroughA2s"), m.number("combinationRatingA"), m.text("evidence"));
  }

  private static Requirements requirements(Members m) {
    return new Requirements(
        m.word("evidence", Requirements.Evidence.class),
        m.word("inrush", Requirements.Inrush.class),
        m.word("selectivity", Requirements.Selectivity.class));
  }

  private static Premises premises(Members m) {
    List<String> locations =
        m.has("locations") ? m.list("locations", (node, place) -> node.textValue()) : null;
    return new Premises(
        m.word("use", Premises.Use.class),
        m.text("operatedBy"),
        locations,
        m.bool("higherRiskResidential"),
        m.integer("pollutionDegree"));
  }
}
