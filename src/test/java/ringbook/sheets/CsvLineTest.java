package ringbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** RFC 4180, read back by a library; against formulas, OWASP "CSV Injection" (from memory). */
final class CsvLineTest {

  private static String line(char delimiter, String... cells) throws IOException {
    StringBuilder out = new StringBuilder();
    new CsvLine(delimiter).write(List.of(cells), out);
    return out.toString();
  }

  @Test
  void any_text_comes_back_from_a_library() throws IOException {
    String[] cells = {"plain", "a,b", "a;b", "say \"hm\"", "two\r\nlines", "", " edge ", "Zoë"};
    for (char delimiter : new char[] {',', ';'}) {
      CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(delimiter).get();
      try (CSVParser parser = CSVParser.parse(line(delimiter, cells), format)) {
        assertThat(parser.getRecords().get(0)).containsExactly(cells);
      }
    }
  }

  @Test
  void is_written_as_the_standard_shows() throws IOException {
    assertThat(line(',', "aaa", "b\r\nbb", "b\"bb")).isEqualTo("aaa,\"b\r\nbb\",\"b\"\"bb\"\r\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "+A1",
        "-A1",
        "-1+cmd",
        "@SUM(A1)",
        "\t=1",
        "\r=1",
        "\n=1",
        " =1",
        "＝1",
        "－1"
      })
  void no_cell_is_a_formula(String cell) throws IOException {
    try (CSVParser parser = CSVParser.parse(line(',', cell, "x"), CSVFormat.RFC4180)) {
      assertThat(parser.getRecords().get(0).get(0)).isEqualTo("'" + cell);
    }
  }

  @Test
  void no_part_of_a_cell_becomes_a_cell_with_a_formula() throws IOException {
    assertThat(line(',', "a;=1+1", "a\t=1")).isEqualTo("\"a;=1+1\",\"a\t=1\"\r\n");
  }
}
