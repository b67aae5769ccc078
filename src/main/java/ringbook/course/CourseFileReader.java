package ringbook.course;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringbook.optics.Kit;
import ringbook.problems.Nearest;
import ringbook.problems.Position;
import ringbook.problems.Problems;
import ringbook.shots.Scene;

/** Reads the course file. */
public final class CourseFileReader {

  private static final String SHARED = "lessons from";
  private static final String EVALUATOR = "evaluated by";
  private static final String EVALUATED = "evaluated on";
  private static final List<String> TEXTS =
      List.of("title", "subtitle", "organiser", "date", "language", EVALUATOR, EVALUATED);
  private static final List<String> REQUIRED = List.of("title", "date");
  private static final List<String> OTHERS = List.of("lessons", SHARED, "back", "other kits");

  private final Problems problems;
  private final YamlNode.Fields root;

  private CourseFileReader(YamlNode.Fields root, Problems problems) {
    this.root = root;
    this.problems = problems;
  }

  /**
   * The course that the file states; empty, with every fault told, where it states none.
   *
   * @param file the name for messages
   * @param text its content
   */
  public static Optional<CourseFile> read(String file, String text, Problems problems) {
    Optional<YamlNode> root = YamlFile.read(file, text, problems);
    if (root.isEmpty()) {
      return Optional.empty();
    }
    if (root.get() instanceof YamlNode.Fields fields) {
      return new CourseFileReader(fields, problems).read();
    }
    problems.add(
        root.get().position(),
        "a course file holds fields, not " + root.get().kind(),
        "begin with 'title: …'");
    return Optional.empty();
  }

  private Optional<CourseFile> read() {
    int before = problems.size();
    refuseUnknownFields();
    Map<String, String> texts = texts();
    List<CourseFile.LessonRef> lessons = lessons();
    List<CourseFile.LessonRef> back = back(lessons);
    Optional<Scene> scene = SceneReader.whole(root, problems);
    Optional<CourseFile.FolderRef> shared = shared();
    Map<String, Kit> kits = scene.map(this::otherKits).orElse(Map.of());
    if (problems.size() > before || scene.isEmpty()) {
      return Optional.empty();
    }
    CourseInfo info =
        new CourseInfo(
            texts.get("title"),
            texts.getOrDefault("subtitle", ""),
            texts.getOrDefault("organiser", ""),
            texts.get("date"),
            texts.getOrDefault("language", "en"),
            group(scene.get()),
            evaluation(texts));
    return Optional.of(new CourseFile(info, scene.get(), kits, lessons, back, shared));
  }

  private void refuseUnknownFields() {
    Set<String> known = new LinkedHashSet<>(TEXTS);
    known.addAll(OTHERS);
    known.addAll(SceneReader.SECTIONS);
    for (YamlNode.Field field : root.fields().values()) {
      if (!known.contains(field.name())) {
        problems.add(
            field.position(),
            "a course file has no field '" + field.name() + "'",
            Nearest.help(field.name(), known));
      }
    }
  }

  private Map<String, String> texts() {
    Map<String, String> texts = new LinkedHashMap<>();
    for (String name : TEXTS) {
      Optional<YamlNode.Field> field = root.find(name);
      if (field.isPresent()
          && field.get().value() instanceof YamlNode.Text text
          && !text.text().isBlank()) {
        texts.put(name, text.text().strip());
      } else if (field.isPresent()) {
        problems.add(
            field.get().position(), "'" + name + "' must be a text", "write it behind the colon");
      } else if (REQUIRED.contains(name)) {
        problems.add(
            root.position(), "'" + name + ":' is missing", "add it at the top of the course file");
      }
    }
    boolean dated = date("date", texts);
    boolean evaluationDated = date(EVALUATED, texts); // asked in any case: it tells its own fault
    if (dated && evaluationDated) {
      refuseHalfEvaluation(texts);
    }
    return texts;
  }

  /** Whether a field holds a date or is not there. */
  private boolean date(String name, Map<String, String> texts) {
    String date = texts.get(name);
    boolean good = date == null || isDate(date);
    if (!good) {
      problems.add(
          position(name),
          "'" + date + "' is not a date",
          "write year-month-day, such as 2026-11-02");
    }
    return good;
  }

  private Position position(String name) {
    return root.find(name).orElseThrow().value().position();
  }

