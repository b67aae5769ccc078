package ringbook.output;

import java.util.Locale;

/** The order of an index, the same in book and e-book, whose page list follows the book. */
public final class IndexOrder {

  private IndexOrder() {}

  /** What a name is filed under: small letters without an article in front. */
  public static String filed(String name) {
    return name.toLowerCase(Locale.ROOT).replaceFirst("^(?:an?|the) ", "");
  }
}
