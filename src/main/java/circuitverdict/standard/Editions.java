package circuitverdict.standard;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All editions that the service has, loaded once. */
public final class Editions {
  private final Map<String, Edition> editions;
  private final Map<String, String> sources;
  private final Edition inForce;

  Editions(Map<String, Edition> editions, Map<String, String> sources) {
    this.editions = editions;
    this.sources = sources;
    List<Edition> current = editions.values().stream().filter(e -> e.head().inForce()).toList();
    if (current.size() != 1) {
      throw new IllegalStateException(
          "exactly one edition must be in force, not " + current.size());
    }
    this.inForce = current.get(0);
  }

  /** The edition with this id, if there is one. */
  public Optional<Edition> find(String id) {
    return Optional.ofNullable(editions.get(id));
  }

  /** The edition in force. */
  public Edition inForce() {
    return inForce;
  }

  /** All editions, newest first. */
  public Collection<Edition> all() {
    return editions.values();
  }

  /** Title of the place where printed values were seen, by its code. */
  public Map<String, String> sources() {
    return sources;
  }
}
