package ringbook.browser;

import org.teavm.jso.JSExport;
import ringbook.ledger.Ledger;
import ringbook.ledger.Outcome;

/**
 * What the script of a page may call at once: numbers, words and all exercises but those that ask
 * for a plan. What draws, plans or looks at the object patch by patch is {@link SightPage}'s. Texts
 * go in; texts, numbers or JSON come out. One course and one scene are open at a time: first {@link
 * #open}, then {@link #change} as often as the reader states something else. Whatever a reader
 * writes gets an answer in words; a call throws only where the script itself is wrong, such as for
 * a name that does not exist.
 */
public final class Page {

  private static OpenCourse course;

  private Page() {}

  /**
   * Opens a course with its own scene.
   *
   * @param data what {@link CourseData#course} wrote
   */
  @JSExport
  public static void open(String data) {
    course = new OpenCourse(data, new Reach.Numbers());
  }

  /**
   * Takes up an exercise of the open course that does not ask for a plan.
   *
   * @param data one of what {@link CourseData#exercises} wrote
   * @return its id
   */
  @JSExport
  public static String take(String data) {
    return course.take(data);
  }

  /**
   * The question of an exercise that was taken up, on the course's scene as its author varies it:
   * {@code {id, title, kind, ask, hint, answerHint, varies, options, numbered}}. Ask, hint, options
   * and numbered are XHTML with the values put in. Options go by letters, from a; numbered are the
   * left sides of pairs. Kind is {@code number}, {@code choice}, {@code several}, {@code order},
   * {@code pairs} or {@code fault}.
   *
   * @param learner the name whose own numbers are wanted; blank for the numbers of the book
   */
  @JSExport
  public static String question(String exercise, String learner) {
    return course.exercise(exercise).question(learner);
  }

  /**
   * What an answer to that question is worth, as {@code mark} would say on the command line: {@code
   * {verdict, credit, happened, working, next, answer}}, all plain text; working is a list of
   * lines, credit from 0 to 1.
   *
   * @param learner as for {@link #question}
   */
  @JSExport
  public static String mark(String exercise, String learner, String answer) {
    return course.exercise(exercise).mark(learner, answer);
  }

  /**
   * Makes the scene the course's own one with some changes, all of them each time; none give back
   * the course's scene. Where something is wrong, the scene stays as it was.
   *
   * @param keys fields, such as {@code subject.height}, or {@code kit} for a kit of the course
   * @param written what the reader wrote for each
   * @return a list of {@code {key, message, help}}, empty where all is well
   */
  @JSExport
  public static String change(String[] keys, String[] written) {
    return course.change(keys, written);
  }

  /**
   * What a scene states, in the order of the course file: a list of {@code {key, section, label,
   * name, unit, words, optional, text}}, where {@code text} is how a person would write what the
   * open scene states; empty for an optional field that it does not state.
   */
  @JSExport
  public static String fields() {
    return SceneJson.fields(course.reckoning().scene());
  }

  /** The names of the course's other kits. */
  @JSExport
  public static String[] kits() {
    return course.kits().keySet().toArray(new String[0]);
  }

  /** The keys of all quantities, in the order of the appendix. */
  @JSExport
  public static String[] keys() {
    return Ledger.standard().keys().toArray(new String[0]);
  }

  /** All quantities in SI, in the order of {@link #keys}; NaN where the scene allows no number. */
  @JSExport
  public static double[] numbers() {
    String[] keys = keys();
    double[] numbers = new double[keys.length];
    for (int i = 0; i < keys.length; i++) {
      numbers[i] =
          course.reckoning().of(keys[i]) instanceof Outcome.Known known ? known.si() : Double.NaN;
    }
    return numbers;
  }

  /**
   * All quantities as printed with their units, in the order of {@link #keys}; the reason where the
   * scene allows no number, which {@link #numbers} tells apart.
   */
  @JSExport
  public static String[] texts() {
    String[] texts = keys();
    for (int i = 0; i < texts.length; i++) {
      texts[i] = course.reckoning().text(texts[i]);
    }
    return texts;
  }

  /**
   * What the expressions of texts come to over the open scene; see {@link ringbook.values} for the
   * notation. A list with one object each: {@code {kind, text, key, given, form}}, where kind is
   * {@code quantity}, {@code word}, {@code symbol} (its text is TeX, {@code speech} its name),
   * {@code text}, {@code flag} ({@code yes}), {@code refused} or {@code fault} (both with {@code
   * help}).
   */
  @JSExport
  public static String evaluate(String[] expressions) {
    return ValueJson.of(expressions, course.values());
  }

  /**
   * Whether conditions hold over the open scene, as in the fences {@code when} and {@code unless}:
   * a list of {@code true} and {@code false}. One that cannot be read does not hold.
   */
  @JSExport
  public static String holds(String[] conditions) {
    JsonText out = new JsonText().array();
    for (String condition : conditions) {
      out.value(ValueJson.holds(condition, course.values()));
    }
    return out.endArray().toString();
  }

  /**
   * How a quantity is worked out: {@code {key, name, rule, formula, numbers, result, help,
   * inputs}}; what it means and its source are in {@link CourseData#script}. Formula, numbers and
   * result are {@code {tex, text, speech}}, the first two missing where there is none; inputs are
   * {@code {key, symbol, name, text}}.
   */
  @JSExport
  public static String working(String key) {
    return WorkingJson.of(course.reckoning(), key);
  }
}
