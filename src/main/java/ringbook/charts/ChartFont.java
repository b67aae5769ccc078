package ringbook.charts;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The typeface of charts, taken from the libraries so that every machine measures text alike. */
final class ChartFont {

  private static final String FILE = "/liberation/LiberationSans-Regular.ttf";
  private static final Font REGULAR = load();

  private ChartFont() {}

  /** The typeface in a size. */
  static Font ofSize(double size) {
    return REGULAR.deriveFont((float) size);
  }

  private static Font load() {
    try (InputStream in = ChartFont.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new IllegalStateException("the typeface " + FILE + " is missing from the libraries");
      }
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    } catch (FontFormatException broken) {
      throw new IllegalStateException("the typeface " + FILE + " cannot be used", broken);
    }
  }
}
