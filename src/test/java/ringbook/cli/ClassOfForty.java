package ringbook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import ringbook.exercises.Exercise;
import ringbook.exercises.ExerciseSource;
import ringbook.exercises.Marker;
import ringbook.exercises.NumberTask;
import ringbook.exercises.Verdict;
import ringbook.units.Dimension;
import ringbook.units.Numbers;

/**
 * A made-up class: forty learners with invented names, each with numbers of their own, all answers
 * right but for what is planted. The same seed makes the same class.
 */
final class ClassOfForty {

  static final int SLIPS = 10;

  /** International inch, exactly: International Yard and Pound Agreement, 1959 (from memory). */
  private static final double INCH = 0.0254;

  /**
   * A planted slip.
   *
   * @param index which of the exercise's slips, from 0
   */
  record Planted(String learner, ExerciseSource source, int index) {}

  private final List<ExerciseSource> exercises;
  private final SplittableRandom random;
  private final List<String> names;
  private final List<Planted> planted = new ArrayList<>();
  private final Map<String, String> answers = new TreeMap<>();

  /** Makes the class; asks whatever is answered by what the key says. */
  ClassOfForty(List<ExerciseSource> course, long seed) {
    exercises =
        course.stream().filter(source -> isRight(source.own(), source.own().answerText())).toList();
    random = new SplittableRandom(seed);
    names = names();
    plant();
    for (String learner : names) {
      for (ExerciseSource source : exercises) {
        answers.putIfAbsent(learner + "/" + source.id(), answer(learner, source));
      }
    }
  }

  private static boolean isRight(Exercise exercise, String answer) {
    return Marker.verdict(exercise, answer) instanceof Verdict.Right;
  }

  private List<String> names() {
    String[] first = {
      "A", "Be", "Ci", "Do", "Ela", "Fí", "Gu", "Ha", "Ino", "Ka", "Lu", "Mö", "Ny"
    };
    String[] last = {"bo", "dan", "fi", "lin", "mar", "ra", "sé", "tu", "wen", "zo"};
    TreeSet<String> all = new TreeSet<>();
    while (all.size() < 40) {
      all.add(first[random.nextInt(first.length)] + last[random.nextInt(last.length)]);
    }
    return List.copyOf(all);
  }

  /** Ten slips with ten learners, none of them among those whose files are broken or in inches. */
  private void plant() {
    List<ExerciseSource> withSlips =
        exercises.stream()
            .filter(source -> source.own().task() instanceof NumberTask)
            .filter(source -> !((NumberTask) source.own().task()).slips().isEmpty())
            .toList();
    for (int i = 0; i < SLIPS; i++) {
      String learner = names.get(2 * i);
      ExerciseSource source = withSlips.get(random.nextInt(withSlips.size()));
      Exercise exercise = source.forLearner(learner);
      NumberTask task = (NumberTask) exercise.task();
      int index = random.nextInt(task.slips().size());
      double value = task.slips().get(index).value(exercise.reckoning());
      planted.add(new Planted(learner, source, index));
      answers.put(learner + "/" + source.id(), task.entry(exercise.reckoning()).text(value));
    }
  }

  private String answer(String learner, ExerciseSource source) {
    Exercise exercise = source.forLearner(learner);
    if (exercise.task() instanceof NumberTask task
        && learner.equals(inInches())
        && task.entry(exercise.reckoning()).unit().dimension() == Dimension.LENGTH) {
      return Numbers.significant(task.truth(exercise.reckoning()) / INCH, 5) + " in";
    }
    return exercise.answerText();
  }

  List<String> learners() {
    return names;
  }

  List<ExerciseSource> exercises() {
    return exercises;
  }

  List<Planted> planted() {
    return planted;
  }

  String inInches() {
    return names.get(25);
  }

  /** The last learner of the table that is cut off; only the last answer is lost. */
  String cutInTable() {
    return names.get(31);
  }

  /** The last learner of the list that is cut off; only the last answer is lost. */
  String cutInList() {
    return names.get(35);
  }

  String absent() {
    return names.get(39);
  }

  /** Writes the sheets, every one in another form, and gives the class list. */
  Path write(Path folder) throws IOException {
    Path sheets = Files.createDirectories(folder.resolve("sheets/tables"));
    table(sheets.resolve("1.csv"), names.subList(0, 14), ",", "");
    table(sheets.resolve("2.csv"), names.subList(14, 28), ";", "\ufeff");
    String cut = table(sheets.resolve("3.csv"), names.subList(28, 32), "\t", "");
    Files.writeString(sheets.resolve("3.csv"), cut.substring(0, cut.length() - 4));
    String list = list(names.subList(32, 36));
    Files.writeString(folder.resolve("sheets/half.json"), list.substring(0, list.length() - 6));
    Files.writeString(folder.resolve("sheets/whole.json"), list(names.subList(36, 39)));
    Path group = folder.resolve("class.txt");
    Files.write(group, names);
    return group;
  }

  private String table(Path file, List<String> learners, String delimiter, String mark)
      throws IOException {
    StringBuilder out = new StringBuilder(mark);
    out.append(String.join(delimiter, "learner", "exercise", "answer")).append("\r\n");
    for (String learner : learners) {
      for (ExerciseSource source : exercises) {
        String answer = answers.get(learner + "/" + source.id()).replace("\"", "\"\"");
        out.append(String.join(delimiter, learner, source.id(), '"' + answer + '"')).append("\r\n");
      }
    }
    Files.writeString(file, out);
    return out.toString();
  }

  private String list(List<String> learners) {
    List<String> objects = new ArrayList<>();
    for (String learner : learners) {
      for (ExerciseSource source : exercises) {
        objects.add(
            String.format(
                Locale.ROOT,
                "{\"learner\": \"%s\", \"exercise\": \"%s\", \"answer\": \"%s\"}",
                learner,
                source.id(),
                answers.get(learner + "/" + source.id()).replace("\"", "\\\"")));
      }
    }
    return "[\n" + String.join(",\n", objects) + "\n]";
  }
}
