package circuitverdict.select;

import circuitverdict.check.CheckName;
import circuitverdict.check.ResidualTypeRule;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Rccb;
import circuitverdict.circuit.Residual;
import circuitverdict.device.ResidualTime;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Edition;
import circuitverdict.standard.Row;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Changes of residual functions that are fitted, each kind from its smallest change up. */
final class ResidualChanges {
  private final Circuit circuit;
  private final Edition edition;

  ResidualChanges(Circuit circuit, Edition edition) {
    this.circuit = circuit;
    this.edition = edition;
  }

  List<List<Change>> forFailures(Set<CheckName> failed) {
    List<List<Change>> kinds = new ArrayList<>();
    if (failed.contains(CheckName.ADDITIONAL_PROTECTION)
        || failed.contains(CheckName.EARTH_FAULT_DISCONNECTION)) {
      for (ProtectiveDevice device : ResidualTime.all(circuit)) {
        if (!Changes.makersOwn(device.data())) {
          kinds.add(functions(device));
        }
      }
    }
    if (failed.contains(CheckName.DEVICE_SUITABILITY)
        && circuit.residualDevice() instanceof Rccb rccb) {
      kinds.add(stronger(rccb));
    }
    return kinds;
  }

  /** Another type; a lesser IΔn down to that of additional protection; then without delay too. */
  private List<Change> functions(ProtectiveDevice device) {
    Residual now = device.data().residual();
    String place = device.data().place();
    List<Change> changes = new ArrayList<>();
    Residual.Type least = ResidualTypeRule.least(circuit, edition);
    boolean lacks = now.type() != null && least.compareTo(now.type()) > 0;
    if (lacks) {
      changes.add(ResidualFit.function(place, least, null, null));
    }
    double owed =
        edition.constant(Constant.ADDITIONAL_PROTECTION_RESIDUAL_OPERATING_CURRENT).number();
    for (double lesser : lesser(now.operatingCurrentA(), owed)) {
      changes.add(ResidualFit.function(place, null, lesser, null));
    }
    if (now.delayS() == null) {
      changes.add(ResidualFit.function(place, null, owed, Residual.Delay.GENERAL));
      if (lacks) {
        changes.add(ResidualFit.function(place, least, owed, Residual.Delay.GENERAL));
      }
    }
    return changes;
  }

  /** Standard values of IΔn below the present one, the greatest first. */
  private List<Double> lesser(Double now, double least) {
    List<Double> values = new ArrayList<>();
    if (now == null) {
      return values;
    }
    for (Row row : edition.table(TableName.RESIDUAL_RATINGS).rows()) {
      double listed = row.keys().get(0).to();
      if (listed < now && listed >= least) {
        values.add(0, listed);
      }
    }
    return values;
  }

  /** Greater ratings, greater conditional short-circuit currents, then both together. */
  private List<Change> stronger(Rccb rccb) {
    List<Double> ratings =
        greater(edition.table(TableName.STANDARD_RATINGS), rccb.data().ratedCurrentA());
    List<Double> capacities =
        greater(edition.table(TableName.STANDARD_CAPACITIES), rccb.conditionalA());
    List<Change> changes = new ArrayList<>();
    ratings.forEach(rated -> changes.add(ResidualFit.stronger(rated, null)));
    capacities.forEach(capacity -> changes.add(ResidualFit.stronger(null, capacity)));
    for (Double rated : ratings) {
      capacities.forEach(capacity -> changes.add(ResidualFit.stronger(rated, capacity)));
    }
    return changes;
  }

  private static List<Double> greater(Table table, Double now) {
    List<Double> values = new ArrayList<>();
    if (now == null) {
      return values;
    }
    for (Row row : table.rows()) {
      double listed = row.keys().get(0).to();
      if (listed > now) {
        values.add(listed);
      }
    }
    return values;
  }
}
