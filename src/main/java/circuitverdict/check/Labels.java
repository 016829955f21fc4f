package circuitverdict.check;

import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import java.util.Map;

/** What an electrician calls a member of the request. */
public final class Labels {
  private static final Map<String, String> NAMES =
      Map.ofEntries(
          Map.entry("earthing", "the system of earthing"),
          Map.entry("point", "whether the supply point is the origin"),
          Map.entry("phases", "the number of phases"),
          Map.entry("basis", "what the loop impedance rests on"),
          Map.entry("ownership", "whether the supply is public or private"),
          Map.entry("lineToEarthVoltageV", "the nominal voltage"),
          Map.entry("loopImpedanceOhm", "the earth fault loop impedance of the supply"),
          Map.entry(
              "lineToNeutralLoopImpedanceOhm", "the line–neutral loop impedance of the supply"),
          Map.entry("maximumFaultCurrentA", "the greatest prospective fault current"),
          Map.entry("instrumentUncertaintyPercent", "the uncertainty of the readings"),
          Map.entry("voltageDropPercent", "the voltage drop up to the supply point"),
          Map.entry("earthElectrodeResistanceOhm", "the resistance of the earth electrode"),
          Map.entry(
              "openPenProtection", "whether a measure against a broken PEN conductor is fitted"),
          Map.entry("liveConductors", "the live conductors"),
          Map.entry("device", "the protective device"),
          Map.entry("residualDevice", "the residual current device"),
          Map.entry("upstreamDevice", "the device upstream"),
          Map.entry("cable", "the cable"),
          Map.entry("kind", "the kind of load"),
          Map.entry("use", "whether it is lighting"),
          Map.entry("connection", "whether it is fixed or by socket-outlet"),
          Map.entry("designCurrentA", "the design current"),
          Map.entry("powerFactor", "the power factor"),
          Map.entry("efficiencyPercent", "the efficiency"),
          Map.entry("thirdHarmonicPercent", "the third harmonic of the load"),
          Map.entry("inrush", "the start of the load"),
          Map.entry("starting", "how the motor is started"),
          Map.entry("currentMultiple", "the starting current over the rated one"),
          Map.entry("peakCurrentA", "the peak of the starting current"),
          Map.entry("durationS", "the duration of the start"),
          Map.entry("countLimits", "the maker's greatest number on one device"),
          Map.entry("locations", "the special locations, if any"),
          Map.entry("deviceDeclared", "whether the assembly's maker declares the device"),
          Map.entry("construction", "the construction of the cable"),
          Map.entry("conductor", "the metal of the conductors"),
          Map.entry("insulation", "the insulation of the cable"),
          Map.entry("lineCsaMm2", "the cross-section of the line conductor"),
          Map.entry("neutralCsaMm2", "the cross-section of the neutral"),
          Map.entry("protectiveCsaMm2", "the cross-section of the protective conductor"),
          Map.entry("protectiveMeans", "what serves as protective conductor"),
          Map.entry("protectiveConductor", "the metal of the protective conductor"),
          Map.entry("armourAreaMm2", "the cross-section of the armour"),
          Map.entry("armourResistanceOhmPerKm", "the resistance of the armour"),
          Map.entry("lengthM", "the length of the cable"),
          Map.entry("reactanceOhmPerKm", "the reactance of the cable"),
          Map.entry("referenceMethod", "the reference method of installation"),
          Map.entry("ambientTemperatureC", "the ambient temperature"),
          Map.entry("groupedCircuits", "the number of circuits grouped"),
          Map.entry("insulationLengthM", "the length in thermal insulation"),
          Map.entry("soilThermalResistivityKMPerW", "the thermal resistivity of the soil"),
          Map.entry("burialDepthM", "the depth of laying"),
          Map.entry("standard", "the standard of the device"),
          Map.entry("characteristic", "the characteristic of the device"),
          Map.entry("ratedCurrentA", "the rated current"),
          Map.entry("breakingCapacityA", "the breaking capacity"),
          Map.entry("utilizationCategory", "the utilization category of the fuse"),
          Map.entry("poles", "the poles of the device"),
          Map.entry("protectedPoles", "its protected poles"),
          Map.entry("ratedVoltageV", "the rated voltage"),
          Map.entry("isolation", "whether it is suitable for isolation"),
          Map.entry("unidirectional", "whether it may be supplied from one side only"),
          Map.entry("derating", "the maker's derating"),
          Map.entry("referenceTemperatureC", "the reference temperature"),
          Map.entry("incomer", "the main switch"),
          Map.entry("localGeneration", "whether anything generates in the installation"),
          Map.entry("pollutionDegree", "tables for this pollution degree"),
          Map.entry("instantaneousA", "the instantaneous setting"),
          Map.entry("energyClass", "the energy limiting class"),
          Map.entry("longTimeA", "the overload setting"),
          Map.entry("conditionalCapacityA", "the conditional short-circuit current"),
          Map.entry("upper", "the upper magnetic limit"),
          Map.entry("operatingCurrentA", "the rated residual operating current"),
          Map.entry("delay", "the delay of the residual function"),
          Map.entry("delayS", "the set delay of the residual function"),
          Map.entry("selectivity", "the maker's limit of selectivity"),
          Map.entry("letThrough", "the maker's let-through data"),
          Map.entry("backUp", "evidence of back-up"),
          Map.entry("evidence", "proof instead of guidance"),
          Map.entry("frequencyHz", "tables for this frequency"),
          Map.entry("concealment", "how the cable is concealed"),
          Map.entry("residualWaveform", "the waveform of residual current of the load"),
          Map.entry(
              "directCurrentDetection",
              "whether the charging equipment detects 6 mA direct current"),
          Map.entry("relativeHumidityPercent", "the humidity in the assembly"),
          Map.entry("readings", "the readings that belong to it"),
          Map.entry("resistanceOhm", "the resistance read"),
          Map.entry("currentA", "the current read"),
          Map.entry("timeS", "the time read"),
          Map.entry("testMultiple", "the test current over IΔn"),
          Map.entry("satisfactory", "the result of the test"),
          Map.entry("between", "the conductors between which it was read"),
          Map.entry("place", "where it was read"),
          Map.entry("arrangement", "whether it is a radial or a ring"),
          Map.entry("originLoopImpedanceOhm", "Ze, the loop impedance at the origin"),
          Map.entry("type", "the type of the residual current device"),
          Map.entry("arcFaultDetection", "whether the device detects arc faults"),
          Map.entry("operatedBy", "who operates the installation"),
          Map.entry("higherRiskResidential", "whether it is a residence of 421.1.7"));

  /** Members that are called otherwise in one place. */
  private static final Map<String, String> IN_PLACE =
      Map.of(
          "/premises/use", "the use of the premises",
          "/load/ratedCurrentA", "the rated current of the socket-outlets");

  private Labels() {}

  /** What a note wants. */
  static String of(Note note) {
    if (note.code() == NoteCode.MAKER_CURVE_NEEDED) {
      return "the maker's time–current curve";
    }
    if (note.code() == NoteCode.READING_OF_ORIGIN) {
      return "a reading of Ze, or of R1 + R2";
    }
    if (note.code() == NoteCode.READING_IMPLAUSIBLE) {
      return "a reading that can be";
    }
    return note.pointer() == null ? note.code().text() : of(note.pointer());
  }

  /** The name; the member itself where it has none. */
  public static String of(Pointer pointer) {
    String here = IN_PLACE.get(pointer.text());
    return here != null ? here : NAMES.getOrDefault(pointer.member(), pointer.text());
  }
}
