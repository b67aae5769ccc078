package ringbook.course;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringbook.geometry.Vec3;
import ringbook.problems.Nearest;
import ringbook.problems.Position;
import ringbook.problems.Problems;
import ringbook.shots.SceneText;
import ringbook.units.Angle;
import ringbook.units.Dimension;
import ringbook.units.Length;
import ringbook.units.Lengths;
import ringbook.units.Words;

/** Takes the fields of one solid, tells what is wrong with them, and knows which were asked for. */
final class SolidFields {

  private final YamlNode.Fields fields;
  private final Lengths lengths;
  private final Problems problems;
  private final Set<String> asked = new LinkedHashSet<>();

  /**
   * The fields of one solid.
   *
   * @param lengths in which measures examples are
   */
  SolidFields(YamlNode.Fields fields, Lengths lengths, Problems problems) {
    this.fields = fields;
    this.lengths = lengths;
    this.problems = problems;
  }

  /** The fields of something within this solid. */
  SolidFields inner(YamlNode.Fields within) {
    return new SolidFields(within, lengths, problems);
  }

  Position position() {
    return fields.position();
  }

  void fault(Position where, String message, String help) {
    problems.add(where, message, help);
  }

  Optional<YamlNode> find(String name) {
    asked.add(name);
    return fields.find(name).map(YamlNode.Field::value);
  }

  Optional<String> text(String name) {
    Optional<YamlNode> node = find(name);
    if (node.isPresent() && !(node.get() instanceof YamlNode.Text)) {
      fault(node.get().position(), "'" + name + "' must be one value", "write it behind the colon");
    }
    return node.filter(YamlNode.Text.class::isInstance)
        .map(text -> ((YamlNode.Text) text).text().strip());
  }

  boolean yes(String name) {
    String written = Words.lower(text(name).orElse("no"));
    if (!Set.of("yes", "no", "true", "false").contains(written)) {
      fault(find(name).orElseThrow().position(), "'" + name + "' is yes or no", "");
    }
    return written.equals("yes") || written.equals("true");
  }

  /** A length that must be there. */
  Optional<Length> length(String name) {
    Optional<YamlNode> node = find(name);
    if (node.isEmpty()) {
      fault(
          position(),
          "'" + name + "' is missing",
          "add it with its unit: " + name + ": " + told("5 cm", "2 in"));
      return Optional.empty();
    }
    return length(node.get());
  }

  Optional<Length> length(YamlNode node) {
    return number(node, Dimension.LENGTH).map(Length::new);
  }

  private Optional<Double> number(YamlNode node, Dimension dimension) {
    if (!(node instanceof YamlNode.Text text)) {
      fault(
          node.position(),
          dimension.noun() + " was expected",
          "such as " + dimension.example(lengths));
      return Optional.empty();
    }
    SceneText.Read read = SceneText.read(text.text(), dimension, lengths);
    read.fault().ifPresent(fault -> fault(node.position(), fault.message(), fault.help()));
    return read.fault().isPresent() ? Optional.empty() : Optional.of(read.si());
  }

  /** An angle; none where it is not stated. */
  Angle angle(String name) {
    return find(name)
        .flatMap(node -> number(node, Dimension.ANGLE))
        .map(Angle::new)
        .orElse(Angle.ZERO);
  }

  /** A point of three lengths; the origin where it is not stated. */
  Vec3 point(String name) {
    Optional<List<Length>> read = find(name).flatMap(node -> lengths(node, 3));
    return read.map(p -> new Vec3(p.get(0).metres(), p.get(1).metres(), p.get(2).metres()))
        .orElse(Vec3.ZERO);
  }

  /** A list of so many lengths. */
  Optional<List<Length>> lengths(YamlNode node, int count) {
    List<Length> read = new ArrayList<>();
    if (node instanceof YamlNode.Items items && items.items().size() == count) {
      for (YamlNode item : items.items()) {
        length(item).ifPresent(read::add);
      }
      return read.size() == count ? Optional.of(read) : Optional.empty();
    }
    fault(
        node.position(),
        count + " lengths were expected",
        "write "
            + (count == 3
                ? told("[1 cm, 2 cm, 3 cm]", "[1 in, 2 in, 3 in]") + ": right, away, up"
                : told("[1 cm, 2 cm]", "[1 in, 2 in]")));
    return Optional.empty();
  }

  /** What goes with the measures of the course. */
  String told(String metric, String imperial) {
    return lengths.either(metric, imperial);
  }

  void refuseOthers() {
    for (YamlNode.Field field : fields.fields().values()) {
      if (!asked.contains(field.name())) {
        fault(
            field.position(),
            "a shape has no field '" + field.name() + "' here",
            Nearest.help(field.name(), asked));
      }
    }
  }
}
