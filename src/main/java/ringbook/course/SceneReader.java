package ringbook.course;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringbook.problems.Nearest;
import ringbook.problems.Position;
import ringbook.problems.Problems;
import ringbook.shots.Place.Corner;
import ringbook.shots.Place.Obstacle;
import ringbook.shots.Scene;
import ringbook.shots.SceneDraft;
import ringbook.shots.SceneField;
import ringbook.shots.SceneText;
import ringbook.units.Dimension;
import ringbook.units.Length;
import ringbook.units.Words;

/**
 * Reads what a file states of a scene, with the labels of {@link SceneField#label}, and tells every
 * fault at its place.
 */
public final class SceneReader {

  /** The four parts of a scene, as the course file names them. */
  public static final List<String> SECTIONS = List.of("kit", "subject", "place", "aim");

  private final Problems problems;
  private final SceneDraft draft;
  private final boolean changing;
  private final Map<String, Position> places = new LinkedHashMap<>();
  private final int before;

  private SceneReader(SceneDraft draft, boolean changing, Problems problems) {
    this.draft = draft;
    this.changing = changing;
    this.problems = problems;
    this.before = problems.size();
  }

  /**
   * The scene that the four sections of {@code root} state; empty, with problems told, where it is
   * none.
   */
  public static Optional<Scene> whole(YamlNode.Fields root, Problems problems) {
    SceneDraft draft = new SceneDraft();
    units(root).ifPresent(word -> draft.set(word, "imperial"));
    SceneReader reader = new SceneReader(draft, false, problems);
    for (String section : SECTIONS) {
      Optional<YamlNode.Field> field = root.find(section);
      if (field.isEmpty()) {
        problems.add(
            root.position(),
            "'" + section + ":' is missing",
            "the course file needs kit, subject, place and aim");
      } else {
        reader.section(section, field.get());
      }
    }
    return reader.build(root.position());
  }

  /** The field that says so where lengths are in inches: examples need it first. */
  private static Optional<SceneField.WordField> units(YamlNode.Fields root) {
    return root.find("aim")
        .map(YamlNode.Field::value)
        .filter(YamlNode.Fields.class::isInstance)
        .flatMap(aim -> ((YamlNode.Fields) aim).find("units"))
        .map(YamlNode.Field::value)
        .filter(
            units ->
                units instanceof YamlNode.Text t
                    && Words.lower(t.text().strip()).equals("imperial"))
        .flatMap(units -> labelled("aim", "units"))
        .map(SceneField.WordField.class::cast);
  }

  /** {@code scene} with its kit replaced by the one that {@code kit} states. */
  public static Optional<Scene> withKit(Scene scene, YamlNode.Field kit, Problems problems) {
    SceneDraft draft = SceneDraft.withoutKit(scene);
    SceneReader reader = new SceneReader(draft, false, problems);
    reader.section("kit", kit);
    return reader.build(kit.position());
  }

  /** {@code scene} with the changes that {@code changes} states, section by section. */
  public static Optional<Scene> changed(Scene scene, YamlNode.Fields changes, Problems problems) {
    SceneReader reader = new SceneReader(SceneDraft.of(scene), true, problems);
    for (YamlNode.Field field : changes.fields().values()) {
      if (SECTIONS.contains(field.name())) {
        reader.section(field.name(), field);
      } else {
        problems.add(
            field.position(),
            "a scene has no part '" + field.name() + "'",
            Nearest.help(field.name(), SECTIONS));
      }
    }
    return reader.build(changes.position());
  }

  private void section(String section, YamlNode.Field field) {
    places.put(section, field.position());
    if (!(field.value() instanceof YamlNode.Fields fields)) {
      problems.add(
          field.position(),
          "'" + section + ":' must hold fields, not " + field.value().kind(),
          "write one field a line, indented");
      return;
    }
    for (YamlNode.Field entry : fields.fields().values()) {
      if (section.equals("place") && entry.name().equals("obstacles")) {
        obstacles(entry);
      } else if (section.equals("subject") && entry.name().equals("shape")) {
        places.put("subject.shape", entry.value().position());
        ShapeReader.read(entry, draft.lengths(), problems).ifPresent(draft::shape);
      } else {
        entry(section, entry);
      }
    }
  }

