package ringbook.output.ebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import ringbook.course.ComposedCourse;
import ringbook.output.Output;
import ringbook.output.PrintedPages;

/** Writes {@code course.epub}; with the pages of the printed book, if they are told. */
public final class EbookOutput implements Output {

  /** The file this output writes. */
  public static final String FILE = "course.epub";

  @Override
  public String name() {
    return "ebook";
  }

  /** Writes an e-book that knows no printed book. */
  @Override
  public void write(ComposedCourse course, Path folder) throws IOException {
    write(course, PrintedPages.NONE, folder);
  }

  /**
   * Writes an e-book with a list of the pages of a printed book.
   *
   * @param pages of the book that was printed of the same course
   */
  public void write(ComposedCourse course, PrintedPages pages, Path folder) throws IOException {
    LocalDate date = LocalDate.parse(course.info().date());
    Files.write(folder.resolve(FILE), EbookZip.of(new EbookFiles(course, pages).all(), date));
  }
}
