package ringbook.output.ebook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Packs an e-book: the type first and stored, as the EPUB container asks, the rest deflated. */
final class EbookZip {

  private static final String TYPE = "application/epub+zip";

  /** The first year that the archive's times can write without an extension. */
  private static final LocalDate FIRST = LocalDate.of(1980, 1, 2);

  private EbookZip() {}

  /** The archive; all its times are the noon of {@code date}. */
  static byte[] of(Map<String, String> files, LocalDate date) throws IOException {
    LocalDateTime time = (date.isBefore(FIRST) ? FIRST : date).atTime(12, 0);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
      byte[] type = TYPE.getBytes(StandardCharsets.US_ASCII);
      ZipEntry first = entry("mimetype", time);
      CRC32 sum = new CRC32();
      sum.update(type);
      first.setMethod(ZipEntry.STORED);
      first.setSize(type.length);
      first.setCrc(sum.getValue());
      zip.putNextEntry(first);
      zip.write(type);
      for (Map.Entry<String, String> file : files.entrySet()) {
        zip.putNextEntry(entry(file.getKey(), time));
        zip.write(file.getValue().getBytes(StandardCharsets.UTF_8));
      }
    }
    return bytes.toByteArray();
  }

  private static ZipEntry entry(String name, LocalDateTime time) {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(time);
    return entry;
  }
}
