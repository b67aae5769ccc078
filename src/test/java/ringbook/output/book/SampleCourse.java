package ringbook.output.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ringbook.course.ComposedCourse;
import ringbook.course.ComposedExercise;
import ringbook.course.ComposedFigure;
import ringbook.course.ComposedLesson;
import ringbook.course.ComposedLesson.Block;
import ringbook.course.ComposedLesson.ExerciseBlock;
import ringbook.course.ComposedLesson.FigureBlock;
import ringbook.course.ComposedLesson.Markup;
import ringbook.course.ComposedQuantity;
import ringbook.course.CourseInfo;

/** A course of three lessons as composed, about a dozen pages, for tests of the book. */
final class SampleCourse {

  static final CourseInfo INFO =
      new CourseInfo(
          "Round the pot",
          "Photographing an object for a 3D model",
          "The Saturday workshop",
          "2026-11-02",
          "en",
          "All numbers are for a phone’s main camera, a terracotta strawberry pot 36 cm tall and a"
              + " table 74 cm high beside a wall.");

  private SampleCourse() {}

  static ComposedCourse course() {
    return with(List.of());
  }

  /** The sample with more blocks at the end of its last lesson. */
  static ComposedCourse with(List<Block> more) {
    List<Block> last = new ArrayList<>(ring());
    last.addAll(more);
    return new ComposedCourse(
        INFO,
        List.of(
            new ComposedLesson(
                "right-distance",
                1,
                "The right distance",
                "Choose how far to stand, so that the object fills the frame and its smallest"
                    + " detail is recorded.",
                distance()),
            new ComposedLesson(
                "sharp-throughout",
                2,
                "Sharp from front to back",
                "Set the lens so that the near face and the far side are both sharp.",
                sharp()),
            new ComposedLesson(
                "one-ring",
                3,
                "One ring of photographs",
                "Walk once round the object and know how far to turn between two photographs.",
                last)),
        quantities());
  }

  private static List<Block> distance() {
    return List.of(
        new Markup(SampleText.DISTANCE_OPENING),
        new FigureBlock(plan("figure-framing", 1, 8)),
        new Markup(SampleText.DISTANCE_WORKING),
        new ExerciseBlock(number("distance-owl", 1, "The stone owl")),
        new Markup(SampleText.DISTANCE_CLOSING),
        new ExerciseBlock(choice("distance-nearer", 2, "Half a step nearer")));
  }

  private static List<Block> sharp() {
    return List.of(
        new Markup(SampleText.SHARP_OPENING),
        new FigureBlock(plan("figure-depth", 2, 5)),
        new Markup(SampleText.DISTANCE_WORKING.replace("id=\"w-", "id=\"x-")),
        new Markup(SampleText.SHARP_CLOSING),
        new ExerciseBlock(number("sharp-boot", 1, "The hiking boot")));
  }

  private static List<Block> ring() {
    return List.of(
        new ExerciseBlock(choice("ring-guess", 1, "A guess first")),
        new Markup(SampleText.RING_OPENING),
        new FigureBlock(plan("figure-ring", 3, 24)),
        new Markup(SampleText.RING_CLOSING),
        new ExerciseBlock(number("ring-mask", 2, "The carved mask")));
  }

  /** A ring seen from above, with a station a row. */
  static ComposedFigure plan(String id, int number, int stations) {
    StringBuilder drawn = new StringBuilder();
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < stations; i++) {
      double turn = 2 * Math.PI * i / stations;
      long x = Math.round(320 + 170 * Math.sin(turn));
      long y = Math.round(210 - 170 * Math.cos(turn));
      drawn.append("<circle r=\"5\" fill=\"#2a2420\" cx=\"" + x + "\" cy=\"" + y + "\"/>");
      rows.add(List.of("" + (i + 1), Math.round(360.0 * i / stations) + "°", "40.5 cm"));
    }
    return new ComposedFigure(
        id,
        number,
        "The ring from above: <data class=\"quantity\" data-key=\"ring.photos\">"
            + stations
            + " photos</data> at equal turns.",
        String.format(
            Locale.ROOT,
            """
            <svg viewBox="0 0 640 420" role="img" aria-labelledby="%1$s-t %1$s-d">
            <title id="%1$s-t">Ring of %2$d stations</title>
            <desc id="%1$s-d">Seen from above, %2$d cameras point at the pot.</desc>
            <circle cx="320" cy="210" r="60" fill="#d9a582" stroke="#2a2420"/>%3$s
            <text x="320" y="215" text-anchor="middle" font-size="14"
            font-family="'Liberation Sans', Arial, sans-serif">pot</text></svg>
            """,
            id,
            stations,
            drawn),
        "Ring of " + stations + " stations",
        "Seen from above.",
        List.of("station", "turn", "standoff"),
        rows);
  }

  static ComposedExercise number(String id, int number, String title) {
    return new ComposedExercise(
        id,
        number,
        title,
        "<p>The object is <data class=\"quantity\" data-key=\"subject.height\">45 cm</data> tall"
            + " and 20 cm wide. How far from its near face do you hold the lens?</p>",
        List.of(),
        "a length, with its unit",
        "50.3 cm",
        SampleText.SOLUTION,
        "number");
  }

  static ComposedExercise choice(String id, int number, String title) {
    return new ComposedExercise(
        id,
        number,
        title,
        "<p>You move half a step nearer. What happens first?</p>",
        List.of(
            new ComposedExercise.Option("a", "The object no longer fits in the frame."),
            new ComposedExercise.Option("b", "The photos become too dark."),
            new ComposedExercise.Option("c", "Nothing; nearer is <em>always</em> better.")),
        "a letter",
        "a) The object no longer fits in the frame.",
        "<p>Right: the height of the object already fills the frame’s long side.</p>"
            + "<ul><li><strong>b</strong>: the light on the object stays the same.</li>"
            + "<li><strong>c</strong>: nearer costs depth of field as well.</li></ul>",
        "choice");
  }

  private static List<ComposedQuantity> quantities() {
    List<ComposedQuantity> all = new ArrayList<>();
    for (String[] row : SampleText.QUANTITIES) {
      all.add(
          new ComposedQuantity(
              row[0],
              row[1],
              row[2].endsWith("mm")
                  ? "Stated."
                  : "What it is, in one plain sentence that may run on to a second line of the"
                      + " table.",
              SampleText.formula("symbol of " + row[1], 1.2),
              row[2].endsWith("mm")
                  ? ComposedQuantity.STATED
                  : SampleText.formula("formula of " + row[1], 9),
              row[2],
              "above 0",
              "thin lens in air; a textbook of photography, chapter 4",
              "CHK-01"));
    }
    return all;
  }
}
