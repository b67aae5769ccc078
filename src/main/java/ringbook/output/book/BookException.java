package ringbook.output.book;

import java.io.IOException;

/** The course cannot be set as a book as it is; the message says what to mend. */
public final class BookException extends IOException {

  private static final long serialVersionUID = 1L;

  BookException(String message) {
    super("book: " + message);
  }
}
