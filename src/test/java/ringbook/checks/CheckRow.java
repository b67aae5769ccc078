package ringbook.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * One row of {@code geometry.csv} or {@code pictures.csv}: inputs by name, expected numbers,
 * tolerance.
 */
public final class CheckRow {

  private static final Map<String, CheckRow> ROWS = read();

  private final String id;
  private final Map<String, String> inputs = new LinkedHashMap<>();
  private final String[] expected;
  private final String tolerance;

  private CheckRow(CSVRecord row) {
    id = row.get("id");
    expected = row.get("expected").split(";", -1);
    tolerance = row.get("tolerance");
    for (String input : row.get("inputs").split(";", -1)) {
      int equals = input.indexOf('=');
      if (equals > 0) {
        inputs.put(input.substring(0, equals), input.substring(equals + 1));
      }
    }
  }

  /** The row with that id. */
  public static CheckRow of(String id) {
    return ROWS.get(id);
  }

  /** An input that is one number; fractions such as 1/16 and multiples of pi are worked out. */
  public double in(String name) {
    return number(inputs.get(name));
  }

  /** An input that is several numbers with commas. */
  public double[] list(String name) {
    String[] parts = inputs.get(name).split(",", -1);
    double[] numbers = new double[parts.length];
    for (int i = 0; i < parts.length; i++) {
      numbers[i] = number(parts[i]);
    }
    return numbers;
  }

  /** The expected number at {@code index} from 0. */
  public double expected(int index) {
    return number(expected[index]);
  }

  /** Fails unless the numbers agree with the row within its tolerance. */
  public void agrees(double... ours) {
    assertThat(ours).as(id).hasSameSizeAs(expected);
    for (int i = 0; i < ours.length; i++) {
      assertThat(ours[i]).as(id + ", number " + (i + 1)).isCloseTo(expected(i), bound());
    }
  }

  private org.assertj.core.data.Offset<Double> bound() {
    return within(number(tolerance));
  }

  private static double number(String text) {
    int slash = text.indexOf('/');
    if (slash > 0) {
      return number(text.substring(0, slash)) / number(text.substring(slash + 1));
    }
    return text.equals("pi") ? Math.PI : Double.parseDouble(text);
  }

  private static Map<String, CheckRow> read() {
    Map<String, CheckRow> rows = new LinkedHashMap<>();
    for (String file : List.of("geometry.csv", "pictures.csv")) {
      read(file, rows);
    }
    return rows;
  }

  private static void read(String file, Map<String, CheckRow> rows) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader reader =
            new InputStreamReader(
                CheckRow.class.getResourceAsStream(file), StandardCharsets.UTF_8);
        CSVParser parser = CSVParser.parse(reader, format)) {
      for (CSVRecord row : parser) {
        rows.put(row.get("id"), new CheckRow(row));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
