package ringbook.course;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringbook.exercises.AlikeTexts;
import ringbook.exercises.Exercise;
import ringbook.exercises.Task;
import ringbook.exercises.VariedExercise;
import ringbook.exercises.Variety;
import ringbook.exercises.Wording;
import ringbook.ledger.Ledger;
import ringbook.ledger.Reckoning;
import ringbook.problems.Position;
import ringbook.problems.Problems;
import ringbook.shots.Scene;
import ringbook.units.Lengths;

/**
 * Reads exercise files, each a list of exercises. An exercise with a fault is told and left out;
 * the others are there.
 */
public final class ExerciseReader {

  private final CourseFile course;
  private final Problems problems;
  private final Map<String, Position> places = new LinkedHashMap<>();
  private final List<VariedExercise> exercises = new ArrayList<>();

  /** Reads for {@code course}, whose scene the exercises vary; faults go to {@code problems}. */
  public ExerciseReader(CourseFile course, Problems problems) {
    this.course = course;
    this.problems = problems;
  }

  /** All exercises read so far, in order, as the book prints them. */
  public List<Exercise> exercises() {
    return exercises.stream().map(VariedExercise::own).toList();
  }

  /** All exercises read so far, in order, with their variants. */
  public List<VariedExercise> varied() {
    return List.copyOf(exercises);
  }

  /** The ids of exercises that were read but have faults, which have been told. */
  public Set<String> withFaults() {
    Set<String> ids = new LinkedHashSet<>(places.keySet());
    exercises.forEach(exercise -> ids.remove(exercise.id()));
    return ids;
  }

  /** Where the exercise with that id stands, if one was read (with faults or without). */
  public Optional<Position> place(String id) {
    return Optional.ofNullable(places.get(id));
  }

  /**
   * Reads one more file.
   *
   * @param file the name for messages
   * @param text its content
   */
  public void read(String file, String text) {
    Optional<YamlNode> root = YamlFile.read(file, text, problems);
    if (root.isEmpty()) {
      return;
    }
    if (!(root.get() instanceof YamlNode.Items items)) {
      problems.add(
          root.get().position(),
          "an exercise file holds a list, not " + root.get().kind(),
          "begin every exercise with '- id: …'");
      return;
    }
    List<String> lines = text.lines().toList();
    for (YamlNode item : items.items()) {
      if (item instanceof YamlNode.Fields fields) {
        exercise(new ExerciseFields(fields, lines, problems)).ifPresent(exercises::add);
      } else {
        problems.add(
            item.position(),
            "an exercise is a set of fields, not " + item.kind(),
            "begin it with '- id: …'");
      }
    }
  }

  private Optional<VariedExercise> exercise(ExerciseFields fields) {
    int before = problems.size();
    Optional<String> id = id(fields);
    Optional<String> title = fields.line("title");
    Optional<Wording> ask = fields.wording("ask");
    Optional<Wording> hint = fields.has("hint") ? fields.wording("hint") : Optional.empty();
    Optional<Reckoning> reckoning = scene(fields).map(Reckoning::of);
    Optional<Task> task = TaskReader.read(fields, reckoning, problems);
    Variety variety =
        new VarietyReader(fields, lengths(fields), problems)
            .read(
                task.flatMap(Task::asked)
                    .map(key -> Ledger.standard().get(key).unit().dimension()));
    if (problems.size() > before) {
      return Optional.empty();
    }
    VariedExercise varied =
        new VariedExercise(
            course.info().title(),
            new Exercise(
                id.orElseThrow(),
                title.orElseThrow(),
                ask.orElseThrow(),
                hint,
                reckoning.orElseThrow(),
                task.orElseThrow()),
            variety);
    if (!varied.varies() && told(AlikeTexts.in(varied.stated().task(), reckoning.get()))) {
      return Optional.empty();
    }
    VariantTrial.of(varied)
        .ifPresent(fault -> problems.add(variantPosition(fields), fault.message(), fault.help()));
    return problems.size() > before ? Optional.empty() : Optional.of(varied);
  }

  /** Tells the author of two texts that print the same for everybody. */
  private boolean told(Optional<AlikeTexts> alike) {
    alike.ifPresent(
        texts ->
            problems.add(
                texts.second().at(),
                "'" + texts.text() + "' stands here twice: nobody can tell the two apart",
                "it stands at " + texts.first().at() + " too; change one of them"));
    return alike.isPresent();
  }

  private static Position variantPosition(ExerciseFields fields) {
    List<String> names =
        List.of(
            "vary", "slips", "where", "sensible", "faults", "plan", "plans", "options", "pairs");
    for (String name : names) {
      if (fields.has(name)) {
        return fields.position(name);
      }
    }
    return fields.position("id");
  }

  private Optional<String> id(ExerciseFields fields) {
    Optional<String> id = fields.line("id");
    if (id.isEmpty()) {
      return id;
    }
    Position position = fields.position("id");
    if (!isId(id.get())) {
      problems.add(
          position,
          "'" + id.get() + "' cannot be the id of an exercise",
          "use small letters, digits and hyphens, such as distance-owl");
      return Optional.empty();
    }
    Position first = places.putIfAbsent(id.get(), position);
    if (first != null) {
      problems.add(
          position,
          "two exercises have the id '" + id.get() + "'",
          "the first one stands at " + first + "; rename one of them");
      return Optional.empty();
    }
    return id;
  }

  private static boolean isId(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9' && i > 0);
      boolean hyphen = c == '-' && i > 0 && i < text.length() - 1;
      if (!plain && !hyphen) {
        return false;
      }
    }
    return true;
  }

  /** The course's scene with the changes of the exercise. */
  private Optional<Scene> scene(ExerciseFields fields) {
    Optional<YamlNode.Field> scene = fields.find("scene");
    if (scene.isEmpty()) {
      return Optional.of(course.scene());
    }
    if (!(scene.get().value() instanceof YamlNode.Fields changes)) {
      problems.add(
          scene.get().position(),
          "'scene:' must hold fields, not " + scene.get().value().kind(),
          "write 'subject: {height: 45 cm}' below it, for instance");
      return Optional.empty();
    }
    return VariedScene.of(course, changes, lengths(fields), problems);
  }

  /** In which measures people would state what the exercise does. */
  private Lengths lengths(ExerciseFields fields) {
    boolean plan = fields.has("kind") && fields.line("kind").equals(Optional.of("plan"));
    // A plan is made for these very sizes.
    return plan ? Lengths.METRIC : course.scene().aim().lengths();
  }
}
