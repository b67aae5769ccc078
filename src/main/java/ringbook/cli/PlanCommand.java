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
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.findings.Assessment;
import ringbook.course.CourseFile;
import ringbook.course.compose.CourseSources;
import ringbook.ledger.Outcome;
import ringbook.ledger.Reckoning;
import ringbook.output.Publisher;
import ringbook.plans.Planner;
import ringbook.plans.Proposal;
import ringbook.problems.Problem;
import ringbook.problems.Problems;
import ringbook.sheets.PlanReport;
import ringbook.sheets.ShotCsv;
import ringbook.sheets.ShotDefaults;
import ringbook.sheets.ShotTables;
import ringbook.shots.Scene;
import ringbook.shots.ShotPlan;

/** Plans the photographs of an object, or judges a plan that a person made. */
@Command(
    name = "plan",
    description = {
      "Plans which photographs to take of the object of a course, in the room of the course: from"
          + " where, in which order, and why. Says what the plan does not see, and how few"
          + " photographs any plan needs.",
      "",
      "With --judge it reads a shot table that you made or changed and says what is wrong with it"
          + " and how to mend it."
    },
    mixinStandardHelpOptions = true)
final class PlanCommand implements Callable<Integer> {

  /** How the plan is printed. */
  enum Format {
    text,
    csv,
    json
  }

  /** Of the pages where there is no course: files never hang on the clock. */
  private static final String NO_DATE = "2026-01-01";

  @Spec private CommandSpec spec;

  private String date = NO_DATE;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "COURSE",
      description = "Course file (default: " + CourseReading.STANDARD + ").")
  private Path course;

  @Option(
      names = "--no-course",
      description =
          "Take no course file: a phone, a free room and a round object 30 cm tall and 20 cm wide,"
              + " of which --with changes what is different.")
  private boolean alone;

  @Option(
      names = "--with",
      paramLabel = "CHANGE",
      description = "Change the scene first, such as 'subject.height = 50 cm'. May be repeated.")
  private List<String> changes = new ArrayList<>();

  @Option(
      names = "--judge",
      paramLabel = "TABLE",
      description = "Judge this shot table (CSV or JSON) instead of making a plan.")
  private Path table;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "text, csv or json (default: ${DEFAULT-VALUE}); csv is the shot table alone.")
  private Format format = Format.text;

  @Option(
      names = "--to",
      paramLabel = "FOLDER",
      description =
          "Write the plan into this folder too: table (CSV, JSON), text, pages to print, drawings."
              + " What was made there before is replaced only if all went well.")
  private Path folder;

  @Override
  public Integer call() throws IOException {
    if (alone && course != null) {
      throw new ParameterException(
          spec.commandLine(), "--no-course and a course file do not go together");
    }
    PrintWriter err = spec.commandLine().getErr();
    Progress progress = Progress.on(err);
    Problems problems = new Problems();
    Optional<Scene> scene =
        scene(problems).flatMap(found -> CourseReading.changed(found, changes, problems));
    if (scene.isEmpty()) {
      return CourseReading.tell(problems, err);
    }
    Reckoning reckoning = Reckoning.of(scene.get());
    Optional<Outcome.Refused> refused = Planner.refusal(reckoning);
    if (refused.isPresent()) {
      return refuse(refused.get());
    }
    progress.say("looking at the object");
    Seeing seeing = PlanScene.seeing(reckoning);
    int code =
        table == null ? plan(seeing, reckoning, progress) : judge(seeing, reckoning, progress);
    progress.end();
    return code;
  }

  private Optional<Scene> scene(Problems problems) throws IOException {
    if (alone) {
      return Optional.of(PlanScene.usual());
    }
    Path file = course == null ? Path.of(CourseReading.STANDARD) : course;
    Optional<CourseFile> read = CourseSources.courseFile(file, problems);
    CourseReading.tellNotes(problems, spec.commandLine().getErr());
    read.ifPresent(found -> date = found.info().date());
    return read.map(CourseFile::scene);
  }

  private int refuse(Outcome.Refused refused) {
    PrintWriter err = spec.commandLine().getErr();
    err.println("ringbook: there is no plan: " + refused.reason());
    if (!refused.help().isEmpty()) {
      err.println("  mend: " + refused.help());
    }
    return Main.PROBLEMS;
  }

  private int plan(Seeing seeing, Reckoning reckoning, Progress progress) throws IOException {
    progress.say("planning");
    Optional<Proposal> proposal = Planner.plan(seeing, reckoning);
    if (proposal.isEmpty()) {
      return refuse(
          new Outcome.Refused(
              "no station round the object is free, within reach, and sees enough of it well",
              "move the table, make room round it, or ask for less: a larger detail, a wider blur,"
                  + " the camera held otherwise"));
    }
    progress.say("judging");
    Proposal found = proposal.get();
    Assessment assessment = Assessment.of(seeing, found.plan(), found.views());
    return tell(PlanReport.of(reckoning.scene(), found, assessment), progress);
  }

  /** Prints a plan and writes its folder, if one is wanted. */
  private int tell(PlanReport report, Progress progress) throws IOException {
    List<Problem> inTheWay = List.of();
    if (folder != null) {
      progress.say("writing " + folder);
      inTheWay = Publisher.publish(folder, new PlanFolder(report, date)::write);
    }
    progress.end();
    print(report);
    if (inTheWay.isEmpty()) {
      return 0;
    }
    Problems problems = new Problems();
    problems.addAll(inTheWay);
    return CourseReading.tell(problems, spec.commandLine().getErr());
  }

  private int judge(Seeing seeing, Reckoning reckoning, Progress progress) throws IOException {
    Problems problems = new Problems();
    Optional<ShotPlan> plan = ShotTables.read(table, ShotDefaults.of(reckoning), problems);
    if (plan.isEmpty()) {
      return CourseReading.tell(problems, spec.commandLine().getErr());
    }
    Assessment assessment = Assessment.of(seeing, plan.get());
    int code = tell(PlanReport.of(reckoning.scene(), assessment), progress);
    return code == 0 && !PlanReport.isSound(assessment) ? Main.PROBLEMS : code;
  }

  private void print(PlanReport report) {
    PrintWriter out = spec.commandLine().getOut();
    out.print(
        switch (format) {
          case text -> report.text();
          case csv -> ShotCsv.of(report.assessment().plan());
          case json -> report.json();
        });
    out.flush();
  }
}
