package ringbook.output.pack;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceDictionary;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import ringbook.output.book.LastStep;
import ringbook.output.book.PagePress;
import ringbook.sheets.WorksheetFields;

/**
 * Makes a form of a worksheet: the page maker leaves a link {@code field:NAME} where an answer
 * goes, already tagged and placed; here it becomes a text field of that name (ISO 32000-1, 12.7).
 */
final class FormFields implements LastStep {

  private static final COSName FONT = COSName.getPDFName("Sans");
  private static final String LOOK = "/Sans 11 Tf 0 g";

  /** First and last letters of Unicode blocks: Latin to Extended-B, Greek, Cyrillic, signs. */
  private static final int[][] RANGES = {
    {0x20, 0x24F},
    {0x2C6, 0x2DD},
    {0x370, 0x52F},
    {0x1E00, 0x1FFF},
    {0x2010, 0x20BF},
    {0x2200, 0x22FF}
  };

  private final String course;
  private final String learner;

  /**
   * A form of a course.
   *
   * @param learner whose own numbers stand on it; empty for the numbers of the book
   */
  FormFields(String course, String learner) {
    this.course = course;
    this.learner = learner;
  }

  @Override
  public void add(PDDocument pdf) throws IOException {
    PDAcroForm form = new PDAcroForm(pdf);
    PDResources resources = new PDResources();
    resources.put(FONT, font(pdf));
    form.setDefaultResources(resources);
    form.setDefaultAppearance(LOOK);
    COSArray fields = new COSArray();
    fields.add(fixed(WorksheetFields.COURSE, course, "Course"));
    fields.add(fixed(WorksheetFields.NUMBERS, learner.isEmpty() ? "book" : "own", "Numbers"));
    if (!learner.isEmpty()) {
      fields.add(fixed(WorksheetFields.LEARNER, learner, "Name"));
    }
    for (PDPage page : pdf.getPages()) {
      for (COSDictionary link : inReadingOrder(page)) {
        COSDictionary action = link.getCOSDictionary(COSName.A);
        String target = action == null ? null : action.getString(COSName.URI);
        if (target != null && target.startsWith(PagePress.FIELD)) {
          field(pdf, page, link, target.substring(PagePress.FIELD.length()));
          fields.add(link);
        }
      }
      page.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
    }
    form.getCOSObject().setItem(COSName.FIELDS, fields);
    pdf.getDocumentCatalog().setAcroForm(form);
    FormTags.add(pdf.getDocumentCatalog().getStructureTreeRoot().getCOSObject());
  }

  /**
   * The annotations of a page, which it has in this order from now on. The page maker writes blocks
   * before what stands in a line, and some viewers go by the list, whatever {@code Tabs} says.
   */
  private static List<COSDictionary> inReadingOrder(PDPage page) {
    COSArray annotations = page.getCOSObject().getCOSArray(COSName.ANNOTS);
    List<COSDictionary> order = new ArrayList<>();
    for (int i = 0; annotations != null && i < annotations.size(); i++) {
      order.add((COSDictionary) annotations.getObject(i));
    }
    order.sort(
        Comparator.<COSDictionary>comparingDouble(one -> -Math.rint(box(one).getUpperRightY()))
            .thenComparingDouble(one -> box(one).getLowerLeftX()));
    if (annotations != null) {
      annotations.clear();
      order.forEach(annotations::add);
    }
    return order;
  }

  private static PDRectangle box(COSDictionary annotation) {
    return new PDRectangle((COSArray) annotation.getDictionaryObject(COSName.RECT));
  }

  /** A field without a place on the page that says what the sheet is. */
  private static COSDictionary fixed(String name, String value, String says) {
    COSDictionary field = new COSDictionary();
    field.setItem(COSName.FT, COSName.TX);
    field.setItem(COSName.T, new COSString(name));
    field.setItem(COSName.TU, new COSString(says));
    field.setItem(COSName.V, new COSString(value));
    field.setString(COSName.DA, LOOK);
    field.setInt(COSName.FF, 1);
    field.setItem(COSName.RECT, new PDRectangle(0, 0).getCOSArray()); // some readers insist on one
    return field;
  }

  private static void field(PDDocument pdf, PDPage page, COSDictionary link, String name) {
    for (COSName gone : List.of(COSName.A, COSName.BORDER, COSName.getPDFName("H"), COSName.BS)) {
      link.removeItem(gone);
    }
    String says = link.getString(COSName.CONTENTS, name);
    link.removeItem(COSName.CONTENTS);
    link.setItem(COSName.SUBTYPE, COSName.getPDFName("Widget"));
    link.setItem(COSName.FT, COSName.TX);
    link.setItem(COSName.T, new COSString(name));
    link.setItem(COSName.TU, new COSString(says));
    link.setString(COSName.DA, LOOK);
    link.setInt(COSName.F, 4);
    link.setItem(COSName.P, page);
    PDRectangle box = box(link);
    PDAppearanceStream empty = new PDAppearanceStream(pdf);
    empty.setBBox(new PDRectangle(box.getWidth(), box.getHeight()));
    empty.setResources(new PDResources());
    PDAppearanceDictionary look = new PDAppearanceDictionary();
    look.setNormalAppearance(empty);
    link.setItem(COSName.AP, look);
  }

  /**
   * The sans face with the letters of European languages, by glyphs (Identity-H): an encoding of
   * bytes has only those of the west.
   */
  private static PDFont font(PDDocument pdf) throws IOException {
    try (InputStream in =
        FormFields.class.getResourceAsStream("/liberation/LiberationSans-Regular.ttf")) {
      TrueTypeFont face = new TTFParser().parse(new RandomAccessReadBuffer(in));
      CmapLookup letters = face.getUnicodeCmapLookup();
      TTFSubsetter subset = new TTFSubsetter(face);
      for (int[] range : RANGES) {
        for (int letter = range[0]; letter <= range[1]; letter++) {
          if (letters.getGlyphId(letter) > 0) {
            subset.add(letter);
          }
        }
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      subset.writeToStream(bytes);
      TrueTypeFont part = new TTFParser().parse(new RandomAccessReadBuffer(bytes.toByteArray()));
      return PDType0Font.load(pdf, part, false);
    }
  }
}