  private void entry(String section, YamlNode.Field entry) {
    Optional<SceneField> field = labelled(section, entry.name());
    if (field.isEmpty()) {
      List<String> labels = labels(section);
      problems.add(
          entry.position(),
          "'" + section + "' has no field '" + entry.name() + "'",
          Nearest.help(entry.name(), labels));
      return;
    }
    places.put(field.get().key(), entry.value().position());
    if (!(entry.value() instanceof YamlNode.Text text)) {
      draft.unreadable(field.get());
      problems.add(
          entry.value().position(),
          "'" + entry.name() + "' must be one value, not " + entry.value().kind(),
          "write it behind the colon");
      return;
    }
    SceneText.set(draft, field.get(), text.text(), changing)
        .ifPresent(fault -> problems.add(text.position(), fault.message(), fault.help()));
  }

  private void obstacles(YamlNode.Field field) {
    List<Obstacle> obstacles = new ArrayList<>();
    if (!(field.value() instanceof YamlNode.Items items)) {
      problems.add(
          field.position(),
          "'obstacles' must be a list",
          "write '- name: wall' and 'corners:' below it");
      return;
    }
    for (YamlNode item : items.items()) {
      obstacle(item).ifPresent(obstacles::add);
    }
    draft.obstacles(obstacles);
  }

  private Optional<Obstacle> obstacle(YamlNode item) {
    if (!(item instanceof YamlNode.Fields fields)
        || !(fields.find("name").map(YamlNode.Field::value).orElse(null)
            instanceof YamlNode.Text name)
        || !(fields.find("corners").map(YamlNode.Field::value).orElse(null)
            instanceof YamlNode.Items corners)
        || corners.items().size() < 3) {
      problems.add(
          item.position(),
          "an obstacle needs a name and at least three corners",
          "write 'corners: "
              + told(
                  "[[1 m, 0 m], [2 m, 0 m], [2 m, 1 m]]'",
                  "[[3 ft, 0 ft], [6 ft, 0 ft], [6 ft, 3 ft]]'"));
      return Optional.empty();
    }
    List<Corner> read = new ArrayList<>();
    for (YamlNode corner : corners.items()) {
      corner(corner).ifPresent(read::add);
    }
    return read.size() == corners.items().size()
        ? Optional.of(new Obstacle(name.text(), read))
        : Optional.empty();
  }

  private Optional<Corner> corner(YamlNode node) {
    if (node instanceof YamlNode.Items pair && pair.items().size() == 2) {
      Optional<Length> x = coordinate(pair.items().get(0));
      Optional<Length> y = coordinate(pair.items().get(1));
      return x.isPresent() && y.isPresent()
          ? Optional.of(new Corner(x.get(), y.get()))
          : Optional.empty();
    }
    problems.add(
        node.position(),
        "a corner is two lengths",
        told("write [1.2 m, -0.5 m]", "write [4 ft, -20 in]")
            + ": to the right and away, from the middle of the object");
    return Optional.empty();
  }

  private Optional<Length> coordinate(YamlNode node) {
    if (node instanceof YamlNode.Text text) {
      SceneText.Read read = SceneText.read(text.text(), Dimension.LENGTH, draft.lengths());
      if (read.fault().isEmpty()) {
        return Optional.of(new Length(read.si()));
      }
      problems.add(node.position(), read.fault().get().message(), read.fault().get().help());
      return Optional.empty();
    }
    problems.add(
        node.position(),
        "a length was expected",
        "write it with its unit: " + told("1.2 m", "4 ft"));
    return Optional.empty();
  }

  private String told(String metric, String imperial) {
    return draft.lengths().either(metric, imperial);
  }

  private Optional<Scene> build(Position whole) {
    for (SceneDraft.Fault fault : draft.faults()) {
      String section = fault.key().substring(0, fault.key().indexOf('.'));
      // Of a section that is missing as a whole, its single fields need no word.
      if (places.containsKey(section)) {
        Position position = places.getOrDefault(fault.key(), places.getOrDefault(section, whole));
        problems.add(position, fault.message(), fault.help());
      }
    }
    return problems.size() > before ? Optional.empty() : Optional.of(draft.build());
  }

  /** The field of that section with that label. */
  static Optional<SceneField> labelled(String section, String label) {
    return SceneField.ALL.stream()
        .filter(field -> field.section().equals(section) && field.label().equals(label))
        .findFirst();
  }

  /** The labels of all fields of a section. */
  static List<String> labels(String section) {
    return SceneField.ALL.stream()
        .filter(field -> field.section().equals(section))
        .map(SceneField::label)
        .toList();
  }
}
