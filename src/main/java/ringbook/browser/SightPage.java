package ringbook.browser;

import java.util.Map;
import java.util.TreeMap;
import org.teavm.jso.JSExport;
import ringbook.figures.FigureShelf;
import ringbook.plans.FieldSheet;

/**
 * What the script of the pages' worker may call: everything that draws, everything that has to do
 * with plans, and everything that looks at the object patch by patch. What both scripts have goes
 * by one name and does the same as in {@link Page}.
 */
public final class SightPage {

  private static OpenCourse course;

  private SightPage() {}

  /** Opens a course; see {@link Page#open}. */
  @JSExport
  public static void open(String data) {
    course = new OpenCourse(data, new Reach.Sight());
  }

  /** Takes up an exercise of any kind; see {@link Page#take}. */
  @JSExport
  public static String take(String data) {
    return course.take(data);
  }

  /** Changes the scene; see {@link Page#change}. */
  @JSExport
  public static String change(String[] keys, String[] written) {
    return course.change(keys, written);
  }

  /**
   * The question of an exercise; see {@link Page#question}. Kind may be {@code plan} too, and then
   * {@code conditions} says when a plan passes.
   */
  @JSExport
  public static String question(String exercise, String learner) {
    return course.exercise(exercise).question(learner);
  }

  /** What an answer is worth; see {@link Page#mark}. */
  @JSExport
  public static String mark(String exercise, String learner, String answer) {
    return course.exercise(exercise).mark(learner, answer);
  }

  /**
   * A plan read: {@code {text, rows}} with its usual text and what its runs say, each {@code {kind,
   * photos, turned, elevation, standoff, sort, from, to}}, standoff in metres, or in inches where
   * the open scene tells lengths in them; or {@code {message, help}}.
   */
  @JSExport
  public static String plan(String text) {
    return PlanJson.read(text, course.reckoning().scene().aim().lengths());
  }

  /**
   * What a plan would come to that is asked for by an exercise that was taken up: {@code {photos,
   * most, shown, covered, passes, lacks, figure}}, with shown and covered in percent, figure as of
   * {@link #figure}; or {@code {message, help}} where it cannot be read.
   *
   * @param learner as for {@link #question}
   * @param plan in the short notation
   * @param idPrefix as for {@link #figure}
   */
  @JSExport
  public static String judge(String exercise, String learner, String plan, String idPrefix) {
    return course.exercise(exercise).judge(learner, plan, idPrefix);
  }

  /** The names of all figures. */
  @JSExport
  public static String[] figures() {
    return FigureShelf.names().toArray(new String[0]);
  }

  /**
   * A figure of the open scene: {@code {title, description, svg, head, rows}}. Where the scene does
   * not allow it, the figure says why not.
   *
   * @param options names and values in turn
   * @param idPrefix put before every id, so that ids stay unique on a page
   */
  @JSExport
  public static String figure(String name, String[] options, String idPrefix) {
    Map<String, String> chosen = new TreeMap<>();
    for (int i = 0; i + 1 < options.length; i += 2) {
      chosen.put(options[i], options[i + 1]);
    }
    JsonText out = new JsonText();
    FigureJson.write(FigureShelf.draw(name, chosen, course.reckoning(), idPrefix), out);
    return out.toString();
  }

  /** The plan of the open scene as it is walked on the day; see {@link FieldJson}. */
  @JSExport
  public static String fieldSheet() {
    return FieldJson.of(FieldSheet.of(course.reckoning()));
  }
}
