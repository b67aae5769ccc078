package ringbook.sheets;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import ringbook.exercises.Feedback;
import ringbook.exercises.Mark;

/**
 * The marks of a group as comma-separated values (RFC 4180), one answer a line.
 *
 * <p>A spreadsheet takes a cell that begins with {@code = + - @}, a tab or a line end for a formula
 * and may run it. An apostrophe is put before such a cell, which spreadsheets show as plain text:
 * the answer {@code -36 cm} is written {@code '-36 cm}.
 */
public final class MarkCsv {

  private static final String DANGEROUS = "=+-@\t\r\n＝＋－＠";

  private MarkCsv() {}

  /** The whole text, with the line ends RFC 4180 asks for. */
  public static String of(MarkList list) {
    StringBuilder out = new StringBuilder();
    try (CSVPrinter csv = new CSVPrinter(out, CSVFormat.RFC4180)) {
      csv.printRecord("learner", "exercise", "answer", "verdict", "points", "feedback", "next");
      for (Mark mark : list.marks()) {
        Feedback feedback = mark.feedback();
        csv.printRecord(
            safe(mark.answer().learner()),
            safe(mark.answer().exercise()),
            safe(mark.answer().text()),
            mark.verdict().label(),
            mark.credit().text(),
            safe(feedback.happened()),
            feedback.next());
      }
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
    return out.toString();
  }

  /** {@code text} so that no spreadsheet takes it for a formula. */
  static String safe(String text) {
    boolean dangerous = !text.isEmpty() && DANGEROUS.indexOf(text.charAt(0)) >= 0;
    return dangerous ? "'" + text : text;
  }
}
