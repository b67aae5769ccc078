package ringbook.output.book;

import java.io.ByteArrayOutputStream;
import ringbook.output.PrintedPages;

/**
 * Pages as they were set.
 *
 * @param pdf holds the whole PDF
 * @param places where the named places of the text are
 */
record PressedPages(ByteArrayOutputStream pdf, PrintedPages places) {

  /** The bytes of the PDF. */
  byte[] bytes() {
    return pdf.toByteArray();
  }
}
