package ringbook.output.book;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.w3c.dom.Document;
import ringbook.course.ComposedCourse;
import ringbook.output.Output;
import ringbook.output.PrintedPages;
import ringbook.output.Templates;

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
    print(course, folder);
  }

  /**
   * Writes the book and tells on which page of it each place of the course begins.
   *
   * @throws BookException as {@link #write}
   */
  public PrintedPages print(ComposedCourse course, Path folder) throws IOException {
    BookFonts fonts = BookFonts.liberation();
    Document print = PrintDocument.of(xhtml(course));
    Letters.check(print, fonts);
    FormulaDrawer drawer = new FormulaDrawer();
    PageFlow.arrange(print, fonts, drawer);
    PressedPages book = BookPress.press(print, fonts, course.info(), pdf -> {}, drawer);
    Files.write(folder.resolve(FILE), book.bytes());
    return book.places();
  }

  private static String xhtml(ComposedCourse course) throws IOException {
    String css = Templates.style("book/book");
    return new Templates().fill("book/book", Map.of("book", BookPages.of(course), "css", css));
  }
}
