package ringbook.output.book;

import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;
import ringbook.course.CourseInfo;

/** From the print document to the bytes of the PDF. */
final class BookPress {

  private BookPress() {}

  /**
   * Sets the pages.
   *
   * @throws BookException if the page maker warns of anything
   */
  static PressedPages press(Document print, BookFonts fonts, CourseInfo info) throws IOException {
    return press(print, fonts, info, pdf -> {});
  }

  /**
   * Sets the pages and lets {@code last} add to them.
   *
   * @throws BookException if the page maker warns of anything
   */
  static PressedPages press(Document print, BookFonts fonts, CourseInfo info, LastStep last)
      throws IOException {
    return press(print, fonts, info, last, new FormulaDrawer());
  }

  /** The same with another drawer of the drawings in the text. */
  static PressedPages press(
      Document print, BookFonts fonts, CourseInfo info, LastStep last, SVGDrawer drawer)
      throws IOException {
    BookWarnings warnings = new BookWarnings();
    try (PDDocument pdf = new PDDocument();
        PdfBoxRenderer renderer = builder(print, fonts, pdf, drawer, warnings).buildPdfRenderer()) {
      renderer.createPDFKeepOpen();
      warnings.check();
      last.add(pdf);
      BookDates.fix(pdf, info);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      pdf.save(bytes);
      return new PressedPages(bytes, PlacedBoxes.of(renderer.getRootBox()));
    }
  }

  /** Sets up the page maker, which draws nothing before it is told to. */
  static PdfRendererBuilder builder(
      Document print, BookFonts fonts, PDDocument pdf, SVGDrawer drawer, BookWarnings warnings)
      throws IOException {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.usePDDocument(pdf);
    fonts.giveTo(builder, pdf);
    if (!Elements.named(print.getDocumentElement(), "text").isEmpty()) {
      fonts.giveToDrawings(builder);
    }
    builder.useSVGDrawer(drawer);
    builder.usePdfUaAccessibility(true);
    builder.usePdfAConformance(PdfAConformance.PDFA_2_A);
    builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
    builder.withProducer("Ringbook");
    builder.withDiagnosticConsumer(warnings);
    builder.withW3cDocument(print, null);
    return builder;
  }
}
