package circuitverdict.service.wire;

import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.fault.FaultNetwork.Point;
import circuitverdict.fault.PointCurrents;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** One point as a supply; what a supply cannot state is left out, and told. */
public final class PointSupply {
  /** Members of a stated supply that hold at every point fed from it. */
  private static final List<String> KEPT =
      List.of(
          "earthing",
          "lineToEarthVoltageV",
          "frequencyHz",
          "ownership",
          "openPenProtection",
          "localGeneration");

  private static final String ELECTRODE = "earthElectrodeResistanceOhm";
  private static final Pointer FREQUENCY = new Pointer(At.SUPPLY, "frequencyHz");

  private static final double GREATEST_DROP = 100;
  private static final double GREATEST_CURRENT = 200_000;
  private static final double GREATEST_PEAK = 500_000;
  private static final double GREATEST_EARTH_LOOP = 5_000;
  private static final double GREATEST_LOOP = 100;

  private final JsonNode stated;
  private final Point point;
  private final PointSupply first;
  private final Set<Note> missing;
  private Double dropPercent;
  private Double electrodeOhm;

  /** Whether figures stand in for ones not stated, here or nearer to the source. */
  private boolean estimated;

  PointSupply(JsonNode stated, Point point, PointSupply first) {
    this.stated = stated;
    this.point = point;
    this.first = first;
    this.missing = new LinkedHashSet<>(point.dossier().missing());
    PointCurrents c = point.currents();
    hold(c.earthLoop().impedance(), GREATEST_EARTH_LOOP);
    hold(c.neutralLoop().impedance(), GREATEST_LOOP);
    for (PointCurrents.Kind kind : List.of(c.threePhase(), c.twoPhase(), c.neutral(), c.earth())) {
      hold(kind.greatest(), GREATEST_CURRENT);
      hold(kind.least(), GREATEST_CURRENT);
      hold(kind.peak(), GREATEST_PEAK);
    }
    hold(c.any(), GREATEST_CURRENT);
    contradictions(c);
    if (missing.isEmpty() && !c.any().known()) {
      missing.add(new Note(NoteCode.MISSING_INPUT, At.MAXIMUM_CURRENT, List.of()));
    }
  }

  /** All points of a tree, the source first. */
  public static List<PointSupply> of(JsonNode stated, List<Point> points) {
    List<PointSupply> supplies = new ArrayList<>();
    boolean standIns = false;
    for (Point point : points) {
      PointSupply supply =
          new PointSupply(stated, point, supplies.isEmpty() ? null : supplies.get(0));
      standIns |= !point.dossier().typical().isEmpty();
      supply.estimated = standIns;
      supplies.add(supply);
    }
    return supplies;
  }

  /**
   * The same point with the voltage drop up to it.
   *
   * @param percent from the origin, %; unknown or above what a supply can state where it is not
   *     told
   */
  public PointSupply withDrop(double percent) {
    dropPercent = percent <= GREATEST_DROP ? percent : null;
    return this;
  }

  /**
   * The same point with the resistance of the electrode and of the protective conductors from
   * there.
   *
   * @param ohm Ω; unknown or above what a supply can state where it is not told
   */
  public PointSupply withElectrode(double ohm) {
    electrodeOhm = ohm <= GREATEST_EARTH_LOOP ? ohm : null;
    return this;
  }

  /** The member of the request at whose end the point lies. */
  public Pointer at() {
    return point.at();
  }

  List<Note> assumptions() {
    return point.dossier().assumptions();
  }

  /** A greatest current below the least of any kind: what was stated cannot all be true. */
  private void contradictions(PointCurrents c) {
    for (PointCurrents.Kind kind : List.of(c.threePhase(), c.twoPhase(), c.neutral(), c.earth())) {
      boolean own = kind.least().value() > kind.greatest().value();
      if (own || kind.least().value() > c.any().value()) {
        Figure greatest = own ? kind.greatest() : c.any();
        missing.add(
            new Note(NoteCode.CURRENTS_CONTRADICT, point.at(), List.of(kind.least(), greatest)));
        return;
      }
    }
  }

  /**
   * Whether nothing may rest on the figures: readings of the supply without their uncertainty at
   * sign-off, another frequency, or currents that contradict each other.
   */
  private boolean withheld() {
    boolean whole = first != null && first.withheld();
    for (Note note : missing) {
      whole |=
          note.code() == NoteCode.CURRENTS_CONTRADICT
              || note.code() == NoteCode.GENERATION_NOT_COUNTED
              || note.code() == NoteCode.NOT_IN_TABLES && FREQUENCY.equals(note.pointer());
    }
    return whole || point.dossier().standsAtBest();
  }

  private void hold(Figure figure, double greatest) {
    if (figure.value() > greatest) {
      missing.add(new Note(NoteCode.OUT_OF_RANGE, point.at(), List.of(figure)));
    }
  }

