package circuitverdict.service;

import circuitverdict.service.Http.Reply;
import java.util.function.Supplier;

/**
 * A request that must be refused, and how.
 *
 * @param name what is wrong
 * @param status the status that must come
 * @param problem last part of the problem's type
 * @param code code of an error that must be among those listed; null where none is listed
 * @param place pointer, parameter or header of that error; null where it names none
 * @param body the JSON text sent; null where none was, or none that can be read
 * @param send sends it
 */
record BadRequest(
    String name,
    int status,
    String problem,
    String code,
    String place,
    String body,
    Supplier<Reply> send) {

  @Override
  public String toString() {
    return status + " " + name;
  }
}
