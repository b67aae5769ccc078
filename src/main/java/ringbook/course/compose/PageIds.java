package ringbook.course.compose;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringbook.problems.Position;

/** The ids of one lesson; its own id stands before each, so they are unique in the course. */
final class PageIds {

  private static final String JOINT = "--";

  private final String lesson;
  private final Map<String, Position> taken = new LinkedHashMap<>();

  PageIds(String lesson) {
    this.lesson = lesson;
  }

  /** {@code name} as it stands in the page. */
  static String full(String lesson, String name) {
    return lesson + JOINT + name;
  }

  /** {@code name} as it stands in the page. */
  String full(String name) {
    return full(lesson, name);
  }

  /** Takes a name the author chose; where it was taken before, if it was. */
  Optional<Position> take(String name, Position position) {
    return Optional.ofNullable(taken.putIfAbsent(name, position));
  }

  /** A free name like {@code wish}, taken from now on. */
  String free(String wish, Position position) {
    String name = wish;
    for (int n = 2; taken.containsKey(name); n++) {
      name = wish + "-" + n;
    }
    taken.put(name, position);
    return name;
  }

  /** All names taken. */
  Set<String> names() {
    return taken.keySet();
  }

  /** A name made of the letters and digits of {@code text}. */
  static String slug(String text) {
    StringBuilder slug = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = Character.toLowerCase(text.charAt(i));
      if (Character.isLetterOrDigit(c)) {
        slug.append(c);
      } else if (!slug.isEmpty() && slug.charAt(slug.length() - 1) != '-') {
        slug.append('-');
      }
    }
    int end = slug.length();
    return end == 0
        ? "part"
        : slug.charAt(end - 1) == '-' ? slug.substring(0, end - 1) : slug.toString();
  }
}
