package circuitverdict.service.edge;

import io.smallrye.config.ConfigMapping;

/** Greatest lengths of bodies, in bytes after inflation. */
@ConfigMapping(prefix = "circuit-verdicts.limits")
public interface Limits {

  /** Of one circuit, and of every body that is not {@link SelectionSized}. */
  int circuitBytes();

  /** Of selections, lists and boards. */
  int selectionBytes();
}
