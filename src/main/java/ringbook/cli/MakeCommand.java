package ringbook.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import ringbook.course.ComposedCourse;
import ringbook.course.compose.CourseSources;
import ringbook.output.Output;
import ringbook.output.Publisher;
import ringbook.output.book.BookOutput;
import ringbook.output.ebook.BookAndEbook;
import ringbook.output.ebook.EbookOutput;
import ringbook.output.pack.PackOutput;
import ringbook.output.site.SiteOutput;
import ringbook.problems.Problems;

/** Makes the website, the book, the e-book and the print pack of a course. */
@Command(
    name = "make",
    description =
        "Makes the course: website, book and e-book, and with --pack what a trainer prints.",
    mixinStandardHelpOptions = true)
final class MakeCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "COURSE",
      defaultValue = CourseReading.STANDARD,
      description = "Course file (default: ${DEFAULT-VALUE}).")
  private Path course;

  @Option(
      names = "--to",
      paramLabel = "FOLDER",
      defaultValue = "made",
      description =
          "Folder to write (default: ${DEFAULT-VALUE}). What was made there before is replaced only"
              + " if all went well.")
  private Path folder;

  @Mixin private PackOptions pack = new PackOptions();

  @Override
  public Integer call() throws IOException {
    PrintWriter err = spec.commandLine().getErr();
    Progress progress = Progress.on(err);
    Problems problems = new Problems();
    progress.say("reading the course");
    Optional<CourseSources> sources = CourseSources.read(course, problems);
    progress.say("working out lessons and figures");
    Optional<ComposedCourse> composed = sources.flatMap(read -> read.compose(problems));
    if (composed.isEmpty() || !problems.isEmpty()) {
      progress.end();
      return CourseReading.tell(problems, err);
    }
    List<Output> outputs = new ArrayList<>(List.of(new SiteOutput(), new BookAndEbook()));
    progress.say("laying out the photographs");
    pack.output(sources.get(), problems).ifPresent(outputs::add);
    if (!problems.isEmpty()) {
      progress.end();
      return CourseReading.tell(problems, err);
    }
    outputs.replaceAll(progress::announcing);
    problems.addAll(new Publisher(outputs).publish(composed.get(), folder));
    progress.end();
    if (!problems.isEmpty()) {
      return CourseReading.tell(problems, err);
    }
    CourseReading.tellNotes(problems, err);
    PrintWriter out = spec.commandLine().getOut();
    out.println(folder.resolve(SiteOutput.FIRST_PAGE));
    out.println(folder.resolve(BookOutput.FILE));
    out.println(folder.resolve(EbookOutput.FILE));
    if (pack.wanted()) {
      out.println(folder.resolve(PackOutput.FOLDER));
    }
    out.flush();
    return 0;
  }
}
