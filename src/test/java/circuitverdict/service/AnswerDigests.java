package circuitverdict.service;

import circuitverdict.check.BreakingCapacityCheck;
import circuitverdict.check.Check;
import circuitverdict.check.CircuitCheck;
import circuitverdict.check.LetThroughEnergy;
import circuitverdict.check.ProtectiveConductorCheck;
import circuitverdict.check.ReadingCheck;
import circuitverdict.check.Result;
import circuitverdict.check.Selectivity;
import circuitverdict.circuit.Circuit;
import circuitverdict.explain.Note;
import circuitverdict.fault.FaultNetwork;
import circuitverdict.select.ConductorSelection;
import circuitverdict.select.DeviceSelection;
import circuitverdict.select.EditionComparison;
import circuitverdict.service.edge.BoardBody;
import circuitverdict.service.edge.Contract;
import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.wire.BoardContradictions;
import circuitverdict.service.wire.CircuitMapping;
import circuitverdict.service.wire.CodesJson;
import circuitverdict.service.wire.ComparisonJson;
import circuitverdict.service.wire.ConductorSelectionJson;
import circuitverdict.service.wire.EditionJson;
import circuitverdict.service.wire.LoopLimitJson;
import circuitverdict.service.wire.MarkingJson;
import circuitverdict.service.wire.NetworkJson;
import circuitverdict.service.wire.Products;
import circuitverdict.service.wire.ReadingsJson;
import circuitverdict.service.wire.SelectionJson;
import circuitverdict.service.wire.Sourced;
import circuitverdict.service.wire.UnusedInNetwork;
import circuitverdict.service.wire.UnusedInReadings;
import circuitverdict.service.wire.UnusedMembers;
import circuitverdict.standard.Edition;
import circuitverdict.standard.EditionLoader;
import circuitverdict.standard.Editions;
import circuitverdict.standard.Table;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/**
 * The SHA-256 of the answer to every example, a line each, as computed by the classes that the
 * resources call. Run in a second virtual machine by {@link SameBytesTest}.
 */
final class AnswerDigests {
  private static final String VERSION = "0.0.0-test";

  private final Editions editions = EditionLoader.load();
  private final ContractReader reader = new ContractReader(Contract.fromClassPath());
  private final List<String> lines = new ArrayList<>();

  private AnswerDigests() {}

