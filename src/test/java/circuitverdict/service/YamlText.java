package circuitverdict.service;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * JSON as YAML that people read: what fits on a line stands on one, in braces; all else one member
 * a line. Texts that YAML might take for something else are quoted as in JSON, which YAML reads
 * alike.
 */
final class YamlText {
  private static final int WIDTH = 110;

  /** Begins with a letter or slash, holds no sign of YAML's own, and is no word of YAML 1.1. */
  private static final Pattern PLAIN =
      Pattern.compile(
          "(?!(?i:y|n|yes|no|on|off|true|false|null)$)[\\p{L}/][\\p{L}0-9 ./()+²·−≤≥-]*(?<! )");

  private YamlText() {}

  /** The lines of a block that begins at this column. */
  static List<String> block(JsonNode value, int column) {
    List<String> lines = new ArrayList<>();
    String margin = " ".repeat(column);
    if (value.isEmpty() || !value.isContainerNode()) {
      lines.add(margin + flow(value));
    } else if (value.isArray()) {
      value.forEach(item -> item(lines, margin, item));
    } else {
      value.properties().forEach(member -> member(lines, margin, member));
    }
    return lines;
  }

  private static void item(List<String> lines, String margin, JsonNode item) {
    String line = margin + "- " + flow(item);
    if (line.length() <= WIDTH || !item.isContainerNode()) {
      lines.add(line);
      return;
    }
    List<String> inner = block(item, margin.length() + 2);
    lines.add(margin + "- " + inner.get(0).strip());
    lines.addAll(inner.subList(1, inner.size()));
  }

  private static void member(
      List<String> lines, String margin, Map.Entry<String, JsonNode> member) {
    String name = margin + scalar(member.getKey()) + ":";
    String line = name + " " + flow(member.getValue());
    if (line.length() <= WIDTH || !member.getValue().isContainerNode()) {
      lines.add(line);
      return;
    }
    lines.add(name);
    lines.addAll(block(member.getValue(), margin.length() + 2));
  }

  private static String flow(JsonNode value) {
    List<String> parts = new ArrayList<>();
    if (value.isArray()) {
      value.forEach(item -> parts.add(flow(item)));
      return "[" + String.join(", ", parts) + "]";
    }
    if (value.isObject()) {
      value.properties().forEach(m -> parts.add(scalar(m.getKey()) + ": " + flow(m.getValue())));
      return "{" + String.join(", ", parts) + "}";
    }
    return value.isTextual() ? scalar(value.textValue()) : value.toString();
  }

  private static String scalar(String text) {
    return PLAIN.matcher(text).matches() ? text : TextNode.valueOf(text).toString();
  }
}
