package circuitverdict.circuit;

/**
 * A cable, or single-core cables run together.
 *
 * @param place JSON pointer of the cable in the request
 * @param construction how it is built
 * @param conductor metal of the live conductors
 * @param insulation kind and temperature of the insulation, the contract's word
 * @param lineCsaMm2 cross-section of a line conductor, mm²
 * @param neutralCsaMm2 of the neutral, mm²
 * @param protectiveCsaMm2 of the protective conductor, mm²
 * @param protectiveMeans what serves as protective conductor
 * @param protectiveConductor its metal
 * @param armourAreaMm2 cross-section of the armour, mm²
 * @param armourResistanceOhmPerKm resistance of the armour at 20 °C, Ω/km
 * @param parallelCables cables side by side
 * @param lengthM length; of a ring the whole loop, m
 * @param arrangement radial or ring
 * @param lineResistanceOhmPerKm resistance of a line conductor at 20 °C, Ω/km
 * @param protectiveResistanceOhmPerKm of the protective conductor at 20 °C, Ω/km
 * @param reactanceOhmPerKm reactance of the loop per conductor, Ω/km
 * @param terminalTemperatureC temperature that the equipment at both ends stands, °C
 * @param installation how it is installed
 */
public record Cable(
    String place,
    Construction construction,
    Metal conductor,
    String insulation,
    Double lineCsaMm2,
    Double neutralCsaMm2,
    Double protectiveCsaMm2,
    ProtectiveMeans protectiveMeans,
    Metal protectiveConductor,
    Double armourAreaMm2,
    Double armourResistanceOhmPerKm,
    Integer parallelCables,
    Double lengthM,
    Arrangement arrangement,
    Double lineResistanceOhmPerKm,
    Double protectiveResistanceOhmPerKm,
    Double reactanceOhmPerKm,
    Double terminalTemperatureC,
    Installation installation) {

  /** How a cable is built. */
  public enum Construction {
    FLAT_TWIN_AND_EARTH,
    MULTICORE,
    ARMOURED_MULTICORE,
    SINGLES,
    MINERAL,
    FLEXIBLE
  }

  /** A conductor's metal. */
  public enum Metal {
    COPPER("copper"),
    ALUMINIUM("aluminium"),
    STEEL("steel"),
    LEAD("lead");

    private final String word;

    Metal(String word) {
      this.word = word;
    }

    /** The word of tables and contract. */
    public String word() {
      return word;
    }
  }

  /** What serves as protective conductor. */
  public enum ProtectiveMeans {
    CORE,
    SEPARATE,
    ARMOUR,
    ARMOUR_AND_CORE,
    STEEL_CONDUIT,
    STEEL_TRUNKING,
    SHEATH
  }

  /** Radial, or a ring with both ends at the board. */
  public enum Arrangement {
    RADIAL,
    RING
  }

  /** Whether it is a ring. */
  public boolean ring() {
    return arrangement == Arrangement.RING;
  }

  /** Cables side by side; one where none is stated. */
  public int parallel() {
    return parallelCables == null ? 1 : parallelCables;
  }

  /** The same cable with another length. */
  public Cable withLength(double metres) {
    return new Cable(
        place,
        construction,
        conductor,
        insulation,
        lineCsaMm2,
        neutralCsaMm2,
        protectiveCsaMm2,
        protectiveMeans,
        protectiveConductor,
        armourAreaMm2,
        armourResistanceOhmPerKm,
        parallelCables,
        metres,
        arrangement,
        lineResistanceOhmPerKm,
        protectiveResistanceOhmPerKm,
        reactanceOhmPerKm,
        terminalTemperatureC,
        installation);
  }

  /** The same cable laid by another reference method. */
  public Cable withMethod(String method) {
    return new Cable(
        place,
        construction,
        conductor,
        insulation,
        lineCsaMm2,
        neutralCsaMm2,
        protectiveCsaMm2,
        protectiveMeans,
        protectiveConductor,
        armourAreaMm2,
        armourResistanceOhmPerKm,
        parallelCables,
        lengthM,
        arrangement,
        lineResistanceOhmPerKm,
        protectiveResistanceOhmPerKm,
        reactanceOhmPerKm,
        terminalTemperatureC,
        installation.withMethod(method));
  }

  /** The same cable with other cross-sections. */
  public Cable withSizes(Double line, Double neutral, Double protective) {
    return new Cable(
        place,
        construction,
        conductor,
        insulation,
        line,
        neutral,
        protective,
        protectiveMeans,
        protectiveConductor,
        armourAreaMm2,
        armourResistanceOhmPerKm,
        parallelCables,
        lengthM,
        arrangement,
        lineResistanceOhmPerKm,
        protectiveResistanceOhmPerKm,
        reactanceOhmPerKm,
        terminalTemperatureC,
        installation);
  }
}
