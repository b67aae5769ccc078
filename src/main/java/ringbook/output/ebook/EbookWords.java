package ringbook.output.ebook;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ringbook.output.MinusSigns;

/** Sets negative numbers with a minus sign, as formulas and the printed book have it. */
final class EbookWords {

  private static final Pattern PIECE =
      Pattern.compile("<(/?)([A-Za-z0-9]+)(?:[^\"'<>]++|\"[^\"]*+\"|'[^']*+')*+>|[^<]++|<");

  private EbookWords() {}

  /** The page with its signs; marks and attributes stay. */
  static String set(String xhtml) {
    StringBuilder out = new StringBuilder(xhtml.length());
    int kept = 0;
    Matcher piece = PIECE.matcher(xhtml);
    while (piece.find()) {
      String text = piece.group();
      if (piece.group(2) == null && kept == 0) {
        text = MinusSigns.set(text);
      } else if (piece.group(2) != null && MinusSigns.leave(piece.group(2))) {
        kept += piece.group(1).isEmpty() ? 1 : -1;
      }
      out.append(text);
    }
    return out.toString();
  }
}
