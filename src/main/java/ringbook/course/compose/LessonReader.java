package ringbook.course.compose;

import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import ringbook.course.ComposedCourse;
import ringbook.course.markdown.Markdown;
import ringbook.problems.Nearest;
import ringbook.problems.Position;
import ringbook.problems.Problems;

/**
 * Reads a lesson: the front matter ({@code id}, {@code title}, {@code aim} and, where needed,
 * {@code everyday}, one a line between two lines of {@code ---}) and the Markdown below it.
 */
final class LessonReader {

  /** Names of pages that every course has. */
  private static final List<String> TAKEN =
      List.of(
          "index",
          "quantities",
          ComposedCourse.FIELD_VIEW,
          "title-page",
          "contents",
          "index-of-quantities");

  private static final List<String> FIELDS = List.of("id", "title", "aim");
  private static final String EVERYDAY = "everyday";
  private static final List<String> KNOWN = List.of("id", "title", "aim", EVERYDAY);
  private static final Pattern ID = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");

  private final LessonSource source;
  private final Problems problems;
  private final Lines lines;
  private final Map<String, String> values = new LinkedHashMap<>();
  private final Map<String, Position> places = new LinkedHashMap<>();

  private LessonReader(LessonSource source, Problems problems) {
    this.source = source;
    this.problems = problems;
    this.lines = new Lines(source.file(), source.text());
  }

  /** The lesson; empty, with the fault told, where its front matter cannot be used. */
  static Optional<Lesson> read(LessonSource source, Problems problems) {
    return new LessonReader(source, problems).read();
  }

  private Optional<Lesson> read() {
    String text = source.text();
    int body = text.startsWith("---") ? frontMatter() : -1;
    if (body < 0) {
      problems.add(
          lines.apply(0),
          text.startsWith("---")
              ? "the front matter does not end"
              : "the lesson does not begin with its front matter",
          "write '---', then 'id:', 'title:' and 'aim:' one a line, then '---'");
      return Optional.empty();
    }
    checkFields();
    BasedSequence markdown = BasedSequence.of(text).subSequence(body, text.length());
    String id = values.getOrDefault("id", "");
    if (!ID.matcher(id).matches()) {
      return Optional.empty();
    }
    return Optional.of(
        new Lesson(
            id,
            values.getOrDefault("title", ""),
            values.getOrDefault("aim", ""),
            everyday(),
            Markdown.parse(markdown),
            lines));
  }

  /** Reads the fields; where the Markdown begins, or -1 if the front matter does not end. */
  private int frontMatter() {
    String text = source.text();
    List<Integer> starts = new ArrayList<>();
    for (int start = endOfLine(0); start < text.length(); start = endOfLine(start)) {
      if (text.substring(start, endOfLine(start)).strip().equals("---")) {
        starts.forEach(this::field);
        return endOfLine(start);
      }
      starts.add(start);
    }
    return -1;
  }

  private void field(int start) {
    String line = source.text().substring(start, endOfLine(start)).strip();
    if (line.isEmpty()) {
      return;
    }
    int colon = line.indexOf(':');
    String name = colon < 0 ? line : line.substring(0, colon).strip();
    if (colon < 0 || !KNOWN.contains(name)) {
      problems.add(
          lines.apply(start),
          "the front matter has no field '" + name + "'",
          Nearest.help(name, KNOWN));
    } else if (values.put(name, unquoted(line.substring(colon + 1).strip())) != null) {
      problems.add(lines.apply(start), "'" + name + "' stands twice", "keep one of them");
    }
    places.put(name, lines.apply(start));
  }

  private List<Lesson.Word> everyday() {
    List<Lesson.Word> words = new ArrayList<>();
    for (String word : values.getOrDefault(EVERYDAY, "").split(",", -1)) {
      if (!word.isBlank()) {
        words.add(new Lesson.Word(word.strip(), places.get(EVERYDAY)));
      }
    }
    return words;
  }

  private void checkFields() {
    for (String name : FIELDS) {
      if (values.getOrDefault(name, "").isEmpty()) {
        problems.add(
            places.getOrDefault(name, lines.apply(0)),
            "the front matter lacks '" + name + "'",
            "add '" + name + ": …' between the two lines of '---'");
      }
    }
    String id = values.getOrDefault("id", "");
    if (TAKEN.contains(id)) {
      problems.add(
          places.get("id"),
          "'" + id + "' is the name of a page that every course has",
          "give the lesson another id");
    } else if (!id.isEmpty() && !ID.matcher(id).matches()) {
      problems.add(
          places.get("id"),
          "'" + id + "' cannot be the id of a lesson",
          "use lower-case letters, digits and single hyphens, such as right-distance");
    }
  }

  private int endOfLine(int from) {
    int end = source.text().indexOf('\n', from);
    return end < 0 ? source.text().length() : end + 1;
  }

  private static String unquoted(String text) {
    char first = text.isEmpty() ? ' ' : text.charAt(0);
    boolean quoted = first == '"' || first == '\'';
    return quoted && text.length() > 1 && text.charAt(text.length() - 1) == first
        ? text.substring(1, text.length() - 1)
        : text;
  }
}
