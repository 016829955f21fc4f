package circuitverdict.service.wire;

import circuitverdict.circuit.DeviceData;
import circuitverdict.circuit.Nameplate;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.Residual;
import circuitverdict.explain.Note;
import circuitverdict.select.DeviceSelection.Candidate;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;

/** Devices of the standard series. */
final class ListedSeries implements Listed {
  @Override
  public String name() {
    return "devices of the series";
  }

  @Override
  public void write(JsonGenerator json, Candidate candidate) throws IOException {
    device(json, (Breaker) candidate.device());
  }

  /** One device of the series, as the member device. */
  static void device(JsonGenerator json, Breaker device) throws IOException {
    DeviceData data = device.data();
    json.writeObjectFieldStart("device");
    json.writeStringField("standard", data.standard());
    json.writeStringField("characteristic", device.characteristic());
    Json.number(json, "ratedCurrentA", data.ratedCurrentA());
    Json.number(json, "breakingCapacityA", data.breakingCapacityA());
    json.writeNumberField("energyClass", device.energyClass());
    face(json, data);
    residual(json, data.residual());
    if (data.arcFaultDetection() != null) {
      json.writeBooleanField("arcFaultDetection", data.arcFaultDetection());
    }
    json.writeEndObject();
  }

  private static void face(JsonGenerator json, DeviceData data) throws IOException {
    Nameplate face = data.nameplate();
    if (data.poles() != null) {
      json.writeNumberField("poles", data.poles());
    }
    if (face.protectedPoles() != null) {
      json.writeNumberField("protectedPoles", face.protectedPoles());
    }
    if (face.ratedVoltageV() != null) {
      Json.number(json, "ratedVoltageV", face.ratedVoltageV());
    }
  }

  private static void residual(JsonGenerator json, Residual residual) throws IOException {
    if (residual == null) {
      return;
    }
    json.writeObjectFieldStart("residual");
    Json.number(json, "operatingCurrentA", residual.operatingCurrentA());
    json.writeStringField("type", residual.type().name());
    json.writeStringField("delay", "general");
    json.writeEndObject();
  }

  @Override
  public List<Note> remarks(Candidate candidate) {
    return List.of();
  }
}
