package circuitverdict.device;

import circuitverdict.circuit.DeviceData.Declared;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Row;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;
import java.util.List;

/**
 * The limit of selectivity Is of a pair on short circuit, A (536.4.1): the greatest current up to
 * which it is shown that only the downstream device opens. Above its own breaking capacity a device
 * promises nothing.
 */
public final class SelectivityLimit {
  private static final Formula CAPPED = Formula.of("Is", Unit.AMPERE, "min(Ih; Icn)");
  private static final Figure UNKNOWN = Figure.unknown("Is", Unit.AMPERE);

  private final ProtectiveDevice downstream;
  private final ProtectiveDevice upstream;
  private final Promises opening;
  private final Promises holding;
  private final Figure capacity;
  private final Dossier d;

  /**
   * The limits of a pair.
   *
   * @param capacity what the downstream device breaks; unknown where it is not stated
   */
  public SelectivityLimit(
      ProtectiveDevice downstream,
      ProtectiveDevice upstream,
      Promises opening,
      Promises holding,
      Figure capacity,
      Dossier d) {
    this.downstream = downstream;
    this.upstream = upstream;
    this.opening = opening;
    this.holding = holding;
    this.capacity = capacity;
    this.d = d;
  }

  /**
   * Declared by the maker for this upstream device; unknown where it is not. Stated twice, the
   * lesser counts.
   */
  public static Figure declared(ProtectiveDevice downstream, ProtectiveDevice upstream) {
    Figure least = UNKNOWN;
    String id = upstream.data().id();
    List<Declared> all = downstream.data().selectivity();
    for (int i = 0; i < all.size(); i++) {
      if (id != null && id.equals(all.get(i).upstreamId())) {
        Pointer at = new Pointer(downstream.data().place() + "/selectivity/" + i, "limitCurrentA");
        least = Figure.lesser(new Figure("Is", all.get(i).limitCurrentA(), Unit.AMPERE, at), least);
      }
    }
    return least;
  }

  /** Shown by what the standards of the two, and their makers' let-through data, promise. */
  public Figure proved() {
    PromisedReach reach = PromisedReach.of(opening, holding);
    if (!reach.current().known() || !capacity.known()) {
      return UNKNOWN;
    }
    Figure end = reach.current();
    if (reach.toTheEnd() && upstream instanceof Fuse) {
      end = EnergyReach.of(downstream, LetThrough.of(downstream, d), end, capacity, least(), d);
    }
    return capped(end);
  }

  /**
   * By usual practice: the upstream device's threshold, its conventional current lying above; above
   * it for fuses the class rows of lower capacities and the test points of selectivity.
   */
  public Figure byGuidance() {
    Figure end = holding.thresholdFor(opening.atOnce());
    if (!end.known() || !capacity.known() || !opening.atOnce().current().known()) {
      return UNKNOWN;
    }
    if (upstream instanceof Fuse fuse) {
      Figure start = end;
      end = EnergyReach.of(downstream, LetThrough.of(downstream, d), start, capacity, least(), d);
      if (downstream instanceof Fuse lower && byTestPoints(lower, fuse)) {
        end = capacity;
      }
      end = Figure.greater(end, byLowerRows(start));
    }
    return capped(end);
  }

  private Figure capped(Figure end) {
    return end == capacity
        ? d.working().look(capacity.as("Is"))
        : d.working().step(CAPPED, end.as("Ih"), capacity.as("Icn"));
  }

  /** The two energies that carry a limit above the times, or null where none are needed. */
  public Energies energies(Figure upTo, boolean proof) {
    Figure start = holding.heldFor(opening.atOnce().timeS());
    if (!(upstream instanceof Fuse fuse) || Comparator.atMost(upTo.value(), start.value())) {
      return null;
    }
    LetThrough own = LetThrough.of(downstream, d);
    Figure greatest = own.over(start, upTo).greatest();
    if (proof || Comparator.atMost(greatest.value(), least().value())) {
      return new Energies(greatest, least());
    }
    if (downstream instanceof Fuse lower && byTestPoints(lower, fuse)) {
      return new Energies(
          Figure.of("I²t", point("greatest-energy", lower)),
          Figure.of("I²tp", point("least-energy", fuse)));
    }
    LetThrough rows = LetThrough.byGuidance(downstream, upTo.value(), d);
    return new Energies(rows.over(start, upTo).greatest(), least());
  }

  /**
   * Two energies held against each other, A²s.
   *
   * @param greatest what the downstream device lets through at most
   * @param least what the upstream fuse stands at least
   */
  public record Energies(Figure greatest, Figure least) {}

  private Figure byLowerRows(Figure start) {
    Figure greatest = start;
    if (downstream instanceof Fuse) {
      return greatest;
    }
    for (Row row : d.edition().table(TableName.ENERGY_LIMITS).rows()) {
      double listed = row.keys().get(1).to();
      if (listed > greatest.value() && Comparator.atMost(listed, capacity.value())) {
        LetThrough through = LetThrough.byGuidance(downstream, listed, d);
        Figure end = new Figure("Is", listed, Unit.AMPERE, row.values().get(0).citation());
        Figure reach = EnergyReach.of(downstream, through, start, end, least(), d);
        greatest = Figure.greater(reach, greatest);
      }
    }
    return greatest;
  }

  /**
   * Whether the test points of IEC 60269-2 lie so: the greatest operating energy of the one no more
   * than the least pre-arcing energy of the other, as of ratings in the ratio 1:1.6.
   */
  private boolean byTestPoints(Fuse lower, Fuse upper) {
    Value most = point("greatest-energy", lower);
    Value least = point("least-energy", upper);
    return most != null && least != null && Comparator.atMost(most.number(), least.number());
  }

  private Value point(String column, Fuse fuse) {
    Double rated = fuse.data().ratedCurrentA();
    boolean listed = "BS 88-2".equals(fuse.data().standard()) && rated != null;
    return listed ? d.edition().table(TableName.FUSE_SELECTIVITY_POINTS).at(column, rated) : null;
  }

  /**
   * Least energy that melts the upstream fuse, A²s: at 0.01 s, or by the test points at a shorter
   * time; the lesser of the two.
   */
  private Figure least() {
    Figure energy = Figure.unknown("I²tp", Unit.AMPERE_SQUARED_SECOND);
    Double rated = upstream.data().ratedCurrentA();
    if (!(upstream instanceof Fuse fuse) || rated == null) {
      return energy;
    }
    Value tabled = FuseTimes.leastPreArcing(fuse, rated, d.edition());
    Value tested = point("least-energy", fuse);
    if (tabled == null || tested == null) {
      return energy;
    }
    return Figure.lesser(Figure.of("I²tp", tabled), Figure.of("I²tp", tested));
  }

  /**
   * Greatest energy that melts the upstream fuse within the time to which it belongs, A²s; unknown
   * where the tables hold none.
   */
  public static Figure greatestPreArcing(ProtectiveDevice upstream, Dossier d) {
    Double rated = upstream.data().ratedCurrentA();
    Table table = d.edition().table(TableName.FUSE_PRE_ARCING);
    Value most =
        upstream instanceof Fuse fuse
                && rated != null
                && "BS 88-2".equals(fuse.data().standard())
                && Boolean.TRUE.equals(GeneralPurpose.of(fuse, d))
            ? table.at("greatest", rated)
            : null;
    return most == null
        ? Figure.unknown("I²tp", Unit.AMPERE_SQUARED_SECOND)
        : Figure.of("I²tp", most);
  }
}
