package circuitverdict.standard;

/** Where a number comes from: a citation, a member of the request, or an earlier step. */
public interface Source {}
