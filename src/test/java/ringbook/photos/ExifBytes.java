package ringbook.photos;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.imageio.ImageIO;

/**
 * Settings of a photograph as bytes: two directories of TIFF 6.0, the first with what is about the
 * picture, the second with what Exif 2.32 adds (layout from memory).
 */
public final class ExifBytes {

  private static final int ASCII = 2;
  private static final int SHORT = 3;
  private static final int LONG = 4;
  private static final int RATIONAL = 5;
  private static final int EXIF_DIRECTORY = 0x8769;

  /** A value; of a text each character is a number. */
  private record Field(int type, List<Long> numbers) {
    int count() {
      return type == ASCII ? numbers.size() : 1;
    }
  }

  private final Map<Integer, Field> first = new TreeMap<>();
  private final Map<Integer, Field> second = new TreeMap<>();
  private final ByteOrder order;

  public ExifBytes(ByteOrder order) {
    this.order = order;
  }

  /** A phone's photograph with nothing to doubt, 400 by 300 pixels. */
  public static ExifBytes phone() {
    return new ExifBytes(ByteOrder.BIG_ENDIAN)
        .rational(0x829A, 1, 60)
        .rational(0x829D, 18, 10)
        .whole(0x8827, 200)
        .rational(0x920A, 425, 100)
        .whole(0xA405, 26)
        .size(400, 300);
  }

  public ExifBytes rational(int tag, long numerator, long denominator) {
    return put(tag, new Field(RATIONAL, List.of(numerator, denominator)));
  }

  public ExifBytes whole(int tag, int number) {
    return put(tag, new Field(SHORT, List.of((long) number)));
  }

  public ExifBytes size(int columns, int rows) {
    put(0xA002, new Field(LONG, List.of((long) columns)));
    return put(0xA003, new Field(LONG, List.of((long) rows)));
  }

  public ExifBytes text(int tag, String text) {
    return put(tag, new Field(ASCII, (text + "\0").chars().mapToObj(c -> (long) c).toList()));
  }

  public ExifBytes without(int tag) {
    second.remove(tag);
    return this;
  }

  private ExifBytes put(int tag, Field field) {
    (tag < 0x8000 ? first : second).put(tag, field);
    return this;
  }

  /** The bytes alone. */
  byte[] tiff() {
    ByteBuffer bytes = ByteBuffer.allocate(4000).order(order);
    bytes.put((order == ByteOrder.BIG_ENDIAN ? "MM" : "II").getBytes(StandardCharsets.US_ASCII));
    bytes.putShort((short) 42).putInt(8);
    Map<Integer, Field> firstWithLink = new TreeMap<>(first);
    int end = 8 + length(first) + 12;
    firstWithLink.put(EXIF_DIRECTORY, new Field(LONG, List.of((long) end)));
    directory(bytes, firstWithLink);
    directory(bytes, second);
    byte[] used = new byte[bytes.position()];
    bytes.rewind().get(used);
    return used;
  }

  private static int length(Map<Integer, Field> fields) {
    return 6 + fields.values().stream().mapToInt(field -> 12 + outside(field)).sum();
  }

  /** Bytes that find no room in the entry itself. */
  private static int outside(Field field) {
    return switch (field.type()) {
      case RATIONAL -> 8;
      case ASCII -> field.count() > 4 ? field.count() : 0;
      default -> 0;
    };
  }

  private static void directory(ByteBuffer bytes, Map<Integer, Field> fields) {
    int outside = bytes.position() + 6 + 12 * fields.size();
    bytes.putShort((short) fields.size());
    for (Map.Entry<Integer, Field> entry : fields.entrySet()) {
      Field field = entry.getValue();
      bytes.putShort((short) (int) entry.getKey()).putShort((short) field.type());
      bytes.putInt(field.count());
      int at = bytes.position();
      int room = outside(field);
      if (room > 0) {
        bytes.putInt(outside);
        bytes.position(outside);
        outside += room;
      }
      value(bytes, field);
      bytes.position(at + 4);
    }
    bytes.putInt(0);
    bytes.position(outside);
  }

  private static void value(ByteBuffer bytes, Field field) {
    for (long number : field.numbers()) {
      switch (field.type()) {
        case ASCII -> bytes.put((byte) number);
        case SHORT -> bytes.putShort((short) number);
        default -> bytes.putInt((int) number);
      }
    }
  }

  /** A JPEG file of {@code picture} with these settings in its first segment. */
  public byte[] jpeg(BufferedImage picture) {
    byte[] plain = encoded(picture, "jpg");
    byte[] tiff = tiff();
    ByteBuffer bytes = ByteBuffer.allocate(plain.length + tiff.length + 10);
    bytes.put(plain, 0, 2).putShort((short) 0xFFE1).putShort((short) (tiff.length + 8));
    bytes.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII)).put(tiff);
    bytes.put(plain, 2, plain.length - 2);
    return bytes.array();
  }

  /** A grey JPEG file of 400 by 300 pixels with these settings. */
  public byte[] jpeg() {
    return jpeg(grey(400, 300));
  }

  static BufferedImage grey(int columns, int rows) {
    BufferedImage picture = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_RGB);
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        picture.setRGB(column, row, 0x808080);
      }
    }
    return picture;
  }

  static byte[] encoded(BufferedImage picture, String format) {
    try {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      ImageIO.write(picture, format, bytes);
      return bytes.toByteArray();
    } catch (IOException cannotBe) {
      throw new UncheckedIOException(cannotBe);
    }
  }
}
