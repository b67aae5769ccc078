package ringbook.course.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The numbers a reader finds in a question with a table below it, each in metres, radians, seconds,
 * bytes, or as it stands. Reads with regular expressions and its own factors, apart from the units
 * of the program.
 */
final class PrintedTable {

  private static final Pattern NUMBER =
      Pattern.compile(
          "(?<![\\w.])([−-]?)(\\d+(?:\\.\\d+)?)"
              + "(?:[\\s\\u00a0]?(mm|cm|in/s|in\\b|m\\b|µm|°|%|px|GB|MB|min\\b|s\\b))?");

  static final Map<String, Double> FACTORS =
      Map.ofEntries(
          Map.entry("µm", 1e-6),
          Map.entry("mm", 1e-3),
          Map.entry("cm", 1e-2),
          Map.entry("in", 0.0254), // exactly, since 1959
          Map.entry("in/s", 0.0254),
          Map.entry("m", 1.0),
          Map.entry("°", Math.PI / 180),
          Map.entry("%", 0.01),
          Map.entry("px", 1.0),
          Map.entry("MB", 1e6),
          Map.entry("GB", 1e9),
          Map.entry("min", 60.0),
          Map.entry("s", 1.0));

  private final String text;
  private final List<String> lines;
  private final List<Double> asked;
  private final List<Double> items = new ArrayList<>();
  private final List<String> units = new ArrayList<>();

  /** Of a question and the lines listed below it, each a name, a colon and a value. */
  PrintedTable(String question, List<String> lines) {
    this.text = question + " " + lines;
    this.lines = List.copyOf(lines);
    this.asked = numbers(question, new ArrayList<>());
    for (String line : lines) {
      List<String> found = new ArrayList<>();
      List<Double> numbers = numbers(line.substring(line.lastIndexOf(':') + 1), found);
      if (numbers.size() != 1) {
        throw new AssertionError("not one number: " + line);
      }
      items.add(numbers.get(0));
      units.add(found.get(0));
    }
  }

  private static List<Double> numbers(String text, List<String> units) {
    List<Double> numbers = new ArrayList<>();
    Matcher matcher = NUMBER.matcher(text);
    while (matcher.find()) {
      String unit = matcher.group(3) == null ? "" : matcher.group(3);
      double size = Double.parseDouble(matcher.group(2)) * FACTORS.getOrDefault(unit, 1.0);
      numbers.add(matcher.group(1).isEmpty() ? size : -size);
      units.add(unit);
    }
    return numbers;
  }

  /** The number at that place of the question, from 1. */
  double asked(int place) {
    return asked.get(place - 1);
  }

  /** The number in that line of the table, from 1. */
  double item(int line) {
    return items.get(line - 1);
  }

  /** The unit of the number in that line; empty where it has none. */
  String unit(int line) {
    return units.get(line - 1);
  }

  /** How many decimals the number in that line has. */
  int decimals(int line) {
    String number =
        lines.get(line - 1).replaceFirst(".*\\d\\.(?=\\d)", ".").replaceFirst("(?<=\\d)\\D*$", "");
    return number.startsWith(".") ? number.length() - 1 : 0;
  }

  @Override
  public String toString() {
    return text;
  }
}
