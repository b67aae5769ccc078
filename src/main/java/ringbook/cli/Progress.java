package ringbook.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import picocli.CommandLine.Help;
import ringbook.course.ComposedCourse;
import ringbook.output.Output;

/**
 * Says on a terminal what is being done, on one line that is written over; silent where no terminal
 * is attached.
 */
final class Progress {

  private static final int WIDTH = 50;

  private final PrintWriter err;
  private final boolean shown;

  private Progress(PrintWriter err, boolean shown) {
    this.err = err;
    this.shown = shown;
  }

  static Progress on(PrintWriter err) {
    return new Progress(err, Help.Ansi.AUTO.enabled());
  }

  /** Shows {@code what} in place of what was shown before. */
  void say(String what) {
    if (shown) {
      err.print("\r" + what + " …" + " ".repeat(Math.max(0, WIDTH - what.length())));
      err.flush();
    }
  }

  /** Clears the line. */
  void end() {
    if (shown) {
      err.print("\r" + " ".repeat(WIDTH + 2) + "\r");
      err.flush();
    }
  }

  /** The output, with a word said before it writes. */
  Output announcing(Output output) {
    return new Output() {
      @Override
      public String name() {
        return output.name();
      }

      @Override
      public void write(ComposedCourse course, Path folder) throws IOException {
        say("writing the " + output.name());
        output.write(course, folder);
      }
    };
  }
}
