package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Edition;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;
import java.util.List;

/**
 * When a fuse operates at the current of a start: not before the lower gates of IEC 60269-1 (gG
 * links to BS 88-2), for certain by its known operating points. Between the gates a straight line
 * on logarithmic axes is drawn, by guidance. Of other fuses only the operating points are known.
 */
final class FuseStart implements StartBand {
  private final Fuse fuse;
  private final Figure rated;
  private final List<FuseTimes.Point> points;
  private final Value atLong;
  private final Value atShort;

  private FuseStart(Fuse fuse, Figure rated, Edition edition) {
    this.fuse = fuse;
    this.rated = rated;
    this.points = FuseTimes.points(fuse, rated.value(), edition);
    Table gates = edition.table(TableName.FUSE_GATES);
    boolean gated = FuseTimes.leastPreArcing(fuse, rated.value(), edition) != null;
    this.atLong = gated ? gates.at("least-10", rated.value()) : null;
    this.atShort = gated ? gates.at("least-0.1", rated.value()) : null;
  }

  static FuseStart of(Fuse fuse, Dossier d) {
    Figure rated = RatedCurrent.of(fuse, d);
    Boolean general = GeneralPurpose.noted(fuse, d);
    if (Boolean.FALSE.equals(general)) {
      d.missing(
          NoteCode.DEVICE_NOT_JUDGED, new Pointer(fuse.data().place(), "utilizationCategory"));
    }
    return rated.known() && Boolean.TRUE.equals(general)
        ? new FuseStart(fuse, rated, d.edition())
        : null;
  }

  @Override
  public Figure earliest(Figure current) {
    if (within(current, atLong)) {
      return new Figure("te", FuseTimes.GATE_LONG, Unit.SECOND, atLong.citation());
    }
    return within(current, atShort)
        ? new Figure("te", FuseTimes.GATE_SHORT, Unit.SECOND, atShort.citation())
        : StartBand.never("te");
  }

  private static boolean within(Figure current, Value gate) {
    return gate != null && Comparator.atMost(current.value(), gate.number());
  }

  @Override
  public Figure latest(Figure current) {
    Figure latest = StartBand.never("tl");
    for (FuseTimes.Point point : points) {
      boolean reached = Comparator.atMost(point.current().value(), current.value());
      if (reached && !(point.timeS() >= latest.value())) {
        latest = new Figure("tl", point.timeS(), Unit.SECOND, point.current().source());
      }
    }
    return latest;
  }

  @Override
  public Figure drawn(Figure current, Dossier d) {
    if (atLong == null || atShort == null || !within(current, atShort)) {
      return StartBand.never("td");
    }
    double from = atLong.number();
    double slope =
        StrictMath.log(FuseTimes.GATE_LONG / FuseTimes.GATE_SHORT)
            / StrictMath.log(atShort.number() / from);
    double drawn = FuseTimes.GATE_LONG * StrictMath.pow(from / current.value(), slope);
    return d.working()
        .look(
            new Figure(
                "td", Math.min(FuseTimes.GATE_LONG, drawn), Unit.SECOND, atShort.citation()));
  }

  @Override
  public Figure instantaneous(Dossier d) {
    return Figure.unknown("Imag", Unit.AMPERE);
  }

  /** Least pre-arcing energy at 0.01 s: a shorter pulse needs nearly as much. */
  @Override
  public Figure pulse(Dossier d) {
    Value least = FuseTimes.leastPreArcing(fuse, rated.value(), d.edition());
    return least == null
        ? Figure.unknown("I²t,max", Unit.AMPERE_SQUARED_SECOND)
        : d.working().look(Figure.of("I²t,max", least));
  }

  @Override
  public boolean byPeak() {
    return false;
  }

  @Override
  public Figure carried() {
    return rated;
  }
}
