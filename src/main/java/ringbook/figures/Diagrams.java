package ringbook.figures;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The diagrams by the names that lessons call them by. */
public final class Diagrams {

  private Diagrams() {}

  /** All diagrams, in the order of the course. */
  public static Map<String, Drawing> byName() {
    Map<String, Drawing> all = new LinkedHashMap<>();
    all.put("framing", Framing::draw);
    all.put("depth-of-field", DepthOfField::draw);
    all.put("ring-plan", RingPlan::draw);
    all.put("ring-side", RingSide::draw);
    all.put("few-or-many", FewOrMany::draw);
    return all;
  }

  /** The names of the options that a diagram takes. */
  public static List<String> options(String name) {
    return name.equals("few-or-many") ? List.of("many", "few") : List.of();
  }
}
