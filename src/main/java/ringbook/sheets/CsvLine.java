package ringbook.sheets;

import java.io.IOException;
import java.util.List;
import ringbook.units.Decimal;

/**
 * Lines of a table as they are written: by RFC 4180, and so that no spreadsheet runs a cell.
 *
 * <p>A spreadsheet takes a cell that begins with {@code = + - @}, a tab or a line end for a formula
 * and may run it, also where the signs are of full width (list of first characters: OWASP, "CSV
 * Injection", from memory). An apostrophe is put before such a cell, which spreadsheets take for
 * text: the answer {@code -36 cm} is written {@code '-36 cm}. A cell that holds a sign that parts
 * cells in any spreadsheet is put between quotation marks, so that no part of it can become a cell
 * of its own.
 *
 * @param delimiter what parts the cells
 */
public record CsvLine(char delimiter) {

  private static final String DANGEROUS = "=+-@\t\r\n＝＋－＠";

  /** Cells parted by commas. */
  public static final CsvLine COMMAS = new CsvLine(',');

  /** Writes a line. */
  public void write(List<String> cells, Appendable out) throws IOException {
    for (int i = 0; i < cells.size(); i++) {
      if (i > 0) {
        out.append(delimiter);
      }
      cell(safe(cells.get(i)), out);
    }
    out.append("\r\n");
  }

  private static void cell(String text, Appendable out) throws IOException {
    boolean plain = true;
    for (int i = 0; i < text.length() && plain; i++) {
      plain = ",;\t\"\r\n".indexOf(text.charAt(i)) < 0;
    }
    out.append(plain ? text : '"' + text.replace("\"", "\"\"") + '"');
  }

  /** {@code text} so that no spreadsheet takes it for a formula; a bare number is none. */
  static String safe(String text) {
    if (Decimal.parse(text).isPresent()) {
      return text;
    }
    String seen = text.stripLeading();
    boolean dangerous =
        !text.isEmpty()
            && (DANGEROUS.indexOf(text.charAt(0)) >= 0
                || (!seen.isEmpty() && DANGEROUS.indexOf(seen.charAt(0)) >= 0));
    return dangerous ? "'" + text : text;
  }

  /** The text as it was before {@link #safe}. */
  static String plain(String cell) {
    boolean guarded = cell.startsWith("'") && !safe(cell.substring(1)).equals(cell.substring(1));
    return guarded ? cell.substring(1) : cell;
  }
}
