package ringbook.cli;

import java.util.List;
import java.util.Optional;
import ringbook.problems.Position;
import ringbook.problems.Problem;
import ringbook.problems.Problems;
import ringbook.shots.Scene;
import ringbook.shots.SceneChanges;
import ringbook.shots.SceneDraft.Fault;
import ringbook.units.Words;

/** What every command does first: read the course file, and tell what is wrong with it. */
final class CourseReading {

  /** The course file a command takes when none is named. */
  static final String STANDARD = "lessons/course.yaml";

  private CourseReading() {}

  /**
   * {@code scene} with changes in the form of {@link SceneChanges}, or empty with problems told.
   */
  static Optional<Scene> changed(Scene scene, List<String> changes, Problems problems) {
    Scene changed = scene;
    for (String change : changes) {
      SceneChanges.Result result = SceneChanges.apply(changed, change);
      for (Fault fault : result.faults()) {
        problems.add(Position.ofFile("--with"), fault.message(), fault.help());
      }
      changed = result.scene().orElse(changed);
    }
    return problems.isEmpty() ? Optional.of(changed) : Optional.empty();
  }

  /** Prints what a person should know but need not mend. */
  static void tellNotes(Problems problems, java.io.PrintWriter err) {
    for (Problem note : problems.notes()) {
      err.println(note.position() + ": note: " + note.message() + "; " + note.help());
    }
    err.flush();
  }

  /** Prints all problems and gives the exit code. */
  static int tell(Problems problems, java.io.PrintWriter err) {
    for (Problem problem : problems.sorted()) {
      err.println(problem);
    }
    err.println(Words.count(problems.sorted().size(), "problem") + ".");
    err.flush();
    return Main.PROBLEMS;
  }
}
