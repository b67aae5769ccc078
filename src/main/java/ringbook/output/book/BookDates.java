package ringbook.output.book;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import ringbook.course.CourseInfo;

/** Puts the edition's date where the page maker put the clock's, and an id made of the course. */
final class BookDates {

  private BookDates() {}

  static void fix(PDDocument pdf, CourseInfo info) throws IOException {
    LocalDate date = LocalDate.parse(info.date());
    GregorianCalendar made = GregorianCalendar.from(date.atStartOfDay(ZoneOffset.UTC));
    pdf.getDocumentInformation().setCreationDate(made);
    pdf.getDocumentInformation().setModificationDate(made);
    PDMetadata metadata = pdf.getDocumentCatalog().getMetadata();
    String xmp = new String(metadata.toByteArray(), StandardCharsets.UTF_8);
    String dated =
        xmp.replaceAll(
            "<xmp:(CreateDate|ModifyDate|MetadataDate)>[^<]*<", "<xmp:$1>" + date + "T00:00:00Z<");
    metadata.importXMPMetadata(dated.getBytes(StandardCharsets.UTF_8));
    CRC32 id = new CRC32();
    id.update(info.toString().getBytes(StandardCharsets.UTF_8));
    pdf.setDocumentId(id.getValue());
  }
}
