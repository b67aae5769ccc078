package ringbook.shots;

import java.util.Optional;
import ringbook.shots.SceneDraft.Fault;
import ringbook.shots.SceneField.NumberField;
import ringbook.shots.SceneField.WordField;
import ringbook.units.Dimension;
import ringbook.units.Lengths;
import ringbook.units.MeasureReader;
import ringbook.units.MeasureReading;
import ringbook.units.NumberStyle;
import ringbook.units.Words;

/** Puts what a person wrote for a field into a draft. */
public final class SceneText {

  private SceneText() {}

  /**
   * A value that was read, or why it could not be.
   *
   * @param si the value in SI; 0 where there is a fault
   * @param fault what is wrong
   */
  public record Read(double si, Optional<Fault> fault) {}

  /**
   * States {@code written} for {@code field}.
   *
   * @param changing whether the draft was made of a scene and the value replaces one of it
   * @return what is wrong with the text, if it cannot be read
   */
  public static Optional<Fault> set(
      SceneDraft draft, SceneField field, String written, boolean changing) {
    if (field instanceof WordField word) {
      String text = Words.trimmed(written);
      String stated = word.words().isEmpty() ? text : Words.lower(text);
      if (changing) {
        draft.change(word, stated);
      } else {
        draft.set(word, stated);
      }
      return Optional.empty();
    }
    NumberField number = (NumberField) field;
    Read read = read(written, number.unit().dimension(), draft.lengths());
    if (read.fault().isPresent()) {
      draft.unreadable(field);
      Fault fault = read.fault().get();
      return Optional.of(
          new Fault(field.key(), field.name() + ": " + fault.message(), fault.help()));
    }
    if (changing) {
      draft.change(number, read.si());
    } else {
      draft.set(number, read.si());
    }
    return Optional.empty();
  }

  /** Reads a value of the given dimension, with an example for people who measure so. */
  public static Read read(String written, Dimension dimension, Lengths lengths) {
    MeasureReading reading = MeasureReader.read(written, dimension, NumberStyle.POINT);
    if (reading instanceof MeasureReading.Read read) {
      return new Read(read.measure().si(), Optional.empty());
    }
    String message =
        reading instanceof MeasureReading.Unreadable
            ? reading.message()
            : "'" + written + "': " + reading.message();
    return new Read(0, Optional.of(new Fault("", message, reading.help(lengths))));
  }
}
