package ringbook.meshes;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;

/** The bytes of a mesh file through a small buffer, as lines or as binary numbers. */
final class ByteSource {

  private static final String CUT = "the file ends too early; copy or export it again";

  private final InputStream in;
  private final byte[] buffer = new byte[1 << 16];
  private int filled;
  private int at;
  private long before;
  private int line;

  ByteSource(InputStream in) {
    this.in = in;
  }

  /** Bytes read so far. */
  long offset() {
    return before + at;
  }

  /** The number of the line read last, from 1. */
  int line() {
    return line;
  }

  /** The first bytes, as many as there are, without taking them. */
  byte[] peek(int count) throws IOException {
    while (filled < count) {
      int got = in.read(buffer, filled, buffer.length - filled);
      if (got < 0) {
        break;
      }
      filled += got;
    }
    byte[] first = new byte[Math.min(count, filled)];
    System.arraycopy(buffer, 0, first, 0, first.length);
    return first;
  }

  /** The next byte, or -1. */
  int next() throws IOException, BrokenMeshException {
    if (at == filled) {
      before += filled;
      at = 0;
      filled = Math.max(0, in.read(buffer, 0, buffer.length));
      if (filled == 0) {
        return -1;
      }
      if (before + filled > MeshLimits.MOST_BYTES) {
        throw tooLong();
      }
    }
    return buffer[at++] & 0xff;
  }

  static BrokenMeshException tooLong() {
    return new BrokenMeshException(
        0,
        "the mesh file is larger than " + MeshLimits.MOST_BYTES / 1_000_000 + " MB",
        "export a coarser mesh; " + MeshLimits.MOST_TRIANGLES_TOLD + " are the most");
  }

  /** The next line without its end, or null. */
  String readLine() throws IOException, BrokenMeshException {
    StringBuilder text = new StringBuilder();
    int c = next();
    if (c < 0) {
      return null;
    }
    line++;
    while (c >= 0 && c != '\n') {
      if (c != '\r') {
        text.append((char) c);
      }
      if (text.length() > MeshLimits.MOST_IN_LINE) {
        throw new BrokenMeshException(
            line,
            "the line is longer than " + MeshLimits.MOST_IN_LINE + " characters",
            "this may not be a mesh file");
      }
      c = next();
    }
    return text.toString();
  }

  /** The next line's words, skipping empty lines; empty at the end of the file. */
  List<String> words() throws IOException, BrokenMeshException {
    String text = readLine();
    while (text != null) {
      List<String> words = words(text);
      if (!words.isEmpty()) {
        return words;
      }
      text = readLine();
    }
    return List.of();
  }

  static List<String> words(String text) {
    List<String> words = new ArrayList<>();
    int i = 0;
    while (i < text.length()) {
      int from = i;
      while (i < text.length() && text.charAt(i) > ' ') {
        i++;
      }
      if (i > from) {
        words.add(text.substring(from, i));
      }
      i++;
    }
    return words;
  }

  /** A whole number of so many bytes, least byte first or last. */
  long integer(int bytes, boolean leastFirst) throws IOException, BrokenMeshException {
    long value = 0;
    for (int i = 0; i < bytes; i++) {
      int b = next();
      if (b < 0) {
        throw new BrokenMeshException(0, "the data stops at byte " + offset(), CUT);
      }
      value = leastFirst ? value | (long) b << (8 * i) : value << 8 | b;
    }
    return value;
  }

  /** A floating-point number of 4 or 8 bytes. */
  double real(int bytes, boolean leastFirst) throws IOException, BrokenMeshException {
    long bits = integer(bytes, leastFirst);
    return bytes == 4 ? Float.intBitsToFloat((int) bits) : Double.longBitsToDouble(bits);
  }

  void skip(long bytes) throws IOException, BrokenMeshException {
    for (long i = 0; i < bytes; i++) {
      integer(1, true);
    }
  }

  /** A number written as text. */
  double number(String word) throws BrokenMeshException {
    try {
      double value = Double.parseDouble(word);
      boolean plain = Character.isDigit(word.charAt(word.length() - 1)) || word.endsWith(".");
      if (plain || Double.isNaN(value) || Double.isInfinite(value)) {
        return value;
      }
    } catch (NumberFormatException noNumber) {
      if (word.equalsIgnoreCase("nan") || word.equalsIgnoreCase("inf")) {
        return Double.NaN;
      }
    }
    throw new BrokenMeshException(line, "'" + word + "' is not a number", "export the mesh again");
  }

  /** A whole number written as text. */
  int whole(String word) throws BrokenMeshException {
    try {
      return Integer.parseInt(word);
    } catch (NumberFormatException noNumber) {
      throw new BrokenMeshException(
          line, "'" + word + "' is not a whole number", "export the mesh again");
    }
  }
}
