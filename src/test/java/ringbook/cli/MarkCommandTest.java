package ringbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code mark} on a class planted with known slips. */
final class MarkCommandTest {

  private static final Path CLASS = Path.of("src/test/resources/ringbook/sheets");

  @TempDir private Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @BeforeEach
  void copyCourse() throws IOException {
    Files.createDirectories(folder.resolve("lessons"));
    Files.createDirectories(folder.resolve("exercises"));
    Files.copy(Path.of("lessons/course.yaml"), folder.resolve("lessons/course.yaml"));
    Files.copy(CLASS.resolve("class-exercises.yaml"), folder.resolve("exercises/class.yaml"));
  }

  private int mark(String... arguments) {
    List<String> all = new ArrayList<>(List.of("mark"));
    all.addAll(List.of("--course", folder.resolve("lessons/course.yaml").toString()));
    all.addAll(List.of(arguments));
    out.reset();
    err.reset();
    return Main.run(
        all.toArray(String[]::new),
        new PrintStream(out, true, UTF_8),
        new PrintStream(err, true, UTF_8));
  }

  private String sheet(String text) throws IOException {
    Path file = folder.resolve("sheet.csv");
    Files.writeString(file, text);
    return file.toString();
  }

  @Test
  void gives_every_learner_feedback_and_the_trainer_a_table() throws IOException {
    int code = mark(CLASS.resolve("class.csv").toString());
    assertThat(out.toString(UTF_8)).isEqualTo(Files.readString(CLASS.resolve("class-marks.txt")));
    assertThat(err.toString(UTF_8))
        .isEqualTo(
            """
            src/test/resources/ringbook/sheets/class.csv:15: error: Zoë left 'ring-count' empty
            1 problem.
            """);
    assertThat(code).isEqualTo(1);
  }

  @Test
  void csv_and_json_sheets_give_the_same_marks() {
    mark("--format", "json", CLASS.resolve("class.csv").toString());
    String byCsv = out.toString(UTF_8);
    mark("--format", "json", CLASS.resolve("class.jsonl").toString());
    assertThat(out.toString(UTF_8)).isEqualTo(byCsv);
    mark("--format", "json", CLASS.resolve("class.json").toString());
    assertThat(out.toString(UTF_8)).isEqualTo(byCsv);
    assertThat(byCsv).contains("\"verdict\":\"unit missing\",\"points\":0.5");
  }

  @Test
  void a_sound_sheet_ends_with_0() throws IOException {
    String sheet = sheet("learner,exercise,answer\nNora,ring-count,24\n");
    assertThat(mark(sheet)).isZero();
    assertThat(err.toString(UTF_8)).isEmpty();
  }

  @Test
  void nothing_to_mark_ends_with_1() throws IOException {
    assertThat(mark(sheet("learner,exercise,answer\n"))).isEqualTo(1);
    assertThat(err.toString(UTF_8)).isEqualTo("ringbook: nothing could be marked\n");
    assertThat(out.toString(UTF_8)).isEmpty();
  }

  @Test
  void no_sheet_is_a_mistyped_command() {
    assertThat(mark()).isEqualTo(2);
    assertThat(err.toString(UTF_8)).contains("SHEET");
  }

  @Test
  void a_sheet_that_is_not_there_is_told() {
    assertThat(mark("nowhere.csv")).isEqualTo(1);
    assertThat(err.toString(UTF_8)).isEqualTo("ringbook: there is no file or folder nowhere.csv\n");
  }

  @Test
  void no_cell_of_the_csv_is_a_formula_to_a_spreadsheet() throws IOException {
    String sheet =
        sheet(
            """
            learner,exercise,answer
            =1+1,ring-count,@SUM(A1)
            Nora,owl-height,-42 cm
            """);
    mark("--format", "csv", sheet);
    assertThat(out.toString(UTF_8).lines().toList())
        .hasSize(3)
        .anySatisfy(
            line -> assertThat(line).startsWith("'=1+1,ring-count,'@SUM(A1),not readable,0,"))
        .anySatisfy(
            line -> assertThat(line).startsWith("Nora,owl-height,'-42 cm,sign turned,0.25,"));
  }
}
