package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;

import circuitverdict.check.CircuitCheck;
import circuitverdict.service.edge.Contract;
import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.edge.InvalidRequest;
import circuitverdict.service.wire.Sourced;
import circuitverdict.service.wire.UnusedMembers;
import circuitverdict.standard.Edition;
import circuitverdict.support.Scenario;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * No member of a circuit is ignored in silence. Each one of the contract is either read, so that in
 * some circuit here two of its values are answered differently, or told as not used.
 */
class MemberUseTest {
  private static final JsonNode SCHEMAS =
      ContractDocument.contract().root().at("/components/schemas");
  private static final JsonNodeFactory NEW = JsonNodeFactory.instance;
  private static final double[] NUMBERS = {0.001, 0.02, 0.5, 1, 5, 20, 50, 90, 100, 1000, 10000};

  private static final String FAULTS =
      "'maximumFaultCurrentA': 1500, 'faultCurrents': {'threePhase': {'maximumA': 1500},"
          + " 'twoPhase': {'maximumA': 1300}, 'lineToNeutral': {'maximumA': 1000},"
          + " 'lineToEarth': {'maximumA': 900}}";
  private static final String IN_GROUND =
      "'installation': {'referenceMethod': 'D1', 'soilThermalResistivityKMPerW': 2.5,"
          + " 'burialDepthM': 0.7, 'ambientTemperatureC': 20, 'groupedCircuits': 1}";
  private static final String ARMOURED =
      "'construction': 'armoured-multicore', 'conductor': 'copper', 'lineCsaMm2': 16,"
          + " 'lengthM': 20, 'insulation': 'thermosetting-90', 'protectiveMeans': 'armour',"
          + " 'armourAreaMm2': 40, 'armourResistanceOhmPerKm': 4, 'protectiveConductor': 'steel'";
  private static final String LARGE =
      "'construction': 'multicore', 'conductor': 'copper', 'insulation': 'thermosetting-90',"
          + " 'lineCsaMm2': 35, 'neutralCsaMm2': 35, 'protectiveCsaMm2': 16,"
          + " 'protectiveMeans': 'core', 'lengthM': 20, 'terminalTemperatureC': 90,"
          + " 'reactanceOhmPerKm': 0.1, 'lineResistanceOhmPerKm': 0.5,"
          + " 'protectiveResistanceOhmPerKm': 1";
  private static final String GROUPED =
      "'installation': {'referenceMethod': 'C', 'groupedCircuits': 4, 'ambientTemperatureC': 30,"
          + " 'groupArrangement': 'touching', 'insulationLengthM': 0.1}";
  private static final String ADJUSTABLE =
      "{'standard': 'IEC 60947-2', 'ratedCurrentA': 50, 'breakingCapacityA': 10000, 'poles': 1,"
          + " 'characteristic': null, 'energyClass': null, 'currentLimiting': true,"
          + " 'serviceBreakingCapacityA': 8000, 'magneticMultiples': {'lower': 8},"
          + " 'settings': {'longTimeA': 32, 'shortTimeA': 100, 'shortTimeDelayS': 0.1}";
  private static final String RESIDUAL =
      "{'standard': 'IEC 61008-1', 'ratedCurrentA': 63, 'poles': 2, 'breakingCapacityA': 6000,"
          + " 'residualMakingBreakingA': 600, 'residual': {'operatingCurrentA': 0.03, 'delay': 'S'}}";
  private static final String TT =
      "'supply': {'earthing': 'TT', 'loopImpedanceOhm': 100, 'earthElectrodeResistanceOhm': 80}";
  private static final String RATED_UNIT =
      "'assembly': {'standard': 'IEC 61439-3', 'conditionalRatingA': 16000,"
          + " 'maximumUpstreamFuseA': 100, 'deviceDeclared': true},"
          + " 'upstreamDevice': {'breakingCapacityA': 33000},"
          + " 'supply': {'maximumFaultCurrentA': 9000, 'ownership': null}";
  private static final String RESIDUAL_DEVICE =
      "'device': {'standard': 'IEC 61009-1', 'residual': {'operatingCurrentA': 0.03, 'delay':"
          + " 'general'}}";
  private static final String PARTS =
      "'load': {'kind': 'mixed', 'designCurrentA': null, 'use': null, 'connection': null,"
          + " 'diversityFactor': 0.9, 'parts': [{'use': 'other', 'connection': 'fixed', ";

