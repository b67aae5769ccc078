package ringbook.browser;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringbook.exercises.Exercise;
import ringbook.exercises.Variety;
import ringbook.figures.FigureShelf;
import ringbook.ledger.Ledger;
import ringbook.ledger.Quantity;
import ringbook.optics.Kit;
import ringbook.shots.Scene;

/**
 * What the pages need to know of a course, as JSON: once for {@link Page#open}, and for each
 * exercise for {@link Page#take}, so that a page reads only those it shows.
 */
public final class CourseData {

  private final String title;
  private final Scene scene;
  private final Map<String, Kit> kits;
  private final Map<String, String> exercises = new LinkedHashMap<>();

  /**
   * The data of a course.
   *
   * @param title its title, from which the variants of exercises are drawn
   * @param scene its own scene
   * @param kits further kits that a reader or an exercise may take up, by name
   */
  public CourseData(String title, Scene scene, Map<String, Kit> kits) {
    this.title = title;
    this.scene = scene;
    this.kits = kits;
  }

  /**
   * Adds an exercise.
   *
   * @param stated the exercise as its author states it; question and hint as XHTML, the wordings of
   *     its task as plain text, all with their values left as <code>${…}</code>
   * @param variety how it differs from learner to learner
   * @param shown the XHTML of those wordings of the task that have markup, by their plain text
   */
  public void add(Exercise stated, Variety variety, Map<String, String> shown) {
    exercises.put(stated.id(), ExerciseData.write(scene, stated, variety, shown));
  }

  /** The data for {@link Page#open}. */
  public String course() {
    JsonText out = new JsonText().object().member("title", title).name("scene");
    SceneData.write(scene, out);
    out.name("kits").object();
    kits.forEach(
        (name, kit) -> {
          out.name(name);
          SceneData.writeKit(new Scene(kit, scene.subject(), scene.place(), scene.aim()), out);
        });
    return out.endObject().endObject().toString();
  }

  /** The data for {@link Page#take}, by the ids of the exercises. */
  public Map<String, String> exercises() {
    return new LinkedHashMap<>(exercises);
  }

  /**
   * All of it as a classic script: {@code RingbookCourse.course} is the text for {@link Page#open},
   * {@code RingbookCourse.exercises} has those for {@link Page#take} by id, {@code
   * RingbookCourse.patchwise} the {@link FigureShelf#patchwise} figures, and {@code
   * RingbookCourse.about} what each quantity means and its source, by key.
   */
  public String script() {
    JsonText out = new JsonText().object().member("course", course()).name("exercises").object();
    exercises.forEach(out::member);
    out.endObject().member("patchwise", FigureShelf.patchwise()).name("about").object();
    for (Quantity quantity : Ledger.standard().quantities()) {
      out.member(quantity.key(), List.of(quantity.meaning(), quantity.source()));
    }
    return "var RingbookCourse = " + out.endObject().endObject() + ";\n";
  }
}
