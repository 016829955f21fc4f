package circuitverdict.service.wire;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.explain.Note;
import circuitverdict.select.DeviceSelection.Candidate;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The caller's own products: each as it is judged, with what its marks and features tell. */
public final class Products implements Listed {
  private static final JsonMapper ECHO = new JsonMapper();

  /** What was read into the members is not told twice. */
  private static final Set<String> READ = Set.of("markings", "features");

  private final List<DescribedDevice> products = new ArrayList<>();
  private final List<ProtectiveDevice> devices = new ArrayList<>();
  private final List<List<Note>> remarks = new ArrayList<>();

  private Products() {}

  /** Those of a valid request. */
  public static Products of(JsonNode request, Edition edition) {
    Products all = new Products();
    JsonNode stated = request.path("products");
    for (int i = 0; i < stated.size(); i++) {
      String place = "/products/" + i;
      DescribedDevice product = DescribedDevice.of(stated.get(i), place, edition);
      List<Note> remarks = new ArrayList<>(product.notes());
      remarks.addAll(UnusedMembers.ofProduct(stated.get(i), place));
      all.products.add(product);
      all.remarks.add(remarks);
      all.devices.add(DeviceMapping.device(product.device(), "/device"));
    }
    return all;
  }

  /** The devices as they are judged, each in the circuit's place, in the order given. */
  public List<ProtectiveDevice> devices() {
    return devices;
  }

  @Override
  public String name() {
    return "products";
  }

  @Override
  public void write(JsonGenerator json, Candidate candidate) throws IOException {
    json.writeStringField("pointer", "/products/" + candidate.place());
    ObjectNode device = products.get(candidate.place()).device().deepCopy();
    device.remove(READ);
    json.writeFieldName("device");
    json.writeRawValue(ECHO.writeValueAsString(device));
  }

  @Override
  public List<Note> remarks(Candidate candidate) {
    return remarks.get(candidate.place());
  }
}
