package ringbook.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import ringbook.sheets.SheetLine.Flaw;

/**
 * The lines of a sheet, one by one; only the bytes of one line are held. A line ends with a line
 * feed, a carriage return or both.
 */
final class SheetLines {

  /** Longer lines are not read. */
  static final int LONGEST = 1 << 16;

  private final InputStream in;
  private final byte[] buffer = new byte[1 << 15];
  private int at;
  private int end;
  private byte[] line = new byte[256];
  private int length;
  private int number;
  private boolean afterReturn;
  private final Deque<SheetLine> again = new ArrayDeque<>();

  SheetLines(InputStream in) {
    this.in = in;
  }

  /** The next line; null behind the last one. */
  SheetLine next() throws IOException {
    if (!again.isEmpty()) {
      return again.pop();
    }
    length = 0;
    boolean found = false;
    while (more()) {
      byte b = buffer[at++];
      if (b == '\n' && afterReturn) {
        afterReturn = false;
      } else if (b == '\n' || b == '\r') {
        afterReturn = b == '\r';
        return line();
      } else {
        afterReturn = false;
        found = true;
        keep(b);
      }
    }
    return found ? line() : null;
  }

  /** Gives lines back, which come again in this order. */
  void back(List<SheetLine> lines) {
    for (int i = lines.size() - 1; i >= 0; i--) {
      again.push(lines.get(i));
    }
  }

  private boolean more() throws IOException {
    if (at < end) {
      return true;
    }
    at = 0;
    end = in.read(buffer);
    return end > 0;
  }

  private void keep(byte b) {
    if (length == line.length && length <= LONGEST) {
      line = Arrays.copyOf(line, 2 * length);
    }
    if (length <= LONGEST) {
      line[length++] = b;
    }
  }

  private SheetLine line() {
    number++;
    if (length > LONGEST) {
      return flawed(Flaw.TOO_LONG);
    }
    boolean ascii = true;
    for (int i = 0; i < length; i++) {
      if (line[i] == 0) {
        return flawed(Flaw.NUL);
      }
      ascii &= line[i] > 0;
    }
    if (ascii) {
      return sound(new String(line, 0, length, StandardCharsets.ISO_8859_1));
    }
    try {
      ByteBuffer bytes = ByteBuffer.wrap(line, 0, length);
      return sound(StandardCharsets.UTF_8.newDecoder().decode(bytes).toString());
    } catch (CharacterCodingException notUtf8) {
      return flawed(Flaw.NOT_UTF_8);
    }
  }

  private SheetLine sound(String text) {
    return new SheetLine(text, number, Optional.empty());
  }

  private SheetLine flawed(Flaw flaw) {
    return new SheetLine("", number, Optional.of(flaw));
  }
}
