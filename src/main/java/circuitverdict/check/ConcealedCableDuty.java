package circuitverdict.check;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Cable.ProtectiveMeans;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Installation.Concealment;
import circuitverdict.conductor.Wiring;
import circuitverdict.explain.Pointer;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Edition;
import java.util.ArrayList;
import java.util.List;

/**
 * Cables concealed in walls (522.6.202: less than 50 mm deep; 522.6.203: any depth in a partition
 * with metallic parts, from memory) owe additional protection, but for those within an earthed
 * metallic covering or otherwise protected (522.6.204). IEC 60364 has no such rules.
 */
final class ConcealedCableDuty {
  private ConcealedCableDuty() {}

  static AdditionalDuty of(Circuit circuit, Edition edition) {
    List<Pointer> wanted = new ArrayList<>();
    for (Cable cable : Wiring.cables(circuit)) {
      AdditionalDuty each = of(cable);
      if (!edition.has(each.clause())) {
        continue;
      }
      if (each.certain()) {
        return each;
      }
      wanted.addAll(each.wanted());
    }
    return wanted.isEmpty()
        ? AdditionalDuty.of(Clause.CONCEALED_CABLES, false)
        : AdditionalDuty.open(Clause.CONCEALED_CABLES, wanted.toArray(Pointer[]::new));
  }

  private static AdditionalDuty of(Cable cable) {
    Concealment concealment = cable.installation().concealment();
    if (concealment == null) {
      return covered(cable)
          ? AdditionalDuty.of(Clause.CONCEALED_CABLES, false)
          : AdditionalDuty.open(
              Clause.CONCEALED_CABLES, new Pointer(cable.installation().place(), "concealment"));
    }
    return switch (concealment) {
      case WITHIN_50_MM -> hidden(cable, Clause.CONCEALED_CABLES);
      case METALLIC_PARTITION -> hidden(cable, Clause.METALLIC_PARTITIONS);
      case NONE, DEEPER, PROTECTED -> AdditionalDuty.of(Clause.CONCEALED_CABLES, false);
    };
  }

  private static AdditionalDuty hidden(Cable cable, Clause clause) {
    if (cable.construction() == null) {
      return AdditionalDuty.open(clause, new Pointer(cable.place(), "construction"));
    }
    // Singles run in something, and what that is made of follows from what protects.
    boolean enclosed = cable.construction() == Cable.Construction.SINGLES;
    return enclosed && cable.protectiveMeans() == null
        ? AdditionalDuty.open(clause, new Pointer(cable.place(), "protectiveMeans"))
        : AdditionalDuty.of(clause, !covered(cable));
  }

  /** Within an earthed metallic covering: armour, metal sheath, conduit or trunking. */
  private static boolean covered(Cable cable) {
    ProtectiveMeans means = cable.protectiveMeans();
    return cable.construction() == Cable.Construction.ARMOURED_MULTICORE
        || cable.construction() == Cable.Construction.MINERAL
        || means == ProtectiveMeans.SHEATH
        || means == ProtectiveMeans.STEEL_CONDUIT
        || means == ProtectiveMeans.STEEL_TRUNKING;
  }
}
