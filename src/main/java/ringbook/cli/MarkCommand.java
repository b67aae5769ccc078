package ringbook.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import ringbook.course.compose.CourseSources;
import ringbook.exercises.Exercise;
import ringbook.problems.Problems;
import ringbook.sheets.AnswerSheets;
import ringbook.sheets.MarkCsv;
import ringbook.sheets.MarkJson;
import ringbook.sheets.MarkList;
import ringbook.sheets.MarkText;

/** Marks what learners handed in. */
@Command(
    name = "mark",
    description = {
      "Marks answer sheets and prints feedback for each learner, then tables of marks.",
      "",
      "A sheet is a table (CSV) with the columns learner, exercise and answer, or JSON with the same "
          + "three names, in UTF-8. Faults of a sheet are told and the rest is marked."
    },
    mixinStandardHelpOptions = true)
final class MarkCommand implements Callable<Integer> {

  /** How the marks are printed. */
  enum Format {
    text,
    json,
    csv
  }

  @Spec private CommandSpec spec;

  @Parameters(arity = "1..*", paramLabel = "SHEET", description = "Answer sheets to mark.")
  private List<Path> sheets = new ArrayList<>();

  @Option(
      names = "--course",
      paramLabel = "COURSE",
      defaultValue = CourseReading.STANDARD,
      description = "Course file the learners worked with (default: ${DEFAULT-VALUE}).")
  private Path course;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description =
          "text, json or csv (default: ${DEFAULT-VALUE}). In csv an apostrophe stands before a cell "
              + "that a spreadsheet would take for a formula.")
  private Format format = Format.text;

  @Override
  public Integer call() throws IOException {
    Problems problems = new Problems();
    Optional<CourseSources> read = CourseSources.read(course, problems);
    if (read.isEmpty()) {
      return CourseReading.tell(problems, spec.commandLine().getErr());
    }
    List<Exercise> exercises = read.get().plainExercises(problems);
    AnswerSheets answers =
        new AnswerSheets(exercises.stream().map(Exercise::id).toList(), problems);
    for (Path sheet : sheets) {
      answers.read(sheet);
    }
    MarkList marks = MarkList.of(answers.answers(), exercises);
    if (!marks.marks().isEmpty()) {
      print(marks);
    }
    if (problems.isEmpty() && !marks.marks().isEmpty()) {
      return 0;
    }
    if (marks.marks().isEmpty()) {
      spec.commandLine().getErr().println("ringbook: nothing could be marked");
    }
    return problems.isEmpty()
        ? Main.PROBLEMS
        : CourseReading.tell(problems, spec.commandLine().getErr());
  }

  private void print(MarkList marks) {
    PrintWriter out = spec.commandLine().getOut();
    out.print(
        switch (format) {
          case text -> MarkText.of(marks);
          case json -> MarkJson.of(marks);
          case csv -> MarkCsv.of(marks);
        });
    out.flush();
  }
}
