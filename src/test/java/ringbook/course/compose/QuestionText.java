package ringbook.course.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The numbers a reader finds in a question, in order, each in metres, radians, or as it stands.
 * Reads with regular expressions and its own factors, apart from the units of the program.
 */
final class QuestionText {

  private static final Pattern NUMBER =
      Pattern.compile(
          "(f/)?(?<![\\w.])(1/(?=\\d))?(\\d+(?:\\.\\d+)?)[\\s\\u00a0]?(mm|cm|m\\b|µm|°|%|px|s\\b|(?<=\\u00a0)in\\b)?");

  private static final Map<String, Double> FACTORS =
      Map.of(
          "µm",
          1e-6,
          "mm",
          1e-3,
          "cm",
          1e-2,
          "in", // exactly 25.4 mm since 1959
          0.0254,
          "m",
          1.0,
          "°",
          Math.PI / 180,
          "%",
          0.01,
          "px",
          1.0,
          "s",
          1.0);

  private final String text;
  private final List<Double> values = new ArrayList<>();

  QuestionText(String text) {
    this.text = text;
    Matcher matcher = NUMBER.matcher(text);
    while (matcher.find()) {
      String unit = matcher.group(4);
      double written = Double.parseDouble(matcher.group(3));
      double value = matcher.group(2) == null ? written : 1 / written;
      values.add(value * (unit == null ? 1 : FACTORS.get(unit)));
    }
  }

  /** The number at that place, from 1. */
  double number(int place) {
    if (place > values.size()) {
      throw new AssertionError("the question has only " + values.size() + " numbers: " + text);
    }
    return values.get(place - 1);
  }

  @Override
  public String toString() {
    return text + " " + values;
  }
}
