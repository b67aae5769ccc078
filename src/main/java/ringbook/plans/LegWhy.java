package ringbook.plans;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringbook.assess.coverage.PatchClass;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Tally;
import ringbook.plans.Bunch.Form;

/** The sentence that explains a leg to a newcomer: where, how many, what for. */
final class LegWhy {

  private final Seeing seeing;
  private final List<Bunch> bunches;
  private final boolean[] targets;

  LegWhy(Seeing seeing, List<Bunch> bunches, boolean[] targets) {
    this.seeing = seeing;
    this.bunches = bunches;
    this.targets = targets;
  }

  String why(String name, Bunch bunch) {
    StringBuilder text = new StringBuilder(Sentences.capital(name));
    if (bunch.form() == Form.RING) {
      text.append(", ").append(Sentences.elevation(bunch.elevation()));
    }
    text.append(": ").append(Sentences.photographs(bunch.size()));
    if (bunch.form() == Form.UPWARDS) {
      text.append(", from low to high");
    } else if (bunch.size() > 2
        && bunch.form() != Form.CLOSE
        && Sentences.areEven(bunch.members())) {
      text.append(", ").append(Sentences.steps(bunch.members()));
    }
    return text.append("; ").append(purpose(bunch)).append('.').toString();
  }

  /** What would be lost without the group. */
  private String purpose(Bunch bunch) {
    Tally tally = new Tally(seeing.limits(), targets.length);
    for (Bunch other : bunches) {
      if (other != bunch) {
        other.members().forEach(one -> tally.add(one.view()));
      }
    }
    Map<String, Double> lost = new LinkedHashMap<>();
    Map<String, PatchClass> as = new LinkedHashMap<>();
    double most = 0;
    String what = "";
    for (int i = 0; i < targets.length; i++) {
      PatchClass without = targets[i] ? tally.classOf(i) : PatchClass.WELL;
      if (without == PatchClass.WELL) {
        continue;
      }
      String part = seeing.surface().patches().parts().get(seeing.surface().patches().part(i));
      String key = part + "\n" + without.words();
      double area = lost.merge(key, seeing.surface().patches().area(i), Double::sum);
      as.put(key, without);
      if (area > most) {
        most = area;
        what = key;
      }
    }
    if (what.isEmpty()) {
      return (bunch.size() == 1 ? "it ties" : "they tie") + " the others together";
    }
    String part = what.substring(0, what.indexOf('\n'));
    return "without "
        + (bunch.size() == 1 ? "it" : "them")
        + " the "
        + Sentences.part(part)
        + " would be "
        + as.get(what).words();
  }
}
