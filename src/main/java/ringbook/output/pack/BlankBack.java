package ringbook.output.pack;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import ringbook.output.book.LastStep;

/** Adds a blank page where a file would end on a front. */
final class BlankBack implements LastStep {

  @Override
  public void add(PDDocument pdf) {
    if (pdf.getNumberOfPages() % 2 == 1) {
      PDPage blank = new PDPage(pdf.getPage(0).getMediaBox());
      blank.setResources(new PDResources());
      pdf.addPage(blank);
    }
  }
}
