package circuitverdict.select;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Cable.Construction;
import circuitverdict.circuit.Cable.ProtectiveMeans;
import circuitverdict.standard.Edition;
import circuitverdict.standard.Row;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;
import java.util.ArrayList;
import java.util.List;

/**
 * The sizes in which a cable as installed can be had, smallest first. What the caller states stays;
 * a flat twin has the protective conductor that goes with it, a core is as large as the line, one
 * of its own is any size up to the line.
 */
final class ConductorSizes {
  private ConductorSizes() {}

  static List<Cable> of(Cable cable, Edition edition) {
    boolean flat = cable.construction() == Construction.FLAT_TWIN_AND_EARTH;
    Table listed = edition.table(flat ? TableName.FLAT_TWIN_SIZES : TableName.CONDUCTOR_RESISTANCE);
    List<Cable> sizes = new ArrayList<>();
    for (Row row : listed.rows()) {
      double size = row.keys().get(0).to();
      boolean wanted = cable.lineCsaMm2() == null || cable.lineCsaMm2() == size;
      if (!wanted) {
        continue;
      }
      for (Double protective : protective(cable, flat, listed, size)) {
        sizes.add(cable.withSizes(size, neutral(cable, flat, size), protective));
      }
    }
    return sizes;
  }

  private static Double neutral(Cable cable, boolean flat, double size) {
    return flat || cable.neutralCsaMm2() != null ? cable.neutralCsaMm2() : Double.valueOf(size);
  }

  private static List<Double> protective(Cable cable, boolean flat, Table listed, double size) {
    if (cable.protectiveCsaMm2() != null) {
      return List.of(cable.protectiveCsaMm2());
    }
    if (flat) {
      Value usual = listed.at("protective", size);
      return usual == null ? none() : List.of(usual.number());
    }
    ProtectiveMeans means = cable.protectiveMeans();
    if (means == ProtectiveMeans.CORE || means == ProtectiveMeans.ARMOUR_AND_CORE) {
      return List.of(size);
    }
    if (means != ProtectiveMeans.SEPARATE) {
      return none();
    }
    List<Double> sizes = new ArrayList<>();
    for (Row row : listed.rows()) {
      double other = row.keys().get(0).to();
      if (other <= size) {
        sizes.add(other);
      }
    }
    return sizes;
  }

  /** One that is not told by its size. */
  private static List<Double> none() {
    List<Double> none = new ArrayList<>();
    none.add(null);
    return none;
  }
}
