package ringbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import ringbook.course.CourseFile;
import ringbook.problems.Problems;

/** Makes the website and the book of a course. */
@Command(
    name = "make",
    description = "Makes the course: website and book.",
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
          "Folder to write (default: ${DEFAULT-VALUE}). It is replaced only if all went well.")
  private Path folder;

  @Override
  public Integer call() throws IOException {
    Problems problems = new Problems();
    Optional<CourseFile> read = CourseReading.read(course, problems);
    if (read.isEmpty()) {
      return CourseReading.tell(problems, spec.commandLine().getErr());
    }
    spec.commandLine().getErr().println("to " + folder);
    return 0;
  }
}
