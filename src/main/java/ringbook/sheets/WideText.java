package ringbook.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;

/** Text of any encoding as UTF-8 bytes, some thousand characters at a time. */
final class WideText extends InputStream {

  private final Reader in;
  private final char[] chars = new char[1 << 13];
  private int kept;
  private byte[] bytes = {};
  private int at;

  WideText(Reader in) {
    this.in = in;
  }

  @Override
  public int read() throws IOException {
    return more() ? bytes[at++] & 0xff : -1;
  }

  @Override
  public int read(byte[] into, int from, int most) throws IOException {
    if (!more()) {
      return -1;
    }
    int count = Math.min(most, bytes.length - at);
    System.arraycopy(bytes, at, into, from, count);
    at += count;
    return count;
  }

  private boolean more() throws IOException {
    while (at == bytes.length) {
      int count = in.read(chars, kept, chars.length - kept);
      if (count < 0 && kept == 0) {
        return false;
      }
      int all = kept + Math.max(count, 0);
      boolean half = count > 0 && Character.isHighSurrogate(chars[all - 1]);
      bytes = new String(chars, 0, half ? all - 1 : all).getBytes(StandardCharsets.UTF_8);
      at = 0;
      kept = half ? 1 : 0;
      chars[0] = chars[all - 1];
    }
    return true;
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
