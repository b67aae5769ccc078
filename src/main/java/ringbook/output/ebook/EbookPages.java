package ringbook.output.ebook;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ringbook.course.BackPage;
import ringbook.course.ComposedCourse;
import ringbook.course.ComposedExercise;
import ringbook.course.ComposedFigure;
import ringbook.course.ComposedLesson;
import ringbook.course.ComposedLesson.Block;
import ringbook.course.ComposedQuantity;
import ringbook.course.CourseInfo;
import ringbook.ledger.Heading;
import ringbook.output.IndexOrder;
import ringbook.output.PlaceMarks;
import ringbook.output.StationMark;

/**
 * The course in the order of the e-book, as its templates read it.
 *
 * @param info title page matter
 * @param date of the edition as a person writes it
 * @param mark drawing of the title page, an SVG element
 * @param titleLines the title cut for the cover
 * @param leaves lessons and the pages at the back, in order
 * @param solved the solutions, a page a lesson that has exercises
 * @param groups quantities: those that the course states, then the others by what they are about
 * @param index quantities by name
 */
public record EbookPages(
    CourseInfo info,
    String date,
    String mark,
    List<String> titleLines,
    List<Leaf> leaves,
    List<Solved> solved,
    List<Group> groups,
    List<Entry> index) {

  private static final DateTimeFormatter PLAIN_DATE =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
  private static final Pattern SECTION =
      Pattern.compile("<h2 id=\"([^\"]*)\"[^>]*>(.*?)</h2>", Pattern.DOTALL);
  private static final String STATED = "Stated for the group";
  private static final int COVER_LETTERS = 16;

  /**
   * The solutions of a lesson's exercises.
   *
   * @param file its file name
   * @param id of the lesson
   * @param number of the lesson
   * @param title of the lesson, plain text
   * @param pieces exercises with their solutions
   * @param math whether it has formulas in MathML
   * @param svg whether it has drawings
   */
  public record Solved(
      String file,
      String id,
      int number,
      String title,
      List<Piece> pieces,
      boolean math,
      boolean svg) {}

  /**
   * A lesson or a page at the back.
   *
   * @param file its file name
   * @param id of the lesson or page
   * @param number of the lesson; 0 for a page at the back
   * @param title plain text
   * @param aim plain text
   * @param pieces its content in order
   * @param sections its headings: id and text
   * @param glossary whether it holds the trade words
   * @param math whether it has formulas in MathML
   * @param svg whether it has drawings
   */
  public record Leaf(
      String file,
      String id,
      int number,
      String title,
      String aim,
      List<Piece> pieces,
      List<Section> sections,
      boolean glossary,
      boolean math,
      boolean svg) {}

  /**
   * A heading of a page.
   *
   * @param id its id
   * @param text escaped text without markup
   */
  public record Section(String id, String text) {}

  /**
   * One piece of a page; exercise and figure are null where it is none.
   *
   * @param body text, drawing, question or solution
   * @param more caption; may be empty
   * @param figure the figure
   * @param exercise the exercise
   * @param options what to choose from
   */
  public record Piece(
      String body,
      String more,
      ComposedFigure figure,
      ComposedExercise exercise,
      List<ComposedExercise.Option> options) {}

  /**
   * Quantities about one thing.
   *
   * @param title what they are about
   * @param entries in the order of the ledger
   */
  public record Group(String title, List<Entry> entries) {}

  /**
   * A quantity with the places that use it.
   *
   * @param quantity plain texts
   * @param symbol typeset
   * @param formula typeset; empty where the course states the value
   * @param uses the places
   */
  public record Entry(ComposedQuantity quantity, String symbol, String formula, List<Use> uses) {}

  /**
   * The first place of a page that uses a quantity.
   *
   * @param href where it is
   * @param name which page it is, {@code lesson 3}
   */
  public record Use(String href, String name) {}

  /** Lays the course out. */
  static EbookPages of(ComposedCourse course) {
    Map<String, List<Use>> uses = new LinkedHashMap<>();
    List<Leaf> leaves = new ArrayList<>();
    List<Solved> solved = new ArrayList<>();
    for (ComposedLesson lesson : course.lessons()) {
      leaves.add(
          leaf(lesson.id(), lesson.number(), lesson.title(), lesson.aim(), lesson.blocks(), uses));
      List<Piece> solutions = solutions(lesson);
      if (!solutions.isEmpty()) {
        solved.add(solved(lesson, solutions));
      }
    }
    for (BackPage page : course.back()) {
      leaves.add(leaf(page.id(), 0, page.title(), page.aim(), page.blocks(), uses));
    }
    Map<String, List<Entry>> groups = new LinkedHashMap<>();
    groups.put(STATED, new ArrayList<>());
    for (ComposedQuantity quantity : course.quantities()) {
      groups
          .computeIfAbsent(group(quantity), g -> new ArrayList<>())
          .add(entry(quantity, uses.getOrDefault(quantity.key(), List.of())));
    }
    groups.values().removeIf(List::isEmpty);
    CourseInfo info = course.info();
    return new EbookPages(
        info,
        LocalDate.parse(info.date()).format(PLAIN_DATE),
        StationMark.title(course.lessons().size()),
        lines(info.title()),
        List.copyOf(leaves),
        List.copyOf(solved),
        groups.entrySet().stream().map(g -> new Group(g.getKey(), g.getValue())).toList(),
        IndexOrder.sorted(
            groups.values().stream().flatMap(List::stream).toList(), e -> e.quantity().name()));
  }

  private static String group(ComposedQuantity quantity) {
    String key = quantity.key();
    return quantity.stated() ? STATED : Heading.of(key.substring(0, key.indexOf('.') + 1)).title();
  }

  private static List<Piece> solutions(ComposedLesson lesson) {
    EbookText text = new EbookText();
    List<Piece> pieces = new ArrayList<>();
    for (Block block : lesson.blocks()) {
      if (block instanceof ComposedLesson.ExerciseBlock asked) {
        ComposedExercise exercise = asked.exercise();
        String solution =
            PlaceMarks.in(text.apart(exercise.solutionXhtml()), "solution-" + exercise.id());
        pieces.add(new Piece(solution, "", null, exercise, List.of()));
      }
    }
    return pieces;
  }

  private static Solved solved(ComposedLesson lesson, List<Piece> pieces) {
    StringBuilder all = new StringBuilder();
    pieces.forEach(p -> all.append(p.body()));
    return new Solved(
        "solutions-" + lesson.id() + ".xhtml",
        lesson.id(),
        lesson.number(),
        lesson.title(),
        List.copyOf(pieces),
        all.indexOf("<math ") >= 0,
        all.indexOf("<svg ") >= 0);
  }

  private static Entry entry(ComposedQuantity quantity, List<Use> uses) {
    EbookText text = new EbookText();
    String formula =
        quantity.stated() || quantity.formulaXhtml().isEmpty()
            ? ""
            : text.ready("<p class=\"formula\">" + quantity.formulaXhtml() + "</p>");
    return new Entry(quantity, text.ready(quantity.symbolXhtml()), formula, List.copyOf(uses));
  }

  private static Leaf leaf(
      String id,
      int number,
      String title,
      String aim,
      List<Block> blocks,
      Map<String, List<Use>> uses) {
    EbookText text = new EbookText();
    List<Piece> pieces = new ArrayList<>();
    for (Block block : blocks) {
      pieces.add(piece(block, text, id + "." + pieces.size()));
    }
    StringBuilder all = new StringBuilder();
    pieces.forEach(p -> all.append(p.body()).append(p.more()).append(p.options()));
    String file = id + ".xhtml";
    String name = number > 0 ? "lesson " + number : title;
    text.uses()
        .forEach(
            (key, place) ->
                uses.computeIfAbsent(key, k -> new ArrayList<>())
                    .add(new Use(file + "#" + place, name)));
    return new Leaf(
        file,
        id,
        number,
        title,
        aim,
        List.copyOf(pieces),
        sections(all),
        all.indexOf("<dl class=\"terms\"") >= 0,
        all.indexOf("<math ") >= 0,
        all.indexOf("<svg ") >= 0);
  }

  private static Piece piece(Block block, EbookText text, String place) {
    if (block instanceof ComposedLesson.FigureBlock drawn) {
      ComposedFigure figure = drawn.figure();
      return new Piece(
          text.ready(figure.svg()), text.ready(figure.captionXhtml()), figure, null, List.of());
    }
    if (block instanceof ComposedLesson.ExerciseBlock asked) {
      ComposedExercise exercise = asked.exercise();
      return new Piece(
          PlaceMarks.in(text.ready(exercise.questionXhtml()), "exercise-" + exercise.id()),
          "",
          null,
          exercise,
          exercise.options().stream()
              .map(o -> new ComposedExercise.Option(o.letter(), text.ready(o.textXhtml())))
              .toList());
    }
    if (block instanceof ComposedLesson.Markup markup) {
      String body = PlaceMarks.in(text.ready(markup.xhtml()), place);
      return new Piece(body, "", null, null, List.of());
    }
    throw new IllegalStateException("a branch among the blocks of the course's own scene");
  }

  private static List<Section> sections(CharSequence xhtml) {
    List<Section> sections = new ArrayList<>();
    Matcher found = SECTION.matcher(xhtml);
    while (found.find()) {
      String text = found.group(2).replaceAll("<[^>]*>", "").strip();
      sections.add(new Section(found.group(1), text));
    }
    return List.copyOf(sections);
  }

  /** The words of the title in lines that fit the cover. */
  private static List<String> lines(String title) {
    List<String> lines = new ArrayList<>();
    for (String word : title.split(" ", -1)) {
      int last = lines.size() - 1;
      if (last >= 0 && lines.get(last).length() + word.length() < COVER_LETTERS) {
        lines.set(last, lines.get(last) + " " + word);
      } else {
        lines.add(word);
      }
    }
    return List.copyOf(lines);
  }
}
