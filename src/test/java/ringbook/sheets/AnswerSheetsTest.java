package ringbook.sheets;

import static java.nio.charset.Charset.forName;
import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringbook.exercises.Answer;
import ringbook.problems.Problem;
import ringbook.problems.Problems;

final class AnswerSheetsTest {

  private final Problems problems = new Problems();
  private final List<String> ids = List.of("distance-owl", "ring-count");
  private final AnswerSheets sheets =
      new AnswerSheets(new SheetRules(ids, Optional.empty(), false), problems);

  private List<Answer> read(String text) {
    return read(text, UTF_8);
  }

  private List<Answer> read(String text, Charset charset) {
    try {
      sheets.read("sheet", text.getBytes(charset));
      return answers();
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
  }

  private List<Answer> answers() throws IOException {
    List<Entry> entries = new ArrayList<>();
    sheets.inOrder().forEachRemaining(entries::add);
    sheets.faults().end();
    entries.sort(Comparator.comparingLong(entry -> entry.place().count()));
    return entries.stream().map(entry -> entry.answer(ids.get(entry.exercise()))).toList();
  }

  private List<String> told() {
    return problems.sorted().stream().map(Problem::toString).toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "learner,exercise,answer\nNora,distance-owl,\"36,5 cm\"\nZoë,ring-count,24\n",
        "\ufefflearner,exercise,answer\r\nNora,distance-owl,\"36,5 cm\"\r\nZoë,ring-count,24",
        "learner;exercise;answer\nNora;distance-owl;36,5 cm\nZoë;ring-count;24\n",
        "learner\texercise\tanswer\nNora\tdistance-owl\t36,5 cm\nZoë\tring-count\t24\n",
        "sep=;\nlearner;exercise;answer\nNora;distance-owl;36,5 cm\nZoë;ring-count;24\n",
        "\nAnswer;when;Exercise;Learner\n36,5 cm;1;distance-owl;Nora\n\n24;2;ring-count;Zoë\n;;;\n",
        "learner , exercise , answer \n Nora , distance-owl , \"36,5\" cm \nZoë,ring-count, 24,,\n",
        """
        [{"learner": "Nora", "exercise": "distance-owl", "answer": "36,5 cm"},
         {"answer": 24, "when": {"day": [1]}, "exercise": "ring-count", "learner": "Zoë"}]\
        """,
        """
        {"learner":"Nora","exercise":"distance-owl","answer":"36,5 cm"}

        {"learner":"Zoë","exercise":"ring-count","answer":"24"}
        """
      })
  void takes_every_usual_form_of_a_sheet(String text) {
    assertThat(read(text))
        .containsExactly(
            new Answer("Nora", "distance-owl", "36,5 cm"), new Answer("Zoë", "ring-count", "24"));
    assertThat(told()).isEmpty();
  }

  @Test
  void tells_what_is_wrong_with_a_line_and_takes_the_rest() {
    List<Answer> answers =
        read(
            """
            learner,exercise,answer
            Nora,distance-owel,36 cm
            Nora,distance-owl,36 cm
            Ida,distance-owl
            Ida,distance-owl,36,5 cm
            Nora,distance-owl,37 cm
            Finn,distance-owl,
            ,distance-owl,36 cm
            Finn,,36 cm
            Mats,distance-owl,40 cm
            """);
    assertThat(answers)
        .containsExactly(
            new Answer("Nora", "distance-owl", "36 cm"),
            new Answer("Nora", "distance-owl", "37 cm"),
            new Answer("Finn", "distance-owl", ""),
            new Answer("Mats", "distance-owl", "40 cm"));
    assertThat(told())
        .containsExactly(
            "sheet:2: error: no exercise has the id 'distance-owel'\n"
                + "  mend: did you mean 'distance-owl'?",
            "sheet:4: error: the line ends early: it has 2 fields, the first line names 3\n"
                + "  mend: write all of learner, exercise, answer",
            "sheet:5: error: the line has 4 fields, the first line names 3\n"
                + "  mend: put an answer that holds ',' between quotation marks: \"36,5 cm\"",
            "sheet:8: error: the learner is missing\n"
                + "  mend: write a name or a number for each learner",
            "sheet:9: error: the exercise is missing\n"
                + "  mend: write the id that stands beside the exercise");
  }

  @Test
  void a_lost_quotation_mark_costs_one_line_only() {
    List<Answer> answers =
        read(
            """
            learner,exercise,answer
            Nora,distance-owl,"36 cm
            Ida,distance-owl,40 cm
            Finn,distance-owl,"36,5 cm"
            Mats,distance-owl,"41 cm
            Zoë,distance-owl,42 cm
            """);
    assertThat(answers).extracting(Answer::learner).containsExactly("Ida", "Finn", "Zoë");
    assertThat(told())
        .containsExactly(
            "sheet:2: error: a quotation mark is opened and not closed on this line\n"
                + "  mend: close it, or take it out",
            "sheet:5: error: a quotation mark is opened and not closed on this line\n"
                + "  mend: close it, or take it out");
  }

