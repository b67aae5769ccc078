package ringbook.output.book;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.w3c.dom.Document;
import ringbook.course.ComposedCourse;
import ringbook.output.Output;

/** Writes {@code book.pdf}: A4, tagged, with embedded fonts, the same bytes for the same course. */
public final class BookOutput implements Output {

  /** The file this output writes. */
  public static final String FILE = "book.pdf";

  @Override
  public String name() {
    return "book";
  }

  /**
   * Writes the book.
   *
   * @throws BookException if the course cannot be set as it is: a letter no font has, a link that
   *     leads nowhere, or a warning of the page maker
   */
  @Override
  public void write(ComposedCourse course, Path folder) throws IOException {
    BookFonts fonts = BookFonts.liberation();
    Document print = PrintDocument.of(BookTemplate.fill(BookPages.of(course)));
    Letters.check(print, fonts);
    Files.write(folder.resolve(FILE), BookPress.press(print, fonts, course.info()));
  }
}
