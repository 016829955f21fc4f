package circuitverdict.select;

import circuitverdict.check.AdditionalProtection;
import circuitverdict.check.Check;
import circuitverdict.check.CheckName;
import circuitverdict.check.CircuitCheck;
import circuitverdict.check.LiveIsolation;
import circuitverdict.check.ResidualTypeRule;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.DeviceData;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Nameplate;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Multiples;
import circuitverdict.circuit.Residual;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Working;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Edition;
import circuitverdict.standard.Row;
import circuitverdict.standard.TableName;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The devices of the standard series for a circuit: every characteristic, rated current and
 * breaking capacity of IEC 60898-1, class 3, with the poles that the circuit needs; to IEC 61009-1
 * and with 30 mA where additional protection is owed, or may be, that no residual device gives, and
 * with arc fault detection where that is owed.
 */
final class StandardSeries {
  private static final Check ADDITIONAL = new AdditionalProtection();

  private final Circuit circuit;
  private final Edition edition;
  private final List<Check> checks;

  StandardSeries(Circuit circuit, Edition edition, List<Check> checks) {
    this.circuit = circuit;
    this.edition = edition;
    this.checks = checks;
  }

  /** Of what they may have built in, the least with which additional protection is given. */
  List<Breaker> devices() {
    List<Residual> residuals = new ArrayList<>();
    residuals.add(null);
    if (circuit.residualDevice() == null && checked()) {
      residuals.add(residual());
    }
    for (Boolean arcFault : Arrays.asList(null, Boolean.TRUE)) {
      for (Residual residual : residuals) {
        List<Breaker> series = devices(residual, arcFault);
        if (!checked() || protects(series.get(0))) {
          return series;
        }
      }
    }
    return devices(residuals.get(residuals.size() - 1), null);
  }

  /** Every rating, letter and capacity of the series, with what they have built in. */
  private List<Breaker> devices(Residual residual, Boolean arcFault) {
    List<Breaker> series = new ArrayList<>();
    LiveConductors live = LiveConductors.of(circuit);
    Integer poles = live == null ? null : LiveIsolation.poles(circuit, live, told());
    Nameplate face = face(live, poles);
    for (Row rating : edition.table(TableName.STANDARD_RATINGS).rows()) {
      for (Row band : edition.table(TableName.MAGNETIC_BANDS).rows()) {
        for (Row capacity : edition.table(TableName.STANDARD_CAPACITIES).rows()) {
          DeviceData data =
              new DeviceData(
                  "/device",
                  null,
                  residual == null ? "IEC 60898-1" : "IEC 61009-1",
                  rating.keys().get(0).to(),
                  capacity.keys().get(0).to(),
                  null,
                  poles,
                  null,
                  residual,
                  arcFault,
                  List.of(),
                  List.of(),
                  List.of(),
                  face);
          series.add(new Breaker(data, band.keys().get(0).text(), 3, Multiples.NONE));
        }
      }
    }
    return series;
  }

  private boolean protects(Breaker one) {
    Verdict verdict = CircuitCheck.one(ADDITIONAL, circuit.with(one), edition, false).verdict();
    return verdict == Verdict.COMPLIES || verdict == Verdict.NOT_APPLICABLE;
  }

  private boolean checked() {
    return checks.stream().anyMatch(check -> check.name() == CheckName.ADDITIONAL_PROTECTION);
  }

  private Residual residual() {
    double operating =
        edition.constant(Constant.ADDITIONAL_PROTECTION_RESIDUAL_OPERATING_CURRENT).number();
    return new Residual(
        ResidualTypeRule.least(circuit, edition), operating, Residual.Delay.GENERAL, null);
  }

  private Dossier told() {
    return new Dossier(edition, Allowance.NOTHING, Working.silent());
  }

  /** Of two poles those for two lines are asked for: such for one line and neutral exist too. */
  private Nameplate face(LiveConductors live, Integer poles) {
    if (live == null || live.lines() != 2 || poles != 2) {
      return Nameplate.NONE;
    }
    double voltage = edition.constant(Constant.NOMINAL_LINE_TO_LINE).number();
    return new Nameplate(voltage, null, poles, null, null, null, List.of());
  }
}
