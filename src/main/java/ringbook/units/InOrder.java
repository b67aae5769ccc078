package ringbook.units;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Puts maps in the order of their keys; a tree of them would make the page's script larger. */
public final class InOrder {

  private InOrder() {}

  /** What {@code map} holds now, by key in order; never changes. */
  public static <T> Map<String, T> byKey(Map<String, T> map) {
    List<String> keys = new ArrayList<>(map.keySet());
    Collections.sort(keys);
    Map<String, T> sorted = new LinkedHashMap<>();
    for (String key : keys) {
      sorted.put(key, map.get(key));
    }
    return Collections.unmodifiableMap(sorted);
  }
}
