package ringbook.course;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import ringbook.problems.Position;
import ringbook.problems.Problems;

/** Reads YAML 1.2, of which JSON is a part, into nodes that know their place. */
public final class YamlFile {

  private final String file;
  private final Problems problems;

  private YamlFile(String file, Problems problems) {
    this.file = file;
    this.problems = problems;
  }

  /**
   * The root of the file; empty, with a problem told, where it is not YAML or is empty.
   *
   * @param file the name for messages
   * @param text its content
   */
  public static Optional<YamlNode> read(String file, String text, Problems problems) {
    return new YamlFile(file, problems).read(text);
  }

  private Optional<YamlNode> read(String text) {
    LoadSettings settings = LoadSettings.builder().setLabel(file).build();
    try {
      Optional<Node> root = new Compose(settings).composeString(text);
      if (root.isEmpty()) {
        problems.add(Position.ofFile(file), "the file is empty", "");
      }
      return root.map(this::convert);
    } catch (MarkedYamlEngineException fault) {
      Position position = fault.getProblemMark().map(this::at).orElse(Position.ofFile(file));
      problems.add(
          position,
          "this is not YAML: " + fault.getProblem(),
          "check the indents, the colons and the quotation marks here and one line above");
      return Optional.empty();
    } catch (YamlEngineException fault) {
      problems.add(Position.ofFile(file), "this is not YAML: " + fault.getMessage(), "");
      return Optional.empty();
    }
  }

  private YamlNode convert(Node node) {
    Position position = node.getStartMark().map(this::at).orElse(Position.ofFile(file));
    if (node.getAnchor().isPresent()) {
      // A file of nested repeats could grow without end; nothing here needs them.
      problems.add(
          position, "anchors and repeats ('&', '*') are not read here", "write the value out");
      return new YamlNode.Text(position, "");
    }
    if (node instanceof MappingNode mapping) {
      return new YamlNode.Fields(position, fields(mapping));
    }
    if (node instanceof SequenceNode sequence) {
      List<YamlNode> items = new ArrayList<>();
      for (Node item : sequence.getValue()) {
        items.add(convert(item));
      }
      return new YamlNode.Items(position, items);
    }
    return new YamlNode.Text(position, ((ScalarNode) node).getValue());
  }

  private Map<String, YamlNode.Field> fields(MappingNode mapping) {
    Map<String, YamlNode.Field> fields = new LinkedHashMap<>();
    for (NodeTuple tuple : mapping.getValue()) {
      Position position =
          tuple.getKeyNode().getStartMark().map(this::at).orElse(Position.ofFile(file));
      if (!(tuple.getKeyNode() instanceof ScalarNode key)) {
        problems.add(position, "the name of a field must be a plain text", "");
        continue;
      }
      String name = key.getValue();
      YamlNode.Field field = new YamlNode.Field(name, position, convert(tuple.getValueNode()));
      YamlNode.Field first = fields.putIfAbsent(name, field);
      if (first != null) {
        problems.add(
            position,
            "'" + name + "' is stated twice",
            "the first one stands in line " + first.position().line() + "; keep one of them");
      }
    }
    return fields;
  }

  private Position at(Mark mark) {
    return new Position(file, mark.getLine() + 1, mark.getColumn() + 1);
  }
}
