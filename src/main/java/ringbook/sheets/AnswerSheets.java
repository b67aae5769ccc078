package ringbook.sheets;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import ringbook.exercises.Answer;
import ringbook.problems.Position;
import ringbook.problems.Problems;

/**
 * Reads one answer sheet or several.
 *
 * <p><b>As a table</b> (CSV): the first line names the columns {@code learner}, {@code exercise}
 * and {@code answer} in any order; further columns are passed over. Columns are parted by commas,
 * semicolons or tabs.
 *
 * <p><b>As JSON</b>: an array of objects, or one object a line, with the same three names.
 *
 * <p>Both are UTF-8, with or without a byte order mark. Which of the two a file is shows in its
 * first character.
 */
public final class AnswerSheets {

  private final Intake intake;
  private final Problems problems;

  /**
   * Reads answers to the exercises with these ids; faults go to {@code problems}.
   *
   * @param exercises ids, in the order of the course
   */
  public AnswerSheets(Collection<String> exercises, Problems problems) {
    this.intake = new Intake(exercises, problems);
    this.problems = problems;
  }

  /** Reads one more file. */
  public void read(Path file) throws IOException {
    read(file.toString(), Files.readAllBytes(file));
  }

  /**
   * Reads one more sheet.
   *
   * @param file the name for messages
   * @param bytes its content
   */
  public void read(String file, byte[] bytes) {
    Optional<String> text = SheetText.decode(file, bytes, problems);
    if (text.isEmpty()) {
      return;
    }
    String start = text.get().stripLeading();
    if (start.isEmpty()) {
      problems.add(
          Position.ofFile(file),
          "the sheet is empty",
          "its first line names the columns: learner,exercise,answer");
    } else if (start.charAt(0) == '[' || start.charAt(0) == '{') {
      new JsonSheet(file, intake, problems).read(text.get());
    } else {
      new CsvSheet(file, intake, problems).read(text.get());
    }
  }

  /** All answers that can be marked, in the order they were read. */
  public List<Answer> answers() {
    return intake.answers();
  }
}
