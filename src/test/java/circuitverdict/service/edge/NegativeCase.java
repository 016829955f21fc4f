package circuitverdict.service.edge;

/**
 * A body with one thing wrong, and what must be said of it.
 *
 * @param name what is wrong, for reports
 * @param body the JSON text
 * @param code the fault's code
 * @param pointer the fault's pointer
 */
public record NegativeCase(String name, String body, String code, String pointer) {

  @Override
  public String toString() {
    return name;
  }
}