  private static final String STARTING =
      "'kind': 'motor', 'designCurrentA': 20, 'inrush': {'starting': 'direct-on-line',"
          + " 'currentMultiple': 3, 'peakCurrentA': 100, 'durationS': 1.5}";
  private static final String COUNTED =
      "'kind': 'led', 'designCurrentA': 2, 'count': 2, 'inrush': {'countLimits':"
          + " [{'characteristic': 'B', 'ratedCurrentA': 32, 'count': 1}]}";

  private static final String FEATURES =
      "'features': {'class': 'EC000003', 'values': [{'feature': 'EF000227', 'value': '80', 'unit':"
          + " 'EU570459'}]}";

  /** Codes that a pattern of the contract allows: words of no vocabulary, so not in it. */
  private static final Map<String, List<String>> CODES =
      Map.of(
          "^EC\\d{6}$", List.of("EC000003", "EC000001"),
          "^EF\\d{6}$", List.of("EF000227", "EF008618"),
          "^EU\\d{6}$", List.of("EU570459", "EU570448"),
          "^(\\d{8}|\\d{12,14})$", List.of("6291041500213", "6291041500214"));

  /** Merge patches (RFC 7396) on the contract's oven: between them they use what is read. */
  private static final List<String> CIRCUITS =
      List.of(
          "{'supply': {'basis': 'measured-cold', 'originLoopImpedanceOhm': 0.2,"
              + " 'instrumentUncertaintyPercent': 5}, 'stage': 'sign-off'}",
          "{'supply': {'ownership': 'private', 'frequencyHz': 50}, 'requirements': {'evidence':"
              + " 'guidance'}, 'device': {'energyClass': null}}",
          "{'supply': {" + FAULTS + "}}",
          "{'stage': 'design', 'supply': {'maximumFaultCurrentA': null, 'faultCurrents':"
              + " {'lineToNeutral': {'maximumA': 1550}}}, 'device': {'poles': 2}}",
          "{'supply': {'phases': 3, 'maximumFaultCurrentA': 10000, 'faultCurrents': {"
              + "'threePhase': {'maximumA': 1500}, 'twoPhase': {'maximumA': 1300},"
              + " 'lineToEarth': {'maximumA': 900}}}, 'liveConductors': ['L1', 'L2', 'L3']}",
          "{'supply': {'phases': 3, 'maximumFaultCurrentA': 3000}, 'load': {'kind': 'led',"
              + " 'thirdHarmonicPercent': 10}, 'liveConductors': ['L1', 'L2', 'L3', 'N']}",
          "{'supply': {'loopReactanceOhm': 0.1, 'lineToNeutralLoopReactanceOhm': 0.1}, 'cable': {"
              + LARGE
              + "}, 'furtherCables': [{"
              + LARGE
              + ", "
              + GROUPED
              + "}]}",
          "{'cable': {" + ARMOURED + ", " + IN_GROUND + "}}",
          "{'furtherCables': [{" + ARMOURED + ", " + IN_GROUND + "}]}",
          "{'furtherCables': [{"
              + ARMOURED
              + ", 'lineCsaMm2': 6, 'installation': {'referenceMethod': 'C', 'ambientTemperatureC':"
              + " 30, 'groupedCircuits': 4}}]}",
          "{'cable': {" + GROUPED + ", 'parallelCables': 2}}",
          "{'load': {'protectiveConductorCurrentA': 0.02, 'kind': 'motor', 'canOverload': true},"
              + " 'device': {'ratedCurrentA': 63}}",
          "{'load': {'kind': 'motor', 'designCurrentA': null, 'ratedPowerW': 3000,"
              + " 'efficiencyPercent': 85, 'powerFactor': 0.8, 'count': 1, 'ratedVoltageV': 230}}",
          "{'load': {'kind': 'vehicle-charging', 'designCurrentA': null, 'ratedCurrentA': 20},"
              + " 'supply': {'openPenProtection': false}, 'premises': {'locations': ['outdoors']}}",
          "{"
              + PARTS
              + "'kind': 'motor', 'ratedPowerW': 3000, 'efficiencyPercent': 85,"
              + " 'powerFactor': 0.8, 'count': 1, 'diversityFactor': 1, 'ratedVoltageV': 230}]}}",
          "{" + PARTS + "'kind': 'vehicle-charging', 'ratedCurrentA': 20}]}}",
          "{"
              + PARTS
              + "'kind': 'electronic', 'residualWaveform': 'pulsating-direct'}]},"
              + " 'device': {'standard': 'IEC 61009-1', 'residual': {'operatingCurrentA': 0.03,"
              + " 'type': 'A', 'delay': 'general'}}}",
          "{"
              + PARTS
              + "'kind': 'led', 'designCurrentA': 20, 'thirdHarmonicPercent': 10,"
              + " 'canOverload': true, 'protectiveConductorCurrentA': 0.02}]},"
              + " 'supply': {'loopImpedanceOhm': 0.25}, 'device': {'ratedCurrentA': 50}}",
          "{'load': {'kind': 'motor', 'inrush': {'starting': 'direct-on-line',"
              + " 'currentMultiple': 3, 'peakCurrentA': 100, 'durationS': 1.5}},"
              + " 'requirements': {'inrush': 'required'}}",
          "{'load': {'kind': 'motor', 'inrush': {'starting': 'direct-on-line',"
              + " 'currentMultiple': 3, 'peakCurrentA': 100, 'durationS': 1.5}}, 'device':"
              + " {'operatingTimes': [{'currentA': 90, 'earliestS': 2, 'latestS': 20}]}}",
          "{'load': {'kind': 'motor', 'inrush': {'starting': 'direct-on-line',"
              + " 'currentMultiple': 2, 'peakCurrentA': 100, 'durationS': 50}}, 'device':"
              + " {'operatingTimes': [{'currentA': 50, 'earliestS': 0.5, 'latestS': 100}]}}",
          "{'load': {'kind': 'led', 'count': 3, 'inrush': {'peakCurrentA': 19, 'durationS': 0.0003,"
              + " 'countLimits': [{'characteristic': 'B', 'ratedCurrentA': 32, 'count': 3}]}}}",
          "{" + PARTS + STARTING + "}]}}",
          "{" + PARTS + COUNTED + "}]}}",
          "{" + PARTS + COUNTED + "}]}, 'device': {'ratedCurrentA': 50}}",
          "{'device': {'standard': 'BS 88-2', 'utilizationCategory': 'gG'}}",
          "{'device': {'energyClass': null, 'markings': ['B32', '3']},"
              + " 'upstreamDevice': {'ratedCurrentA': null, 'markings': ['80A']}}",
          "{'residualDevice': {'markings': ['IEC 61008-1', '30mA']}, " + TT + "}",
          "{'device': {'ratedCurrentA': null, 'gtin': '6291041500213', "
              + FEATURES
              + "},"
              + " 'upstreamDevice': {'ratedCurrentA': null, 'gtin': '6291041500213', "
              + FEATURES
              + "}, 'residualDevice': {'standard': 'IEC 61008-1', 'gtin': '6291041500213', "
              + FEATURES
              + "}}",
          "{'device': {'standard': 'IEC 61008-1', 'residualMakingBreakingA': 500, 'residual':"
              + " {'operatingCurrentA': 0.03}}, "
              + TT
              + "}",
          "{'device': {'standard': 'IEC 61009-1', 'residual': {'operatingCurrentA': 0.03,"
              + " 'delay': 'S'}}, "
              + TT
              + "}",
          "{'device': " + ADJUSTABLE + "}}",
          "{'device': "
              + ADJUSTABLE
              + ", 'residual': {'operatingCurrentA': 0.3, 'delayS': 0.1}},"
              + TT
              + "}",
          "{'device': {'characteristic': 'K', 'magneticMultiples': {'lower': 8, 'upper': 12},"
              + " 'letThrough': [{'prospectiveCurrentA': 100, 'energyA2s': 500},"
              + " {'prospectiveCurrentA': 6000, 'energyA2s': 30000}]}}",
          "{'residualDevice': " + RESIDUAL + ", " + TT + "}",
          "{'residualDevice': " + RESIDUAL.replace("61008-1", "61009-1") + ", " + TT + "}",
          "{'residualDevice': {'standard': 'IEC 60947-2', 'residual': {'operatingCurrentA': 0.03,"
              + " 'delayS': 0.1}}, "
              + TT
              + "}",
          "{'device': {'magneticMultiples': {'lower': 4}}, 'supply': {'earthing': 'TT',"
              + " 'loopImpedanceOhm': 100}}",
          "{'cable': {'arrangement': 'ring', 'lineCsaMm2': 2.5, 'protectiveCsaMm2': 1.5,"
              + " 'lengthM': 60}, 'requirements': {'evidence': 'guidance'}}",
          "{" + RATED_UNIT + "}",
          "{'backUp': {'combinationRatingA': 10000, 'evidence': 'table'}, " + RATED_UNIT + "}",
          "{'backUp': {'limitedLetThroughA2s': 10000, 'evidence': 'table'}}",
          "{'requirements': {'selectivity': 'required'}, 'device': {'selectivity': [{'upstreamId':"
              + " 'words', 'limitCurrentA': 1000}]}, 'upstreamDevice': {'id': 'words', 'standard':"
              + " 'IEC 60898-1', 'characteristic': 'C', 'ratedCurrentA': 63}}",
          "{'upstreamDevice': {'standard': 'BS 88-2', 'utilizationCategory': 'gG'}}",
          "{'upstreamDevice': {'standard': 'IEC 60898-1', 'characteristic': 'K', 'ratedCurrentA': 63,"
              + " 'magneticMultiples': {'lower': 8, 'upper': 14}}}",
          "{'upstreamDevice': {'standard': 'IEC 60947-2', 'ratedCurrentA': 100, 'settings':"
              + " {'longTimeA': 80, 'shortTimeA': 400, 'shortTimeDelayS': 0.05,"
              + " 'instantaneousA': 1000}}}",
          "{'upstreamDevice': {'standard': 'IEC 61008-1', 'residual': {'operatingCurrentA': 0.3,"
              + " 'delay': 'S'}}, "
              + RESIDUAL_DEVICE
              + "}",
          "{'upstreamDevice': {'standard': 'IEC 60947-2', 'residual': {'operatingCurrentA': 0.3,"
              + " 'delayS': 0.1}, 'settings': {'longTimeA': 80, 'instantaneousA': 1000}}, "
              + RESIDUAL_DEVICE
              + "}",
          "{'premises': {'operatedBy': 'skilled-persons'}, "
              + "'device': {'poles': 4, 'ratedVoltageV': 400, 'ratedLineToEarthVoltageV': 230,"
              + " 'protectedPoles': 3, 'standard': 'IEC 60947-2', 'isolation': true},"
              + " 'supply': {'phases': 3}, 'liveConductors': ['L1', 'L2', 'L3', 'N']}",
          "{'device': {'unidirectional': true, 'standard': 'IEC 60947-2', 'ratedVoltageV': 230},"
              + " 'residualDevice': {'standard': 'IEC 60947-2', 'poles': 1, 'isolation': false,"
              + " 'unidirectional': true}, 'premises': {'pollutionDegree': 2, 'operatedBy': 'skilled-persons'},"
              + " 'load': {'kind': 'electronic'}, 'supply': {'localGeneration': true}}",
          "{'device': {'unidirectional': false}, 'load': {'kind': 'electronic'}, 'residualDevice':"
              + " {'standard': 'IEC 61008-1', 'unidirectional': false}}",
          "{'premises': {'operatedBy': 'skilled-persons'}, "
              + "'device': {'standard': 'IEC 60947-2', 'ratedVoltageV': 230, 'isolation': false},"
              + " 'residualDevice': {'standard': 'IEC 60947-2', 'poles': 2, 'isolation': true}}",
          "{'incomer': {'standard': 'IEC 60898-1', 'poles': 2}, " + TT + "}",
          "{'incomer': {'standard': 'IEC 60947-3', 'poles': 2, 'isolation': true}, " + TT + "}",
          "{'assembly': {'ambientTemperatureC': 40, 'deviceDeclared': true}, 'device':"
              + " {'referenceTemperatureC': 35, 'derating': [{'ambientTemperatureC': 45, 'factor': 0.9},"
              + " {'ambientTemperatureC': 38, 'factor': 0.95}]}}");