  @Test
  void an_inch_mark_is_no_quotation_mark() {
    assertThat(read("learner,exercise,answer\nNora,distance-owl,14 1/2\"\n"))
        .containsExactly(new Answer("Nora", "distance-owl", "14 1/2\""));
  }

  @Test
  void tells_which_columns_are_missing() {
    assertThat(read("learner,exercize,answer,answer\nNora,distance-owl,36 cm,\n")).isEmpty();
    assertThat(told())
        .containsExactly(
            "sheet:1: error: the first line names no column 'exercise'\n"
                + "  mend: rename 'exercize' to 'exercise'",
            "sheet:1: error: two columns are called 'answer'\n  mend: rename one");
  }

  @Test
  void tells_that_a_sheet_has_no_first_line_with_names() {
    assertThat(read("Nora,distance-owl,36 cm\n")).isEmpty();
    assertThat(told())
        .hasSize(3)
        .contains(
            "sheet:1: error: the first line names no column 'learner'\n"
                + "  mend: begin the sheet with the line learner,exercise,answer");
  }

  @Test
  void tells_an_empty_sheet() {
    assertThat(read(" \n")).isEmpty();
    assertThat(told())
        .containsExactly(
            "sheet: error: the sheet is empty\n"
                + "  mend: its first line names the columns: learner,exercise,answer");
  }

