package ringbook.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import ringbook.course.compose.CourseSources;
import ringbook.exercises.ExerciseSource;
import ringbook.output.Publisher;
import ringbook.output.marks.MarkFolder;
import ringbook.problems.Problem;
import ringbook.problems.Problems;
import ringbook.sheets.AnswerSheets;
import ringbook.sheets.ClassList;
import ringbook.sheets.MarkCsv;
import ringbook.sheets.MarkJson;
import ringbook.sheets.MarkSink;
import ringbook.sheets.MarkText;
import ringbook.sheets.Marking;
import ringbook.sheets.SheetRules;

/** Marks what learners handed in. */
@Command(
    name = "mark",
    description = {
      "Marks answer sheets and prints feedback for each learner, then tables of marks.",
      "",
      "A sheet is a table (CSV) with the columns learner, exercise and answer, or JSON with the"
          + " same three names, in UTF-8, or a worksheet filled in as PDF. Faults of a sheet are"
          + " told and the rest is marked. Of two answers of a learner to one exercise the first"
          + " one counts."
    },
    mixinStandardHelpOptions = true)
final class MarkCommand implements Callable<Integer> {

  /** How the marks are printed. */
  enum Format {
    text,
    json,
    csv
  }

  /** Whose numbers were used. */
  enum Numbers {
    book,
    own
  }

  /** What a learner or a trainer gets on paper. */
  enum Sheet {
    questions,
    answers
  }

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "SHEET",
      description = "Answer sheets to mark, or folders of them, at any depth.")
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
          "text, json or csv (default: ${DEFAULT-VALUE}). In csv an apostrophe stands before a cell"
              + " that a spreadsheet would take for a formula.")
  private Format format = Format.text;

  @Option(
      names = "--to",
      paramLabel = "FOLDER",
      description =
          "Folder to write in place of printing: a page and a PDF for each learner, the grade book,"
              + " a summary of the class, and the marks as JSON.")
  private Path folder;

  @Option(names = "--without-pdf", description = "With --to: pages only, which is much faster.")
  private boolean withoutPdf;

  @Option(
      names = "--class",
      paramLabel = "FILE",
      description =
          "Who belongs to the class: one name a line, or a table with a column learner. Other names"
              + " are told, and who handed in nothing is listed.")
  private Path group;

  @Option(
      names = "--numbers",
      paramLabel = "NUMBERS",
      description =
          "Whose numbers the answers were worked out from: book, as printed in the course, or own,"
              + " the learner's own (default: ${DEFAULT-VALUE}). A column numbers in a sheet says"
              + " it for single answers.")
  private Numbers numbers = Numbers.book;

  @Option(
      names = "--hand-out",
      paramLabel = "WHAT",
      description =
          "Marks nothing, but prints the questions of each learner with the learner's own numbers,"
              + " or their answers with the workings: questions or answers. For the class of"
              + " --class and the learners of --learner, as text or json.")
  private Sheet handOut;

  @Option(
      names = "--learner",
      paramLabel = "NAME",
      description = "A learner for --hand-out; may stand several times.")
  private List<String> learners = new ArrayList<>();

  @Override
  public Integer call() throws IOException {
    checkUse();
    Problems problems = new Problems();
    Optional<CourseSources> read = CourseSources.read(course, problems);
    Optional<ClassList> names =
        group == null ? Optional.empty() : Optional.of(ClassList.read(group, problems));
    if (read.isEmpty() || !problems.isEmpty()) {
      return CourseReading.tell(problems, spec.commandLine().getErr());
    }
    List<ExerciseSource> exercises = read.get().plainSources(problems);
    if (handOut != null) {
      return handOut(exercises, names, problems);
    }
    List<String> ids = exercises.stream().map(ExerciseSource::id).toList();
    SheetRules rules = new SheetRules(ids, names, numbers == Numbers.own);
    try (AnswerSheets answers = new AnswerSheets(rules, problems)) {
      answers.expect(read.get().file().info().title());
      for (Path sheet : sheets) {
        answers.read(sheet);
      }
      if (answers.count() > 0 && folder != null) {
        write(read.get(), new Marking(exercises), answers, names, problems);
      } else {
        List<MarkSink> sinks = answers.count() == 0 ? List.of() : List.of(printed());
        new Marking(exercises).run(answers, names, sinks);
        spec.commandLine().getOut().flush();
      }
      return told(problems, answers.count());
    }
  }

  private void write(
      CourseSources sources,
      Marking marking,
      AnswerSheets answers,
      Optional<ClassList> names,
      Problems problems)
      throws IOException {
    MarkFolder.Form form = new MarkFolder.Form(answers.partedBySemicolons(), !withoutPdf);
    List<String> lacking = new ArrayList<>();
    List<Problem> objections =
        Publisher.publish(
            folder,
            making -> {
              try (MarkFolder marks =
                  new MarkFolder(making, sources.file().info(), sources.exercises(), form)) {
                marking.run(answers, names, List.of(marks));
                lacking.addAll(marks.lackingLetters());
              }
            });
    problems.addAll(objections);
    if (objections.isEmpty()) {
      PrintWriter out = spec.commandLine().getOut();
      out.println(folder.resolve(MarkFolder.SUMMARY));
      out.println(folder.resolve(MarkFolder.GRADE_BOOK));
      if (!lacking.isEmpty()) {
        out.println(
            "In the PDF of "
                + String.join(", ", lacking)
                + " the sign □ stands for letters that its fonts lack; give them the page, which"
                + " has them all.");
      }
      out.flush();
    }
  }

  private void checkUse() {
    String fault = "";
    if (handOut == null) {
      fault =
          sheets.isEmpty()
              ? "name the sheets to mark, or say what to --hand-out"
              : learners.isEmpty() ? "" : "--learner goes with --hand-out";
    } else if (!sheets.isEmpty()) {
      fault = "--hand-out marks nothing: leave the sheets away";
    } else if (learners.isEmpty() && group == null) {
      fault = "say for whom to hand out, with --learner NAME or --class FILE";
    } else if (format == Format.csv) {
      fault = "--hand-out prints text or json";
    }
    if (!fault.isEmpty()) {
      throw new ParameterException(spec.commandLine(), fault);
    }
  }

  private int handOut(
      List<ExerciseSource> exercises, Optional<ClassList> names, Problems problems) {
    if (!problems.isEmpty()) {
      return CourseReading.tell(problems, spec.commandLine().getErr());
    }
    Set<String> all = new LinkedHashSet<>(learners);
    names.ifPresent(list -> all.addAll(list.names()));
    KeyPrinter printer =
        new KeyPrinter(exercises, handOut == Sheet.answers, spec.commandLine().getOut());
    if (format == Format.json) {
      printer.json(all);
    } else {
      printer.text(all);
    }
    return 0;
  }

  private int told(Problems problems, long count) {
    PrintWriter err = spec.commandLine().getErr();
    if (count == 0) {
      err.println("ringbook: nothing could be marked");
    }
    if (problems.isEmpty()) {
      return count == 0 ? Main.PROBLEMS : 0;
    }
    return CourseReading.tell(problems, err);
  }

  private MarkSink printed() {
    PrintWriter out = spec.commandLine().getOut();
    return switch (format) {
      case text -> new MarkText(out);
      case json -> new MarkJson(out);
      case csv -> new MarkCsv(out);
    };
  }
}
