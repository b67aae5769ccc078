package ringbook.course.compose;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import ringbook.ledger.Outcome;
import ringbook.ledger.Reckoning;
import ringbook.shots.Scene;
import ringbook.shots.SceneDraft;
import ringbook.shots.SceneField;
import ringbook.shots.SceneField.NumberField;
import ringbook.units.Words;

/**
 * A table worked out from the ledger: some quantities while one given runs.
 *
 * @param name as lessons call it
 * @param given the key of the given that runs
 * @param steps its values, in its printed unit; the scene's own is added
 * @param columns the quantities shown
 */
record StockTable(String name, String given, List<Double> steps, List<Column> columns) {

  /**
   * A quantity, where needed with a second given changed.
   *
   * @param key the quantity
   * @param given the key of the changed given; empty where the scene's own holds
   * @param value its value, in its printed unit
   */
  record Column(String key, String given, double value) {

    static List<Column> of(String... keys) {
      return Arrays.stream(keys).map(key -> new Column(key, "", 0)).toList();
    }

    /** The changed given as the expressions of texts write it; nothing where none is. */
    private String change(Reckoning reckoning) {
      return given.isEmpty() ? "" : given + " = " + given(reckoning);
    }

    private String given(Reckoning reckoning) {
      return reckoning.ledger().get(given).text(field(given).unit().toSi(value));
    }

    private Optional<Scene> in(Scene scene) {
      return given.isEmpty() ? Optional.of(scene) : changed(scene, field(given), value);
    }
  }

  /** The table with its caption, as XHTML. */
  String write(String caption, Reckoning reckoning) {
    StringBuilder out =
        new StringBuilder("<div class=\"table\"><table data-runs=\"")
            .append(given)
            .append("\">\n<caption>")
            .append(caption)
            .append("</caption>\n<thead>\n<tr>")
            .append(head(reckoning.ledger().get(given).name()));
    for (Column column : columns) {
      out.append(head(heading(column, reckoning)));
    }
    out.append("</tr>\n</thead>\n<tbody>\n");
    for (Scene scene : scenes(reckoning.scene())) {
      out.append(row(scene, scene.equals(reckoning.scene())));
    }
    return out.append("</tbody>\n</table></div>").toString();
  }

  private static String head(String name) {
    String capital = Words.upper(name.substring(0, 1)) + name.substring(1);
    // A narrow head must not break inside the word.
    String whole =
        Xhtml.text(capital)
            .replace("f-number", "<span class=\"whole\">f-number</span>")
            .replace("F-number", "<span class=\"whole\">F-number</span>");
    return "<th scope=\"col\" class=\"al-right\">" + whole + "</th>";
  }

  private static String heading(Column column, Reckoning reckoning) {
    String name = reckoning.ledger().get(column.key()).name();
    if (column.given().isEmpty()) {
      return name;
    }
    return name + ", at " + column.given(reckoning);
  }

  private String row(Scene scene, boolean own) {
    StringBuilder row = new StringBuilder(own ? "<tr class=\"own\">" : "<tr>");
    Reckoning here = Reckoning.of(scene);
    String step = own ? "" : given + " = " + here.text(given);
    row.append(cell(here.text(given), expression(List.of(step), given)));
    for (Column column : columns) {
      Optional<Reckoning> reckoning =
          column.given().isEmpty() ? Optional.of(here) : column.in(scene).map(Reckoning::of);
      row.append(
          cell(
              reckoning
                  .filter(r -> r.of(column.key()) instanceof Outcome.Known)
                  .map(r -> r.text(column.key()))
                  .orElse("none"),
              expression(List.of(step, column.change(here)), column.key())));
    }
    return row.append("</tr>\n").toString();
  }

  /** What a page works out in the cell for another scene. */
  private static String expression(List<String> changes, String key) {
    String all = String.join(", ", changes.stream().filter(c -> !c.isEmpty()).toList());
    return all.isEmpty() ? key : "given(\"" + all + "\")." + key;
  }

  private static String cell(String text, String expression) {
    return "<td class=\"al-right\"><span class=\"value\" data-none=\"none\" data-value=\""
        + Xhtml.attribute(expression)
        + "\">"
        + Xhtml.text(text)
        + "</span></td>";
  }

  private static NumberField field(String key) {
    return (NumberField) SceneField.byKey(key).orElseThrow();
  }

  private static Optional<Scene> changed(Scene scene, NumberField field, double value) {
    return SceneDraft.of(scene).change(field, field.unit().toSi(value)).scene();
  }

  /**
   * One scene a row, the way the steps run; the scene itself stands at its place. What cannot be
   * with this kit or object is left out.
   */
  private List<Scene> scenes(Scene own) {
    NumberField field = field(given);
    double here = field.unit().fromSi(field.value().applyAsDouble(own));
    boolean rising = steps.get(0) < steps.get(steps.size() - 1);
    List<Scene> scenes = new ArrayList<>();
    boolean placed = false;
    for (double step : steps) {
      boolean same = Math.abs(step - here) <= 1e-9 * step;
      if (!placed && (same || (rising ? here < step : here > step))) {
        scenes.add(own);
        placed = true;
      }
      if (!same) {
        changed(own, field, step).ifPresent(scenes::add);
      }
    }
    if (!placed) {
      scenes.add(own);
    }
    return scenes;
  }
}
