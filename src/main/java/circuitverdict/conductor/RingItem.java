package circuitverdict.conductor;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Load;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.Note;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import java.util.List;

/**
 * One item of a ring's load, or of a part of it, against the accessory that it hangs on (BS 1363).
 * An outlet states its rating, which counts as it stands. What an item draws is computed, from its
 * power or as its share of a stated current, and rests on a voltage: powers of the trade are
 * rounded, and hold somewhere within the supply's tolerance of +10 %, the same that Cmax stands
 * for. So the current may be Cmax times the accessory's: 3 289 W on 230 V, that the 3 kW appliance
 * (13.04 A) is none too large. That stays well below what one leg of a ring must carry.
 */
final class RingItem {
  private static final Formula DRAWN = Formula.of("Ii", Unit.AMPERE, "P/(U·cosφ·η/100)");
  private static final Formula SHARE = Formula.of("Ii", Unit.AMPERE, "Ib/n");
  private static final Formula MOST = Formula.of("Ii,max", Unit.AMPERE, "Cmax·Ir");

  private final Circuit circuit;
  private final Load load;
  private final String place;
  private final Dossier d;
  private final Figure rated;
  private final Figure most;

  RingItem(Circuit circuit, Load load, String place, Dossier d) {
    this.circuit = circuit;
    this.load = load;
    this.place = place;
    this.d = d;
    this.rated = d.constant("Ir", Constant.RING_CIRCUIT_ACCESSORY_RATING);
    this.most = d.working().step(MOST, d.constant("Cmax", Constant.CMAX), rated);
  }

  /** Whether it is larger for certain, whatever is not stated of it. */
  boolean larger() {
    if (load.ratedCurrentA() != null && load.ratedCurrentA() > rated.value()) {
      return true;
    }
    if (!load.parts().isEmpty()) {
      // The parts are what draws; the whole is their sum.
      return false;
    }
    boolean shared = load.designCurrentA() != null && load.count() != null;
    return load.ratedPowerW() != null && exceeds(drawn(true)) || shared && exceeds(share());
  }

  /** Adds what would say that it is not larger, of a load without parts whose kind is stated. */
  void want(List<Pointer> wanted) {
    if (load.ratedPowerW() != null && !drawn(false).known()) {
      wantOfPower(wanted);
    }
    if (load.kind() == Load.Kind.SOCKET_OUTLETS) {
      // Outlets are many, and take what is plugged in up to their own rating.
      if (load.ratedCurrentA() == null && !d.allows(Allowance.TABLE_DEFAULTS)) {
        wanted.add(new Pointer(place, "ratedCurrentA"));
      }
      return;
    }
    if (load.designCurrentA() == null && load.ratedPowerW() == null) {
      wanted.add(new Pointer(place, "designCurrentA"));
    }
    boolean several = load.designCurrentA() != null && load.count() == null;
    if (several && exceeds(current())) {
      wanted.add(new Pointer(place, "count"));
    }
  }

  private void wantOfPower(List<Pointer> wanted) {
    if (!powerFactor(false).known()) {
      wanted.add(new Pointer(place, "powerFactor"));
    }
    if (!efficiency(false).known()) {
      wanted.add(new Pointer(place, "efficiencyPercent"));
    }
    Dossier trial = d.trial();
    NominalVoltage.lineToEarth(circuit, trial);
    for (Note note : trial.missing()) {
      wanted.add(note.pointer());
    }
  }

  private boolean exceeds(Figure drawn) {
    return drawn.known() && !Comparator.atMost(drawn.value(), most.value());
  }

  /** What one item draws, by its power; at the least where what is missing stands at its best. */
  private Figure drawn(boolean least) {
    Figure power = d.given("P", load.ratedPowerW(), Unit.WATT, new Pointer(place, "ratedPowerW"));
    return d.working().step(DRAWN, power, voltage(), powerFactor(least), efficiency(least));
  }

  private Figure share() {
    Pointer at = new Pointer(place, "count");
    return d.working().step(SHARE, current(), d.given("n", (double) load.count(), Unit.ONE, at));
  }

  private Figure current() {
    return d.given("Ib", load.designCurrentA(), Unit.AMPERE, new Pointer(place, "designCurrentA"));
  }

  /** One rated for more than it gets is not made smaller by that. */
  private Figure voltage() {
    Figure nominal = NominalVoltage.lineToEarth(circuit, d).as("U");
    Figure own = d.given("U", load.ratedVoltageV(), Unit.VOLT, new Pointer(place, "ratedVoltageV"));
    return nominal.known() ? Figure.lesser(nominal, own) : nominal;
  }

  private Figure powerFactor(boolean least) {
    boolean resistive = load.kind() == Load.Kind.RESISTIVE || load.kind() == Load.Kind.FILAMENT;
    return load.powerFactor() == null && (least || resistive)
        ? Figure.derived("cosφ", 1, Unit.ONE)
        : d.given("cosφ", load.powerFactor(), Unit.ONE, new Pointer(place, "powerFactor"));
  }

  private Figure efficiency(boolean least) {
    boolean drawn = least || load.kind() != Load.Kind.MOTOR;
    return load.efficiencyPercent() == null && drawn
        ? Figure.derived("η", 100, Unit.PERCENT)
        : d.given(
            "η", load.efficiencyPercent(), Unit.PERCENT, new Pointer(place, "efficiencyPercent"));
  }
}
