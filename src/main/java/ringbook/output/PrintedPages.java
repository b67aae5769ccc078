package ringbook.output;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalInt;

/**
 * On which page of the printed book each place of the course begins.
 *
 * @param starts by name of the place as {@link PlaceMarks} gives it, the number printed on the
 *     page, from 1
 */
public record PrintedPages(Map<String, Integer> starts) {

  /** No book was printed. */
  public static final PrintedPages NONE = new PrintedPages(Map.of());

  public PrintedPages {
    starts = Collections.unmodifiableMap(new LinkedHashMap<>(starts));
  }

  /** The page on which {@code place} begins; empty if the book does not hold it. */
  public OptionalInt of(String place) {
    Integer page = starts.get(place);
    return page == null ? OptionalInt.empty() : OptionalInt.of(page);
  }
}
