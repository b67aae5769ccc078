package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import ringbook.units.Words;

/** Puts words together for people. */
final class Sentence {

  private Sentence() {}

  /** The text with a capital first letter. */
  static String capital(String text) {
    return text.isEmpty() ? text : Words.upper(text.substring(0, 1)) + text.substring(1);
  }

  /** "a", "a and b", "a, b and c". */
  static String list(List<String> items) {
    if (items.size() < 2) {
      return String.join("", items);
    }
    int last = items.size() - 1;
    return String.join(", ", items.subList(0, last)) + " and " + items.get(last);
  }

  /** Runs of whole numbers: "2, 5 to 9 and 12"; numbers in rising order. */
  static String runs(List<Integer> numbers) {
    List<String> runs = new ArrayList<>();
    int i = 0;
    while (i < numbers.size()) {
      int end = i;
      while (end + 1 < numbers.size() && numbers.get(end + 1) == numbers.get(end) + 1) {
        end++;
      }
      String from = String.valueOf(numbers.get(i));
      runs.add(end == i ? from : from + (end == i + 1 ? ", " : " to ") + numbers.get(end));
      i = end + 1;
    }
    return list(runs);
  }

  /** The text broken into lines no wider than {@code width}; a longer word gets its own line. */
  static List<String> lines(String text, double size, double width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    int start = 0;
    while (start < text.length()) {
      int space = text.indexOf(' ', start);
      int end = space < 0 ? text.length() : space;
      String word = text.substring(start, end);
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && TextWidth.of(longer, size) > width) {
        lines.add(line);
        line = word;
      } else {
        line = longer;
      }
      start = end + 1;
    }
    if (!line.isEmpty()) {
      lines.add(line);
    }
    return lines;
  }

  /** The text, or as much of it as fits with "…" at its end. */
  static String fitted(String text, double size, double width) {
    if (TextWidth.of(text, size) <= width) {
      return text;
    }
    String cut = text;
    while (!cut.isEmpty() && TextWidth.of(cut + "…", size) > width) {
      cut = cut.substring(0, cut.length() - 1);
    }
    return cut + "…";
  }
}
