package ringbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
    assertThat(err.toString(UTF_8))
        .isEqualTo(
            """
            ringbook: nothing could be marked
            nowhere.csv: error: this cannot be read: there is no file or folder of this name
            1 problem.
            """);
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

  @Test
  void the_order_of_lines_and_files_makes_no_difference() throws IOException {
    mark(CLASS.resolve("class.csv").toString());
    String expected = out.toString(UTF_8);
    List<String> lines = new ArrayList<>(Files.readAllLines(CLASS.resolve("class.csv")));
    String head = lines.remove(0);
    Collections.shuffle(lines, new Random(7));
    Path sheets = Files.createDirectories(folder.resolve("sheets/deeper"));
    Files.writeString(
        sheets.resolve("b.csv"), head + "\n" + String.join("\n", lines.subList(0, 7)));
    Files.writeString(
        folder.resolve("sheets/a.csv"),
        head + "\n" + String.join("\n", lines.subList(7, lines.size())));
    Files.writeString(folder.resolve("sheets/notes.txt"), "not a sheet");
    mark(folder.resolve("sheets").toString());
    assertThat(out.toString(UTF_8)).isEqualTo(expected);
  }

  @Test
  void of_two_answers_the_first_one_in_the_order_of_file_names_counts() throws IOException {
    Path sheets = Files.createDirectories(folder.resolve("sheets"));
    Files.writeString(sheets.resolve("2.csv"), "learner,exercise,answer\nNora,ring-count,30\n");
    Files.writeString(sheets.resolve("1.csv"), "learner;exercise;answer\nNora;ring-count;24\n");
    assertThat(mark("--format", "csv", sheets.toString())).isEqualTo(1);
    assertThat(out.toString(UTF_8)).contains("Nora,ring-count,24,right,1,").doesNotContain("30");
    assertThat(err.toString(UTF_8))
        .isEqualTo(
            """
            SHEETS/2.csv:2: error: Nora answers 'ring-count' a second time
              mend: the first answer, at SHEETS/1.csv:2, was marked; take one of them out
            1 problem.
            """
                .replace("SHEETS", sheets.toString()));
  }

  @Test
  void what_cannot_be_read_in_a_folder_is_told_and_the_rest_marked() throws IOException {
    Path sheets = Files.createDirectories(folder.resolve("sheets"));
    Files.createDirectories(sheets.resolve("made"));
    Files.writeString(sheets.resolve("made/ringbook.txt"), "ours");
    Files.writeString(sheets.resolve("made/gradebook.csv"), "learner,ring-count\nNora,1\n");
    Files.writeString(sheets.resolve("~$lock.csv"), "?");
    Files.writeString(sheets.resolve("class.xlsx"), "PK");
    Files.createFile(sheets.resolve("empty.csv"));
    Files.writeString(sheets.resolve("sound.csv"), "learner,exercise,answer\nNora,ring-count,24\n");
    assertThat(mark("--format", "csv", sheets.toString())).isEqualTo(1);
    assertThat(out.toString(UTF_8)).contains("Nora,ring-count,24,right");
    assertThat(err.toString(UTF_8).replace(sheets.toString(), "SHEETS"))
        .isEqualTo(
            """
            SHEETS/class.xlsx: error: a spreadsheet's own file cannot be read
              mend: open it in the spreadsheet and save the sheet as "CSV UTF-8"
            SHEETS/empty.csv: error: the sheet is empty
              mend: its first line names the columns: learner,exercise,answer
            2 problems.
            """);
    assertThat(mark(sheets.resolve("made").toString())).isEqualTo(1);
    assertThat(err.toString(UTF_8)).contains("the folder holds no answer sheets");
  }

  @Test
  void a_class_list_finds_strangers_and_who_is_missing() throws IOException {
    Path names = folder.resolve("class.txt");
    Files.writeString(names, "Nora\nZoë\nLin\n");
    String sheet =
        sheet(
            """
            learner,exercise,answer
             nora,ring-count,24
            Zoe,ring-count,23
            Norra,ring-count,24
            """);
    assertThat(mark("--class", names.toString(), sheet)).isEqualTo(1);
    assertThat(out.toString(UTF_8))
        .startsWith("Nora\n")
        .contains("\nZoë\n")
        .endsWith("\nNothing came from Lin.\n");
    assertThat(err.toString(UTF_8).replace(sheet, "SHEET"))
        .isEqualTo(
            """
            SHEET:4: error: 'Norra' is not on the class list
              mend: did you mean 'Nora'?
            1 problem.
            """);
  }

  @Test
  void writes_a_folder_for_the_trainer_and_the_learners() throws IOException {
    Path made = folder.resolve("made");
    assertThat(mark(CLASS.resolve("class.csv").toString(), "--to", made.toString())).isEqualTo(1);
    assertThat(out.toString(UTF_8))
        .isEqualTo(made.resolve("summary.html") + "\n" + made.resolve("gradebook.csv") + "\n");
    assertThat(Files.readString(made.resolve("gradebook.csv")))
        .startsWith("\ufefflearner,ring-count,owl-height,which-face,answered,points,per cent\r\n")
        .contains("\r\nFinn,0,0.5,0,3,0.5,16.7\r\n");
    assertThat(made.resolve("feedback/Zoë.pdf")).isNotEmptyFile();
    assertThat(Files.readString(made.resolve("feedback/Zoë.html")))
        .contains("Feedback for Zoë", "What to do next", "Did you mean")
        .startsWith("<!DOCTYPE html>")
        .doesNotContain("href=", "src=", "<link", "<script", "url(");
    mark("--format", "json", CLASS.resolve("class.csv").toString());
    assertThat(made.resolve("marks.json")).hasContent(out.toString(UTF_8).strip());
  }

  @Test
  void a_name_that_the_fonts_lack_letters_for_is_told_and_stands_whole_in_the_page()
      throws IOException {
    Path sheet = folder.resolve("names.csv");
    Files.writeString(sheet, "learner,exercise,answer\n李雷,ring-count,24\nΖωή Άννα,ring-count,24\n");
    Path made = folder.resolve("made");
    mark(sheet.toString(), "--to", made.toString());
    assertThat(out.toString(UTF_8))
        .contains("In the PDF of 李雷 the sign □ stands for letters that its fonts lack")
        .doesNotContain("Ζωή");
    assertThat(Files.readString(made.resolve("feedback/李雷.html"))).contains("Feedback for 李雷");
    assertThat(text(made.resolve("feedback/李雷.pdf"))).contains("Feedback for □□", "no font for");
    assertThat(text(made.resolve("feedback/Ζωή-Άννα.pdf")))
        .contains("Feedback for Ζωή Άννα")
        .doesNotContain("□");
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument read = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(read);
    }
  }

  @Test
  void writes_no_folder_where_nothing_could_be_marked_or_strangers_lie() throws IOException {
    Path made = folder.resolve("made");
    mark(sheet("learner,exercise,answer\n"), "--to", made.toString());
    assertThat(made).doesNotExist();
    Files.createDirectories(made);
    Files.writeString(made.resolve("mine.txt"), "keep");
    String sheet = sheet("learner;exercise;answer\nNora;ring-count;23\n");
    assertThat(mark(sheet, "--to", made.toString())).isEqualTo(1);
    assertThat(err.toString(UTF_8)).contains("was not made by Ringbook");
    assertThat(made).isDirectoryContaining("glob:**mine.txt");
    Path other = folder.resolve("other");
    assertThat(mark(sheet, "--to", other.toString(), "--without-pdf")).isZero();
    assertThat(Files.readString(other.resolve("gradebook.csv"))).contains("Nora;0;;;1;0;\"0,0\"");
    assertThat(other.resolve("feedback/Nora.pdf")).doesNotExist();
  }

  @Test
  void hands_out_questions_and_answers_with_each_learners_numbers() {
    assertThat(mark("--hand-out", "questions", "--learner", "Nora", "--learner", "Lin")).isZero();
    String questions = out.toString(UTF_8);
    assertThat(questions)
        .startsWith("Questions for Nora\n\n")
        .contains("\nQuestions for Lin\n\n", "\n  Answer with a length, with its unit.\n")
        .doesNotContain("Answer:", "${");
    mark("--hand-out", "answers", "--learner", " NORA ");
    String answers = out.toString(UTF_8);
    assertThat(answers).startsWith("Answers for NORA\n\n").contains("\n  Answer: ", "\n    n = ");
    String asked =
        questions.substring(questions.indexOf('\n'), questions.indexOf("Questions for Lin"));
    asked
        .lines()
        .filter(line -> !line.contains("Answer with"))
        .forEach(line -> assertThat(answers).as("the same question").contains(line));
  }

  @Test
  void what_was_handed_out_is_marked_right() throws IOException {
    mark("--hand-out", "answers", "--learner", "Zoë", "--format", "json");
    StringBuilder sheet = new StringBuilder("learner,exercise,answer\n");
    Matcher matcher =
        Pattern.compile("\"exercise\":\"([^\"]*)\".*?\"answer\":\"([^\"]*)\"")
            .matcher(out.toString(UTF_8));
    int count = 0;
    while (matcher.find()) {
      sheet.append("zoe,").append(matcher.group(1)).append(",\"").append(matcher.group(2));
      sheet.append("\"\n");
      count++;
    }
    assertThat(count).isGreaterThan(2);
    mark("--numbers", "own", "--format", "csv", sheet(sheet.toString()));
    assertThat(out.toString(UTF_8).lines().filter(line -> line.contains(",right,"))).hasSize(count);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--numbers own | name the sheets to mark",
        "--hand-out answers | say for whom",
        "--hand-out answers --learner Nora --format csv | text or json",
        "--hand-out answers --learner Nora sheet.csv | leave the sheets away",
        "--learner Nora sheet.csv | goes with --hand-out"
      })
  void tells_what_does_not_go_together(String line, String told) {
    assertThat(mark(line.strip().split(" "))).isEqualTo(2);
    assertThat(err.toString(UTF_8)).contains(told.strip());
  }
}
