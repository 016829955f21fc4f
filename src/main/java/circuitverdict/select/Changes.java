package circuitverdict.select;

import circuitverdict.check.Check;
import circuitverdict.check.CheckName;
import circuitverdict.check.ResidualTypeRule;
import circuitverdict.check.Result;
import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Cable.ProtectiveMeans;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.DeviceData;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Working;
import circuitverdict.fault.GreatestCurrent;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Edition;
import circuitverdict.standard.Row;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/** Changes worth trying, by kind, each kind from its smallest change up. */
final class Changes {
  /** Three lines and a neutral. */
  private static final int MOST_POLES = 4;

  private final Circuit circuit;
  private final Edition edition;
  private final List<Check> checks;
  private final Result before;

  Changes(Circuit circuit, Edition edition, List<Check> checks, Result before) {
    this.circuit = circuit;
    this.edition = edition;
    this.checks = checks;
    this.before = before;
  }

  /** Changes for these failed checks, smallest kind first. */
  List<List<Change>> forFailures(Set<CheckName> failed) {
    List<List<Change>> kinds = new ArrayList<>();
    if (failed.contains(CheckName.EARTHING_ARRANGEMENT)) {
      kinds.add(List.of(new Change.OpenPen()));
    }
    if (circuit.device() != null && !makersOwn(circuit.device().data())) {
      kinds.add(poles(failed));
      kinds.add(characteristics());
      if (failed.contains(CheckName.INRUSH)) {
        kinds.add(greaterCharacteristics());
      }
      kinds.add(capacities());
      kinds.add(energyClasses());
      kinds.add(ratedCurrents());
    }
    if (failed.contains(CheckName.EARTH_FAULT_DISCONNECTION)
        || failed.contains(CheckName.ADDITIONAL_PROTECTION)) {
      kinds.add(residualDevices());
    }
    kinds.addAll(new ResidualChanges(circuit, edition).forFailures(failed));
    if (failed.contains(CheckName.OVERLOAD_PROTECTION)
        || failed.contains(CheckName.CONDUCTOR_RATING)) {
      kinds.add(methods());
    }
    if (circuit.cable().lineCsaMm2() != null) {
      kinds.add(sizes());
    }
    kinds.add(lengths(failed));
    return kinds;
  }

  /** Whether its maker's data say how it behaves: of another device they say nothing. */
  static boolean makersOwn(DeviceData data) {
    return !data.letThrough().isEmpty()
        || !data.selectivity().isEmpty()
        || !data.operatingTimes().isEmpty();
  }

  /** Each number of poles above the present one. */
  private List<Change> poles(Set<CheckName> failed) {
    Integer now = circuit.device().data().poles();
    if (!failed.contains(CheckName.DEVICE_SUITABILITY) || now == null) {
      return List.of();
    }
    boolean stated = circuit.device().data().nameplate().protectedPoles() != null;
    List<Change> changes = new ArrayList<>();
    for (int count = now + 1; count <= MOST_POLES; count++) {
      changes.add(new Change.Poles(count, stated));
    }
    return changes;
  }

  private List<Change> characteristics() {
    List<Change> changes = new ArrayList<>();
    boolean listed =
        circuit.device() instanceof Breaker each
            && each.characteristic() != null
            && edition.table(TableName.MAGNETIC_BANDS).at("upper", each.characteristic()) != null;
    if (listed && circuit.device() instanceof Breaker breaker) {
      List<Row> rows = edition.table(TableName.MAGNETIC_BANDS).rows();
      for (int i = rows.size() - 1; i >= 0; i--) {
        String letter = rows.get(i).keys().get(0).text();
        if (letter.compareTo(breaker.characteristic()) < 0) {
          changes.add(new Change.Characteristic(letter));
        }
      }
    }
    return changes;
  }

  /** The next greater letters first: only a start calls for them. */
  private List<Change> greaterCharacteristics() {
    List<Change> changes = new ArrayList<>();
    if (circuit.device() instanceof Breaker breaker && breaker.characteristic() != null) {
      for (Row row : edition.table(TableName.MAGNETIC_BANDS).rows()) {
        String letter = row.keys().get(0).text();
        if (letter.compareTo(breaker.characteristic()) > 0) {
          changes.add(new Change.Characteristic(letter));
        }
      }
    }
    return changes;
  }

  private List<Change> capacities() {
    List<Change> changes = new ArrayList<>();
    Double now = circuit.device().data().breakingCapacityA();
    if (circuit.device() instanceof Breaker && now != null) {
      for (double listed : keys(edition.table(TableName.STANDARD_CAPACITIES))) {
        if (listed > now) {
          changes.add(new Change.Capacity(listed));
        }
      }
    }
    return changes;
  }

  private List<Change> energyClasses() {
    boolean improvable =
        circuit.device() instanceof Breaker breaker
            && (breaker.energyClass() == null || breaker.energyClass() < 3);
    return improvable ? List.of(new Change.EnergyClass(3)) : List.of();
  }

