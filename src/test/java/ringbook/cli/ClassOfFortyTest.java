package ringbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ringbook.course.compose.CourseSources;
import ringbook.exercises.ExerciseSource;
import ringbook.exercises.NumberTask;
import ringbook.problems.Problems;

/** A whole class marked in one run: everything that was planted is found, and nothing else. */
final class ClassOfFortyTest {

  @TempDir private static Path folder;
  private static ClassOfForty group;
  private static Shell shell;
  private static Path made;
  private static Map<String, CSVRecord> book;

  @BeforeAll
  static void markTheClass() throws IOException {
    List<ExerciseSource> course =
        CourseSources.read(Path.of("lessons/course.yaml"), new Problems())
            .orElseThrow()
            .plainSources(new Problems());
    group = new ClassOfForty(course, Long.getLong("seed", 40));
    Path names = group.write(folder);
    made = folder.resolve("made");
    shell =
        Shell.run(
            "mark",
            folder.resolve("sheets").toString(),
            "--numbers",
            "own",
            "--class",
            names.toString(),
            "--to",
            made.toString());
    book = gradeBook();
  }

  /** Read by a library that had no part in writing it. */
  private static Map<String, CSVRecord> gradeBook() throws IOException {
    String text = Files.readString(made.resolve("gradebook.csv"));
    Map<String, CSVRecord> rows = new TreeMap<>();
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(text.substring(1), format)) {
      parser.forEach(row -> rows.put(row.get("learner"), row));
    }
    return rows;
  }

  private static String worth(ClassOfForty.Planted slip) {
    NumberTask task = (NumberTask) slip.source().own().task();
    return task.slips().get(slip.index()).worth().text();
  }

  private static String feedback(String learner) throws IOException {
    return Files.readString(made.resolve("feedback/" + learner + ".html"));
  }

  @Test
  void two_broken_files_are_told_and_what_is_whole_of_them_is_marked() {
    assertThat(shell.code()).isEqualTo(1);
    int table = 1 + 4 * group.exercises().size();
    int list = 1 + 4 * group.exercises().size();
    assertThat(shell.err().replace(folder.resolve("sheets").toString(), "SHEETS"))
        .startsWith("SHEETS/half.json:" + list + ":")
        .contains(
            "error: the file ends amid the list\n"
                + "  mend: hand in the whole file; what stands above is marked\n"
                + "SHEETS/tables/3.csv:"
                + table
                + ": error: a quotation mark is opened and not closed on this line\n"
                + "  mend: close it, or take it out\n")
        .endsWith("2 problems.\n");
  }

  @Test
  void every_planted_slip_is_found_and_nothing_else_is_wrong() throws IOException {
    Map<String, String> wrong = new TreeMap<>();
    for (CSVRecord row : book.values()) {
      for (ExerciseSource source : group.exercises()) {
        String points = row.get(source.id());
        if (!points.equals("1")) {
          wrong.put(row.get("learner") + " " + source.id(), points);
        }
      }
    }
    String last = group.exercises().get(group.exercises().size() - 1).id();
    Map<String, String> expected = new TreeMap<>();
    for (ClassOfForty.Planted slip : group.planted()) {
      expected.put(slip.learner() + " " + slip.source().id(), worth(slip));
    }
    expected.put(group.cutInTable() + " " + last, "");
    expected.put(group.cutInList() + " " + last, "");
    group.exercises().forEach(source -> expected.put(group.absent() + " " + source.id(), ""));
    assertThat(wrong).isEqualTo(expected);
  }

  @Test
  void every_planted_slip_is_explained_to_its_learner_and_shown_to_the_trainer()
      throws IOException {
    String summary = Files.readString(made.resolve("summary.html"));
    String json = Files.readString(made.resolve("marks.json"));
    assertThat(group.planted()).hasSize(ClassOfForty.SLIPS);
    for (ClassOfForty.Planted slip : group.planted()) {
      NumberTask task = (NumberTask) slip.source().forLearner(slip.learner()).task();
      String says = task.slips().get(slip.index()).says().markdown();
      String label = "slip " + (slip.index() + 1);
      assertThat(plain(feedback(slip.learner())))
          .contains(says, "What to do next", worth(slip) + " of 1");
      String block = summary.substring(summary.indexOf(">" + slip.source().id() + "</span>"));
      assertThat(block.substring(0, block.indexOf("</div>"))).contains(label, slip.learner());
      assertThat(json.lines())
          .anyMatch(
              line ->
                  line.contains("\"learner\":\"" + slip.learner() + "\",\"exercise\":\"")
                      && line.contains("\"" + slip.source().id() + "\"")
                      && line.contains("\"numbers\":\"own\",\"verdict\":\"" + label + "\""));
    }
  }

  private static String plain(String page) {
    return page.replace("&amp;", "&").replace("&#39;", "'").replace("&quot;", "\"");
  }

  @Test
  void everything_in_inches_is_right() throws IOException {
    int right = group.exercises().size();
    assertThat(book.get(group.inInches()).get("points")).isEqualTo(String.valueOf(right));
    assertThat(feedback(group.inInches())).contains(" in</i>", "All of it is right: well done.");
  }

  @Test
  void who_handed_in_nothing_is_listed() throws IOException {
    assertThat(Files.readString(made.resolve("summary.txt")))
        .contains("Nothing came from " + group.absent() + ".\n");
    assertThat(made.resolve("feedback/" + group.absent() + ".html")).doesNotExist();
  }

  @Test
  void every_learner_has_a_pdf_that_says_the_same_as_the_page() throws IOException {
    ClassOfForty.Planted slip = group.planted().get(0);
    for (String learner : group.learners().subList(0, 39)) {
      assertThat(made.resolve("feedback/" + learner + ".pdf")).isNotEmptyFile();
    }
    try (var pdf = Loader.loadPDF(made.resolve("feedback/" + slip.learner() + ".pdf").toFile())) {
      assertThat(new PDFTextStripper().getText(pdf))
          .contains(
              "Feedback for " + slip.learner(), slip.source().id(), worth(slip) + " of 1 point");
    }
  }

  /** Quantiles at p (n + 1), as the library does by default. */
  @Test
  void the_summary_agrees_with_a_statistics_library() throws IOException {
    DescriptiveStatistics points = new DescriptiveStatistics();
    for (CSVRecord row : book.values()) {
      if (!row.get("points").isEmpty()) {
        points.addValue(Double.parseDouble(row.get("points")));
      }
    }
    String text = Files.readString(made.resolve("summary.txt"));
    List<Double> said = new ArrayList<>();
    for (String start : List.of("Half of them have ", "Mean ", "standard deviation ")) {
      String rest = text.substring(text.indexOf(start) + start.length());
      said.add(Double.parseDouble(rest.replaceFirst("(?s)^([0-9]+([.][0-9]+)?).*", "$1")));
    }
    assertThat(points.getN()).isEqualTo(39);
    assertThat(said.get(0)).isCloseTo(points.getPercentile(50), within(0.005));
    assertThat(said.get(1)).isCloseTo(points.getMean(), within(0.005));
    assertThat(said.get(2)).isCloseTo(points.getStandardDeviation(), within(0.005));
  }
}