  /** A claim that the e-book conforms needs its evaluator, a day, and this edition. */
  private void refuseHalfEvaluation(Map<String, String> texts) {
    String by = texts.get(EVALUATOR);
    String on = texts.get(EVALUATED);
    if ((by == null) != (on == null)) {
      String there = by == null ? EVALUATED : EVALUATOR;
      problems.add(
          position(there),
          "'" + there + "' stands alone: an evaluation has a person and a day",
          "write 'evaluated by: NAME' and 'evaluated on: 2026-11-09', or neither");
    } else if (on != null && texts.containsKey("date") && on.compareTo(texts.get("date")) < 0) {
      problems.add(
          position(EVALUATED),
          "the evaluation of " + on + " is older than the edition of " + texts.get("date"),
          "take both lines out until this edition has been evaluated");
    }
  }

  private static Optional<Evaluation> evaluation(Map<String, String> texts) {
    return Optional.ofNullable(texts.get(EVALUATOR))
        .map(by -> new Evaluation(by, texts.get(EVALUATED)));
  }

  private List<CourseFile.LessonRef> lessons() {
    List<CourseFile.LessonRef> lessons = new ArrayList<>();
    Optional<YamlNode.Field> field = root.find("lessons");
    if (field.isEmpty()
        || !(field.get().value() instanceof YamlNode.Items items)
        || items.items().isEmpty()) {
      Position position = field.map(YamlNode.Field::position).orElse(root.position());
      problems.add(
          position,
          "the course names no lessons",
          "write 'lessons:' and below it '- right-distance' and so on");
      return lessons;
    }
    return named("lesson", items, new LinkedHashSet<>());
  }

  /** The pages at the back; a course can do without. */
  private List<CourseFile.LessonRef> back(List<CourseFile.LessonRef> lessons) {
    Optional<YamlNode.Field> field = root.find("back");
    if (field.isPresent() && !(field.get().value() instanceof YamlNode.Items)) {
      problems.add(
          field.get().position(),
          "'back' must be a list of pages",
          "write below it '- glossary' and so on");
    }
    if (field.isEmpty() || !(field.get().value() instanceof YamlNode.Items items)) {
      return List.of();
    }
    Set<String> seen = new LinkedHashSet<>();
    lessons.forEach(lesson -> seen.add(lesson.id()));
    return named("page", items, seen);
  }

  private List<CourseFile.LessonRef> named(String kind, YamlNode.Items items, Set<String> seen) {
    List<CourseFile.LessonRef> named = new ArrayList<>();
    for (YamlNode item : items.items()) {
      if (!(item instanceof YamlNode.Text text)) {
        problems.add(
            item.position(), "a " + kind + " is named by its id, not by " + item.kind(), "");
      } else if (!seen.add(text.text())) {
        problems.add(
            item.position(), kind + " '" + text.text() + "' is named twice", "keep one of them");
      } else {
        named.add(new CourseFile.LessonRef(text.text(), text.position()));
      }
    }
    return named;
  }

  private Optional<CourseFile.FolderRef> shared() {
    Optional<YamlNode.Field> field = root.find(SHARED);
    if (field.isEmpty()) {
      return Optional.empty();
    }
    if (field.get().value() instanceof YamlNode.Text text && !text.text().isBlank()) {
      return Optional.of(new CourseFile.FolderRef(text.text().strip(), text.position()));
    }
    problems.add(
        field.get().position(),
        "'lessons from' must name one folder",
        "write the way to it from this course file, such as 'lessons from: ..'");
    return Optional.empty();
  }

  private Map<String, Kit> otherKits(Scene scene) {
    Map<String, Kit> kits = new LinkedHashMap<>();
    Optional<YamlNode.Field> field = root.find("other kits");
    if (field.isEmpty()) {
      return kits;
    }
    if (!(field.get().value() instanceof YamlNode.Fields fields)) {
      problems.add(
          field.get().position(),
          "'other kits' must hold named kits",
          "write a name and below it the fields of the kit");
      return kits;
    }
    for (YamlNode.Field kit : fields.fields().values()) {
      SceneReader.withKit(scene, kit, problems).ifPresent(with -> kits.put(kit.name(), with.kit()));
    }
    return kits;
  }

  private static boolean isDate(String text) {
    try {
      java.time.LocalDate.parse(text);
      return true;
    } catch (java.time.format.DateTimeParseException noDate) {
      return false;
    }
  }

  private static String group(Scene scene) {
    return "Worked out for the " + scene.subject().name() + " and the " + scene.kit().name() + ".";
  }
}
