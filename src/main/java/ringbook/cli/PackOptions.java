package ringbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;
import ringbook.course.compose.CourseSources;
import ringbook.ledger.Outcome;
import ringbook.ledger.Reckoning;
import ringbook.output.Output;
import ringbook.output.pack.Inks;
import ringbook.output.pack.PackMatter;
import ringbook.output.pack.PackOutput;
import ringbook.output.pack.Paper;
import ringbook.plans.Planner;
import ringbook.plans.StandardPlan;
import ringbook.problems.Position;
import ringbook.problems.Problems;
import ringbook.sheets.ClassList;
import ringbook.sheets.ShotDefaults;
import ringbook.sheets.ShotTables;
import ringbook.shots.ShotPlan;

/** What is said on the command line about the print pack. */
final class PackOptions {

  @Spec(Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--pack",
      description =
          "Make the print pack too: field card, shot table, check lists, worksheets and more, as"
              + " PDF files in the folder pack.")
  private boolean pack;

  @Option(
      names = "--paper",
      paramLabel = "PAPER",
      description = "With --pack: a4 or letter (default: both).")
  private String paper;

  @Option(
      names = "--ink",
      paramLabel = "INK",
      description = "With --pack: colour or grey (default: both).")
  private String ink;

  @Option(
      names = "--learners",
      paramLabel = "FILE",
      description =
          "With --pack: sheets for each of these learners too, with the learner's name and own"
              + " numbers. One name a line, or a table with a column learner.")
  private Path learners;

  @Option(
      names = "--shots",
      paramLabel = "TABLE",
      description =
          "With --pack: the shot table to print (CSV or JSON as plan writes it), in place of the"
              + " rings that the lessons work out.")
  private Path shots;

  boolean wanted() {
    return pack;
  }

  /** The output, if one is wanted; faults of the files it needs go to {@code problems}. */
  Optional<Output> output(CourseSources sources, Problems problems) throws IOException {
    List<Paper> papers = chosen("--paper", paper, Paper.values(), Paper::plainName);
    List<Inks> inks = chosen("--ink", ink, Inks.values(), Inks::plainName);
    if (!pack) {
      checkAlone();
      return Optional.empty();
    }
    List<String> names = learners == null ? List.of() : ClassList.read(learners, problems).names();
    Reckoning reckoning = Reckoning.of(sources.file().scene());
    Optional<ShotPlan> plan =
        shots == null ? StandardPlan.of(reckoning) : table(reckoning, problems);
    return Optional.of(
        new PackOutput(new PackMatter(reckoning, plan, sources::composedFor, names), papers, inks));
  }

  private void checkAlone() {
    if (paper != null || ink != null || learners != null || shots != null) {
      throw new ParameterException(
          spec.commandLine(), "--paper, --ink, --learners and --shots go with --pack");
    }
  }

  private Optional<ShotPlan> table(Reckoning reckoning, Problems problems) throws IOException {
    Optional<Outcome.Refused> refused = Planner.refusal(reckoning);
    if (refused.isPresent()) {
      problems.add(
          Position.ofFile(shots.toString()),
          "the numbers of this group allow no plan: " + refused.get().reason(),
          refused.get().help());
      return Optional.empty();
    }
    return ShotTables.read(shots, ShotDefaults.of(reckoning), problems);
  }

  private <T> List<T> chosen(
      String option, String written, T[] all, java.util.function.Function<T, String> name) {
    if (written == null) {
      return List.of(all);
    }
    List<T> found =
        Arrays.stream(all).filter(one -> name.apply(one).equalsIgnoreCase(written)).toList();
    if (found.isEmpty()) {
      String known = String.join(" or ", Arrays.stream(all).map(name).toList());
      throw new ParameterException(
          spec.commandLine(), option + " is " + known + ", not '" + written + "'");
    }
    return found;
  }
}
