package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Other;
import circuitverdict.circuit.ProtectiveDevice.Rccb;
import circuitverdict.circuit.Residual;
import circuitverdict.conductor.Wiring;
import circuitverdict.device.NotJudged;
import circuitverdict.device.ResidualTime;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Edition;
import java.util.List;

/**
 * Additional protection (415.1): a residual current device of 30 mA without delay where a clause
 * owes it (411.3.3, 411.3.4, 522.6.202/.203, 701 to 703, 722); the type of every such device by the
 * load (531.3.3), whatever it is fitted for; its standing current (531.3.2); and arc fault
 * detection (421.1.7). What is owed follows from what is stated; where that leaves it open, a
 * fitted device that meets it complies.
 */
public final class AdditionalProtection implements Check {
  @Override
  public CheckName name() {
    return CheckName.ADDITIONAL_PROTECTION;
  }

  @Override
  public Finding evaluate(Circuit circuit, Dossier d) {
    Judgement judgement =
        new Judgement(name(), circuit, d, "/device").by(Clause.ADDITIONAL_PROTECTION);
    List<AdditionalDuty> duties = duties(circuit, d.edition());
    Boolean owed = owed(duties);
    List<ProtectiveDevice> functions = ResidualTime.all(circuit);
    Boolean arcFault = ArcFaultDuty.met(circuit, Wiring.live(circuit, d), judgement, d);
    boolean broken = Boolean.FALSE.equals(arcFault);
    boolean open = arcFault == null;
    boolean undescribed = noteUndescribed(circuit, d);
    boolean bears = !Boolean.FALSE.equals(owed) || !functions.isEmpty() || broken || open;
    if (!bears && !undescribed) {
      return judgement.notApplicable();
    }
    open |= undescribed;
    for (AdditionalDuty duty : duties) {
      if (duty.certain()) {
        judgement.by(duty.clause());
      }
    }
    if (functions.isEmpty()) {
      return without(duties, undescribed ? openUnless(owed) : owed, broken, open, judgement, d);
    }
    for (ProtectiveDevice each : functions) {
      Boolean suits = ResidualTypeRule.suits(circuit, each, judgement, d);
      broken |= Boolean.FALSE.equals(suits);
      open |= suits == null;
    }
    if (!Boolean.FALSE.equals(owed)) {
      ProtectiveDevice serving = serving(functions, d.edition());
      Boolean certain = undescribed ? openUnless(owed) : owed;
      open |= !sensitive(serving, duties, certain, judgement, d);
      open |= ChargingDuty.several(circuit, d);
    }
    for (ProtectiveDevice each : functions) {
      open |= !StandingResidual.judge(circuit, each, operating(each, d), judgement, d);
    }
    return conclude(broken, open, judgement, d);
  }

  private static Finding conclude(boolean broken, boolean open, Judgement judgement, Dossier d) {
    if (broken && !d.blocked()) {
      return judgement.concludeBroken();
    }
    if (open) {
      judgement.undetermined();
    }
    return open || judgement.compares() ? judgement.conclude() : judgement.concludeMet();
  }

  /** What is owed for certain may yet be fitted where a device is not described. */
  private static Boolean openUnless(Boolean owed) {
    return Boolean.FALSE.equals(owed) ? owed : null;
  }

  /**
   * Whether a device may have a residual function that is not described; it is asked for then: its
   * type matters, whatever else serves.
   */
  private static boolean noteUndescribed(Circuit circuit, Dossier d) {
    boolean own = undescribed(circuit.device());
    boolean before = circuit.residualDevice() != null && undescribed(circuit.residualDevice());
    if (own) {
      note(circuit.device(), d);
    }
    if (before) {
      note(circuit.residualDevice(), d);
    }
    return own || before;
  }

  private static boolean undescribed(ProtectiveDevice device) {
    return device == null || device instanceof Other || without(device);
  }

  /** One whose standard has a residual function, and that states none. */
  private static boolean without(ProtectiveDevice device) {
    boolean byStandard = device instanceof Rccb || "IEC 61009-1".equals(device.data().standard());
    return byStandard && device.data().residual() == null;
  }

  private static void note(ProtectiveDevice device, Dossier d) {
    if (device != null && without(device)) {
      d.missing(new Pointer(device.data().place(), "residual"));
    } else {
      NotJudged.note(device, d);
    }
  }

  /** Without a residual function what is owed for certain is missing for certain. */
  private static Finding without(
      List<AdditionalDuty> duties,
      Boolean owed,
      boolean broken,
      boolean open,
      Judgement judgement,
      Dossier d) {
    if (Boolean.FALSE.equals(owed)) {
      return conclude(broken, open, judgement, d);
    }
    if (Boolean.TRUE.equals(owed)) {
      d.remark(NoteCode.ADDITIONAL_PROTECTION_OWED);
      return conclude(true, open, judgement, d);
    }
    ask(duties, d);
    return conclude(broken, true, judgement, d);
  }

