package ringbook.course.text;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import ringbook.course.BackPage;
import ringbook.course.ComposedCourse;
import ringbook.course.ComposedExercise;
import ringbook.course.ComposedFigure;
import ringbook.course.ComposedLesson;
import ringbook.course.ComposedLesson.Block;
import ringbook.course.compose.CourseSources;
import ringbook.problems.Problems;

/** The project's own course as its readers meet it: composed, in words without markup. */
final class CourseText {

  /**
   * A paragraph, a heading, a cell.
   *
   * @param page the id of its lesson or page
   * @param element its element: {@code p}, {@code li}, {@code h2}, {@code td} and so on
   * @param box the box it stands in: {@code summary}, {@code caution}, {@code working} and so on;
   *     {@code exercise} for all of an exercise; empty in running text
   * @param text its words; values as printed, formulas left out
   */
  record Passage(String page, String element, String box, String text) {

    /** Whether it is running text: sentences that a reader reads one after the other. */
    boolean isProse() {
      return Set.of("p", "li", "dd").contains(element)
          && Set.of("", "caution", "try", "slips").contains(box);
    }

    @Override
    public String toString() {
      return page + ": " + text;
    }
  }

  /** Elements whose words stand by themselves. */
  static final Set<String> BLOCKS =
      Set.of("p", "li", "dt", "dd", "td", "th", "caption", "h2", "h3", "h4", "pre", "summary");

  private static final Set<String> BOXES =
      Set.of("summary", "caution", "try", "slips", "working", "footnotes", "chain");

  /** The course; composed once, for it takes some seconds. */
  static final ComposedCourse COURSE = composed();

  private CourseText() {}

  private static ComposedCourse composed() {
    try {
      Problems problems = new Problems();
      return CourseSources.read(Path.of("lessons/course.yaml"), problems)
          .flatMap(sources -> sources.compose(problems))
          .orElseThrow(() -> new AssertionError(problems.sorted().toString()));
    } catch (IOException gone) {
      throw new UncheckedIOException(gone);
    }
  }

  /** The ids of the lessons in order. */
  static List<String> lessons() {
    return COURSE.lessons().stream().map(ComposedLesson::id).toList();
  }

  /** The ids of the lessons and of the pages at the back. */
  static List<String> pages() {
    List<String> pages = new ArrayList<>(lessons());
    COURSE.back().forEach(page -> pages.add(page.id()));
    return pages;
  }

  /** What stands on the page, in order. */
  static List<Block> blocks(String page) {
    for (ComposedLesson lesson : COURSE.lessons()) {
      if (lesson.id().equals(page)) {
        return lesson.blocks();
      }
    }
    return COURSE.back().stream()
        .filter(back -> back.id().equals(page))
        .map(BackPage::blocks)
        .findFirst()
        .orElseThrow();
  }

  /** All passages of a page; those of its exercises too. */
  static List<Passage> passages(String page) {
    List<Passage> passages = new ArrayList<>();
    for (Block block : blocks(page)) {
      if (block instanceof ComposedLesson.Markup markup) {
        gather(root(markup.xhtml()), page, "", passages);
      } else if (block instanceof ComposedLesson.FigureBlock drawn) {
        gather(root("<p>" + drawn.figure().captionXhtml() + "</p>"), page, "figure", passages);
      } else if (block instanceof ComposedLesson.ExerciseBlock asked) {
        exercise(asked.exercise(), page, passages);
      }
    }
    return passages;
  }

  /** The figures of a page. */
  static List<ComposedFigure> figures(String page) {
    return blocks(page).stream()
        .filter(ComposedLesson.FigureBlock.class::isInstance)
        .map(block -> ((ComposedLesson.FigureBlock) block).figure())
        .toList();
  }

  /** The markup of a page without figures and exercises, in one tree. */
  static Element tree(String page) {
    StringBuilder all = new StringBuilder();
    for (Block block : blocks(page)) {
      if (block instanceof ComposedLesson.Markup markup) {
        all.append(markup.xhtml());
      }
    }
    return root(all.toString());
  }

  private static void exercise(ComposedExercise exercise, String page, List<Passage> passages) {
    passages.add(new Passage(page, "h3", "exercise", exercise.title()));
    gather(root(exercise.questionXhtml()), page, "exercise", passages);
    for (ComposedExercise.Option option : exercise.options()) {
      gather(root("<li>" + option.textXhtml() + "</li>"), page, "exercise", passages);
    }
    gather(root(exercise.solutionXhtml()), page, "exercise", passages);
  }

  private static void gather(Element element, String page, String box, List<Passage> passages) {
    String inside = box;
    for (String name : element.getAttribute("class").split(" ", -1)) {
      inside = box.isEmpty() && BOXES.contains(name) ? name : inside;
    }
    String text = words(element).strip().replaceAll("\\s+", " ");
    if (BLOCKS.contains(element.getNodeName()) && !text.isEmpty()) {
      passages.add(new Passage(page, element.getNodeName(), inside, text));
    }
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element inner) {
        gather(inner, page, inside, passages);
      }
    }
  }

  /** The words of an element, without those of blocks inside it, drawings and code. */
  private static String words(Node node) {
    StringBuilder out = new StringBuilder();
    for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child.getNodeType() == Node.TEXT_NODE) {
        out.append(child.getNodeValue());
      } else if (child instanceof Element inner && !isApart(inner)) {
        out.append(words(inner));
      }
    }
    return out.toString();
  }

  private static boolean isApart(Element element) {
    return BLOCKS.contains(element.getNodeName())
        || Set.of("svg", "code", "ul", "ol", "dl", "table", "div", "sup")
            .contains(element.getNodeName());
  }

  /** The tree of a well-formed fragment. */
  static Element root(String xhtml) {
    try {
      return DocumentBuilderFactory.newDefaultInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader("<body>" + xhtml + "</body>")))
          .getDocumentElement();
    } catch (ParserConfigurationException | SAXException | IOException wrong) {
      throw new IllegalStateException(xhtml, wrong);
    }
  }
}
