package ringbook.output.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationWidget;
import org.junit.jupiter.api.Test;

/**
 * The tab key goes down the page. A viewer takes the order of the structure, as {@code Tabs} says
 * (ISO 32000-1, table 30 and 14.7), or that of the list of annotations; both must be as one reads.
 */
final class FormOrderTest {

  @Test
  void fields_follow_each_other_down_every_page_and_say_what_they_are() throws IOException {
    int forms = 0;
    for (Map.Entry<String, byte[]> sheet : MadePack.files().entrySet()) {
      try (PDDocument pdf = Loader.loadPDF(sheet.getValue())) {
        List<String> listed = new ArrayList<>();
        for (PDPage page : pdf.getPages()) {
          List<PDAnnotation> fields = fields(page);
          for (int i = 1; i < fields.size(); i++) {
            assertThat(fields.get(i).getRectangle().getUpperRightY())
                .as(sheet.getKey() + " " + name(fields.get(i)))
                .isLessThan(fields.get(i - 1).getRectangle().getLowerLeftY());
          }
          fields.forEach(field -> listed.add(name(field)));
          if (!fields.isEmpty()) {
            assertThat(page.getCOSObject().getNameAsString("Tabs")).isEqualTo("S");
          }
          assertThat(fields)
              .allSatisfy(f -> assertThat(f.getCOSObject().getString(COSName.TU)).isNotBlank());
        }
        if (!listed.isEmpty()) {
          forms++;
          List<String> told = new ArrayList<>();
          told(pdf.getDocumentCatalog().getStructureTreeRoot().getCOSObject(), told);
          assertThat(told).as(sheet.getKey()).isEqualTo(listed).doesNotHaveDuplicates();
          List<String> named = new ArrayList<>();
          pdf.getDocumentCatalog()
              .getAcroForm(null)
              .getFields()
              .forEach(field -> named.add(field.getPartialName()));
          named.removeIf(name -> !listed.contains(name));
          assertThat(named).as(sheet.getKey()).isEqualTo(listed);
        }
      }
    }
    assertThat(forms).isGreaterThan(5);
  }

  private static List<PDAnnotation> fields(PDPage page) throws IOException {
    return page.getAnnotations().stream().filter(PDAnnotationWidget.class::isInstance).toList();
  }

  private static String name(PDAnnotation field) {
    return field.getCOSObject().getString(COSName.T);
  }

  /** The fields as the structure tells them, from the top. */
  private static void told(COSBase element, List<String> told) {
    if (element instanceof COSArray kids) {
      for (int i = 0; i < kids.size(); i++) {
        told(kids.getObject(i), told);
      }
    } else if (element instanceof COSDictionary part) {
      COSDictionary object = part.getCOSDictionary(COSName.OBJ);
      if (object != null && COSName.TX.equals(object.getCOSName(COSName.FT))) {
        told.add(object.getString(COSName.T));
      }
      told(part.getDictionaryObject(COSName.K), told);
    }
  }
}