  private static List<AdditionalDuty> duties(Circuit circuit, Edition edition) {
    return List.of(
        SocketOutletDuty.of(circuit, edition),
        LuminaireDuty.of(circuit, edition),
        ConcealedCableDuty.of(circuit, edition),
        LocationDuty.of(circuit),
        ChargingDuty.of(circuit));
  }

  /**
   * Whether any clause owes it; null where none does for certain and what is not stated decides.
   */
  private static Boolean owed(List<AdditionalDuty> duties) {
    Boolean owed = Boolean.FALSE;
    for (AdditionalDuty duty : duties) {
      if (duty.certain()) {
        return true;
      }
      owed = duty.open() ? null : owed;
    }
    return owed;
  }

  private static void ask(List<AdditionalDuty> duties, Dossier d) {
    for (AdditionalDuty duty : duties) {
      for (Pointer at : duty.wanted()) {
        d.missing(duty.why(), at);
      }
    }
  }

  /**
   * The function that meets the demand, else one that may, by what is not stated of it, else the
   * first: each of several sees the fault.
   */
  private static ProtectiveDevice serving(List<ProtectiveDevice> functions, Edition edition) {
    double greatest =
        edition.constant(Constant.ADDITIONAL_PROTECTION_RESIDUAL_OPERATING_CURRENT).number();
    ProtectiveDevice serving = functions.get(0);
    int best = 0;
    for (ProtectiveDevice each : functions) {
      int serves = serves(each.data().residual(), greatest);
      if (serves > best) {
        best = serves;
        serving = each;
      }
    }
    return serving;
  }

  /** 2 where it meets the demand, 1 where it may, 0 where it does not. */
  private static int serves(Residual residual, double greatest) {
    Double operating = residual.operatingCurrentA();
    boolean undelayed = residual.delay() == Residual.Delay.GENERAL;
    boolean mayBe = undelayed || residual.delay() == null;
    if (operating == null) {
      return mayBe ? 1 : 0;
    }
    boolean sensitive = Comparator.atMost(operating, greatest);
    return sensitive && undelayed ? 2 : sensitive && mayBe ? 1 : 0;
  }

  private static Figure operating(ProtectiveDevice device, Dossier d) {
    Pointer at = new Pointer(device.data().place() + "/residual", "operatingCurrentA");
    return d.given("IΔn", device.data().residual().operatingCurrentA(), Unit.AMPERE, at);
  }

  /** IΔn no more than 30 mA, and no delay (415.1.1). Whether it is settled. */
  private static boolean sensitive(
      ProtectiveDevice serving,
      List<AdditionalDuty> duties,
      Boolean owed,
      Judgement judgement,
      Dossier d) {
    String place = serving.data().place();
    Figure operating = operating(serving, d);
    if (!operating.known()) {
      d.missing(new Pointer(place + "/residual", "operatingCurrentA"));
    }
    Figure limit = d.constant("IΔn,max", Constant.ADDITIONAL_PROTECTION_RESIDUAL_OPERATING_CURRENT);
    boolean meets = Comparator.AT_MOST.holds(operating.value(), limit.value());
    if (owed == null && !meets) {
      ask(duties, d);
      judgement.open(place, operating, Comparator.AT_MOST, limit);
      return false;
    }
    judgement.compare(place, operating, Comparator.AT_MOST, limit);
    if (!meets) {
      return operating.known();
    }
    return undelayed(serving, duties, owed, judgement, d);
  }

  /** It breaks 5·IΔn within 40 ms, as its standard promises without a delay. */
  private static boolean undelayed(
      ProtectiveDevice serving,
      List<AdditionalDuty> duties,
      Boolean owed,
      Judgement judgement,
      Dossier d) {
    Figure multiple = d.constant("mΔ", Constant.ADDITIONAL_PROTECTION_TEST_MULTIPLE);
    Figure longest = d.constant("tr,max", Constant.ADDITIONAL_PROTECTION_LONGEST_TIME);
    Figure time = ResidualTime.latest(serving, multiple, d);
    boolean late = time.known() && !Comparator.atMost(time.value(), longest.value());
    boolean unstated = serving.data().residual().delay() == null;
    if (late && (unstated || owed == null)) {
      if (unstated) {
        d.missing(new Pointer(serving.data().place() + "/residual", "delay"));
      }
      if (owed == null) {
        ask(duties, d);
      }
      judgement.open(serving.data().place(), time, Comparator.AT_MOST, longest);
      return false;
    }
    judgement.compare(serving.data().place(), time, Comparator.AT_MOST, longest);
    return time.known();
  }
}
