package circuitverdict.select;

import circuitverdict.circuit.Circuit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Several changes made together, each of another kind. */
record CombinedChange(List<Change> steps) implements Change {
  @Override
  public Circuit applyTo(Circuit circuit) {
    Circuit changed = circuit;
    for (Change step : steps) {
      changed = step.applyTo(changed);
    }
    return changed;
  }

  @Override
  public List<Member> members() {
    List<Member> members = new ArrayList<>();
    for (Change step : steps) {
      for (Member member : step.members()) {
        members.removeIf(each -> each.pointer().equals(member.pointer()));
        members.add(member);
      }
    }
    return members;
  }

  @Override
  public String words() {
    return steps.stream().map(Change::words).collect(Collectors.joining(" "));
  }
}
