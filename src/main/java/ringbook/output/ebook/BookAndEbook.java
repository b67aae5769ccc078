package ringbook.output.ebook;

import java.io.IOException;
import java.nio.file.Path;
import ringbook.course.ComposedCourse;
import ringbook.output.Output;
import ringbook.output.PrintedPages;
import ringbook.output.book.BookOutput;

/** Writes the book, and then the e-book with the page numbers of that book. */
public final class BookAndEbook implements Output {

  @Override
  public String name() {
    return "book and e-book";
  }

  @Override
  public void write(ComposedCourse course, Path folder) throws IOException {
    PrintedPages pages = new BookOutput().print(course, folder);
    new EbookOutput().write(course, pages, folder);
  }
}
