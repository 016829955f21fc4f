package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Cable.Construction;
import circuitverdict.circuit.Cable.ProtectiveMeans;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/** What serves as protective conductor, and how it is laid for the tables of k. */
public final class ProtectiveConductors {
  private ProtectiveConductors() {}

  /** What serves; a flat twin and earth carries its own core. */
  public static ProtectiveMeans means(Cable cable, Dossier d) {
    if (cable.protectiveMeans() == null
        && cable.construction() == Construction.FLAT_TWIN_AND_EARTH) {
      return ProtectiveMeans.CORE;
    }
    return d.need(cable.protectiveMeans(), new Pointer(cable.place(), "protectiveMeans"));
  }

  /**
   * Cross-section of a protective core or separate conductor, mm². For a design that of a flat twin
   * is taken as the usual one beside its line conductor, listed.
   */
  public static Figure csa(Cable cable, Dossier d) {
    Pointer at = new Pointer(cable.place(), "protectiveCsaMm2");
    boolean flat = cable.construction() == Construction.FLAT_TWIN_AND_EARTH;
    if (cable.protectiveCsaMm2() == null && flat && cable.lineCsaMm2() != null) {
      Value usual =
          d.edition().table(TableName.FLAT_TWIN_SIZES).at("protective", cable.lineCsaMm2());
      if (usual != null) {
        return d.orAssume(
            "S", null, at, usual, Allowance.TABLE_DEFAULTS, NoteCode.ASSUMED_PROTECTIVE_SIZE);
      }
    }
    return d.need("S", cable.protectiveCsaMm2(), Unit.SQUARE_MM, at);
  }

  /** Cross-section of what serves, mm²: of armour alone that of the armour. */
  public static Figure section(Cable cable, Dossier d) {
    return cable.protectiveMeans() == ProtectiveMeans.ARMOUR ? armour(cable, d) : csa(cable, d);
  }

  /** The member that states {@link #section}. */
  public static Pointer sectionAt(Cable cable) {
    boolean armour = cable.protectiveMeans() == ProtectiveMeans.ARMOUR;
    return new Pointer(cable.place(), armour ? "armourAreaMm2" : "protectiveCsaMm2");
  }

  /** Cross-section of the armour, mm². */
  static Figure armour(Cable cable, Dossier d) {
    return d.need(
        "S", cable.armourAreaMm2(), Unit.SQUARE_MM, new Pointer(cable.place(), "armourAreaMm2"));
  }

  /** Its metal: a core is of the live conductors' metal, armour and conduit are of steel. */
  public static Cable.Metal metal(Cable cable, Dossier d) {
    if (cable.protectiveConductor() != null) {
      return cable.protectiveConductor();
    }
    ProtectiveMeans means = means(cable, d);
    if (means == null) {
      return null;
    }
    return switch (means) {
      case CORE, ARMOUR_AND_CORE -> Wiring.metal(cable, d);
      case ARMOUR, STEEL_CONDUIT, STEEL_TRUNKING -> Cable.Metal.STEEL;
      case SEPARATE, SHEATH -> d.need(null, new Pointer(cable.place(), "protectiveConductor"));
    };
  }

  /**
   * Whether it runs apart from the live conductors and so starts cold. Single-core cables share
   * their conduit or trunking: there a separate conductor is bunched with them.
   */
  public static boolean apart(Cable cable) {
    return cable.protectiveMeans() == ProtectiveMeans.SEPARATE
        && cable.construction() != null
        && cable.construction() != Construction.SINGLES;
  }

  /** Whether it is one conductor beside the cables, however many of them are in parallel. */
  static boolean beside(Cable cable) {
    ProtectiveMeans means = cable.protectiveMeans();
    return means == ProtectiveMeans.SEPARATE
        || means == ProtectiveMeans.STEEL_CONDUIT
        || means == ProtectiveMeans.STEEL_TRUNKING;
  }

  /** Whether it stands alone, outside any cable, conduit or trunking (543.1.1). */
  public static boolean alone(Cable cable) {
    if (cable.protectiveMeans() != ProtectiveMeans.SEPARATE) {
      return false;
    }
    return !(cable.construction() == Construction.SINGLES && cable.installation().enclosed());
  }
}
