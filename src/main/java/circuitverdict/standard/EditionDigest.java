package circuitverdict.standard;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;

/** Digest of an edition's clauses and values: changes when, and only when, one of them does. */
final class EditionDigest {
  private EditionDigest() {}

  static String of(EditionHead head, Map<String, Table> tables) {
    StringBuilder text = new StringBuilder(head.edition()).append('\n').append(head.standard());
    new TreeMap<>(head.clauses())
        .forEach((rule, clause) -> text.append('\n').append(rule).append('=').append(clause));
    new TreeMap<>(tables).values().forEach(table -> append(text, table));
    return "sha-256:" + HexFormat.of().formatHex(sha256(text.toString()));
  }

  private static void append(StringBuilder text, Table table) {
    text.append("\ntable ").append(table.id());
    for (Row row : table.rows()) {
      text.append("\n");
      row.keys().forEach(key -> text.append(key.shown()).append('|'));
      for (Value value : row.values()) {
        text.append(
            value == null
                ? "~"
                : value.printed() + " " + value.unit().symbol() + " " + value.citation());
        text.append('|');
      }
    }
  }

  private static byte[] sha256(String text) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
