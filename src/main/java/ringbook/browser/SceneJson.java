package ringbook.browser;

import java.util.List;
import java.util.Map;
import ringbook.shots.Scene;
import ringbook.shots.SceneDraft;
import ringbook.shots.SceneDraft.Fault;
import ringbook.shots.SceneField;
import ringbook.shots.SceneField.NumberField;
import ringbook.shots.SceneField.WordField;
import ringbook.units.Measure;
import ringbook.units.MeasurePrinter;

/** The fields of a scene, and what is wrong with changes to it, as JSON. */
final class SceneJson {

  /** More digits than a person writes, fewer than binary fractions leave behind. */
  private static final int DIGITS = 10;

  private SceneJson() {}

  static String faults(List<Fault> faults) {
    JsonText out = new JsonText().array();
    for (Fault fault : faults) {
      out.object().member("key", fault.key()).member("message", fault.message());
      out.member("help", fault.help()).endObject();
    }
    return out.endArray().toString();
  }

  static String fields(Scene scene) {
    SceneDraft stated = SceneDraft.of(scene);
    JsonText out = new JsonText().array();
    for (SceneField field : SceneField.ALL) {
      boolean number = field instanceof NumberField;
      out.object().member("key", field.key()).member("section", field.section());
      out.member("label", field.label()).member("name", field.name());
      out.member("unit", field instanceof NumberField n ? n.unit().symbol() : "");
      out.member("words", field instanceof WordField word ? word.words() : List.of());
      out.name("number").value(number).name("optional").value(field.optional());
      out.member("text", text(field, stated)).endObject();
    }
    return out.endArray().toString();
  }

  private static String text(SceneField field, SceneDraft stated) {
    if (field instanceof NumberField number) {
      Map<String, Double> numbers = stated.numbers();
      if (!numbers.containsKey(field.key())) {
        return "";
      }
      double written = number.unit().fromSi(numbers.get(field.key()));
      return MeasurePrinter.PLAIN.print(new Measure(written, number.unit()), DIGITS);
    }
    return stated.words().getOrDefault(field.key(), "");
  }
}
