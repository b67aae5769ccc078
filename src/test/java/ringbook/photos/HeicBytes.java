package ringbook.photos;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * The smallest high efficiency image file that carries settings and no picture: ftyp, meta (hdlr,
 * iinf, iloc) and mdat, by ISO/IEC 23008-12 and 14496-12 (layout from memory).
 */
final class HeicBytes {

  private HeicBytes() {}

  static byte[] of(ExifBytes exif) {
    byte[] tiff = exif.tiff();
    byte[] payload = join(number(6), "Exif\0\0".getBytes(StandardCharsets.US_ASCII), tiff);
    byte[] type = box("ftyp", text("heic"), number(0), text("mif1"), text("heic"));
    int before = type.length + meta(0, payload.length).length + 8;
    return join(type, meta(before, payload.length), box("mdat", payload));
  }

  private static byte[] meta(int offset, int length) {
    byte[] handler = box("hdlr", number(0), number(0), text("pict"), new byte[13]);
    byte[] entry =
        box("infe", number(0x02000000), new byte[] {0, 1, 0, 0}, text("Exif"), new byte[1]);
    byte[] items = box("iinf", number(0), new byte[] {0, 1}, entry);
    byte[] places =
        box(
            "iloc",
            number(0),
            new byte[] {0x44, 0, 0, 1, 0, 1, 0, 0, 0, 1},
            number(offset),
            number(length));
    return box("meta", number(0), handler, items, places);
  }

  private static byte[] box(String type, byte[]... parts) {
    byte[] content = join(parts);
    return join(number(content.length + 8), text(type), content);
  }

  private static byte[] text(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  private static byte[] number(int number) {
    return ByteBuffer.allocate(4).putInt(number).array();
  }

  private static byte[] join(byte[]... parts) {
    int length = 0;
    for (byte[] part : parts) {
      length += part.length;
    }
    ByteBuffer all = ByteBuffer.allocate(length);
    for (byte[] part : parts) {
      all.put(part);
    }
    return all.array();
  }
}
