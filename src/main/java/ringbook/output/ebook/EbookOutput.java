package ringbook.output.ebook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import ringbook.course.ComposedCourse;
import ringbook.course.CourseInfo;
import ringbook.output.Output;
import ringbook.output.Templates;

/** Writes {@code course.epub}. */
public final class EbookOutput implements Output {

  /** The file this output writes. */
  public static final String FILE = "course.epub";

  private static final String FOLDER = "EPUB/";

  private static final String CONTAINER =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <container version="1.0" xmlns="urn:oasis:names:tc:opendocument:xmlns:container">
      <rootfiles><rootfile full-path="EPUB/package.opf" media-type="application/oebps-package+xml"/></rootfiles>
      </container>
      """;

  @Override
  public String name() {
    return "ebook";
  }

  @Override
  public void write(ComposedCourse course, Path folder) throws IOException {
    LocalDate date = LocalDate.parse(course.info().date());
    Files.write(folder.resolve(FILE), EbookZip.of(files(course), date));
  }

  /** All files but the type, by name in the archive. */
  private static Map<String, String> files(ComposedCourse course) throws IOException {
    EbookPages book = EbookPages.of(course);
    Templates templates = new Templates();
    Map<String, String> files = new LinkedHashMap<>();
    files.put("META-INF/container.xml", CONTAINER);
    files.put(FOLDER + "package.opf", templates.fill("ebook/package", shared(book, "")));
    files.put(
        FOLDER + "contents.xhtml", templates.fill("ebook/contents", shared(book, "Contents")));
    files.put(FOLDER + "ebook.css", Templates.style("ebook/ebook") + DarkInks.rules());
    files.put(FOLDER + "cover.svg", templates.fill("ebook/cover", shared(book, "")));
    files.put(
        FOLDER + "title-page.xhtml",
        templates.fill("ebook/title-page", shared(book, book.info().title())));
    for (EbookPages.Leaf leaf : book.leaves()) {
      Map<String, Object> model = shared(book, leaf.title());
      model.put("leaf", leaf);
      files.put(FOLDER + leaf.file(), templates.fill("ebook/leaf", model));
    }
    files.put(
        FOLDER + "quantities.xhtml",
        templates.fill("ebook/quantities", shared(book, "All quantities")));
    files.put(
        FOLDER + "index-of-quantities.xhtml",
        templates.fill("ebook/index", shared(book, "Index of quantities")));
    return files;
  }

  private static Map<String, Object> shared(EbookPages book, String title) {
    Map<String, Object> model = new LinkedHashMap<>();
    model.put("book", book);
    model.put("title", title);
    model.put("uuid", identity(book.info()));
    return model;
  }

  /** The same for the same edition, another one for a new date. */
  private static String identity(CourseInfo info) {
    return UUID.nameUUIDFromBytes(info.toString().getBytes(StandardCharsets.UTF_8)).toString();
  }
}
