package ringbook.course.compose;

import java.util.ArrayList;
import java.util.List;
import ringbook.ledger.Ledger;
import ringbook.ledger.Outcome;
import ringbook.ledger.Reckoning;
import ringbook.shots.Scene;
import ringbook.shots.SceneDraft;
import ringbook.shots.SceneField;
import ringbook.shots.SceneField.NumberField;
import ringbook.units.Words;

/** The tables that lessons can place by name: some quantities while one given runs. */
final class StockTables {

  /**
   * A table.
   *
   * @param name as lessons call it
   * @param given the key of the given that runs
   * @param steps its values, in its printed unit; the scene's own is added
   * @param columns keys of the quantities shown
   */
  private record Plan(String name, String given, List<Double> steps, List<String> columns) {}

  private static final List<Plan> PLANS =
      List.of(
          new Plan(
              "step-count",
              "aim.step",
              List.of(5.0, 10.0, 15.0, 20.0, 30.0, 72.0),
              List.of("ring.photos", "pair.shared", "pair.alike", "pair.matchable")));

  private StockTables() {}

  static List<String> names() {
    return PLANS.stream().map(Plan::name).toList();
  }

  /** The table with its caption, as XHTML. */
  static String write(String name, String caption, Reckoning reckoning) {
    Plan plan = PLANS.stream().filter(known -> known.name().equals(name)).findFirst().orElseThrow();
    Ledger ledger = reckoning.ledger();
    StringBuilder out =
        new StringBuilder("<div class=\"table\"><table>\n<caption>")
            .append(caption)
            .append("</caption>\n<thead>\n<tr>");
    for (String key : keys(plan)) {
      out.append("<th scope=\"col\" class=\"al-right\">")
          .append(Xhtml.text(capital(ledger.get(key).name())))
          .append("</th>");
    }
    out.append("</tr>\n</thead>\n<tbody>\n");
    for (Scene scene : scenes(plan, reckoning.scene())) {
      out.append(row(plan, Reckoning.of(scene), scene.equals(reckoning.scene())));
    }
    return out.append("</tbody>\n</table></div>").toString();
  }

  private static String capital(String name) {
    return Words.upper(name.substring(0, 1)) + name.substring(1);
  }

  private static String row(Plan plan, Reckoning reckoning, boolean own) {
    StringBuilder row = new StringBuilder(own ? "<tr class=\"own\">" : "<tr>");
    for (String key : keys(plan)) {
      boolean known = reckoning.of(key) instanceof Outcome.Known;
      row.append("<td class=\"al-right\">")
          .append(Xhtml.text(known ? reckoning.text(key) : "none"))
          .append("</td>");
    }
    return row.append("</tr>\n").toString();
  }

  private static List<String> keys(Plan plan) {
    List<String> keys = new ArrayList<>(List.of(plan.given()));
    keys.addAll(plan.columns());
    return keys;
  }

  /** One scene a row, by rising value; the scene itself stands at its place. */
  private static List<Scene> scenes(Plan plan, Scene own) {
    NumberField field = (NumberField) SceneField.byKey(plan.given()).orElseThrow();
    double here = field.value().applyAsDouble(own);
    List<Scene> scenes = new ArrayList<>();
    boolean placed = false;
    for (double step : plan.steps()) {
      double si = field.unit().toSi(step);
      if (!placed && here <= si * (1 + 1e-9)) {
        scenes.add(own);
        placed = true;
      }
      if (Math.abs(si - here) > 1e-9 * si) {
        scenes.add(SceneDraft.of(own).change(field, si).build());
      }
    }
    if (!placed) {
      scenes.add(own);
    }
    return scenes;
  }
}