  @Test
  void tells_which_line_is_not_utf_8() {
    read("learner,exercise,answer\nNora,distance-owl,1\nZoë,distance-owl,1\n", ISO_8859_1);
    assertThat(told())
        .containsExactly(
            "sheet:3: error: the sheet is not UTF-8 but something else, most likely Windows-1252\n"
                + "  mend: save the sheet again as UTF-8 (\"CSV UTF-8\")");
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE"})
  void reads_utf_16_with_and_without_its_mark(String charset) {
    String text = "learner\texercise\tanswer\nZoë \ud83d\ude42\tdistance-owl\t36 cm\n";
    assertThat(read(text + "Ωmega\tring-count\t" + "4".repeat(900), forName(charset)))
        .containsExactly(
            new Answer("Zoë \ud83d\ude42", "distance-owl", "36 cm"),
            new Answer("Ωmega", "ring-count", "4".repeat(900)));
    assertThat(told()).isEmpty();
  }

  @Test
  void lines_that_are_not_utf_8_cost_only_themselves() {
    assertThat(read("learner,exercise,answer\nZoë,distance-owl,1\nIda,ring-count,2\n", ISO_8859_1))
        .containsExactly(new Answer("Ida", "ring-count", "2"));
  }

  @Test
  void bytes_that_are_no_text_cost_their_line() {
    assertThat(read("learner,exercise,answer\nNora,distance-owl,3\u0000\nIda,ring-count,2\n"))
        .containsExactly(new Answer("Ida", "ring-count", "2"));
    assertThat(told())
        .containsExactly(
            "sheet:2: error: the line holds bytes that are no text\n"
                + "  mend: save the sheet again, as CSV UTF-8");
  }

  @Test
  void a_spreadsheets_own_file_is_known() {
    assertThat(read("PK\u0003\u0004...")).isEmpty();
    assertThat(told())
        .containsExactly(
            "sheet: error: this is a spreadsheet's or packed file, not a table as text\n"
                + "  mend: open it in the spreadsheet and save the sheet as \"CSV UTF-8\"");
  }

  @Test
  void a_cell_may_go_on_over_lines() {
    assertThat(
            read(
                "learner,note,exercise,answer\r\n"
                    + "Nora,\"well,\r\n"
                    + "\"\"hm\"\"\",ring-count,\"2\r\n"
                    + "4\"\r\n"
                    + "Ida,\"\",ring-count,25"))
        .containsExactly(
            new Answer("Nora", "ring-count", "2\n4"), new Answer("Ida", "ring-count", "25"));
    assertThat(told()).isEmpty();
  }

  @Test
  void a_lost_quotation_mark_takes_no_line_of_another_learner() {
    assertThat(
            read(
                """
                learner,exercise,answer
                Nora,distance-owl,"36 cm
                Ida,distance-owl,14 1/2"
                Finn,ring-count,24
                """))
        .extracting(Answer::learner)
        .containsExactly("Ida", "Finn");
  }

  @Test
  void a_list_that_is_cut_off_is_taken_up_to_there() {
    assertThat(
            read(
                "[{\"learner\": \"Nora\", \"exercise\": \"ring-count\", \"answer\": \"24\"},\n"
                    + " {\"learner\": \"I"))
        .containsExactly(new Answer("Nora", "ring-count", "24"));
    assertThat(told())
        .singleElement()
        .asString()
        .startsWith("sheet:2:")
        .endsWith(
            "error: the file ends amid the list\n"
                + "  mend: hand in the whole file; what stands above is marked");
  }

  @Test
  void endless_lines_and_answers_are_passed_over() {
    assertThat(
            read(
                "learner,exercise,answer\nNora,ring-count,"
                    + "9".repeat(70_000)
                    + "\nIda,ring-count,"
                    + "9".repeat(3_000)
                    + "\nFinn,ring-count,24\n"))
        .containsExactly(new Answer("Finn", "ring-count", "24"));
    assertThat(told())
        .containsExactly(
            "sheet:2: error: the line is longer than 65536 bytes\n"
                + "  mend: look for a line end that is missing, or a picture that was pasted in",
            "sheet:3: error: the answer is longer than 2000 letters\n"
                + "  mend: shorten it, or look for a quotation mark that is missing");
  }

  @Test
  void of_very_many_faults_a_hundred_are_told_and_the_rest_counted() {
    read("learner,exercise,answer\n" + "Nora,owl,1\n".repeat(150));
    assertThat(told())
        .hasSize(101)
        .startsWith(
            "sheet: error: the file has 50 more faults than are listed here\n"
                + "  mend: mend those that are listed, then mark again");
  }

  @Test
  void says_when_two_columns_are_exchanged() {
    read("learner,exercise,answer\nring-count,Nora,24\n");
    assertThat(told())
        .containsExactly(
            "sheet:2: error: no exercise has the id 'Nora'\n"
                + "  mend: the columns learner and exercise are exchanged: write the name first");
  }

  @Test
  void a_column_says_whose_numbers_were_used() throws IOException {
    sheets.read(
        "sheet",
        "learner;exercise;numbers;answer\nNora;ring-count;own;1\nIda;ring-count;;1\nFinn;ring-count;mine;1"
            .getBytes(UTF_8));
    List<Entry> entries = new ArrayList<>();
    sheets.inOrder().forEachRemaining(entries::add);
    assertThat(entries).extracting(Entry::learner).containsExactly("Ida", "Nora");
    assertThat(entries).extracting(Entry::ownNumbers).containsExactly(false, true);
    assertThat(told())
        .containsExactly(
            "sheet:4: error: 'mine' does not say which numbers were used\n"
                + "  mend: write own for the learner's own numbers, or book for those printed in"
                + " the course");
  }

  @Test
  void tells_half_lines_of_json_and_takes_the_rest() {
    List<Answer> answers =
        read(
            """
            {"learner": "Nora", "exercise": "distance-owl", "answer": "36 cm"}
            {"learner": "Ida", "exercise": "distance-owl", "ans
            {"learner": "Ida", "exercise": "distance-owl"}
            {"learner": "Ida", "exercise": "distance-owl", "answer": ["36 cm"]}
            ["Ida", 3]
            {"learner": "Finn", "exercise": "distance-owl", "answer": null}
            {"learner": "Mats", "learner": "Max", "exercise": "distance-owl", "answer": "1"}
            {"learner": "Zoë", "exercise": "distance-owl", "answer": "36 cm"}
            """);
    assertThat(answers)
        .containsExactly(
            new Answer("Nora", "distance-owl", "36 cm"),
            new Answer("Finn", "distance-owl", ""),
            new Answer("Zoë", "distance-owl", "36 cm"));
    assertThat(told())
        .containsExactly(
            "sheet:2:52: error: this line is not a whole JSON object\n"
                + "  mend: look for a bracket, a comma or a quotation mark that is missing here or"
                + " just above",
            "sheet:3:1: error: the object has no 'answer'\n  mend: add \"answer\": \"…\"",
            "sheet:4:48: error: 'answer' must be a text\n  mend: write it between quotation marks",
            "sheet:5:2: error: an answer is an object with learner, exercise and answer\n"
                + "  mend: write {\"learner\": \"…\", \"exercise\": \"…\", \"answer\": \"…\"}",
            "sheet:5:9: error: an answer is an object with learner, exercise and answer\n"
                + "  mend: write {\"learner\": \"…\", \"exercise\": \"…\", \"answer\": \"…\"}",
            "sheet:7:21: error: the object states 'learner' twice\n  mend: keep one of them");
  }

  @Test
  void takes_what_stands_before_a_fault_in_a_list() {
    List<Answer> answers =
        read(
            """
            [
              {"learner": "Nora", "exercise": "distance-owl", "answer": "36 cm"},
              {"learner": "Ida", "exercise": "distance-owl" "answer": "36 cm"}
            ]
            """);
    assertThat(answers).containsExactly(new Answer("Nora", "distance-owl", "36 cm"));
    assertThat(told()).singleElement().asString().startsWith("sheet:3:49: error: this is not JSON");
  }

  @Test
  void no_message_carries_control_characters_to_the_terminal() {
    read("learner,exercise,answer\nNora,\u001b[31m\u202eowl" + "x".repeat(500) + ",36 cm\n");
    assertThat(told().get(0))
        .doesNotContain("\u001b")
        .doesNotContain("\u202e")
        .hasSizeLessThan(200);
  }
}
