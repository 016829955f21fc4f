package circuitverdict.service.wire;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Texts that stand in one answer after the other, encoded once. It keeps so many and no more: what
 * comes later is encoded each time, so that no caller can fill it.
 */
final class Recurring<K> {
  private static final int MOST = 8_192;

  private final Map<K, byte[]> known = new ConcurrentHashMap<>();
  private final Function<K, String> text;

  Recurring(Function<K, String> text) {
    this.text = text;
  }

  byte[] of(K key) {
    byte[] found = known.get(key);
    if (found != null) {
      return found;
    }
    byte[] made = text.apply(key).getBytes(StandardCharsets.UTF_8);
    if (known.size() < MOST) {
      known.put(key, made);
    }
    return made;
  }
}