  Set<Note> missing() {
    return missing;
  }

  /** The supply as checks read it: without the figures that none of them does. */
  public JsonNode supply() {
    JsonNode supply = Json.tree(this::supply);
    for (JsonNode kind : supply.path("faultCurrents")) {
      ((ObjectNode) kind).remove(List.of("minimumA", "peakA"));
    }
    return supply;
  }

  void write(JsonGenerator json, boolean full) throws IOException {
    json.writeStartObject();
    Json.pointer(json, point.at());
    Json.text(json, "reference", point.reference());
    json.writeObjectFieldStart("supply");
    supply(json);
    json.writeEndObject();
    Dossier d = point.dossier();
    if (full) {
      StepJson.write(json, d.working().steps());
    }
    Json.notes(json, "missing", new ArrayList<>(missing), full);
    Json.notes(json, "remarks", d.remarks(), full);
    json.writeEndObject();
  }

  private void supply(JsonGenerator json) throws IOException {
    boolean atOrigin = first == null && "origin".equals(stated.path("point").textValue());
    // Of no origin that is described are typical values taken.
    boolean origin = atOrigin && missing.isEmpty();
    json.writeStringField("point", origin ? "origin" : "board");
    json.writeNumberField("phases", point.live().lines() == 1 ? 1 : 3);
    for (String name : KEPT) {
      if (stated.has(name)) {
        json.writeFieldName(name);
        json.writeRawValue(stated.get(name).toString());
      }
    }
    if (dropPercent != null || atOrigin && !origin) {
      Json.number(json, "voltageDropPercent", dropPercent == null ? 0 : dropPercent);
    }
    if (withheld()) {
      return;
    }
    electrode(json);
    json.writeStringField("basis", estimated ? "estimated" : "calculated-hot");
    PointCurrents c = point.currents();
    loop(json, "loopImpedanceOhm", "loopReactanceOhm", c.earthLoop(), GREATEST_EARTH_LOOP);
    origin(json);
    loop(
        json,
        "lineToNeutralLoopImpedanceOhm",
        "lineToNeutralLoopReactanceOhm",
        c.neutralLoop(),
        GREATEST_LOOP);
    number(json, "maximumFaultCurrentA", c.any(), 1, GREATEST_CURRENT);
    json.writeObjectFieldStart("faultCurrents");
    kind(json, "threePhase", c.threePhase());
    kind(json, "twoPhase", c.twoPhase());
    kind(json, "lineToNeutral", c.neutral());
    kind(json, "lineToEarth", c.earth());
    json.writeEndObject();
  }

  /**
   * Beyond the supply, and as a reading, it is more: where that is not known the loop, never
   * smaller, stands for it.
   */
  private void electrode(JsonGenerator json) throws IOException {
    String basis = stated.path("basis").asText("");
    boolean kept = first == null && (basis.equals("declared") || basis.equals("calculated-hot"));
    if (kept && stated.has(ELECTRODE)) {
      Json.number(json, ELECTRODE, stated.get(ELECTRODE).doubleValue());
    } else if (electrodeOhm != null) {
      Json.number(json, ELECTRODE, electrodeOhm);
    }
  }

  /** Ze: as stated, else what was found at the origin itself. */
  private void origin(JsonGenerator json) throws IOException {
    if (stated.has("originLoopImpedanceOhm")) {
      Json.number(
          json, "originLoopImpedanceOhm", stated.get("originLoopImpedanceOhm").doubleValue());
    } else if ("origin".equals(stated.path("point").textValue())) {
      Figure loop = (first == null ? this : first).point.currents().earthLoop().impedance();
      number(json, "originLoopImpedanceOhm", loop, 0, GREATEST_EARTH_LOOP);
    }
  }

  private static void loop(
      JsonGenerator json, String impedance, String reactance, PointCurrents.Loop loop, double most)
      throws IOException {
    if (loop.impedance().value() <= most) {
      number(json, impedance, loop.impedance(), 0, most);
      number(json, reactance, loop.reactance(), 0, GREATEST_LOOP);
    }
  }

  private static void kind(JsonGenerator json, String name, PointCurrents.Kind kind)
      throws IOException {
    if (!kind.greatest().known() && !kind.least().known()) {
      return;
    }
    json.writeObjectFieldStart(name);
    number(json, "maximumA", kind.greatest(), 0, GREATEST_CURRENT);
    number(json, "minimumA", kind.least(), 0, GREATEST_CURRENT);
    number(json, "peakA", kind.peak(), 0, GREATEST_PEAK);
    json.writeEndObject();
  }

  private static void number(
      JsonGenerator json, String name, Figure figure, double least, double greatest)
      throws IOException {
    if (figure.value() <= greatest) {
      Json.number(json, name, Math.max(least, figure.value()));
    }
  }
}
