package circuitverdict.standard;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * Reads data files of the class path strictly: an unknown member or a key that stands twice fails.
 */
final class YamlData {
  private static final ObjectMapper YAML =
      JsonMapper.builder(new YAMLFactory())
          .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
          .build();

  private YamlData() {}

  static <T> T read(String root, String path, Class<T> type) {
    try (InputStream in = YamlData.class.getResourceAsStream(root + path)) {
      if (in == null) {
        throw new IllegalStateException("no data file " + path);
      }
      return YAML.readValue(in, type);
    } catch (IOException e) {
      throw new UncheckedIOException("data file " + path, e);
    }
  }
}
