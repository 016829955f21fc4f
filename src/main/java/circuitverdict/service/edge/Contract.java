package circuitverdict.service.edge;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The hand-written OpenAPI document, compiled to what the edge of the service checks. It is read
 * once; a document that uses what the edge cannot check does not load ({@link
 * IllegalStateException}). Immutable and safe for use by many threads.
 */
public final class Contract {

  private static final String RESOURCE = "META-INF/openapi.yaml";
  private static final String PARAMETERS = "#/components/parameters/";

  /**
   * A query parameter.
   *
   * @param name as written in the address
   * @param required whether it must be there
   * @param shape what its value must be
   */
  record Parameter(String name, boolean required, Shape shape) {}

  private final Map<String, Shape> schemas = new LinkedHashMap<>();
  private final Map<String, List<Parameter>> queries = new LinkedHashMap<>();
  private final List<PathMethods> paths = new ArrayList<>();

  /** The methods of a path; segments in braces stand for any one. */
  private record PathMethods(String[] segments, Set<String> methods) {

    boolean matches(String[] sent) {
      if (sent.length != segments.length) {
        return false;
      }
      for (int i = 0; i < segments.length; i++) {
        if (!segments[i].startsWith("{") && !segments[i].equals(sent[i])) {
          return false;
        }
      }
      return true;
    }
  }

  private Contract(JsonNode document) {
    JsonNode components = document.path("components");
    ShapeCompiler compiler = new ShapeCompiler(components.path("schemas"));
    for (Map.Entry<String, JsonNode> schema : components.path("schemas").properties()) {
      schemas.put(schema.getKey(), compiler.named(schema.getKey()));
    }
    for (Map.Entry<String, JsonNode> path : document.path("paths").properties()) {
      paths.add(new PathMethods(path.getKey().split("/"), methods(path.getValue())));
      JsonNode operation = path.getValue().get("get");
      if (operation != null) {
        List<Parameter> parameters = new ArrayList<>();
        String where = "get " + path.getKey();
        addQuery(path.getValue(), components, compiler, where, parameters);
        addQuery(operation, components, compiler, where, parameters);
        queries.put(path.getKey(), List.copyOf(parameters));
      }
    }
  }

  /** The contract that the service serves. */
  public static Contract fromClassPath() {
    ClassLoader loader = Contract.class.getClassLoader();
    try (InputStream document = loader.getResourceAsStream(RESOURCE)) {
      if (document == null) {
        throw new IllegalStateException(RESOURCE + " is not on the class path");
      }
      return of(document);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A contract from a YAML document. */
  static Contract of(InputStream document) throws IOException {
    return new Contract(new YAMLMapper().readTree(document));
  }

  /** What a value of the schema must be. An unknown name is a mistake of the programmer. */
  Shape shape(String schema) {
    Shape shape = schemas.get(schema);
    if (shape == null) {
      throw new IllegalArgumentException("The contract has no schema " + schema);
    }
    return shape;
  }

  /** The query parameters of GET on the path, as the contract writes the path. */
  List<Parameter> query(String path) {
    List<Parameter> parameters = queries.get(path);
    if (parameters == null) {
      throw new IllegalArgumentException("The contract has no operation GET " + path);
    }
    return parameters;
  }

  /** The methods that an address has, sorted; empty where the contract does not know it. */
  Set<String> methods(String address) {
    String[] sent = address.split("/");
    Set<String> methods = new TreeSet<>();
    paths.stream().filter(p -> p.matches(sent)).forEach(p -> methods.addAll(p.methods()));
    return methods;
  }

  /**
   * Every closed list of values, by {@code Schema.member}, sorted by that name: both those that may
   * grow and those that may not.
   */
  public Map<String, List<String>> closedLists() {
    Map<String, List<String>> lists = new TreeMap<>();
    for (Map.Entry<String, Shape> schema : schemas.entrySet()) {
      if (schema.getValue() instanceof ObjectShape) {
        ObjectShape object = (ObjectShape) schema.getValue();
        for (String member : object.names()) {
          Shape shape = object.member(member);
          Shape value = shape instanceof ArrayShape ? ((ArrayShape) shape).items() : shape;
          if (value instanceof StringShape && !((StringShape) value).allowed().isEmpty()) {
            lists.put(schema.getKey() + "." + member, ((StringShape) value).allowed());
          }
        }
      }
    }
    return lists;
  }

  private static Set<String> methods(JsonNode path) {
    Set<String> methods = new TreeSet<>();
    for (String method : List.of("get", "put", "post", "delete", "patch")) {
      if (path.has(method)) {
        methods.add(method.toUpperCase(Locale.ROOT));
      }
    }
    if (methods.contains("GET")) {
      methods.add("HEAD");
    }
    methods.add("OPTIONS");
    return methods;
  }

  private static void addQuery(
      JsonNode holder,
      JsonNode components,
      ShapeCompiler compiler,
      String where,
      List<Parameter> parameters) {
    for (JsonNode entry : holder.path("parameters")) {
      JsonNode parameter = entry;
      if (entry.has("$ref")) {
        String name = entry.get("$ref").asText().substring(PARAMETERS.length());
        parameter = components.path("parameters").path(name);
      }
      if (parameter.path("in").asText().equals("query")) {
        String name = parameter.path("name").asText();
        Shape shape = compiler.compile(parameter.path("schema"), where + " " + name);
        boolean required = parameter.path("required").asBoolean(false);
        parameters.add(new Parameter(name, required, shape));
      }
    }
  }
}
