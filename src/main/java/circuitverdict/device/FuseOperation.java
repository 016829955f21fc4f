package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/**
 * Ia of fuses: the operating currents of Tables 41.2 (0.4 s) and 41.4 (5 s), and for shorter times
 * the 0.1 s gate of IEC 60269-1. Times between two of them take the shorter one's current.
 */
final class FuseOperation {
  private static final double SHORT = 0.1;
  private static final double FINAL = 0.4;
  private static final double LONG = 5;

  private FuseOperation() {}

  static OperatingCurrent within(Fuse fuse, double timeS, Dossier d) {
    Figure rated = RatedCurrent.of(fuse, d);
    if (!rated.known()) {
      return OperatingCurrent.unknown();
    }
    Boolean general = GeneralPurpose.noted(fuse, d);
    if (!Boolean.TRUE.equals(general)) {
      if (general != null) {
        d.missing(
            NoteCode.DEVICE_NOT_JUDGED, new Pointer(fuse.data().place(), "utilizationCategory"));
      }
      return OperatingCurrent.unknown();
    }
    Table table = d.edition().table(TableName.FUSE_OPERATING_CURRENTS);
    String standard = fuse.data().standard();
    String time = timeS >= LONG ? "5" : "0.4";
    Value current =
        timeS >= FINAL
            ? table.at("current-" + time, standard, rated.value())
            : gate(fuse, rated, timeS, d);
    if (current == null) {
      d.missing(NoteCode.NOT_IN_TABLES, new Pointer(fuse.data().place(), "ratedCurrentA"));
      return OperatingCurrent.unknown();
    }
    Figure operating = d.working().look(Figure.of(OperatingCurrent.SYMBOL, current));
    Value printed = timeS >= FINAL ? table.at("printed-" + time, standard, rated.value()) : null;
    return new OperatingCurrent(operating, printed, true);
  }

  private static Value gate(Fuse fuse, Figure rated, double timeS, Dossier d) {
    if (timeS < SHORT || !fuse.data().standard().equals("BS 88-2")) {
      return null;
    }
    return d.edition().table(TableName.FUSE_GATES).at("greatest-0.1", rated.value());
  }
}
