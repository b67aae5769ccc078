package ringbook.output;

import java.util.ArrayList;
import java.util.List;
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

/** A small composed course with every kind of block; its texts and numbers mean nothing. */
public final class MadeUpCourse {

  private static final CourseInfo INFO =
      new CourseInfo(
          "Round the pot",
          "How to photograph an object so that a model comes out",
          "The Open Shed workshop",
          "2026-11-02",
          "en",
          "A phone’s main camera, a terracotta strawberry pot of 36 cm × 30 cm on a table at 74 cm,"
              + " in a room with a wall on one side.");

  private MadeUpCourse() {}

  /** Three lessons that hold every kind of block. */
  public static ComposedCourse small() {
    return new ComposedCourse(
        INFO,
        List.of(
            lesson("right-distance", 1, "The right distance"),
            lesson("all-sharp", 2, "Sharp from front to back"),
            lesson("one-ring", 3, "One ring of photographs")),
        quantities());
  }

  /** Many lessons of a few lines, some with long titles. */
  public static ComposedCourse large(int lessons) {
    List<ComposedLesson> all = new ArrayList<>();
    for (int n = 1; n <= lessons; n++) {
      String title =
          n % 4 == 0 ? "Undersides, holes and other places a ring misses" : "Lesson " + n;
      List<Block> blocks = List.of(new Markup("<h2 id=\"l" + n + "-a\">A</h2><p>Text.</p>"));
      all.add(new ComposedLesson("lesson-" + n, n, title, "You can do it.", blocks));
    }
    return new ComposedCourse(INFO, all, quantities());
  }

  private static ComposedLesson lesson(String id, int number, String title) {
    return new ComposedLesson(
        id,
        number,
        title,
        "You can say how far from the object the lens must stand, and why.",
        List.of(
            new Markup(MadeUpText.OPENING.replace("ID", id)),
            new FigureBlock(figure(id, number)),
            new Markup(MadeUpText.MIDDLE.replace("ID", id)),
            new ExerciseBlock(number(id)),
            new ExerciseBlock(choice(id)),
            new Markup(MadeUpText.END.replace("ID", id))));
  }

  private static ComposedFigure figure(String id, int number) {
    return new ComposedFigure(
        id + "-plan",
        number,
        "The ring from above: one tick for each of <data class=\"quantity\""
            + " data-key=\"ring.photos\" value=\"8\">8</data> photographs.",
        MadeUpText.DRAWING.replace("ID", id),
        "A ring of eight places",
        "A circle with eight ticks that point at a pot in its middle; a wall cuts off one of them.",
        List.of("place", "angle", "distance to the wall"),
        List.of(
            List.of("1", "0°", "92 cm"),
            List.of("2", "45°", "61 cm"),
            List.of("3", "90°", "18 cm")));
  }

  private static ComposedExercise number(String id) {
    return new ComposedExercise(
        id + "-owl",
        1,
        "The stone owl",
        "<p>Another group has a stone owl, 45 cm tall. How far must the lens stand?</p>",
        List.of(),
        "a length, with its unit",
        "61.2 cm",
        MadeUpText.WORKING,
        "number");
  }

  private static ComposedExercise choice(String id) {
    return new ComposedExercise(
        id + "-five",
        2,
        "Five steps",
        "<p>You have taken five photographs of a ring of 8. What is missing?</p>",
        List.of(
            new ComposedExercise.Option("a", "Nothing, five <em>are</em> enough."),
            new ComposedExercise.Option("b", "Three places, those behind the pot.")),
        "a letter",
        "b",
        "<p>Eight places were asked for: 8 − 5 = 3.</p>",
        "choice");
  }

  private static List<ComposedQuantity> quantities() {
    return List.of(
        quantity("kit.focalLength", "focal length", "<i>f</i>", "", "6.4 mm"),
        quantity(
            "distance.standoff",
            "standoff & more",
            "<i>s</i>",
            "<i>s</i> = max(<i>a</i>, <i>b</i>)",
            "40.5 cm"),
        quantity(
            "distance.magnification",
            "magnification",
            "<i>m</i>",
            "<i>m</i> = <i>f</i> / (<i>s</i> − <i>f</i>)",
            "0.016"),
        quantity(
            "ring.photos",
            "photographs in a ring",
            "<i>n</i>",
            "<i>n</i> = ⌈360° / <i>t</i>⌉",
            "8"));
  }

  private static ComposedQuantity quantity(
      String key, String name, String symbol, String formula, String value) {
    String meaning = "One sentence that says what the " + name + " is.";
    return new ComposedQuantity(
        key, name, meaning, symbol, formula, value, "above 0", "a made-up book", "ABC-01");
  }
}
