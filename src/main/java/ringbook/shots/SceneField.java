package ringbook.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import ringbook.units.Unit;

/**
 * One thing a person states about a scene. The list {@link #ALL} is the only place that knows which
 * there are: the course file, the changes an exercise makes and the givens of the ledger all go by
 * it.
 */
public sealed interface SceneField {

  /**
   * Where it belongs and what it is called, such as {@code kit.focalLength}; also its key in the
   * ledger.
   */
  String key();

  /** What it is, in a few words for people. */
  String name();

  /** Whether a scene can do without it. */
  boolean optional();

  /** The part before the point: kit, subject, place or aim. */
  default String section() {
    return key().substring(0, key().indexOf('.'));
  }

  /** The part after the point as a person writes it in the course file: {@code focal length}. */
  default String label() {
    StringBuilder label = new StringBuilder();
    for (int i = key().indexOf('.') + 1; i < key().length(); i++) {
      char c = key().charAt(i);
      if (c >= 'A' && c <= 'Z') {
        label.append(' ').append((char) (c + 'a' - 'A'));
      } else {
        label.append(c);
      }
    }
    return label.toString();
  }

  /**
   * A number with a unit.
   *
   * @param key see {@link SceneField#key}
   * @param name see {@link SceneField#name}
   * @param symbol how formulas show it, in TeX
   * @param unit the unit it is printed in
   * @param low smallest number allowed, in {@code unit}
   * @param high largest number allowed, in {@code unit}
   * @param optional see {@link SceneField#optional}
   * @param value reads it from a scene, as SI
   */
  record NumberField(
      String key,
      String name,
      String symbol,
      Unit unit,
      double low,
      double high,
      boolean optional,
      ToDoubleFunction<Scene> value)
      implements SceneField {}

  /**
   * A name or one of a few words.
   *
   * @param key see {@link SceneField#key}
   * @param name see {@link SceneField#name}
   * @param words the words allowed; empty for a free name
   * @param optional see {@link SceneField#optional}
   * @param value reads it from a scene
   */
  record WordField(
      String key, String name, List<String> words, boolean optional, Function<Scene, String> value)
      implements SceneField {
    public WordField {
      words = List.copyOf(words);
    }
  }

  /** All fields, in the order of the course file. */
  List<SceneField> ALL = SceneFieldList.all();

  /** All number fields, in the order of the course file. */
  static List<NumberField> numbers() {
    List<NumberField> numbers = new ArrayList<>();
    for (SceneField field : ALL) {
      if (field instanceof NumberField number) {
        numbers.add(number);
      }
    }
    return numbers;
  }

  /** The field with that key. */
  static Optional<SceneField> byKey(String key) {
    return ALL.stream().filter(field -> field.key().equals(key)).findFirst();
  }
}
