package ringbook.sheets;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import ringbook.problems.Position;

/**
 * The bytes of a sheet as UTF-8 without a byte order mark. UTF-16 is known by its mark, or by the
 * empty bytes between plain letters, and turned into UTF-8.
 */
final class SheetBytes {

  static final String SAVE_AS = "save the sheet again as UTF-8 (\"CSV UTF-8\")";

  private SheetBytes() {}

  /** The bytes, or empty with the fault told where they are no text. */
  static Optional<InputStream> open(String file, InputStream raw, Faults faults)
      throws IOException {
    BufferedInputStream in = new BufferedInputStream(raw, 1 << 15);
    in.mark(8);
    byte[] start = in.readNBytes(4);
    in.reset();
    if (begins(start, 0xef, 0xbb, 0xbf)) {
      in.skipNBytes(3);
      return Optional.of(in);
    }
    Optional<Charset> wide = wide(start);
    if (wide.isPresent()) {
      return Optional.of(new WideText(new InputStreamReader(in, wide.get())));
    }
    if (begins(start, 'P', 'K', 3, 4) || begins(start, 0xd0, 0xcf, 0x11, 0xe0)) {
      faults.add(
          Position.ofFile(file),
          "this is a spreadsheet's or packed file, not a table as text",
          "open it in the spreadsheet and save the sheet as \"CSV UTF-8\"");
      return Optional.empty();
    }
    return Optional.of(in);
  }

  private static Optional<Charset> wide(byte[] start) {
    if (begins(start, 0xff, 0xfe) || begins(start, 0xfe, 0xff)) {
      return Optional.of(StandardCharsets.UTF_16);
    }
    if (start.length == 4 && start[0] > 0 && start[2] > 0 && start[1] == 0 && start[3] == 0) {
      return Optional.of(StandardCharsets.UTF_16LE);
    }
    if (start.length == 4 && start[1] > 0 && start[3] > 0 && start[0] == 0 && start[2] == 0) {
      return Optional.of(StandardCharsets.UTF_16BE);
    }
    return Optional.empty();
  }

  private static boolean begins(byte[] bytes, int... with) {
    for (int i = 0; i < with.length; i++) {
      if (i >= bytes.length || (bytes[i] & 0xff) != with[i]) {
        return false;
      }
    }
    return true;
  }
}
