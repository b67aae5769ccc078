package ringbook.output.book;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import ringbook.course.BackPage;
import ringbook.course.ComposedCourse;
import ringbook.course.ComposedExercise;
import ringbook.course.ComposedFigure;
import ringbook.course.ComposedLesson;
import ringbook.course.ComposedQuantity;
import ringbook.course.CourseInfo;
import ringbook.output.IndexOrder;
import ringbook.output.PlaceMarks;
import ringbook.output.StationMark;

/**
 * The course in the order of the book, as the template reads it.
 *
 * @param info title page matter
 * @param date of the edition as a person writes it, {@code 2 November 2026}
 * @param mark drawing of the title page, an SVG element
 * @param chapters one a lesson
 * @param back the pages at the back
 * @param solved the chapters that have exercises, for the solutions
 * @param crowded figures whose numbers stand at the back
 * @param stated quantities the scene states, in the order of the ledger, for the appendix
 * @param worked those that are worked out
 * @param index all by name
 */
public record BookPages(
    CourseInfo info,
    String date,
    String mark,
    List<Chapter> chapters,
    List<Leaf> back,
    List<Chapter> solved,
    List<Drawing> crowded,
    List<ComposedQuantity> stated,
    List<Entry> worked,
    List<ComposedQuantity> index) {

  private static final DateTimeFormatter PLAIN_DATE =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  /**
   * A lesson as a chapter.
   *
   * @param lesson whose chapter it is
   * @param mark its place on the ring of stations, an SVG element
   * @param pieces its content in order
   * @param exercises those of the pieces that are exercises
   */
  public record Chapter(
      ComposedLesson lesson, String mark, List<Piece> pieces, List<Question> exercises) {}

  /**
   * A page at the back.
   *
   * @param page the page
   * @param pieces its content in order
   */
  public record Leaf(BackPage page, List<Piece> pieces) {}

  /**
   * One piece of a chapter; exactly one part is set, the others are null as templates expect.
   *
   * @param xhtml running text
   * @param figure a figure
   * @param question an exercise
   */
  public record Piece(String xhtml, Drawing figure, Question question) {}

  /**
   * A figure with its numbers set for the page.
   *
   * @param figure the figure
   * @param parts rows of its table, in as many parts as stand side by side
   */
  public record Drawing(ComposedFigure figure, List<List<List<String>>> parts) {

    private static final int ROWS_BESIDE = 18;

    /** Whether it has too many numbers to stand beside the figure. */
    public boolean atBack() {
      return !parts.isEmpty() && parts.get(0).size() > ROWS_BESIDE;
    }
  }

  /**
   * An exercise where it is asked.
   *
   * @param exercise the exercise
   * @param label its number in the book, {@code 3.2}
   */
  public record Question(ComposedExercise exercise, String label) {}

  /**
   * A quantity that is worked out.
   *
   * @param quantity the quantity
   * @param beside whether its formula is narrow enough to stand beside its name
   */
  public record Entry(ComposedQuantity quantity, boolean beside) {

    static Entry of(ComposedQuantity quantity) {
      return new Entry(quantity, PrintFormulas.narrow(quantity.formulaXhtml()));
    }
  }

  /** Lays the course out as pages. */
  public static BookPages of(ComposedCourse course) {
    int stations = course.lessons().size();
    List<Chapter> chapters = course.lessons().stream().map(l -> chapter(l, stations)).toList();
    return new BookPages(
        course.info(),
        LocalDate.parse(course.info().date()).format(PLAIN_DATE),
        StationMark.title(stations),
        chapters,
        course.back().stream().map(p -> new Leaf(p, pieces(p))).toList(),
        chapters.stream().filter(c -> !c.exercises().isEmpty()).toList(),
        Stream.concat(
                chapters.stream().map(Chapter::pieces),
                course.back().stream().map(BookPages::pieces))
            .flatMap(BookPages::crowded)
            .toList(),
        course.quantities().stream().filter(ComposedQuantity::stated).toList(),
        course.quantities().stream().filter(q -> !q.stated()).map(Entry::of).toList(),
        IndexOrder.sorted(course.quantities(), ComposedQuantity::name));
  }

  private static Stream<Drawing> crowded(List<Piece> pieces) {
    return pieces.stream()
        .map(Piece::figure)
        .filter(drawing -> drawing != null && drawing.atBack());
  }

  private static Chapter chapter(ComposedLesson lesson, int stations) {
    List<Piece> pieces = new ArrayList<>();
    List<Question> questions = new ArrayList<>();
    for (ComposedLesson.Block block : lesson.blocks()) {
      if (block instanceof ComposedLesson.Markup markup) {
        pieces.add(text(markup, lesson.id(), pieces.size()));
      } else if (block instanceof ComposedLesson.FigureBlock shown) {
        pieces.add(drawn(shown.figure()));
      } else if (block instanceof ComposedLesson.ExerciseBlock asked) {
        String label = lesson.number() + "." + asked.exercise().number();
        Question question = new Question(placed(asked.exercise()), label);
        questions.add(question);
        pieces.add(new Piece(null, null, question));
      }
    }
    String mark = StationMark.chapter(lesson.number(), stations);
    return new Chapter(lesson, mark, List.copyOf(pieces), List.copyOf(questions));
  }

  private static Piece text(ComposedLesson.Markup markup, String page, int number) {
    return new Piece(PlaceMarks.in(markup.xhtml(), page + "." + number), null, null);
  }

  private static ComposedExercise placed(ComposedExercise exercise) {
    return exercise.withTexts(
        PlaceMarks.in(exercise.questionXhtml(), "exercise-" + exercise.id()),
        PlaceMarks.in(exercise.solutionXhtml(), "solution-" + exercise.id()));
  }

  /** What stands on a page without exercises. */
  private static List<Piece> pieces(BackPage page) {
    List<Piece> pieces = new ArrayList<>();
    for (ComposedLesson.Block block : page.blocks()) {
      if (block instanceof ComposedLesson.Markup markup) {
        pieces.add(text(markup, page.id(), pieces.size()));
      } else if (block instanceof ComposedLesson.FigureBlock shown) {
        pieces.add(drawn(shown.figure()));
      }
    }
    return pieces;
  }

  private static Piece drawn(ComposedFigure figure) {
    return new Piece(null, new Drawing(figure, TableParts.of(figure)), null);
  }
}
