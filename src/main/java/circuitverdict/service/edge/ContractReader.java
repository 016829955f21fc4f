package circuitverdict.service.edge;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.function.Function;

/**
 * Reads request bodies strictly: what it returns is JSON by RFC 8259 and valid by the contract, so
 * that mapping it needs no checks. What the contract cannot say (one member against another) is the
 * operation's to say. Immutable and safe for use by many threads.
 */
public final class ContractReader {

  private final Contract contract;

  public ContractReader(Contract contract) {
    this.contract = contract;
  }

  /**
   * The body as a tree, valid as the named schema of the contract.
   *
   * @param body the bytes, inflated; their length has been limited before
   * @param schemaName a name under {@code components.schemas}
   * @throws InvalidRequest status 400 where the body is not JSON, 422 with every fault (up to 100)
   *     where it breaks the contract
   */
  public JsonNode read(byte[] body, String schemaName) {
    return read(body, schemaName, valid -> List.of());
  }

  /**
   * As {@link #read(byte[], String)}, with what the contract cannot say: faults of one member
   * against another, told together with those that break the contract.
   *
   * @param further such faults of a body whose members are valid or null each
   */
  public JsonNode read(byte[] body, String schemaName, Function<JsonNode, List<Fault>> further) {
    JsonNode value = StrictJson.read(body);
    Faults faults = new Faults();
    contract.shape(schemaName).check(value, Place.body(), faults);
    faults.addAll(further.apply(faults.isEmpty() ? value : SoundPart.of(value, faults.list())));
    if (!faults.isEmpty()) {
      throw refusal(faults.list());
    }
    return value;
  }

  /**
   * The body of a board: what is wrong with one of its circuits is told of that circuit alone.
   *
   * @param further as {@link #read(byte[], String, Function)}
   * @throws InvalidRequest as {@link #read(byte[], String)}, where what is wrong is not with a
   *     circuit
   */
  public BoardBody readBoard(byte[] body, Function<JsonNode, List<Fault>> further) {
    BoardBody board = BoardBody.of(StrictJson.read(body), contract.shape("Circuit"), further);
    if (!board.faults("").isEmpty()) {
      throw refusal(board.faults(""));
    }
    return board;
  }

  /** The problem of a circuit of which these faults are told. */
  public static Problem problem(List<Fault> faults) {
    return refusal(faults).problem();
  }

  /** The one problem for these faults: an unknown edition alone has a kind of its own. */
  static InvalidRequest refusal(List<Fault> faults) {
    boolean onlyEdition = faults.size() == 1 && isEdition(faults.get(0));
    return new InvalidRequest(
        onlyEdition ? ProblemCatalogue.UNKNOWN_EDITION : ProblemCatalogue.INVALID_REQUEST, faults);
  }

  private static boolean isEdition(Fault fault) {
    return fault.code().equals(FaultCode.UNKNOWN_VALUE.code())
        && ("/edition".equals(fault.pointer()) || "edition".equals(fault.parameter()));
  }
}
