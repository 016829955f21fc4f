package circuitverdict.standard;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What classified product features tell of a device: classes and features of the published model by
 * their codes. The same for all editions of the wiring rules; read once, at start.
 *
 * @param model the model and its release
 * @param attribution whose it is, and under which licence
 * @param confidence how well the codes' meaning is known
 * @param seen where it was seen
 * @param classes classes by code
 * @param features features by code
 */
public record ProductModel(
    String model,
    String attribution,
    String confidence,
    List<String> seen,
    Map<String, ProductClass> classes,
    Map<String, Feature> features) {

  /**
   * A class of products.
   *
   * @param name its name
   * @param standards product standards to which such a device can be: it says of none that it is
   * @param residual whether such a device has a residual function
   */
  public record ProductClass(String name, List<String> standards, boolean residual) {}

  /**
   * A feature.
   *
   * @param name its name
   * @param member the member of a device that it tells of
   * @param number whether its value is a number
   * @param units codes of the unit in which that is; empty where it has none
   * @param values the words that are read; empty for a number
   * @param others words that it has besides, of which nothing is known
   */
  public record Feature(
      String name,
      String member,
      boolean number,
      List<String> units,
      List<String> values,
      List<String> others) {
    /** What is not stated is empty. */
    public Feature {
      units = units == null ? List.of() : List.copyOf(units);
      values = values == null ? List.of() : List.copyOf(values);
      others = others == null ? List.of() : List.copyOf(others);
    }
  }

  private static final String FILE = "etim.yaml";

  /**
   * The model as shipped.
   *
   * @throws IllegalStateException where it is incomplete
   */
  static ProductModel load(Set<String> sources) {
    ProductModel model = YamlData.read("/product-model/", FILE, ProductModel.class);
    if (model.seen.isEmpty() || !sources.containsAll(model.seen)) {
      throw new IllegalStateException("product model: it must say where it was seen");
    }
    for (Map.Entry<String, Feature> feature : model.features.entrySet()) {
      if (feature.getValue().number() == !feature.getValue().values().isEmpty()) {
        throw new IllegalStateException("product model: number or words? " + feature.getKey());
      }
    }
    return model;
  }
}
