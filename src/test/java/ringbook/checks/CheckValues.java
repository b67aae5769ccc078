package ringbook.checks;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * Values from outside the project that its results are held against, read from files beside this
 * class. Columns: id, topic, inputs ({@code key=value;key=value}, units in the key), expected and
 * unit (components split by semicolons), tolerance (absolute, for each component), grade, source,
 * how it was verified.
 *
 * <p>Grades: A standard, textbook, paper, maker's manual; B reference page or posted answer;
 * library output of a general-purpose library; own second route, no outside evidence; practice
 * common practice, no source; memory not read again.
 */
public final class CheckValues {

  /** All files of this layout. */
  public static final List<String> FILES =
      List.of(
          "check-values.csv",
          "pictures.csv",
          "exposure.csv",
          "geometry.csv",
          "poses.csv",
          "contrast.csv");

  private CheckValues() {}

  /**
   * One check value.
   *
   * @param id its number, unique over all files
   * @param topic what is computed
   * @param inputs numbers and words put in, units in the key
   * @param expected each component as printed: a number, {@code inf}, {@code refuse}, {@code true}
   *     …
   * @param tolerance absolute; 0 for exact and where a word is expected
   * @param grade how far to trust it; see above
   * @param source where the value was published
   */
  public record Row(
      String id,
      String topic,
      Map<String, String> inputs,
      List<String> expected,
      double tolerance,
      String grade,
      String source) {

    /** The input as a number; fractions such as {@code 1/125} are worked out. */
    public double number(String key) {
      return CheckValues.number(word(key));
    }

    /** An input of several numbers with commas between. */
    public double[] numbers(String key) {
      String[] parts = word(key).split(",", -1);
      double[] numbers = new double[parts.length];
      for (int i = 0; i < parts.length; i++) {
        numbers[i] = CheckValues.number(parts[i]);
      }
      return numbers;
    }

    /** The input as written. */
    public String word(String key) {
      return Objects.requireNonNull(inputs.get(key), () -> id + " has no input " + key);
    }
  }

  /** The row with that id, from whatever file. */
  public static Row row(String id) {
    return FILES.stream()
        .flatMap(file -> read(file).stream())
        .filter(row -> row.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no check value " + id));
  }

  /** The rows of a file beside this class. */
  public static List<Row> read(String file) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    List<Row> rows = new ArrayList<>();
    try (Reader text =
        new InputStreamReader(
            Objects.requireNonNull(CheckValues.class.getResourceAsStream(file), file),
            StandardCharsets.UTF_8)) {
      for (CSVRecord line : format.parse(text)) {
        rows.add(row(line));
      }
    } catch (IOException e) {
      throw new IllegalStateException("cannot read " + file, e);
    }
    return rows;
  }

  private static Row row(CSVRecord line) {
    Map<String, String> inputs = new LinkedHashMap<>();
    for (String pair : line.get("inputs").split(";", -1)) {
      int equals = pair.indexOf('=');
      if (equals > 0) {
        inputs.put(pair.substring(0, equals), pair.substring(equals + 1));
      }
    }
    String tolerance = line.get("tolerance");
    return new Row(
        line.get("id"),
        line.get("topic"),
        inputs,
        List.of(line.get("expected").split(";", -1)),
        tolerance.equals("n/a") ? 0 : Double.parseDouble(tolerance),
        line.get("grade"),
        line.get("source"));
  }

  static double number(String text) {
    int slash = text.indexOf('/');
    if (slash > 0) {
      return number(text.substring(0, slash)) / number(text.substring(slash + 1));
    }
    return switch (text) {
      case "inf" -> Double.POSITIVE_INFINITY;
      case "pi" -> Math.PI;
      case "true" -> 1;
      case "false" -> 0;
      default -> Double.parseDouble(text);
    };
  }
}