  /** Prints the lines, in ASCII whatever this machine's own encoding is. */
  public static void main(String[] arguments) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.US_ASCII);
    lines().forEach(out::println);
  }

  /** The lines. */
  static List<String> lines() {
    AnswerDigests digests = new AnswerDigests();
    List<Call> calls = new ArrayList<>(Calls.posts());
    calls.addAll(Variations.ofOven());
    for (Call call : calls) {
      for (boolean full : new boolean[] {true, false}) {
        digests.add(call + (full ? " full" : " minimal"), digests.answer(call, full));
      }
    }
    digests.catalogues();
    return digests.lines;
  }

  private byte[] answer(Call call, boolean full) {
    byte[] body = call.body().getBytes(StandardCharsets.UTF_8);
    boolean limits = call.operation().equals("listLoopImpedanceLimits");
    boolean marks = call.operation().equals("readMarkings");
    String schema = limits ? "LoopImpedanceQuery" : marks ? "MarkingQuery" : "Circuit";
    JsonNode request = reader.read(body, schema);
    Edition edition = edition(request);
    if (call.operation().equals("checkBoard")) {
      BoardBody board = reader.readBoard(body, BoardContradictions::of);
      return new BoardAnswer(board, edition, VERSION, full).bytes();
    }
    return switch (call.operation()) {
      case "checkCircuit" -> checked(request, edition, CircuitCheck.all(), full);
      case "judgeBreakingCapacity" ->
          checked(request, edition, List.of(new BreakingCapacityCheck()), full);
      case "judgeSelectivity" -> checked(request, edition, List.of(new Selectivity(true)), full);
      case "judgeLetThrough" ->
          checked(
              request,
              edition,
              List.of(new LetThroughEnergy(), new ProtectiveConductorCheck()),
              full);
      case "selectDevices" -> selected(request, edition, full);
      case "selectConductors" -> conductors(request, edition, full);
      case "computeFaultCurrents" -> points(request, edition, full);
      case "judgeMeasurements" -> readings(request, edition, full);
      case "compareEditions" -> compared(request, full);
      case "readMarkings" -> new MarkingJson(edition, VERSION, full).bytes(request);
      case "listLoopImpedanceLimits" ->
          new LoopLimitJson(edition, VERSION, full).bytes(request.path("items"), null);
      default -> throw new AssertionError(call);
    };
  }

  private static byte[] checked(
      JsonNode request, Edition edition, List<Check> checks, boolean full) {
    return new CircuitAnswer(edition, VERSION, checks)
        .bytes(Sourced.of(request, edition, full), UnusedMembers.ofCheck(request), full);
  }

  private static byte[] selected(JsonNode request, Edition edition, boolean full) {
    Circuit circuit = CircuitMapping.circuit(request);
    DeviceSelection selection =
        new DeviceSelection(circuit, edition, CircuitCheck.all(), List.of());
    List<Note> unused = UnusedMembers.ofSelection(request);
    if (!request.has("products")) {
      return SelectionJson.ofSeries(edition, VERSION, full)
          .bytes(Sourced.plain(request), circuit, selection.ofSeries(full), unused);
    }
    Products products = Products.of(request, edition);
    return SelectionJson.of(products, edition, VERSION, full)
        .bytes(Sourced.plain(request), circuit, selection.of(products.devices(), full), unused);
  }

  private static byte[] conductors(JsonNode request, Edition edition, boolean full) {
    Circuit circuit = CircuitMapping.circuit(request);
    return new ConductorSelectionJson(edition, VERSION, full)
        .bytes(
            Sourced.plain(request),
            circuit,
            ConductorSelection.of(
                circuit,
                edition,
                CircuitCheck.all(),
                ConductorSelectionJson.weights(request),
                full),
            UnusedMembers.ofConductors(request));
  }

  private static byte[] points(JsonNode request, Edition edition, boolean full) {
    Circuit circuit = CircuitMapping.circuit(request);
    List<FaultNetwork.Point> points =
        FaultNetwork.points(
            circuit,
            CircuitMapping.feeders(request),
            edition,
            CircuitCheck.allowance(circuit.stage()),
            full);
    return new NetworkJson(edition, VERSION, full)
        .bytes(request, circuit.stage(), points, UnusedInNetwork.of(request));
  }

  private static byte[] readings(JsonNode request, Edition edition, boolean full) {
    Circuit circuit = CircuitMapping.circuit(request);
    Result result = ReadingCheck.of(circuit, CircuitMapping.readings(request), edition, full);
    return new ReadingsJson(edition, VERSION, full)
        .bytes(Sourced.plain(request), circuit.stage(), result, UnusedInReadings.of(request));
  }

  private byte[] compared(JsonNode request, boolean full) {
    Circuit circuit = CircuitMapping.circuit(request);
    ComparisonJson json = new ComparisonJson(VERSION, full);
    List<Note> unused = UnusedMembers.ofComparison(request);
    JsonNode named = request.path("editions");
    if (named.size() < 2) {
      return json.incomplete(Sourced.plain(request), circuit.stage(), edition(request), unused);
    }
    Edition first = editions.find(named.get(0).textValue()).orElseThrow();
    Edition second = editions.find(named.get(1).textValue()).orElseThrow();
    return json.bytes(
        Sourced.plain(request),
        circuit.stage(),
        first,
        second,
        EditionComparison.of(circuit, first, second, CircuitCheck.all()),
        unused);
  }

  private void catalogues() {
    add("editions", EditionJson.list(editions));
    add(
        "codes",
        CodesJson.bytes(Contract.fromClassPath().closedLists(), editions.inForce().marks()));
    for (Edition edition : editions.all()) {
      add(edition.id(), EditionJson.detail(edition));
      for (Table table : edition.tables()) {
        byte[] bytes = EditionJson.table(edition, table, editions.sources());
        add(edition.id() + " " + table.id(), bytes);
      }
    }
  }

  private Edition edition(JsonNode request) {
    String id = request.path("edition").textValue();
    return id == null ? editions.inForce() : editions.find(id).orElseThrow();
  }

  private void add(String name, byte[] bytes) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      lines.add(HexFormat.of().formatHex(digest) + " " + name);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform has SHA-256", e);
    }
  }
}
