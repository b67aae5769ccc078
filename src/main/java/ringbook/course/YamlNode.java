package ringbook.course;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringbook.problems.Position;

/** A value of a YAML (or JSON) file with its place, so that a fault can be told where it stands. */
public sealed interface YamlNode {

  /** Where it begins. */
  Position position();

  /** What a message calls it: a text, a list or a set of fields. */
  String kind();

  /**
   * A single value; all scalars are kept as the text that was written.
   *
   * @param position where it begins
   * @param text as written, without quotation marks
   */
  record Text(Position position, String text) implements YamlNode {
    @Override
    public String kind() {
      return "a text";
    }
  }

  /**
   * A list.
   *
   * @param position where it begins
   * @param items in order
   */
  record Items(Position position, List<YamlNode> items) implements YamlNode {
    public Items {
      items = List.copyOf(items);
    }

    @Override
    public String kind() {
      return "a list";
    }
  }

  /**
   * Named fields.
   *
   * @param position where they begin
   * @param fields by name, in the order of the file
   */
  record Fields(Position position, Map<String, Field> fields) implements YamlNode {
    public Fields {
      fields = new LinkedHashMap<>(fields);
    }

    @Override
    public String kind() {
      return "a set of fields";
    }

    /** The field of that name. */
    public Optional<Field> find(String name) {
      return Optional.ofNullable(fields.get(name));
    }

    /** All names, in order. */
    public List<String> names() {
      return new ArrayList<>(fields.keySet());
    }
  }

  /**
   * One named field.
   *
   * @param name as written
   * @param position of the name
   * @param value what stands behind it
   */
  record Field(String name, Position position, YamlNode value) {}
}
