package ringbook.course;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringbook.exercises.Variation;
import ringbook.exercises.Variety;
import ringbook.exercises.Variety.Bounds;
import ringbook.ledger.Formula;
import ringbook.ledger.Ledger;
import ringbook.problems.Nearest;
import ringbook.problems.Position;
import ringbook.problems.Problems;
import ringbook.shots.SceneField;
import ringbook.shots.SceneField.NumberField;
import ringbook.shots.SceneField.WordField;
import ringbook.shots.SceneText;
import ringbook.units.Dimension;
import ringbook.units.Lengths;
import ringbook.units.Measure;
import ringbook.units.MeasureReader;
import ringbook.units.MeasureReading;
import ringbook.units.NumberStyle;
import ringbook.units.Numbers;

/**
 * Reads how an exercise differs from learner to learner: {@code vary:} with the inputs of a scene,
 * each a range ({@code 30 cm to 60 cm by 1 cm}) or a list of values, {@code where:} with what must
 * hold, {@code sensible:} with the range of the answer.
 */
final class VarietyReader {

  private final ExerciseFields fields;
  private final Lengths lengths;
  private final Problems problems;

  /**
   * A reader.
   *
   * @param lengths in which measures the course tells lengths; what varies is rounded to suit them
   */
  VarietyReader(ExerciseFields fields, Lengths lengths, Problems problems) {
    this.lengths = lengths;
    this.fields = fields;
    this.problems = problems;
  }

  /**
   * What differs; faults are told.
   *
   * @param answer what the answer is measured as; empty where it is no number
   */
  Variety read(Optional<Dimension> answer) {
    List<Variation> variations = new ArrayList<>();
    fields.find("vary").ifPresent(field -> sections(field, variations));
    Optional<Formula> where =
        fields.has("where")
            ? fields
                .line("where")
                .flatMap(
                    text ->
                        FormulaField.read(
                            "'where'", text, fields.position("where"), Ledger.standard(), problems))
            : Optional.empty();
    Optional<Bounds> sensible = fields.has("sensible") ? sensible(answer) : Optional.empty();
    return new Variety(variations, where, sensible);
  }

  private void sections(YamlNode.Field vary, List<Variation> into) {
    if (!(vary.value() instanceof YamlNode.Fields sections) || sections.fields().isEmpty()) {
      problems.add(
          vary.position(),
          "'vary:' must hold the inputs that differ",
          "write 'subject: {height: " + range("1 cm", "1/2 in") + "}' below it, for instance");
      return;
    }
    for (YamlNode.Field section : sections.fields().values()) {
      if (!SceneReader.SECTIONS.contains(section.name())) {
        problems.add(
            section.position(),
            "a scene has no part '" + section.name() + "'",
            Nearest.help(section.name(), SceneReader.SECTIONS));
      } else if (section.value() instanceof YamlNode.Fields entries) {
        entries.fields().values().forEach(entry -> entry(section.name(), entry, into));
      } else {
        problems.add(
            section.position(),
            "'" + section.name() + ":' must hold fields, not " + section.value().kind(),
            "write one field a line, indented");
      }
    }
  }

  private void entry(String section, YamlNode.Field entry, List<Variation> into) {
    Optional<SceneField> field = SceneReader.labelled(section, entry.name());
    if (field.isEmpty()) {
      problems.add(
          entry.position(),
          "'" + section + "' has no field '" + entry.name() + "'",
          Nearest.help(entry.name(), SceneReader.labels(section)));
    } else if (entry.value() instanceof YamlNode.Items items) {
      list(field.get(), items).ifPresent(into::add);
    } else if (entry.value() instanceof YamlNode.Text text
        && field.get() instanceof NumberField number) {
      range(number, text).ifPresent(into::add);
    } else {
      problems.add(
          entry.value().position(),
          "'" + entry.name() + "' must be a list of the values it may take",
          "write [" + example(field.get()) + "], for instance");
    }
  }

  private String range(String metricStep, String imperialStep) {
    return lengths.either("30 cm to 60 cm by " + metricStep, "12 in to 24 in by " + imperialStep);
  }

  private static String example(SceneField field) {
    return field instanceof WordField word && word.words().size() > 1
        ? String.join(", ", word.words())
        : "stone owl, wooden mask";
  }

