package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.device.AgainstOverload;
import circuitverdict.device.ConventionalCurrent;
import circuitverdict.device.RatedCurrent;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Shared.Topic;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/**
 * What overload protection demands of one cable (433.1): the rating it must have, as a figure to
 * hold against Iz.
 *
 * @param demanded rating demanded of the cable, A
 * @param installed Iz, A
 * @param rule which rule sets the demand
 * @param conventional I2, A; unknown where the rating settles it by 433.1.201
 * @param allowed 1.45·Iz, A; unknown where the rating settles it, or Iz is
 */
public record Coordination(
    Figure demanded, Figure installed, Rule rule, Figure conventional, Figure allowed) {

  /** Which rule sets the demand on the cable. */
  public enum Rule {
    /** In ≤ Iz (433.1.1(ii)). */
    RATING,
    /** Each leg of a ring carries the rating of 433.1.204. */
    RING,
    /** A spur of such a ring, taken by the same figure: guidance. */
    SPUR,
    /** Ib ≤ Iz, the load being unable to overload (433.3.1). */
    OMITTED
  }

  private static final Formula ALLOWED = Formula.of("1.45·Iz", Unit.AMPERE, "k2·Iz");
  private static final Formula ALLOWED_BURIED = Formula.of("1.45·Cc·Iz", Unit.AMPERE, "k2·Cc·Iz");
  private static final Formula BURIED = Formula.of("In/Cc", Unit.AMPERE, "In/Cc");

  /** The coordination of one cable. */
  public static Coordination of(
      Circuit circuit, Cable cable, LiveConductors live, Figure design, Figure rated, Dossier d) {
    return d.once(
        Topic.COORDINATION, cable, inner -> find(circuit, cable, live, design, rated, inner));
  }

  private static Coordination find(
      Circuit circuit, Cable cable, LiveConductors live, Figure design, Figure rated, Dossier d) {
    CurrentRating rating = CurrentRating.of(circuit, cable, live, d);
    Figure installed = rating.installed();
    if (!Boolean.FALSE.equals(circuit.load().canOverload())) {
      return ruled(circuit, cable, rated, installed, d);
    }
    Coordination omitted = new Coordination(design, installed, Rule.OMITTED, unknown(), unknown());
    boolean alone = byLoadAlone(circuit, AgainstOverload.of(circuit.device(), d));
    return alone || omits(omitted, circuit, cable, rated, d)
        ? omitted
        : ruled(circuit, cable, rated, installed, d);
  }

  /**
   * Whether omission serves better than protection: where that does not hold, or holds by guidance
   * or by what is not stated only, and the cable carries Ib.
   */
  private static boolean omits(
      Coordination omitted, Circuit circuit, Cable cable, Figure rated, Dossier d) {
    Dossier trial = d.trial();
    Coordination ruled = ruled(circuit, cable, rated, omitted.installed(), trial);
    boolean holds = Boolean.TRUE.equals(ruled.holds());
    boolean weakly = ruled.rule() == Rule.SPUR || trial.standsAtBest();
    return !holds || weakly && Boolean.TRUE.equals(omitted.holds());
  }

  /**
   * Whether Ib alone sets the demand (433.3.1): the load cannot overload, and the device knows no
   * overload, so that its In says nothing, or may be such a one. Of a ring the other kind would
   * demand less: there the kind must be known.
   *
   * @param protects whether the device protects against overload; null where that is not known
   */
  public static boolean byLoadAlone(Circuit circuit, Boolean protects) {
    return Boolean.FALSE.equals(circuit.load().canOverload())
        && !Boolean.TRUE.equals(protects)
        && (protects != null || !circuit.cable().ring());
  }

  /**
   * The ring rule where it covers the circuit; a spur that carries In needs no guidance. A leg that
   * carries In holds whatever the ring feeds; where that is not stated the rule stands at its best,
   * so that only a leg that fails by it fails.
   */
  private static Coordination ruled(
      Circuit circuit, Cable cable, Figure rated, Figure installed, Dossier d) {
    Boolean covered = RingRule.covers(circuit, rated, d);
    if (Boolean.TRUE.equals(covered) && cable == circuit.cable()) {
      return byRing(circuit, cable, installed, d);
    }
    Coordination whole = byRating(circuit, cable, rated, installed, d);
    if (Boolean.FALSE.equals(covered) || !Boolean.FALSE.equals(whole.holds())) {
      return whole;
    }
    if (covered == null) {
      d.remark(NoteCode.RING_ACCESSORIES);
      RingRule.wanted(circuit, d).forEach(d::atBest);
    }
    return byRing(circuit, cable, installed, d);
  }

  private static Coordination byRing(Circuit circuit, Cable cable, Figure installed, Dossier d) {
    Rule rule = cable == circuit.cable() ? Rule.RING : Rule.SPUR;
    Figure least = d.constant("Iz,min", Constant.RING_CIRCUIT_LEAST_RATING);
    return new Coordination(least, installed, rule, unknown(), unknown());
  }

  private static Coordination byRating(
      Circuit circuit, Cable cable, Figure rated, Figure installed, Dossier d) {
    Figure demanded =
        cable.installation().buried()
            ? d.working().step(BURIED, rated, d.constant("Cc", Constant.OVERLOAD_FACTORS_BURIED))
            : rated;
    Value deemed =
        d.edition()
            .table(TableName.OVERLOAD_DEEMED)
            .at("deemed", circuit.device().data().standard());
    Figure conventional = ConventionalCurrent.of(circuit.device(), rated, d);
    Figure factor = d.constant("k2", Constant.OVERLOAD_FACTORS_CONVENTIONAL);
    boolean settled = deemed != null && !breaker(circuit.device());
    if (!settled && rated.known() && !conventional.known()) {
      d.missing(NoteCode.NOT_IN_TABLES, new Pointer(circuit.device().data().place(), "standard"));
    }
    return new Coordination(
        demanded,
        installed,
        Rule.RATING,
        settled ? unknown() : conventional,
        settled ? unknown() : allowed(cable, factor, installed, d));
  }

  private static Figure allowed(Cable cable, Figure factor, Figure installed, Dossier d) {
    return cable.installation().buried()
        ? d.working()
            .step(
                ALLOWED_BURIED,
                factor,
                d.constant("Cc", Constant.OVERLOAD_FACTORS_BURIED),
                installed)
        : d.working().step(ALLOWED, factor, installed);
  }

  private static boolean breaker(ProtectiveDevice device) {
    return device instanceof ProtectiveDevice.Breaker
        || device instanceof ProtectiveDevice.AdjustableBreaker;
  }

  /** Whether overload protection holds for this cable; null where it is not known. */
  public Boolean holds() {
    if (!demanded.known() || !installed.known()) {
      return null;
    }
    boolean rating = Comparator.atMost(demanded.value(), installed.value());
    if (rating && open()) {
      return null;
    }
    boolean conventionalHolds =
        !conventional.known() || Comparator.atMost(conventional.value(), allowed.value());
    return rating && conventionalHolds;
  }

  /** Whether I2 is wanted and not known: only a device that is deemed to need none does without. */
  public boolean open() {
    return allowed.known() && !conventional.known();
  }

  private static Figure unknown() {
    return Figure.unknown("I2", Unit.AMPERE);
  }

  /** Whether the device's overload protection holds for the whole circuit; false where unknown. */
  public static boolean protects(Circuit circuit, LiveConductors live, Dossier d) {
    // What stands at its best protects nothing, and must not burden whoever asks.
    Dossier trial = d.trial();
    protectsAtBest(circuit, live, trial);
    return !trial.standsAtBest() && protectsAtBest(circuit, live, d);
  }

  private static boolean protectsAtBest(Circuit circuit, LiveConductors live, Dossier d) {
    if (!Boolean.TRUE.equals(AgainstOverload.of(circuit.device(), d))) {
      return false;
    }
    Figure rated = RatedCurrent.of(circuit.device(), d);
    Figure design = DesignCurrent.of(circuit, live, d);
    if (!Comparator.atMost(design.value(), rated.value())) {
      return false;
    }
    for (Cable cable : Wiring.cables(circuit)) {
      Coordination each = of(circuit, cable, live, design, rated, d);
      if (each.rule() == Rule.SPUR
          || each.rule() == Rule.OMITTED
          || !Boolean.TRUE.equals(each.holds())) {
        return false;
      }
    }
    return true;
  }
}