  private record Leaf(String pointer, JsonNode schema) {}

  private final ContractReader reader = new ContractReader(Contract.fromClassPath());
  private final List<JsonNode> circuits = circuits();

  @Test
  void everyMemberIsReadOrTold() {
    Set<String> silent = new TreeSet<>();
    Set<String> slandered = new TreeSet<>();
    for (Leaf leaf : leaves()) {
      boolean told = told(leaf.pointer());
      boolean read = read(leaf, told);
      if (!read && !told) {
        silent.add(leaf.pointer());
      }
      if (read && told) {
        slandered.add(leaf.pointer());
      }
    }
    assertEquals(Set.of(), silent, "ignored in silence");
    assertEquals(Set.of(), slandered, "read, yet told as not used");
  }

  /** A member that is told everywhere is described so, and no other is. */
  @Test
  void theContractSaysOfEachMemberWhetherItIsUsed() {
    for (Leaf leaf : leaves()) {
      if (!leaf.pointer().matches("/(residualDevice|upstreamDevice|incomer|load/parts)/.*")) {
        boolean described =
            leaf.schema().path("description").asText().contains("caution member-not-used");
        assertEquals(told(leaf.pointer()), described, leaf.pointer());
      }
    }
  }

  private static List<JsonNode> circuits() {
    JsonNode oven = Variations.tree(Calls.ofContract("checkCircuit", "complies").body());
    List<JsonNode> circuits = new ArrayList<>();
    for (Call call : Calls.all()) {
      if (call.operation().equals("checkCircuit")) {
        circuits.add(Variations.tree(call.body()));
      }
    }
    for (String patch : CIRCUITS) {
      circuits.add(Variations.patched(oven, Variations.tree(patch.replace('\'', '"'))));
    }
    return circuits;
  }

