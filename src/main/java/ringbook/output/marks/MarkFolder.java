package ringbook.output.marks;

import java.io.Closeable;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringbook.course.CourseInfo;
import ringbook.exercises.Exercise;
import ringbook.output.book.PagePress;
import ringbook.sheets.ClassTally;
import ringbook.sheets.GradeBook;
import ringbook.sheets.LearnerMarks;
import ringbook.sheets.MarkJson;
import ringbook.sheets.MarkSink;
import ringbook.sheets.SummaryText;

/**
 * Writes the marks of a class into a folder: {@code summary.html} and {@code summary.txt}, {@code
 * gradebook.csv} (with a byte order mark, by which spreadsheets know UTF-8), {@code marks.json}
 * ({@link MarkJson}), and in {@code feedback} a page and a PDF for each learner.
 */
public final class MarkFolder implements MarkSink, Closeable {

  /** The page for the trainer. */
  public static final String SUMMARY = "summary.html";

  /** The table of points. */
  public static final String GRADE_BOOK = "gradebook.csv";

  /** Begins a page for a browser; the press reads without it. */
  static final String DOCTYPE = "<!DOCTYPE html>\n";

  private static final String FEEDBACK = "feedback";

  /** A list of more links helps nobody. */
  private static final int LINKS = 500;

  /**
   * How the folder is written.
   *
   * @param semicolons whether the grade book has semicolons and decimal commas
   * @param pdf whether learners get a PDF beside their page
   */
  public record Form(boolean semicolons, boolean pdf) {}

  private final Path folder;
  private final CourseInfo info;
  private final FeedbackPages pages;
  private final Map<String, String> links = new LinkedHashMap<>();
  private final List<Writer> writers;
  private final List<MarkSink> sinks;

  /** Writes marks of these exercises into {@code folder}, which is there. */
  public MarkFolder(Path folder, CourseInfo info, List<Exercise> exercises, Form form)
      throws IOException {
    this.folder = folder;
    this.info = info;
    this.pages =
        new FeedbackPages(
            folder.resolve(FEEDBACK),
            info,
            form.pdf() ? Optional.of(PagePress.open()) : Optional.empty());
    Writer book = Files.newBufferedWriter(folder.resolve(GRADE_BOOK));
    Writer json = Files.newBufferedWriter(folder.resolve("marks.json"));
    Writer text = Files.newBufferedWriter(folder.resolve("summary.txt"));
    this.writers = List.of(book, json, text);
    this.sinks =
        List.of(
            new GradeBook(book.append('\ufeff'), exercises, form.semicolons()),
            new MarkJson(json),
            new SummaryText(text));
  }

  @Override
  public void learner(LearnerMarks marks) throws IOException {
    for (MarkSink sink : sinks) {
      sink.learner(marks);
    }
    String page = pages.write(marks);
    if (links.size() < LINKS) {
      links.put(marks.learner(), FEEDBACK + "/" + page);
    }
  }

  @Override
  public void end(ClassTally tally) throws IOException {
    for (MarkSink sink : sinks) {
      sink.end(tally);
    }
    Files.writeString(folder.resolve(SUMMARY), DOCTYPE + SummaryPage.of(info, tally, links));
  }

  /** Learners in whose PDF something else stands for letters that its fonts lack. */
  public List<String> lackingLetters() {
    return pages.lacking();
  }

  @Override
  public void close() throws IOException {
    for (Writer writer : writers) {
      writer.close();
    }
  }
}
