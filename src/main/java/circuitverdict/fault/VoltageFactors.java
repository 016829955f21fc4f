package circuitverdict.fault;

import circuitverdict.circuit.Supply;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/**
 * Voltage factors of a low-voltage system (IEC 60909-0, Table 1), by the tolerance of its voltage;
 * the wider one where none is stated, which errs on the safe side both ways.
 *
 * @param greatest cmax
 * @param least cmin
 */
record VoltageFactors(Figure greatest, Figure least) {

  static VoltageFactors of(Supply supply, Dossier d) {
    Double stated = supply.source().voltageTolerancePercent();
    Value wider = d.edition().constant(Constant.SHORT_CIRCUIT_TOLERANCE);
    if (stated == null) {
      d.assume(NoteCode.ASSUMED_VOLTAGE_TOLERANCE, At.TOLERANCE, Figure.of("ΔU", wider));
    }
    double tolerance = stated == null ? wider.number() : stated;
    Table table = d.edition().table(TableName.VOLTAGE_FACTORS);
    return new VoltageFactors(
        d.tabled("cmax", table.at("greatest", tolerance), Unit.ONE, At.TOLERANCE),
        d.tabled("cmin", table.at("least", tolerance), Unit.ONE, At.TOLERANCE));
  }
}
