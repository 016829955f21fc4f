package circuitverdict.service.edge;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.LongNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Reads query parameters strictly, as {@link ContractReader} reads bodies: numbers are written as
 * in JSON, unknown and repeated parameters are refused, all faults come at once. Immutable.
 */
public final class QueryReader {

  private static final Pattern NUMBER =
      Pattern.compile("-?(0|[1-9][0-9]{0,99})(\\.[0-9]{1,99})?([eE][+-]?[0-9]{1,4})?");
  private static final Pattern SHORT_INTEGER = Pattern.compile("-?[0-9]{1,18}");

  private final Contract contract;

  public QueryReader(Contract contract) {
    this.contract = contract;
  }

  /**
   * The parameters as an object of typed values, valid by the contract.
   *
   * @param path the path of the GET operation, as the contract writes it
   * @param query the parameters, decoded
   * @throws InvalidRequest status 422 with every fault
   */
  public ObjectNode read(String path, Map<String, List<String>> query) {
    List<Contract.Parameter> parameters = contract.query(path);
    Faults faults = new Faults();
    reportUnknown(query, parameters, faults);
    ObjectNode values = JsonNodeFactory.instance.objectNode();
    for (Contract.Parameter parameter : parameters) {
      Place place = Place.parameter(parameter.name());
      List<String> written = query.get(parameter.name());
      if (written == null || written.isEmpty()) {
        if (parameter.required()) {
          String detail = "The parameter " + place.subject() + " is required.";
          faults.add(FaultCode.MISSING_PARAMETER, place, detail);
        }
      } else if (written.size() > 1) {
        String detail = "The parameter " + place.subject() + " must stand once.";
        faults.add(FaultCode.REPEATED_PARAMETER, place, detail);
      } else {
        JsonNode value = typed(written.get(0), parameter.shape());
        parameter.shape().check(value, place, faults);
        values.set(parameter.name(), value);
      }
    }
    if (!faults.isEmpty()) {
      throw ContractReader.refusal(faults.list());
    }
    return values;
  }

  private static void reportUnknown(
      Map<String, List<String>> query, List<Contract.Parameter> parameters, Faults faults) {
    List<String> names = parameters.stream().map(Contract.Parameter::name).toList();
    for (String name : query.keySet()) {
      if (!names.contains(name)) {
        String nearest = Text.nearest(name, names);
        String hint = nearest == null ? "." : "; did you mean `" + nearest + "`?";
        String detail = "There is no parameter `" + Text.fit(name, 60) + "`" + hint;
        faults.add(FaultCode.UNKNOWN_PARAMETER, Place.parameter(name), detail, names);
      }
    }
  }

  /** The text as the type that the shape wants; text that is none stays text, and is refused. */
  private static JsonNode typed(String text, Shape shape) {
    if (shape instanceof NumberShape && NUMBER.matcher(text).matches()) {
      return SHORT_INTEGER.matcher(text).matches()
          ? LongNode.valueOf(Long.parseLong(text))
          : DoubleNode.valueOf(Double.parseDouble(text));
    }
    if (shape instanceof BooleanShape && (text.equals("true") || text.equals("false"))) {
      return BooleanNode.valueOf(text.equals("true"));
    }
    return TextNode.valueOf(text);
  }
}
