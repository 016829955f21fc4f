package circuitverdict.service.wire;

import circuitverdict.device.marking.DeviceMember;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.service.wire.DeviceMerge.Source;
import circuitverdict.standard.Edition;
import circuitverdict.standard.ProductModel;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The classified features of a product as a source of its members. A class says to which standards
 * a device can be, never to which it is. What the service does not know it tells as not read.
 */
final class ProductFeatures {
  private static final Pattern NUMBER = Pattern.compile("\\d{1,6}(\\.\\d{1,6})?");

  private final DeviceMerge merge;
  private final String place;
  private final Edition edition;

  private ProductFeatures(DeviceMerge merge, String place, Edition edition) {
    this.merge = merge;
    this.place = place + "/features";
    this.edition = edition;
  }

  /** Adds to a device what its features tell. */
  static void into(DeviceMerge merge, JsonNode features, String place, Edition edition) {
    new ProductFeatures(merge, place, edition).read(features);
  }

  private void read(JsonNode features) {
    ProductModel model = edition.products();
    ProductModel.ProductClass known = model.classes().get(features.path("class").textValue());
    if (known == null) {
      merge.note(NoteCode.FEATURES_NOT_READ, new Pointer(place, "class"));
      return;
    }
    String standard = merge.device().path("standard").textValue();
    boolean other = merge.device().has("residual") && !known.residual();
    if (standard != null && (other || !known.standards().contains(standard))) {
      merge.strike(Source.FEATURES, DeviceMember.STANDARD);
    }
    JsonNode values = features.path("values");
    for (int i = 0; i < values.size(); i++) {
      JsonNode stated = values.get(i);
      ProductModel.Feature feature = model.features().get(stated.path("feature").textValue());
      Object value = feature == null ? null : value(feature, stated);
      if (value == null) {
        merge.note(NoteCode.FEATURE_NOT_READ, new Pointer(place + "/values/" + i, "feature"));
        doubt(feature, stated.path("value").textValue());
      } else {
        merge.take(Source.FEATURES, DeviceMember.ofPath(feature.member()), value);
      }
    }
  }

  /** A word that the model has besides contradicts every other. */
  private void doubt(ProductModel.Feature feature, String text) {
    if (feature != null && feature.others().contains(text)) {
      merge.doubt(Source.FEATURES, DeviceMember.ofPath(feature.member()), Set.of(text));
    }
  }

  /** Its value as the member takes it; null where it is not one that is known. */
  private Object value(ProductModel.Feature feature, JsonNode stated) {
    String text = stated.path("value").textValue();
    String unit = stated.path("unit").textValue();
    if (unit != null && !feature.units().contains(unit)) {
      return null;
    }
    if (!feature.number()) {
      return feature.values().contains(text) ? text : null;
    }
    if (!NUMBER.matcher(text).matches()) {
      return null;
    }
    double number = Double.parseDouble(text);
    boolean whole = !feature.units().isEmpty() || number == Math.rint(number);
    return whole && edition.marks().canBe(feature.member(), number) ? number : null;
  }
}
