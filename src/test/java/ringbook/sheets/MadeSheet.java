package ringbook.sheets;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import ringbook.exercises.Exercise;
import ringbook.exercises.ExerciseSource;
import ringbook.exercises.NumberTask;

/** Answer sheets of any size for tests and benches: the same ones for the same seed. */
public final class MadeSheet {

  private final List<ExerciseSource> numbers;
  private final SplittableRandom random;

  /** Answers to those of {@code exercises} that ask for a number. */
  public MadeSheet(List<ExerciseSource> exercises, long seed) {
    numbers =
        exercises.stream().filter(source -> source.own().task() instanceof NumberTask).toList();
    random = new SplittableRandom(seed);
  }

  /**
   * Writes a sheet of {@code count} answers: seven of ten right, the others wrong in usual ways.
   *
   * @param own whether every learner had numbers of their own
   */
  public void write(Path file, int count, boolean own) throws IOException {
    try (BufferedWriter out = Files.newBufferedWriter(file)) {
      out.write("learner,exercise,answer\n");
      for (int i = 0; i < count; i++) {
        ExerciseSource source = numbers.get(i % numbers.size());
        String learner = "Learner " + i / numbers.size();
        Exercise exercise = own ? source.toJudge(learner) : source.own();
        out.write(learner + "," + source.id() + ",\"" + answer(exercise) + "\"\n");
      }
    }
  }

  private String answer(Exercise exercise) {
    String right = exercise.answerText();
    return switch (random.nextInt(20)) {
      case 0 -> "1" + right;
      case 1 -> right.replaceAll("[^0-9.]", "");
      case 2 -> random.nextInt(1, 500) + " cm";
      case 3 -> "about " + right;
      case 4 -> random.nextInt(1, 50) + "";
      case 5 -> right + "0";
      default -> right;
    };
  }
}
