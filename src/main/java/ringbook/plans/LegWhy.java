package ringbook.plans;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringbook.assess.coverage.PatchClass;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Tally;
import ringbook.plans.Bunch.Form;
import ringbook.units.Angle;

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
    text.append(steps(bunch));
    return text.append("; ").append(purpose(bunch)).append('.').toString();
  }

  /** How to get from one to the next: one step, and where there is none. */
  private static String steps(Bunch bunch) {
    if (bunch.form() == Form.CLOSE || bunch.size() == 1) {
      return "";
    }
    if (bunch.form() == Form.UPWARDS) {
      String abreast = bunch.abreast() == 2 ? ", two side by side at each height" : "";
      String uneven = bunch.isEven() ? "" : ", in the steps of the table";
      return abreast + ", from low to high" + uneven;
    }
    Steps steps = Steps.of(bunch.members());
    if (!steps.areEven()) {
      return ", in the steps of the table";
    }
    String all = ", " + Sentences.degrees(new Angle(steps.step())) + " apart";
    List<String> gaps = new ArrayList<>();
    boolean row = !steps.gaps().isEmpty() && !Arc.of(bunch.members()).isRound();
    // The name of a row says already where it ends.
    for (double[] gap : row ? steps.gaps().subList(0, steps.gaps().size() - 1) : steps.gaps()) {
      gaps.add(LegNames.hours(gap[1], gap[0], "between ", " and "));
    }
    return gaps.isEmpty() ? all : all + ", none " + String.join(" and ", gaps);
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
