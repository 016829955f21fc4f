package circuitverdict.service.edge;

import java.util.List;

/** Where in the request a value stands. Written out only when something is wrong there. */
final class Place {

  private enum Part {
    BODY,
    PARAMETER,
    HEADER
  }

  private final Part part;
  private final Place parent;
  private final String name;
  private final int index;

  private Place(Part part, Place parent, String name, int index) {
    this.part = part;
    this.parent = parent;
    this.name = name;
    this.index = index;
  }

  static Place body() {
    return new Place(Part.BODY, null, null, -1);
  }

  static Place parameter(String name) {
    return new Place(Part.PARAMETER, null, name, -1);
  }

  static Place header(String name) {
    return new Place(Part.HEADER, null, name, -1);
  }

  Place member(String memberName) {
    return new Place(part, this, memberName, -1);
  }

  Place item(int itemIndex) {
    return new Place(part, this, null, itemIndex);
  }

  /** The value as a sentence calls it. */
  String subject() {
    if (name != null) {
      return '`' + name + '`';
    }
    return parent == null ? "The body" : "Item " + index + " of " + parent.subject();
  }

  Fault fault(FaultCode code, String detail, List<String> allowed) {
    switch (part) {
      case PARAMETER:
        return Fault.inParameter(code.code(), detail, name, allowed);
      case HEADER:
        return Fault.inHeader(code.code(), detail, name, allowed);
      default:
        StringBuilder pointer = new StringBuilder(60);
        writePointer(pointer);
        return Fault.inBody(code.code(), detail, pointer.toString(), allowed);
    }
  }

  private void writePointer(StringBuilder pointer) {
    if (parent == null) {
      return;
    }
    parent.writePointer(pointer);
    pointer.append('/');
    if (name == null) {
      pointer.append(index);
      return;
    }
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      if (c == '~') {
        pointer.append("~0");
      } else if (c == '/') {
        pointer.append("~1");
      } else {
        pointer.append(c);
      }
    }
  }
}
