package ringbook.sheets;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import ringbook.problems.Position;
import ringbook.problems.Problems;

/** The characters of a sheet. */
final class SheetText {

  private static final String SAVE_AS = "save the sheet again as UTF-8 (\"CSV UTF-8\")";

  private SheetText() {}

  /** The text without a byte order mark; empty, with the fault told, where it is not UTF-8. */
  static Optional<String> decode(String file, byte[] bytes, Problems problems) {
    if (bytes.length > 1 && isUtf16(bytes[0] & 0xff, bytes[1] & 0xff)) {
      problems.add(Position.ofFile(file), "the sheet is UTF-16, not UTF-8", SAVE_AS);
      return Optional.empty();
    }
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    CoderResult result = decoder.decode(in, out, true);
    out.flip();
    if (result.isError()) {
      problems.add(
          new Position(file, 1 + lineEnds(bytes, in.position()), 0),
          "the sheet is not UTF-8 but something else, most likely Windows-1252",
          SAVE_AS);
      return Optional.empty();
    }
    String text = out.toString();
    return Optional.of(text.startsWith("\ufeff") ? text.substring(1) : text);
  }

  private static boolean isUtf16(int first, int second) {
    return (first == 0xff && second == 0xfe) || (first == 0xfe && second == 0xff);
  }

  private static int lineEnds(byte[] bytes, int before) {
    int ends = 0;
    for (int i = 0; i < before; i++) {
      ends += bytes[i] == '\n' ? 1 : 0;
    }
    return ends;
  }
}
