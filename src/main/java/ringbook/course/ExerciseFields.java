package ringbook.course;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringbook.exercises.Wording;
import ringbook.problems.Nearest;
import ringbook.problems.Position;
import ringbook.problems.Problems;

/** The fields of one exercise or option; what is missing or of the wrong kind is told. */
final class ExerciseFields {

  private final YamlNode.Fields fields;
  private final List<String> lines;
  private final Problems problems;

  /**
   * Reads from {@code fields}.
   *
   * @param lines the lines of the file, to find where a text in block style begins
   */
  ExerciseFields(YamlNode.Fields fields, List<String> lines, Problems problems) {
    this.fields = fields;
    this.lines = lines;
    this.problems = problems;
  }

  /**
   * The fields of a node below these; empty, with the fault told, where it has none.
   *
   * @param thing what they belong to: {@code a pair}
   * @param help how it is written
   * @param known all names they may have
   */
  Optional<ExerciseFields> below(YamlNode node, String thing, String help, Set<String> known) {
    if (node instanceof YamlNode.Fields inner) {
      ExerciseFields below = new ExerciseFields(inner, lines, problems);
      below.refuseOthers(thing, new TreeSet<>(known));
      return Optional.of(below);
    }
    problems.add(node.position(), thing + " is a set of fields, not " + node.kind(), help);
    return Optional.empty();
  }

  /** Tells every text that says what one before it says; {@code what} is many of them. */
  void different(List<Wording> texts, String what) {
    Set<String> seen = new TreeSet<>();
    for (Wording text : texts) {
      if (!seen.add(text.markdown())) {
        problems.add(text.at(), "two " + what + " say '" + text.markdown() + "'", "change one");
      }
    }
  }

  boolean has(String name) {
    return fields.find(name).isPresent();
  }

  Optional<YamlNode.Field> find(String name) {
    return fields.find(name);
  }

  /** Where the value of the field stands, or the field, or else all of them. */
  Position position(String name) {
    return find(name).map(field -> field.value().position()).orElse(fields.position());
  }

  /** Tells every field that is not one of {@code known}; {@code thing} is what they belong to. */
  void refuseOthers(String thing, Set<String> known) {
    for (YamlNode.Field field : fields.fields().values()) {
      if (!known.contains(field.name())) {
        problems.add(
            field.position(),
            thing + " has no field '" + field.name() + "'",
            Nearest.help(field.name(), known));
      }
    }
  }

  /** The text of a field that must be there, on one line. */
  Optional<String> line(String name) {
    return text(name).map(text -> text.text().strip().replace('\n', ' '));
  }

  /** The Markdown of a field that must be there, with the place where its words begin. */
  Optional<Wording> wording(String name) {
    return text(name).map(text -> new Wording(text.text().strip(), begin(text)));
  }

  /** The Markdown of one item of a list. */
  Optional<Wording> wording(YamlNode item) {
    if (item instanceof YamlNode.Text text && !text.text().isBlank()) {
      return Optional.of(new Wording(text.text().strip(), begin(text)));
    }
    problems.add(
        item.position(),
        item instanceof YamlNode.Text
            ? "this item is empty"
            : "an item must be a text, not " + item.kind(),
        "write it behind the hyphen");
    return Optional.empty();
  }

  /** The items of a list that must be there; none, with the fault told, where it is not. */
  List<YamlNode> items(String name) {
    Optional<YamlNode.Field> field = find(name);
    if (field.isPresent() && field.get().value() instanceof YamlNode.Items items) {
      return items.items();
    }
    problems.add(
        position(name), "'" + name + ":' must be there and hold a list", "write '- …' for each");
    return List.of();
  }

  /**
   * Whether a field that need not be there says {@code true}; {@code help} mends what is neither.
   */
  boolean flag(String name, String help) {
    String written = has(name) ? line(name).orElse("") : "";
    if (!written.isEmpty() && !written.equals("true") && !written.equals("false")) {
      problems.add(position(name), "'" + name + ":' cannot be '" + written + "'", help);
    }
    return written.equals("true");
  }

  private Optional<YamlNode.Text> text(String name) {
    Optional<YamlNode.Field> field = find(name);
    if (field.isEmpty()) {
      problems.add(fields.position(), "'" + name + ":' is missing", "add it to the exercise");
      return Optional.empty();
    }
    if (field.get().value() instanceof YamlNode.Text text && !text.text().isBlank()) {
      return Optional.of(text);
    }
    problems.add(
        field.get().position(),
        field.get().value() instanceof YamlNode.Text
            ? "'" + name + ":' is empty"
            : "'" + name + ":' must be a text, not " + field.get().value().kind(),
        "write it behind the colon");
    return Optional.empty();
  }

  /** In block style ({@code |}) the words begin on the next line that is not blank, indented. */
  private Position begin(YamlNode.Text text) {
    Position at = text.position();
    String line = at.line() <= lines.size() ? lines.get(at.line() - 1) : "";
    int column = at.column() - 1;
    if (column < 0 || column >= line.length() || "|>".indexOf(line.charAt(column)) < 0) {
      return at;
    }
    int below = at.line();
    while (below < lines.size() - 1 && lines.get(below).isBlank()) {
      below++;
    }
    String first = below < lines.size() ? lines.get(below) : "";
    return new Position(at.file(), below + 1, first.length() - first.stripLeading().length() + 1);
  }
}