  private Optional<Variation> list(SceneField field, YamlNode.Items items) {
    int before = problems.size();
    List<Double> numbers = new ArrayList<>();
    List<String> words = new ArrayList<>();
    for (YamlNode item : items.items()) {
      if (!(item instanceof YamlNode.Text text)) {
        problems.add(item.position(), "one value was expected, not " + item.kind(), "");
      } else if (field instanceof NumberField number) {
        SceneText.Read read = SceneText.read(text.text(), number.unit().dimension(), lengths);
        read.fault().ifPresent(f -> problems.add(text.position(), f.message(), f.help()));
        if (read.fault().isEmpty()) {
          inside(number, read.si(), text);
          numbers.add(read.si());
        }
      } else {
        words.add(word((WordField) field, text));
      }
    }
    if (problems.size() == before && items.items().size() < 2) {
      problems.add(
          items.position(), "a list of one value does not vary", "add values or drop the field");
    }
    if (problems.size() > before) {
      return Optional.empty();
    }
    return Optional.of(
        field instanceof NumberField number
            ? told(new Variation.OfNumbers(number, numbers))
            : new Variation.OfWords((WordField) field, words));
  }

  private String word(WordField field, YamlNode.Text text) {
    String word = text.text().strip();
    if (!field.words().isEmpty() && !field.words().contains(word)) {
      problems.add(
          text.position(),
          field.name() + " cannot be '" + word + "'",
          "write one of: " + String.join(", ", field.words()));
    }
    return word;
  }

  private void inside(NumberField field, double si, YamlNode.Text at) {
    if (!(si >= field.unit().toSi(field.low()) && si <= field.unit().toSi(field.high()))) {
      problems.add(
          at.position(),
          field.name() + " is out of range in '" + at.text() + "'",
          "keep from "
              + Numbers.significant(field.low(), 4)
              + " to "
              + Numbers.significant(field.high(), 6)
              + " "
              + field.unit().symbol());
    }
  }

  private Optional<Variation> range(NumberField field, YamlNode.Text text) {
    String written = text.text();
    int to = written.indexOf(" to ");
    int by = written.indexOf(" by ");
    if (to < 0 || by < to) {
      problems.add(
          text.position(),
          "the range '" + written + "' cannot be read",
          "write it with its steps: "
              + range("1 cm", "1/2 in")
              + lengths.either("; or a list: [30 cm, 45 cm]", "; or a list: [12 in, 18 in]"));
      return Optional.empty();
    }
    Dimension dimension = field.unit().dimension();
    Optional<Measure> low = measure(written.substring(0, to), dimension, text.position());
    Optional<Measure> high = measure(written.substring(to + 4, by), dimension, text.position());
    Optional<Measure> step = measure(written.substring(by + 4), dimension, text.position());
    if (low.isEmpty() || high.isEmpty() || step.isEmpty()) {
      return Optional.empty();
    }
    inside(field, low.get().si(), text);
    inside(field, high.get().si(), text);
    try {
      return Optional.of(
          told(
              Variation.range(
                  field,
                  low.get().unit(),
                  low.get().number(),
                  low.get().unit().fromSi(high.get().si()),
                  low.get().unit().fromSi(step.get().si()))));
    } catch (IllegalArgumentException fault) {
      problems.add(
          text.position(),
          "'" + written + "': " + fault.getMessage(),
          "write 'from to end by step', such as " + range("5 cm", "1 in"));
      return Optional.empty();
    }
  }

  private Variation.OfNumbers told(Variation.OfNumbers variation) {
    Set<Double> values = new LinkedHashSet<>();
    for (double si : variation.values()) {
      values.add(lengths.stated(si, variation.field().unit()));
    }
    return new Variation.OfNumbers(variation.field(), List.copyOf(values));
  }

  private Optional<Bounds> sensible(Optional<Dimension> answer) {
    Position position = fields.position("sensible");
    String written = fields.line("sensible").orElse("");
    int to = written.indexOf(" to ");
    if (answer.isEmpty() || to < 0) {
      problems.add(
          position,
          answer.isEmpty()
              ? "'sensible:' goes with a question that asks for a number"
              : "'sensible: " + written + "' cannot be read",
          answer.isEmpty()
              ? "say with 'where:' what must hold"
              : "write the range of good answers: "
                  + lengths.either("30 cm to 2 m", "12 in to 7 ft"));
      return Optional.empty();
    }
    Optional<Measure> low = measure(written.substring(0, to), answer.get(), position);
    Optional<Measure> high = measure(written.substring(to + 4), answer.get(), position);
    return low.isPresent() && high.isPresent()
        ? Optional.of(new Bounds(low.get().si(), high.get().si()))
        : Optional.empty();
  }

  private Optional<Measure> measure(String written, Dimension dimension, Position position) {
    MeasureReading reading = MeasureReader.read(written.strip(), dimension, NumberStyle.POINT);
    if (reading instanceof MeasureReading.Read read) {
      return Optional.of(read.measure());
    }
    problems.add(
        position, "'" + written.strip() + "': " + reading.message(), reading.help(lengths));
    return Optional.empty();
  }
}