  /** Nearest ratings first, smaller before larger. */
  private List<Change> ratedCurrents() {
    ProtectiveDevice device = circuit.device();
    Double now = device.data().ratedCurrentA();
    if (now == null) {
      return List.of();
    }
    List<Double> listed = new ArrayList<>();
    if (device instanceof Breaker) {
      listed.addAll(keys(edition.table(TableName.STANDARD_RATINGS)));
    } else if (device instanceof Fuse) {
      for (Row row : edition.table(TableName.FUSE_OPERATING_CURRENTS).rows()) {
        if (row.keys().get(0).text().equals(device.data().standard())) {
          listed.add(row.keys().get(1).to());
        }
      }
    }
    listed.removeIf(each -> each.doubleValue() == now);
    listed.sort(Comparator.comparingDouble(each -> Math.abs(each - now)));
    List<Change> changes = new ArrayList<>();
    listed.forEach(each -> changes.add(new Change.RatedCurrent(each)));
    return changes;
  }

  private List<Change> residualDevices() {
    Double rated = circuit.device() == null ? null : circuit.device().data().ratedCurrentA();
    if (circuit.residualDevice() != null || rated == null) {
      return List.of();
    }
    double operating =
        edition.constant(Constant.ADDITIONAL_PROTECTION_RESIDUAL_OPERATING_CURRENT).number();
    return List.of(
        new Change.ResidualDevice(
            ResidualTypeRule.least(circuit, edition),
            operating,
            rated,
            residualPoles(),
            conditional()));
  }

  /** The least usual short-circuit capacity that reaches the greatest current; null without one. */
  private Double conditional() {
    Dossier told = new Dossier(edition, Allowance.NOTHING, Working.silent());
    Figure greatest = GreatestCurrent.ofWay(circuit, LiveConductors.of(circuit), null, told);
    for (Double capacity : keys(edition.table(TableName.STANDARD_CAPACITIES))) {
      if (greatest.value() <= capacity) {
        return capacity;
      }
    }
    return null;
  }

  /** Such devices have an even number of poles, one for each live conductor at the least. */
  private Integer residualPoles() {
    LiveConductors live = LiveConductors.of(circuit);
    return live == null ? null : live.count() + live.count() % 2;
  }

  /** A cable in conduit, walls or insulation that may as well be clipped to a surface. */
  private List<Change> methods() {
    Cable cable = circuit.cable();
    String method = cable.installation().referenceMethod();
    boolean sheathed =
        cable.construction() == Cable.Construction.FLAT_TWIN_AND_EARTH
            || cable.construction() == Cable.Construction.MULTICORE;
    boolean hidden = method != null && (cable.installation().enclosed() || method.startsWith("10"));
    return sheathed && hidden ? List.of(new ClippedDirect()) : List.of();
  }

  /** Next larger sizes with the protective conductor that goes with them. */
  private List<Change> sizes() {
    Cable cable = circuit.cable();
    List<Change> changes = new ArrayList<>();
    boolean flat = cable.construction() == Cable.Construction.FLAT_TWIN_AND_EARTH;
    boolean ownSize =
        cable.lineResistanceOhmPerKm() != null || cable.protectiveResistanceOhmPerKm() != null;
    if (ownSize) {
      return changes;
    }
    Table listed = edition.table(flat ? TableName.FLAT_TWIN_SIZES : TableName.CONDUCTOR_RESISTANCE);
    if (!flat && coreLike(cable) && cable.protectiveCsaMm2() != null) {
      for (double size : keys(listed)) {
        if (size > cable.protectiveCsaMm2() && size <= cable.lineCsaMm2()) {
          changes.add(new Change.Sizes(cable.lineCsaMm2(), cable.neutralCsaMm2(), size));
        }
      }
    }
    for (double size : keys(listed)) {
      if (size > cable.lineCsaMm2()) {
        Double neutral = cable.neutralCsaMm2() == null ? null : Double.valueOf(size);
        changes.add(new Change.Sizes(size, neutral, protective(cable, flat, listed, size)));
      }
    }
    return changes;
  }

  private static Double protective(Cable cable, boolean flat, Table listed, double size) {
    if (flat) {
      Value usual = listed.at("protective", size);
      return usual == null ? null : usual.number();
    }
    return coreLike(cable) ? Double.valueOf(size) : null;
  }

  private static boolean coreLike(Cable cable) {
    return cable.protectiveMeans() == ProtectiveMeans.CORE
        || cable.protectiveMeans() == ProtectiveMeans.SEPARATE
            && cable.construction() == Cable.Construction.SINGLES;
  }

  /** For each failed check the greatest length with which it complies, longest first. */
  private List<Change> lengths(Set<CheckName> failed) {
    Double now = circuit.cable().lengthM();
    if (now == null) {
      return List.of();
    }
    Solver solver = new Solver(circuit, edition, checks, before);
    List<Change> changes = new ArrayList<>();
    failed.stream()
        .flatMap(name -> solver.greatestLength(name).stream())
        .map(Limit::value)
        .filter(length -> length < now)
        .distinct()
        .sorted(Comparator.reverseOrder())
        .forEach(length -> changes.add(new Change.Length(length)));
    return changes;
  }

  private static List<Double> keys(Table table) {
    List<Double> keys = new ArrayList<>();
    table.rows().forEach(row -> keys.add(row.keys().get(0).to()));
    return keys;
  }
}
