package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.standard.Edition;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;
import java.util.ArrayList;
import java.util.List;

/**
 * Points of a fuse's time–current characteristic that are known: the operating currents of the
 * wiring rules and, for gG fuses, the gates of IEC 60269-1.
 */
final class FuseTimes {
  private static final String BS_88_2 = "BS 88-2";

  /**
   * A known operating point.
   *
   * @param current current that operates the fuse for certain
   * @param timeS within this time, s
   */
  record Point(Figure current, double timeS) {}

  /** Times of the lower gates, s, as the columns of their table name them. */
  static final double GATE_LONG = 10;

  static final double GATE_SHORT = 0.1;

  private FuseTimes() {}

  /**
   * Whether its energy is bounded above its known points: a cartridge fuse of general purpose. A
   * rewireable fuse promises nothing there.
   */
  static boolean boundedAbovePoints(Fuse fuse, Dossier d) {
    return !"BS 3036".equals(fuse.data().standard())
        && Boolean.TRUE.equals(GeneralPurpose.noted(fuse, d));
  }

  static List<Point> points(Fuse fuse, double rated, Edition edition) {
    List<Point> points = new ArrayList<>(4);
    String standard = fuse.data().standard();
    add(
        points,
        edition.table(TableName.FUSE_OPERATING_CURRENTS).at("current-5", standard, rated),
        5);
    add(
        points,
        edition.table(TableName.FUSE_OPERATING_CURRENTS).at("current-0.4", standard, rated),
        0.4);
    if (BS_88_2.equals(standard)) {
      add(points, edition.table(TableName.FUSE_GATES).at("greatest-5", rated), 5);
      add(points, edition.table(TableName.FUSE_GATES).at("greatest-0.1", rated), 0.1);
    }
    return points;
  }

  static Value leastPreArcing(Fuse fuse, double rated, Edition edition) {
    return BS_88_2.equals(fuse.data().standard())
        ? edition.table(TableName.FUSE_PRE_ARCING).at("least", rated)
        : null;
  }

  private static void add(List<Point> points, Value current, double timeS) {
    if (current != null) {
      points.add(new Point(Figure.of("Ip", current), timeS));
    }
  }
}
