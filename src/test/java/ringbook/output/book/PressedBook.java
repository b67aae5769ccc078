package ringbook.output.book;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import ringbook.course.ComposedCourse;

/** A book as a reader of the file finds it. */
record PressedBook(PDDocument pdf, List<String> pages) {

  static byte[] bytes(ComposedCourse course, Path folder) throws IOException {
    new BookOutput().write(course, folder);
    return Files.readAllBytes(folder.resolve(BookOutput.FILE));
  }

  static PressedBook of(ComposedCourse course, Path folder) throws IOException {
    PDDocument pdf = Loader.loadPDF(bytes(course, folder));
    List<String> pages = new ArrayList<>();
    for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(true);
      stripper.setStartPage(page);
      stripper.setEndPage(page);
      pages.add(stripper.getText(pdf).replaceAll("[ \\u00a0]+", " "));
    }
    return new PressedBook(pdf, List.copyOf(pages));
  }

  /** The number, from 1, of the first page that holds {@code text}, from page {@code from} on. */
  int pageOf(String text, int from) {
    for (int page = from; page <= pages.size(); page++) {
      if (pages.get(page - 1).contains(text)) {
        return page;
      }
    }
    throw new AssertionError("no page from " + from + " on holds: " + text);
  }

  String page(int number) {
    return pages.get(number - 1);
  }

  String text() {
    return String.join("\n", pages);
  }

  /** Every letter of a page with its place. */
  List<TextPosition> letters(int page) throws IOException {
    List<TextPosition> letters = new ArrayList<>();
    PDFTextStripper stripper =
        new PDFTextStripper() {
          @Override
          protected void writeString(String text, List<TextPosition> positions) {
            letters.addAll(positions);
          }
        };
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    stripper.writeText(
        pdf,
        new java.io.OutputStreamWriter(
            new ByteArrayOutputStream(), java.nio.charset.StandardCharsets.UTF_8));
    return letters;
  }
}
