package circuitverdict.check;

import circuitverdict.circuit.Board;
import circuitverdict.circuit.Board.Group;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Rccb;
import circuitverdict.circuit.Supply;
import circuitverdict.conductor.LineLoading;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Note;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Working;
import circuitverdict.standard.Edition;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What is judged of a board beside each of its circuits. */
public final class BoardCheck {
  private static final Check BREAKING = new BreakingCapacityCheck();

  /** Of a supply, what is stated once for all that is fed from it. */
  private static final Set<String> OF_EVERY_POINT =
      Set.of("phases", "earthing", "lineToEarthVoltageV", "frequencyHz", "ownership");

  private final Board board;
  private final Edition edition;
  private final boolean explain;
  private final Dossier loadingDossier;
  private final LineLoading loading;

  private BoardCheck(Board board, Map<String, LineLoading> fed, Edition edition, boolean explain) {
    this.board = board;
    this.edition = edition;
    this.explain = explain;
    this.loadingDossier = dossier();
    this.loading = LineLoading.of(board, fed, loadingDossier);
  }

  /**
   * Of a board.
   *
   * @param fed what the boards draw that its circuits feed, by the place of the circuit
   */
  public static BoardCheck of(
      Board board, Map<String, LineLoading> fed, Edition edition, boolean explain) {
    return new BoardCheck(board, fed, edition, explain);
  }

  /** The board, on a supply of which only what holds everywhere is known. */
  public Board board() {
    return board;
  }

  /** What its circuits draw, line by line. */
  public LineLoading loading() {
    return loading;
  }

  /**
   * Its findings: demand, its main device, conditional rating, and each group behind a residual
   * current device.
   *
   * @param supply the supply at the board
   * @param fed the boards that its circuits feed, and those that these do, by place
   */
  public List<Finding> findings(Supply supply, Map<String, Board> fed) {
    Board board = this.board.on(supply);
    List<Finding> findings = new ArrayList<>();
    findings.add(BoardDemand.of(board, loading, loadingDossier));
    for (ProtectiveDevice device : board.main()) {
      if (BoardBreaking.judges(device)) {
        findings.add(BoardBreaking.of(board, device, BREAKING, dossier()));
      }
    }
    String incomer = board.incomer() == null ? null : board.incomer().data().place();
    for (Group group : board.groups()) {
      if (group.device() instanceof Rccb && !group.device().data().place().equals(incomer)) {
        findings.add(BoardDemand.of(board, group, dossier()));
      }
    }
    findings.add(AssemblyRating.of(board, dossier()));
    for (Group group : board.groups()) {
      findings.add(ResidualGrouping.of(board, group, fed, dossier()));
      findings.add(SharedResidualType.of(board, group, fed, dossier()));
    }
    return board.place().isEmpty() ? findings : findings.stream().map(this::placed).toList();
  }

  /** What lacks of the supply of a board that a circuit feeds lacks of that circuit's cable. */
  private Finding placed(Finding finding) {
    Pointer cable = new Pointer(board.place(), "cable");
    List<Note> missing = new ArrayList<>();
    for (Note note : finding.missing()) {
      Pointer at = note.pointer();
      boolean ofSupply =
          at != null && at.parent().startsWith(At.SUPPLY) && !OF_EVERY_POINT.contains(at.member());
      Note told = ofSupply ? new Note(note.code(), cable, note.figures()) : note;
      if (!missing.contains(told)) {
        missing.add(told);
      }
    }
    return finding.missing(missing);
  }

  private Dossier dossier() {
    Dossier dossier =
        new Dossier(
            edition,
            CircuitCheck.allowance(board.here().stage()),
            explain ? Working.recording() : Working.silent());
    CircuitCheck.hold(board.here().supply().frequencyHz(), dossier);
    return dossier;
  }
}
