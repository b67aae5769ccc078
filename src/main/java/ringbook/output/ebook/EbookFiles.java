package ringbook.output.ebook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import ringbook.course.ComposedCourse;
import ringbook.course.CourseInfo;
import ringbook.output.PrintedPages;
import ringbook.output.Templates;

/** Fills the templates of the e-book in reading order, and then the files that list them. */
final class EbookFiles {

  private static final String FOLDER = "EPUB/";
  private static final String CONTENTS = "contents.xhtml";

  private static final String CONTAINER =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <container version="1.0" xmlns="urn:oasis:names:tc:opendocument:xmlns:container">
      <rootfiles><rootfile full-path="EPUB/package.opf" media-type="application/oebps-package+xml"/></rootfiles>
      </container>
      """;

  private final EbookPages book;
  private final PrintedPages printed;
  private final Templates templates = new Templates();

  EbookFiles(ComposedCourse course, PrintedPages printed) {
    this.book = EbookPages.of(course);
    this.printed = printed;
  }

  /** All files but the type, by name in the archive. */
  Map<String, String> all() throws IOException {
    PageBreaks breaks = new PageBreaks(printed);
    Map<String, String> pages = new LinkedHashMap<>();
    page(pages, breaks, "title-page", book.info().title());
    breaks.named(CONTENTS, contents(List.of())); // its pages belong in the list that it holds
    for (EbookPages.Leaf leaf : book.leaves()) {
      if (leaf.number() > 0) {
        leaf(pages, breaks, leaf);
      }
    }
    for (EbookPages.Solved solved : book.solved()) {
      String title = "Solutions: " + solved.title();
      String text = filled("solutions", title, Map.of("solved", solved));
      pages.put(solved.file(), breaks.marked(solved.file(), text));
    }
    for (EbookPages.Leaf leaf : book.leaves()) {
      if (leaf.number() == 0) {
        leaf(pages, breaks, leaf);
      }
    }
    page(pages, breaks, "quantities", "All quantities");
    page(pages, breaks, "index-of-quantities", "Index of quantities");
    return files(pages, breaks.entries());
  }

  private void leaf(Map<String, String> pages, PageBreaks breaks, EbookPages.Leaf leaf)
      throws IOException {
    pages.put(
        leaf.file(),
        breaks.marked(leaf.file(), filled("leaf", leaf.title(), Map.of("leaf", leaf))));
  }

  private void page(Map<String, String> pages, PageBreaks breaks, String name, String title)
      throws IOException {
    String file = name + ".xhtml";
    pages.put(file, breaks.marked(file, filled(name, title, Map.of())));
  }

  private Map<String, String> files(Map<String, String> pages, List<PageBreaks.Entry> list)
      throws IOException {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("META-INF/container.xml", CONTAINER);
    files.put(FOLDER + "package.opf", filled("package", "", Map.of("pages", list)));
    files.put(FOLDER + CONTENTS, listed(list));
    files.put(FOLDER + "ebook.css", Templates.style("ebook/ebook") + DarkInks.rules());
    files.put(FOLDER + "cover.svg", filled("cover", "", Map.of()));
    pages.forEach((name, text) -> files.put(FOLDER + name, text));
    return files;
  }

  /** The contents with the page list, and the ids in it that the list leads to. */
  private String listed(List<PageBreaks.Entry> list) throws IOException {
    PageBreaks breaks = new PageBreaks(printed);
    breaks.marked("", filled("title-page", "", Map.of())); // what stands before it
    return breaks.named(CONTENTS, contents(list));
  }

  private String contents(List<PageBreaks.Entry> list) throws IOException {
    return filled("contents", "Contents", Map.of("pages", list));
  }

  private String filled(String template, String title, Map<String, ?> more) throws IOException {
    Map<String, Object> model = new LinkedHashMap<>(more);
    model.put("book", book);
    model.put("title", title);
    model.put("uuid", identity(book.info()));
    return EbookWords.set(templates.fill("ebook/" + template, model));
  }

  /** The same for the same edition, evaluated or not; another one for a new date. */
  private static String identity(CourseInfo info) {
    List<String> edition =
        List.of(
            info.title(),
            info.subtitle(),
            info.organiser(),
            info.date(),
            info.language(),
            info.group());
    return UUID.nameUUIDFromBytes(edition.toString().getBytes(StandardCharsets.UTF_8)).toString();
  }
}