  /** Every member of a circuit that is no object, but for those of whole objects that are told. */
  private static List<Leaf> leaves() {
    List<Leaf> leaves = new ArrayList<>();
    collect("Circuit", "", List.of(), leaves);
    // Figures stand in its place before anything is judged: SourcedSupplyTest.
    leaves.removeIf(leaf -> leaf.pointer().startsWith("/supply/transformer"));
    return leaves;
  }

  private static void collect(String schema, String at, List<String> above, List<Leaf> found) {
    List<String> path = new ArrayList<>(above);
    path.add(schema);
    for (Map.Entry<String, JsonNode> member :
        SCHEMAS.at("/" + schema + "/properties").properties()) {
      String pointer = at + "/" + member.getKey();
      JsonNode items = member.getValue().path("items");
      String reference = (items.isObject() ? items : member.getValue()).path("$ref").asText();
      String next = reference.substring(reference.lastIndexOf('/') + 1);
      if (next.isEmpty() || told(pointer)) {
        found.add(new Leaf(pointer, member.getValue()));
      } else if (!above.contains(next)) {
        collect(next, pointer + (items.isObject() ? "/0" : ""), path, found);
      }
    }
  }

  /** Whether a request with this member is told that it, or what holds it, is not used. */
  private static boolean told(String pointer) {
    ObjectNode body = NEW.objectNode();
    JsonNode parent = body;
    String[] names = pointer.substring(1).split("/");
    for (int i = 0; i < names.length; i++) {
      JsonNode child = i + 1 == names.length ? NEW.textNode("") : NEW.objectNode();
      if (i + 1 < names.length && names[i + 1].equals("0")) {
        child = NEW.arrayNode();
      }
      if (parent instanceof ArrayNode array) {
        array.add(child);
      } else {
        ((ObjectNode) parent).set(names[i], child);
      }
      parent = child;
    }
    return !UnusedMembers.ofCheck(body).isEmpty();
  }

