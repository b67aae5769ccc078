package ringbook.output.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a reading program finds in the file: fonts, tags, words about itself, fixed bytes. */
class BookFileTest {

  @TempDir private Path folder;

  @Test
  void the_same_course_gives_the_same_bytes() throws IOException {
    byte[] once = PressedBook.bytes(SampleCourse.course(), folder);
    byte[] again = PressedBook.bytes(SampleCourse.course(), folder);
    assertThat(again).isEqualTo(once);
  }

  @Test
  void every_font_is_embedded() throws IOException {
    List<String> names = new ArrayList<>();
    try (var pdf = PressedBook.of(SampleCourse.course(), folder).pdf()) {
      for (PDPage page : pdf.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          PDFont font = page.getResources().getFont(name);
          assertThat(font.isEmbedded()).as(font.getName()).isTrue();
          names.add(font.getName());
        }
      }
    }
    assertThat(names).isNotEmpty().allMatch(name -> name.contains("Liberation"));
  }

  @Test
  void it_says_its_language_title_and_date() throws IOException {
    try (var pdf = PressedBook.of(SampleCourse.course(), folder).pdf()) {
      PDDocumentCatalog catalog = pdf.getDocumentCatalog();
      assertThat(catalog.getLanguage()).isEqualTo("en");
      assertThat(catalog.getViewerPreferences().displayDocTitle()).isTrue();
      assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo("Round the pot");
      assertThat(pdf.getDocumentInformation().getCreationDate().toInstant())
          .isEqualTo("2026-11-02T00:00:00Z");
      String xmp =
          new String(catalog.getMetadata().toByteArray(), java.nio.charset.StandardCharsets.UTF_8);
      assertThat(xmp).contains("2026-11-02").contains("pdfuaid", "pdfaid");
    }
  }

  @Test
  void it_is_tagged_and_its_drawings_have_words() throws IOException {
    try (var pdf = PressedBook.of(SampleCourse.course(), folder).pdf()) {
      PDDocumentCatalog catalog = pdf.getDocumentCatalog();
      assertThat(catalog.getMarkInfo().isMarked()).isTrue();
      List<PDStructureElement> tags = new ArrayList<>();
      gather(catalog.getStructureTreeRoot(), tags);
      assertThat(tags.stream().map(PDStructureElement::getStructureType))
          .contains("H1", "H2", "H3", "P", "Table", "TH", "TD", "L", "LI", "Link", "Figure");
      assertThat(tags.stream().filter(t -> t.getStructureType().equals("Figure")))
          .extracting(PDStructureElement::getAlternateDescription)
          .allSatisfy(words -> assertThat(words).isNotBlank())
          .contains("Ring of 24 stations. Seen from above, 24 cameras point at the pot.");
    }
  }

  @Test
  void nothing_but_the_book_is_written() throws IOException {
    new BookOutput().write(SampleCourse.course(), folder);
    try (var files = Files.list(folder)) {
      assertThat(files).containsExactly(folder.resolve(BookOutput.FILE));
    }
  }

  private static void gather(PDStructureNode node, List<PDStructureElement> tags) {
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        tags.add(element);
        gather(element, tags);
      }
    }
  }
}
