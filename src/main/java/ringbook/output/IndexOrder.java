package ringbook.output;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** The order of an index, the same in book and e-book, whose page list follows the book. */
public final class IndexOrder {

  private IndexOrder() {}

  /**
   * The entries as an index lists them; those filed alike stay in the order they came in.
   *
   * @param name gives the name that an entry is listed by
   */
  public static <T> List<T> sorted(Collection<T> entries, Function<T, String> name) {
    return entries.stream()
        .sorted(Comparator.comparing(entry -> filed(name.apply(entry))))
        .toList();
  }

  /** What a name is filed under: small letters without an article in front. */
  public static String filed(String name) {
    return name.toLowerCase(Locale.ROOT).replaceFirst("^(?:an?|the) ", "");
  }
}