  /** Of what is told as not used only a few values are tried, to be quick. */
  private boolean read(Leaf leaf, boolean told) {
    JsonPointer at = JsonPointer.compile(leaf.pointer());
    for (JsonNode circuit : circuits) {
      if (circuit.at(at.head()) instanceof ObjectNode) {
        Set<String> answers = new HashSet<>();
        List<JsonNode> values = values(leaf.schema(), circuit.at(at));
        for (JsonNode value : values.stream().limit(told ? 2 : 99).toList()) {
          JsonNode varied = circuit.deepCopy();
          set((ObjectNode) varied.at(at.head()), at.last().getMatchingProperty(), value);
          answers.add(answer(varied, !told));
          answers.remove(null);
          if (answers.size() > 1) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** Without the member, too, but never so that an object is left empty: that is another matter. */
  private static void set(ObjectNode parent, String name, JsonNode value) {
    if (!value.isNull()) {
      parent.set(name, value);
    } else if (parent.size() > 1) {
      parent.remove(name);
    }
  }

  private String answer(JsonNode body, boolean full) {
    try {
      JsonNode request = reader.read(body.toString().getBytes(StandardCharsets.UTF_8), "Circuit");
      JsonNode named = request.path("edition");
      Edition edition =
          named.isTextual() ? Scenario.edition(named.textValue()) : Scenario.editions().inForce();
      byte[] bytes =
          new CircuitAnswer(edition, "0", CircuitCheck.all())
              .bytes(Sourced.plain(request), List.of(), full);
      return new String(bytes, StandardCharsets.UTF_8);
    } catch (InvalidRequest refused) {
      return null;
    }
  }

  private static List<JsonNode> values(JsonNode schema, JsonNode old) {
    List<JsonNode> values = new ArrayList<>();
    if (!old.isMissingNode()) {
      values.add(NEW.nullNode());
    }
    if (schema.path("type").asText().equals("array")) {
      ArrayNode some = NEW.arrayNode();
      values.add(some.deepCopy());
      if (!schema.at("/items").has("x-extensible-enum") && !old.isMissingNode()) {
        values.add(old);
      }
      for (JsonNode word : schema.at("/items/x-extensible-enum")) {
        values.add(NEW.arrayNode().add(word));
        values.add(some.add(word).deepCopy());
      }
    } else if (schema.has("x-extensible-enum")) {
      schema.path("x-extensible-enum").forEach(values::add);
    } else if (schema.path("type").asText().equals("string")) {
      CODES
          .getOrDefault(schema.path("pattern").asText(), List.of())
          .forEach(code -> values.add(NEW.textNode(code)));
      values.add(NEW.textNode("16"));
      values.add(NEW.textNode("words"));
      values.add(NEW.textNode(" "));
    } else if (schema.path("type").asText().equals("boolean")) {
      values.add(NEW.booleanNode(true));
      values.add(NEW.booleanNode(false));
    } else if (schema.path("type").asText().equals("integer")) {
      for (int value = 0; value < 5; value++) {
        values.add(NEW.numberNode(value));
      }
    } else {
      double held = old.asDouble();
      values.add(NEW.numberNode(held * 0.8));
      values.add(NEW.numberNode(held * 1.25));
      values.add(NEW.numberNode(held * 10));
      values.add(schema.path("minimum"));
      values.add(schema.path("maximum"));
      Arrays.stream(NUMBERS).forEach(value -> values.add(NEW.numberNode(value)));
    }
    return values;
  }
}
