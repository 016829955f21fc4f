package circuitverdict.check;

import circuitverdict.circuit.Assembly;
import circuitverdict.circuit.Circuit;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import circuitverdict.standard.Clause;

/**
 * The device in its assembly (536.4.203): only one that the assembly's maker declares for it. At
 * sign-off that must be stated of an assembly that is described; before, and where none is, a
 * remark says that it is not judged.
 */
final class DeclaredDevice {
  private DeclaredDevice() {}

  static void hold(Circuit circuit, Judgement judgement, Dossier d) {
    Assembly assembly = circuit.assembly();
    Boolean declared = assembly.deviceDeclared();
    if (declared == null && (!assembly.described() || circuit.stage() != Circuit.Stage.SIGN_OFF)) {
      d.remark(NoteCode.DECLARATION_NOT_STATED);
      return;
    }
    judgement.by(Clause.DEVICE_IN_ASSEMBLY);
    if (declared == null) {
      d.missing(At.DEVICE_DECLARED);
      judgement.undetermined();
    } else if (!declared) {
      judgement.broken(NoteCode.NOT_DECLARED_FOR_ASSEMBLY);
    }
  }
}
