package circuitverdict.device.marking;

import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.standard.Edition;
import circuitverdict.standard.Marks;
import java.util.ArrayList;
import java.util.List;

/** All marks of one device together: what each is in the light of the others. */
final class Face {
  private final Marks marks;
  private final Edition edition;
  private final MarkedStandard standard;
  private final Facts facts;
  private final List<Mark> told = new ArrayList<>();
  private final List<Share> shares = new ArrayList<>();

  private record Share(Claim claim, Pointer at) {}

  Face(Marks marks, Edition edition, MarkedStandard standard) {
    this.marks = marks;
    this.edition = edition;
    this.standard = standard;
    this.facts = new Facts(edition, standard.reading());
  }

  /** Takes a mark in, as stated at a place. */
  void take(MarkParser.Part part, Pointer at) {
    Found found = part.found();
    Marks.Kind kind = marks.kind(found.kind());
    Found taken = found;
    Claim.Sort sort = found.claims().isEmpty() ? null : found.claims().get(0).sort();
    if (sort != Claim.Sort.TYPE_B && standard.excluded(kind.notOn())) {
      if (sort == Claim.Sort.DIGIT) {
        taken = Found.ambiguous(found.end());
      } else {
        facts.contradict(NoteCode.MARK_NOT_OF_STANDARD, at);
        taken = new Found(found.kind(), found.variant(), found.end(), List.of());
      }
    }
    String resolved = taken.kind();
    for (Claim claim : taken.claims()) {
      resolved = claim(claim, taken, at);
    }
    remark(resolved, taken.variant(), at);
    Marks.Kind of = marks.kind(resolved);
    String by = standard.reading();
    told.add(
        new Mark(
            at, part.text(), resolved, of.meaningOf(taken.variant()), of.citations(by, edition)));
  }

  private void remark(String kind, String variant, Pointer at) {
    if (marks.kind(kind).isWithdrawn(variant)) {
      facts.remark(NoteCode.MARK_WITHDRAWN, at);
    }
    switch (kind) {
      case Found.AMBIGUOUS -> facts.remark(NoteCode.MARK_AMBIGUOUS, at);
      case Found.NOT_READ -> facts.remark(NoteCode.MARK_NOT_READ, at);
      case "conformity-mark" -> facts.remark(NoteCode.CONFORMITY_CLAIMED, at);
      case "frequency" -> {
        if (variant != null) {
          facts.remark(NoteCode.FREQUENCY_MARKED, at);
        }
      }
      default -> {
        // Its meaning says all.
      }
    }
  }

  /** Takes what a mark says; the kind it has by that. */
  private String claim(Claim claim, Found found, Pointer at) {
    String by = standard.reading();
    return switch (claim.sort()) {
      case SAYS -> said(claim, found.kind(), at);
      case CAPACITY -> capacity((Double) claim.value(), at);
      case DIGIT -> {
        if (by == null || MarkedStandard.HOUSEHOLD.contains(by)) {
          facts.say(DeviceMember.ENERGY_CLASS, claim.value(), at);
          yield found.kind();
        }
        yield Found.AMBIGUOUS;
      }
      case SHARE -> {
        shares.add(new Share(claim, at));
        yield found.kind();
      }
      case TYPE_B, LETTER_B -> {
        if (MarkedStandard.BREAKER.equals(by)) {
          facts.say(DeviceMember.CHARACTERISTIC, claim.value(), at);
          yield found.kind();
        }
        if (claim.sort() == Claim.Sort.TYPE_B && MarkedStandard.RCCB.equals(by)) {
          facts.say(DeviceMember.RESIDUAL_TYPE, claim.value(), at);
          yield "residual-type";
        }
        yield Found.AMBIGUOUS;
      }
      case DOUBT -> {
        facts.doubt(claim.member());
        yield found.kind();
      }
      case LONE_S -> {
        if (by != null && MarkedStandard.RESIDUAL.contains(by)) {
          facts.say(DeviceMember.RESIDUAL_DELAY, claim.value(), at);
          yield found.kind();
        }
        yield Found.AMBIGUOUS;
      }
    };
  }

  private String said(Claim claim, String kind, Pointer at) {
    DeviceMember member = claim.member();
    if (member == DeviceMember.STANDARD || standard.several() && ofOtherStandard(kind)) {
      return kind;
    }
    if (member == DeviceMember.ENERGY_CLASS && !isClass((Double) claim.value())) {
      facts.contradict(NoteCode.CLASS_NOT_KNOWN, at);
      return kind;
    }
    facts.say(member, claim.value(), at);
    return kind;
  }

  /** Of a device to two standards, the capacity by the one by which it is not taken. */
  private boolean ofOtherStandard(String kind) {
    return kind.equals(household() ? "ultimate-capacity" : "short-circuit-capacity");
  }

  private boolean isClass(double figure) {
    return figure == Math.rint(figure) && marks.canBe(DeviceMember.ENERGY_CLASS.path(), figure);
  }

  private boolean household() {
    return standard.reading() != null && MarkedStandard.HOUSEHOLD.contains(standard.reading());
  }

  /** A capacity without a symbol is the one that the standard marks so. */
  private String capacity(double ampere, Pointer at) {
    String by = standard.reading();
    if (MarkedStandard.RCCB.equals(by) || MarkedStandard.SWITCH.equals(by)) {
      facts.say(DeviceMember.CONDITIONAL_CAPACITY, ampere, at);
      return "conditional-capacity";
    }
    if (standard.several() && standard.marks(MarkedStandard.INDUSTRIAL)) {
      // One of two may be Icu, the other Icn: the lesser promises less.
      facts.sayLesser(DeviceMember.BREAKING_CAPACITY, ampere, at);
      return "breaking-capacity";
    }
    facts.say(DeviceMember.BREAKING_CAPACITY, ampere, at);
    if (household()) {
      return "short-circuit-capacity";
    }
    return MarkedStandard.INDUSTRIAL.equals(by) ? "ultimate-capacity" : "breaking-capacity";
  }

  Reading reading() {
    settleStandard();
    settleShares();
    FaceRules.hold(facts);
    return new Reading(
        facts.values(),
        facts.disputed(),
        List.copyOf(told),
        FaceNeeds.missing(facts, marks),
        facts.contradictions(),
        facts.remarks());
  }

  private void settleStandard() {
    for (Mark mark : told) {
      if (mark.kind().equals("standard") && standard.taken() != null) {
        facts.say(DeviceMember.STANDARD, standard.taken(), mark.at());
      } else if (mark.kind().equals("standard") && standard.disagree()) {
        facts.contradict(NoteCode.MARKS_DISAGREE, mark.at());
      }
    }
    if (standard.several()) {
      facts.remark(NoteCode.DUAL_STANDARD, facts.place(DeviceMember.STANDARD));
      if (standard.marks(MarkedStandard.ARC_FAULT)) {
        facts.say(DeviceMember.ARC_FAULT, true, facts.place(DeviceMember.STANDARD));
      }
    }
  }

  /** Multiples are taken when what they are multiples of is known; Ir before what rests on it. */
  private void settleShares() {
    shares.sort((a, b) -> a.claim().base().compareTo(b.claim().base()));
    for (Share share : shares) {
      double base = facts.number(share.claim().base());
      double value = base * (Double) share.claim().value();
      DeviceMember member = share.claim().member();
      if (Double.isNaN(value) || !marks.canBe(member.path(), value)) {
        facts.remark(NoteCode.MARK_AMBIGUOUS, share.at());
      } else {
        facts.say(member, value, share.at());
      }
    }
  }
}
