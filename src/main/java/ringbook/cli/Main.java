package ringbook.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import ringbook.output.book.BookException;

/** Entry point of the command line. */
@Command(
    name = "ringbook",
    description =
        "Makes a course in photographing an object for 3D, with every number worked out for your"
            + " group.",
    subcommands = {
      MakeCommand.class,
      PlanCommand.class,
      MarkCommand.class,
      QuantitiesCommand.class
    },
    mixinStandardHelpOptions = true,
    version = "ringbook 0.1.0",
    synopsisSubcommandLabel = "COMMAND")
public final class Main implements Runnable {

  /** A file of the user has problems, which have been told. */
  static final int PROBLEMS = 1;

  /** The command was mistyped. */
  static final int USAGE = 2;

  /** The machine failed: a file cannot be read or written. */
  static final int MACHINE = 3;

  @Spec private CommandSpec spec;

  /** Runs the command line and ends the process with its exit code. */
  public static void main(String[] args) {
    // Charts and numbers must not follow the language of the machine.
    Locale.setDefault(Locale.ROOT);
    PrintStream out =
        new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
    PrintStream err =
        new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
    int code = run(args, out, err);
    out.flush();
    System.exit(code);
  }

  /** Runs one command line; results go to {@code out}, all else to {@code err}. */
  public static int run(String[] args, PrintStream out, PrintStream err) {
    CommandLine line = new CommandLine(new Main());
    line.setOut(new PrintWriter(out, true, StandardCharsets.UTF_8));
    line.setErr(new PrintWriter(err, true, StandardCharsets.UTF_8));
    line.setExecutionExceptionHandler((fault, command, parsed) -> explain(fault, command));
    line.setParameterExceptionHandler((fault, parsed) -> mistyped(fault));
    return line.execute(args);
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "a command is missing");
  }

  private static int mistyped(ParameterException fault) {
    CommandLine command = fault.getCommandLine();
    PrintWriter err = command.getErr();
    err.println("ringbook: " + fault.getMessage());
    if (!CommandLine.UnmatchedArgumentException.printSuggestions(fault, err)) {
      command.usage(err);
    }
    err.flush();
    return USAGE;
  }

  private static int explain(Exception fault, CommandLine command) {
    PrintWriter err = command.getErr();
    err.println("ringbook: " + sentence(fault));
    err.flush();
    return fault instanceof NoSuchFileException ? PROBLEMS : MACHINE;
  }

  private static String sentence(Exception fault) {
    if (fault instanceof UncheckedIOException unchecked) {
      return sentence(unchecked.getCause());
    }
    if (fault instanceof BookException) {
      return fault.getMessage();
    }
    if (fault instanceof NoSuchFileException missing) {
      return "there is no file or folder " + missing.getFile();
    }
    if (fault instanceof AccessDeniedException denied) {
      return "no permission to use " + denied.getFile();
    }
    if (fault instanceof InvalidPathException name) {
      return "this machine cannot name a file '"
          + name.getInput()
          + "'; for letters that English lacks, run with LANG=C.UTF-8 or another UTF-8 language";
    }
    if (fault instanceof IOException) {
      return "a file could not be read or written: " + fault.getMessage();
    }
    return "something went wrong that should not have; please report it with these words: " + fault;
  }
}
