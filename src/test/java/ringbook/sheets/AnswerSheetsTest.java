package ringbook.sheets;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringbook.exercises.Answer;
import ringbook.problems.Problem;
import ringbook.problems.Problems;

final class AnswerSheetsTest {

  private final Problems problems = new Problems();
  private final AnswerSheets sheets =
      new AnswerSheets(List.of("distance-owl", "ring-count"), problems);

  private List<Answer> read(String text) {
    return read(text, UTF_8);
  }

  private List<Answer> read(String text, Charset charset) {
    sheets.read("sheet", text.getBytes(charset));
    return sheets.answers();
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
         {"answer": 24, "when": {"day": [1]}, "exercise": "ring-count", "learner": "Zoë"}]""",
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
            "sheet:6: error: Nora answers 'distance-owl' a second time\n"
                + "  mend: the first answer, at sheet:3, was marked; take one of them out",
            "sheet:7: error: Finn left 'distance-owl' empty",
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

  @Test
  void tells_utf_16() {
    read("\ufefflearner,exercise,answer\n", UTF_16LE);
    assertThat(told())
        .containsExactly(
            "sheet: error: the sheet is UTF-16, not UTF-8\n"
                + "  mend: save the sheet again as UTF-8 (\"CSV UTF-8\")");
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
                + "  mend: look for a bracket, a comma or a quotation mark that is missing here or just above",
            "sheet:3:1: error: the object has no 'answer'\n  mend: add \"answer\": \"…\"",
            "sheet:4:48: error: 'answer' must be a text\n  mend: write it between quotation marks",
            "sheet:5:2: error: an answer is an object with learner, exercise and answer\n"
                + "  mend: write {\"learner\": \"…\", \"exercise\": \"…\", \"answer\": \"…\"}",
            "sheet:5:9: error: an answer is an object with learner, exercise and answer\n"
                + "  mend: write {\"learner\": \"…\", \"exercise\": \"…\", \"answer\": \"…\"}",
            "sheet:6: error: Finn left 'distance-owl' empty",
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
  void finds_a_double_entry_across_sheets() {
    sheets.read("monday.csv", "learner,exercise,answer\nNora,ring-count,24\n".getBytes(UTF_8));
    sheets.read("friday.csv", "learner;exercise;answer\nNora;ring-count;30\n".getBytes(UTF_8));
    assertThat(sheets.answers()).containsExactly(new Answer("Nora", "ring-count", "24"));
    assertThat(told())
        .containsExactly(
            "friday.csv:2: error: Nora answers 'ring-count' a second time\n"
                + "  mend: the first answer, at monday.csv:2, was marked; take one of them out");
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
