package circuitverdict.explain;

/** Members of the request that more than one rule asks for. */
public final class At {
  public static final String SUPPLY = "/supply";
  public static final String DEVICE = "/device";
  public static final String LOAD = "/load";
  public static final String FURTHER_CABLES = "/furtherCables";

  public static final Pointer EARTHING = new Pointer(SUPPLY, "earthing");
  public static final Pointer POINT = new Pointer(SUPPLY, "point");
  public static final Pointer PHASES = new Pointer(SUPPLY, "phases");
  public static final Pointer BASIS = new Pointer(SUPPLY, "basis");
  public static final Pointer OWNERSHIP = new Pointer(SUPPLY, "ownership");
  public static final Pointer VOLTAGE = new Pointer(SUPPLY, "lineToEarthVoltageV");
  public static final Pointer LOOP = new Pointer(SUPPLY, "loopImpedanceOhm");
  public static final Pointer LOOP_REACTANCE = new Pointer(SUPPLY, "loopReactanceOhm");
  public static final Pointer ORIGIN_LOOP = new Pointer(SUPPLY, "originLoopImpedanceOhm");
  public static final Pointer NEUTRAL_LOOP = new Pointer(SUPPLY, "lineToNeutralLoopImpedanceOhm");
  public static final Pointer NEUTRAL_LOOP_REACTANCE =
      new Pointer(SUPPLY, "lineToNeutralLoopReactanceOhm");
  public static final Pointer MAXIMUM_CURRENT = new Pointer(SUPPLY, "maximumFaultCurrentA");
  public static final Pointer UNCERTAINTY = new Pointer(SUPPLY, "instrumentUncertaintyPercent");
  public static final Pointer SUPPLY_DROP = new Pointer(SUPPLY, "voltageDropPercent");
  public static final Pointer ELECTRODE = new Pointer(SUPPLY, "earthElectrodeResistanceOhm");
  public static final Pointer LOCAL_GENERATION = new Pointer(SUPPLY, "localGeneration");
  public static final Pointer OPEN_PEN = new Pointer(SUPPLY, "openPenProtection");
  public static final String TRANSFORMER = "/supply/transformer";
  public static final String GRID = "/supply/grid";
  public static final Pointer GRID_ITSELF = new Pointer(SUPPLY, "grid");
  public static final Pointer TOLERANCE = new Pointer(SUPPLY, "voltageTolerancePercent");
  public static final Pointer THREE_PHASE_CURRENT =
      new Pointer("/supply/faultCurrents/threePhase", "maximumA");
  public static final Pointer TWO_PHASE_CURRENT =
      new Pointer("/supply/faultCurrents/twoPhase", "maximumA");
  public static final Pointer NEUTRAL_CURRENT =
      new Pointer("/supply/faultCurrents/lineToNeutral", "maximumA");
  public static final Pointer EARTH_CURRENT =
      new Pointer("/supply/faultCurrents/lineToEarth", "maximumA");

  public static final Pointer LIVE = new Pointer("", "liveConductors");
  public static final Pointer DEVICE_ITSELF = new Pointer("", "device");
  public static final Pointer CABLE_ITSELF = new Pointer("", "cable");
  public static final Pointer UPSTREAM = new Pointer("", "upstreamDevice");
  public static final Pointer UPSTREAM_CAPACITY =
      new Pointer("/upstreamDevice", "breakingCapacityA");
  public static final Pointer INCOMER = new Pointer("", "incomer");
  public static final Pointer RESIDUAL_DEVICE = new Pointer("", "residualDevice");

  public static final Pointer LOAD_PARTS = new Pointer(LOAD, "parts");
  public static final Pointer LOAD_KIND = new Pointer(LOAD, "kind");
  public static final Pointer LOAD_USE = new Pointer(LOAD, "use");
  public static final Pointer CONNECTION = new Pointer(LOAD, "connection");
  public static final Pointer DESIGN_CURRENT = new Pointer(LOAD, "designCurrentA");
  public static final Pointer VOLTAGE_DROP_CURRENT = new Pointer(LOAD, "voltageDropCurrentA");
  public static final Pointer POWER_FACTOR = new Pointer(LOAD, "powerFactor");
  public static final Pointer THIRD_HARMONIC = new Pointer(LOAD, "thirdHarmonicPercent");
  public static final Pointer STANDING_CURRENT = new Pointer(LOAD, "protectiveConductorCurrentA");
  public static final Pointer LOCATIONS = new Pointer("/premises", "locations");
  public static final Pointer PREMISES_USE = new Pointer("/premises", "use");
  public static final Pointer OPERATED_BY = new Pointer("/premises", "operatedBy");
  public static final Pointer HIGHER_RISK = new Pointer("/premises", "higherRiskResidential");
  public static final Pointer RESIDUAL_WAVEFORM = new Pointer(LOAD, "residualWaveform");
  public static final Pointer DIRECT_CURRENT_DETECTION =
      new Pointer(LOAD, "directCurrentDetection");
  public static final Pointer OUTLET_RATING = new Pointer(LOAD, "ratedCurrentA");
  public static final Pointer ARC_FAULT = new Pointer(DEVICE, "arcFaultDetection");
  public static final Pointer POLLUTION = new Pointer("/premises", "pollutionDegree");
  public static final Pointer ASSEMBLY_AMBIENT = new Pointer("/assembly", "ambientTemperatureC");
  public static final Pointer ASSEMBLY_HUMIDITY =
      new Pointer("/assembly", "relativeHumidityPercent");
  public static final Pointer DEVICE_DECLARED = new Pointer("/assembly", "deviceDeclared");

  private At() {}
}
