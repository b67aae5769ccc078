package ringbook.output.marks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import ringbook.course.CourseInfo;
import ringbook.exercises.Credit;
import ringbook.exercises.Feedback;
import ringbook.output.FileNames;
import ringbook.output.Templates;
import ringbook.output.book.PagePress;
import ringbook.sheets.LearnerMarks;
import ringbook.sheets.OneMark;
import ringbook.units.Words;

/** What each learner gets: a page to read or to mail, and the same as a PDF. */
final class FeedbackPages {

  private final Path folder;
  private final CourseInfo info;
  private final Optional<PagePress> press;
  private final Templates templates = new Templates();
  private final FileNames names = new FileNames();
  private final String screen;
  private final String paper;
  private final List<String> lacking = new ArrayList<>();

  FeedbackPages(Path folder, CourseInfo info, Optional<PagePress> press) throws IOException {
    this.folder = folder;
    this.info = info;
    this.press = press;
    this.screen = Templates.style("css/palette") + Templates.style("css/marks");
    this.paper = Templates.style("book/marks");
    Files.createDirectories(folder);
  }

  /** Writes the files of one learner and gives the name of the page. */
  String write(LearnerMarks marks) throws IOException {
    String name = names.of(marks.learner());
    Files.writeString(
        folder.resolve(name + ".html"),
        MarkFolder.DOCTYPE + page(marks, screen, UnaryOperator.identity(), false));
    if (press.isPresent()) {
      UnaryOperator<String> letters = raw -> press.get().printable(inWords(raw));
      boolean lacks = lacks(marks, letters);
      if (lacks) {
        lacking.add(marks.learner());
      }
      String print = page(marks, paper, letters, lacks);
      CourseInfo own =
          new CourseInfo(
              info.title(), marks.learner(), info.organiser(), info.date(), info.language(), "");
      Files.write(folder.resolve(name + ".pdf"), press.get().press(print, own));
    }
    return name + ".html";
  }

  /** Learners in whose PDF {@link PagePress#STAND_IN} stands for letters that they wrote. */
  List<String> lacking() {
    return List.copyOf(lacking);
  }

  private static boolean lacks(LearnerMarks marks, UnaryOperator<String> letters) {
    return lacks(marks.learner(), letters)
        || marks.marks().stream().anyMatch(one -> lacks(one.mark().answer().text(), letters));
  }

  private static boolean lacks(String text, UnaryOperator<String> letters) {
    return text.indexOf(PagePress.STAND_IN) < 0
        && letters.apply(PageText.of(text)).indexOf(PagePress.STAND_IN) >= 0;
  }

  private String page(
      LearnerMarks marks, String style, UnaryOperator<String> letters, boolean lacks)
      throws IOException {
    UnaryOperator<String> text = raw -> letters.apply(PageText.of(raw));
    List<Map<String, Object>> blocks = new ArrayList<>();
    List<String> again = new ArrayList<>();
    for (OneMark one : marks.marks()) {
      blocks.add(block(one, text));
      if (!one.right()) {
        again.add(text.apply(one.worded().exercise().title()));
      }
    }
    Map<String, Object> model = new LinkedHashMap<>();
    model.put("info", info);
    model.put("style", style);
    model.put("learner", text.apply(marks.learner()));
    model.put("standing", standing(marks));
    model.put("again", again);
    model.put("blocks", blocks);
    model.put("lacks", lacks);
    return templates.fill("templates/feedback", model);
  }

  /** The brackets of rounding are in no font of the book; there the formulas are drawn. */
  private static String inWords(String text) {
    return text.replace("⌈", "round up (")
        .replace("⌊", "round down (")
        .replace('⌉', ')')
        .replace('⌋', ')');
  }

  private static String standing(LearnerMarks marks) {
    int all = marks.marks().size();
    return "You handed in "
        + Words.count(all, "exercise")
        + ". "
        + (marks.right() == all
            ? "All of it is right: well done."
            : (marks.right() == 0 ? "None" : String.valueOf(marks.right()))
                + (marks.right() < 2 ? " is" : " are")
                + " right"
                + (marks.right() == 0 ? " yet" : "")
                + ", and you have "
                + Credit.text(marks.quarters())
                + " of "
                + Words.count(all, "point")
                + ".");
  }

  private static Map<String, Object> block(OneMark one, UnaryOperator<String> text) {
    Feedback feedback = one.feedback();
    Credit credit = one.mark().credit();
    Map<String, Object> block = new LinkedHashMap<>();
    block.put("title", text.apply(one.worded().exercise().title()));
    block.put("id", one.mark().answer().exercise());
    block.put("answer", text.apply(one.mark().answer().text()));
    block.put("happened", text.apply(feedback.happened()));
    block.put(
        "working",
        feedback.next().isEmpty() ? List.of() : feedback.working().stream().map(text).toList());
    block.put("next", text.apply(feedback.next()));
    block.put("points", credit.text());
    block.put("right", one.right());
    return block;
  }
}
