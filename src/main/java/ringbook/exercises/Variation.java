package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import ringbook.shots.SceneDraft;
import ringbook.shots.SceneField;
import ringbook.units.Num;
import ringbook.units.Unit;

/** One input of the scene that differs from learner to learner, with the values it may take. */
public sealed interface Variation {

  /** More steps than this are a slip of the pen. */
  int MOST = 10_000;

  /** The input. */
  SceneField field();

  /** How many values it may take, at least 1. */
  int count();

  /** States the value at {@code index} in a draft made of a scene. */
  void put(SceneDraft draft, int index);

  /**
   * A number that varies.
   *
   * @param field the input
   * @param values its values, in SI
   */
  record OfNumbers(SceneField.NumberField field, List<Double> values) implements Variation {
    public OfNumbers {
      values = List.copyOf(values);
    }

    @Override
    public int count() {
      return values.size();
    }

    @Override
    public void put(SceneDraft draft, int index) {
      draft.change(field, values.get(index));
    }
  }

  /**
   * A word or a name that varies.
   *
   * @param field the input
   * @param values its values
   */
  record OfWords(SceneField.WordField field, List<String> values) implements Variation {
    public OfWords {
      values = List.copyOf(values);
    }

    @Override
    public int count() {
      return values.size();
    }

    @Override
    public void put(SceneDraft draft, int index) {
      draft.change(field, values.get(index));
    }
  }

  /**
   * The values from {@code from} to {@code to} in steps, all in {@code unit}. Each is the number a
   * person would write: rounded to a millionth of the unit.
   *
   * @throws IllegalArgumentException if the steps do not lead from one end to the other, or there
   *     are more than {@link #MOST}
   */
  static OfNumbers range(
      SceneField.NumberField field, Unit unit, double from, double to, double step) {
    if (!(step > 0) || !(to > from)) {
      throw new IllegalArgumentException("the range is empty");
    }
    double steps = (to - from) / step;
    if (!(steps < MOST)) {
      throw new IllegalArgumentException("the range has more than " + MOST + " steps");
    }
    if (Math.abs(steps - Num.round(steps)) > 1e-6) {
      throw new IllegalArgumentException("the steps do not end at the end of the range");
    }
    List<Double> values = new ArrayList<>();
    for (int i = 0; i <= Num.round(steps); i++) {
      values.add(unit.toSi(Num.round((from + i * step) * 1e6) / 1e6));
    }
    return new OfNumbers(field, values);
  }
}
