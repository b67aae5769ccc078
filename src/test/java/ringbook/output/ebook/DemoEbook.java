package ringbook.output.ebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import ringbook.course.ComposedCourse;
import ringbook.course.compose.CourseSources;
import ringbook.output.PrintedPages;
import ringbook.output.book.BookOutput;
import ringbook.problems.Problems;

/**
 * Book and e-book of the demo, made once for all test classes.
 *
 * @param folder holds both
 * @param course that they were made of
 * @param pages of the book
 */
record DemoEbook(Path folder, ComposedCourse course, PrintedPages pages) {

  /** Holds what is made when it is first asked for. */
  private static final class Made {
    private static final DemoEbook ONCE = make();
  }

  static DemoEbook get() {
    return Made.ONCE;
  }

  private static DemoEbook make() {
    try {
      Problems problems = new Problems();
      ComposedCourse course =
          CourseSources.read(Path.of("lessons/course.yaml"), problems)
              .flatMap(read -> read.compose(problems))
              .orElseThrow();
      Path folder = Files.createDirectories(Path.of("target/demo-ebook"));
      PrintedPages pages = new BookOutput().print(course, folder);
      new EbookOutput().write(course, pages, folder);
      return new DemoEbook(folder, course, pages);
    } catch (IOException lost) {
      throw new UncheckedIOException(lost);
    }
  }

  static void unpack(Path epub, Path to) throws IOException {
    try (ZipFile zip = new ZipFile(epub.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        Path target = to.resolve(entry.getName());
        Files.createDirectories(target.getParent());
        Files.write(target, zip.getInputStream(entry).readAllBytes());
      }
    }
  }
}
