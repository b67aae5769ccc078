package ringbook.browser;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringbook.exercises.Exercise;
import ringbook.exercises.Variation;
import ringbook.exercises.VariedExercise;
import ringbook.exercises.Variety;
import ringbook.ledger.Formula;
import ringbook.ledger.Reckoning;
import ringbook.shots.Scene;
import ringbook.shots.SceneField;
import ringbook.shots.SceneField.NumberField;
import ringbook.shots.SceneField.WordField;
import ringbook.units.Numbers;

/**
 * An exercise with its variants as data. Its question and hint are templates in XHTML, the wordings
 * of its task in plain text, as the marker needs them; all hold their values as {@code ${…}}.
 */
final class ExerciseData {

  private ExerciseData() {}

  /**
   * Writes an exercise of a course.
   *
   * @param course the scene of the course
   * @param stated the exercise as its author states it, its words as templates
   * @param variety how it differs from learner to learner
   * @param shown the XHTML of the wordings of the task, by their plain text
   */
  static String write(Scene course, Exercise stated, Variety variety, Map<String, String> shown) {
    JsonText out = new JsonText().object();
    out.member("id", stated.id()).member("title", stated.title());
    out.member("ask", stated.ask().markdown());
    stated.hint().ifPresent(hint -> out.member("hint", hint.markdown()));
    out.name("scene");
    SceneData.writeChanges(course, stated.reckoning().scene(), out);
    out.name("task");
    TaskData.write(stated.task(), out);
    out.name("vary").array();
    variety.variations().forEach(variation -> write(variation, out));
    out.endArray();
    variety.where().ifPresent(where -> out.member("where", where.notation()));
    if (variety.sensible().isPresent()) {
      Variety.Bounds bounds = variety.sensible().get();
      out.member("from", Numbers.shortest(bounds.low()));
      out.member("to", Numbers.shortest(bounds.high()));
    }
    out.name("shown").object();
    shown.forEach(out::member);
    return out.endObject().endObject().toString();
  }

  private static void write(Variation variation, JsonText out) {
    List<String> values = new ArrayList<>();
    if (variation instanceof Variation.OfNumbers numbers) {
      numbers.values().forEach(value -> values.add(Numbers.shortest(value)));
    } else {
      values.addAll(((Variation.OfWords) variation).values());
    }
    out.object().member("key", variation.field().key()).member("values", values).endObject();
  }

  /**
   * The exercise that {@code data} describes.
   *
   * @param title of the course
   * @param course the scene of the course
   */
  static VariedExercise read(JsonTree data, String title, Scene course, Reach reach) {
    Exercise stated =
        new Exercise(
            data.text("id"),
            data.text("title"),
            TaskData.wording(data.text("ask")),
            data.has("hint") ? Optional.of(TaskData.wording(data.text("hint"))) : Optional.empty(),
            Reckoning.of(SceneData.readChanges(course, data.at("scene"), reach)),
            TaskData.read(data.at("task"), reach));
    return new VariedExercise(title, stated, variety(data));
  }

  /** The XHTML of the wordings of the task, by their plain text. */
  static Map<String, String> shown(JsonTree data) {
    Map<String, String> shown = new LinkedHashMap<>();
    data.at("shown").members().forEach((plain, xhtml) -> shown.put(plain, xhtml.text()));
    return shown;
  }

  private static Variety variety(JsonTree data) {
    List<Variation> variations = new ArrayList<>();
    for (JsonTree variation : data.at("vary").items()) {
      variations.add(variation(variation));
    }
    Optional<Variety.Bounds> sensible =
        data.has("from")
            ? Optional.of(
                new Variety.Bounds(
                    SceneData.number(data.text("from")), SceneData.number(data.text("to"))))
            : Optional.empty();
    Optional<Formula> where =
        data.has("where") ? Optional.of(Formula.of(data.text("where"))) : Optional.empty();
    return new Variety(variations, where, sensible);
  }

  private static Variation variation(JsonTree data) {
    SceneField field = SceneField.byKey(data.text("key")).orElseThrow();
    List<JsonTree> values = data.at("values").items();
    if (field instanceof NumberField number) {
      List<Double> numbers = new ArrayList<>();
      values.forEach(value -> numbers.add(SceneData.number(value.text())));
      return new Variation.OfNumbers(number, numbers);
    }
    List<String> words = new ArrayList<>();
    values.forEach(value -> words.add(value.text()));
    return new Variation.OfWords((WordField) field, words);
  }
}
