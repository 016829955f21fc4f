package circuitverdict.service;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A request ready to be sent.
 *
 * @param operation the operation's id in the contract
 * @param name name of the example or file that it is from
 * @param method GET or POST
 * @param address path and query
 * @param body JSON text; null for GET
 */
record Call(String operation, String name, String method, String address, String body) {
  private static final Pattern TEMPLATE = Pattern.compile("\\{[^}]*}");

  boolean isPost() {
    return method.equals("POST");
  }

  /** Whether the path of an operation is that of the address. */
  static boolean matches(String template, String address) {
    Matcher holes = TEMPLATE.matcher(template);
    String path = address.replaceAll("\\?.*", "");
    return path.matches(holes.replaceAll("[^/]+"));
  }

  @Override
  public String toString() {
    return operation + " " + name;
  }
}
