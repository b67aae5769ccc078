package ringbook.units;

import java.util.Optional;
import java.util.OptionalDouble;
import ringbook.problems.Nearest;

/**
 * Reads one number and its unit as people write them: {@code 42cm}, {@code 1 200 mm}, {@code 16 1/2
 * in}, {@code 5' 11"}, {@code 1/125 s}, {@code f/8}, {@code 12°}, {@code 45 %}, {@code yes}.
 *
 * <p>Spaces of any kind, both micro signs, the true minus and typographic quotation marks are taken
 * for their plain forms. Thousands may be marked by spaces or apostrophes (and by the mark that is
 * not the decimal one); groups have three digits. Letter case counts first ({@code MB}); where
 * nothing fits it is ignored, as no two units differ by case alone: {@code MM} is millimetres and
 * {@code M} metres. An exposure may be written as a fraction without its unit: {@code 1/125}.
 * f-numbers, counts, pixels, stops, ratios and shares up to 1 need no unit.
 */
public final class MeasureReader {

  private final String written;
  private final Dimension expected;
  private final NumberStyle style;

  private MeasureReader(String written, Dimension expected, NumberStyle style) {
    this.written = written;
    this.expected = expected;
    this.style = style;
  }

  /** What {@code text} says, where a measure of kind {@code expected} is asked for. */
  public static MeasureReading read(String text, Dimension expected, NumberStyle style) {
    return new MeasureReader(text, expected, style).read();
  }

  private MeasureReading read() {
    String text = PlainMarks.of(written);
    if (text.isEmpty()) {
      return new MeasureReading.Unreadable("there is nothing here", suchAs());
    }
    if (expected == Dimension.YES_NO) {
      return yesOrNo(Words.lower(text));
    }
    int start = afterF(text);
    NumberScan scan = new NumberScan(text.substring(start), style);
    OptionalDouble number = scan.read();
    if (number.isEmpty()) {
      return new MeasureReading.Unreadable(quoted() + " " + scan.fault(), scan.help(suchAs()));
    }
    String rest = PlainMarks.trimmed(scan.rest());
    if (start > 0) {
      return rest.isEmpty() ? as(number.getAsDouble(), Unit.F_STOP) : unknown(rest);
    }
    return rest.isEmpty() ? bare(number.getAsDouble(), scan) : with(number.getAsDouble(), rest);
  }

  /** Where the number begins if an f for the f-number stands before it, else 0. */
  private static int afterF(String text) {
    if (text.charAt(0) != 'f' && text.charAt(0) != 'F') {
      return 0;
    }
    int at = 1;
    while (at < text.length() && (text.charAt(at) == ' ' || text.charAt(at) == '/')) {
      at++;
    }
    return at < text.length() && NumberScan.isDigit(text.charAt(at)) ? at : 0;
  }

  private MeasureReading bare(double number, NumberScan scan) {
    if (expected == Dimension.TIME && scan.wasFraction()) {
      return as(number, Unit.SECOND);
    }
    Optional<Unit> unit = Unit.understood(expected);
    return unit.isEmpty() || (unit.get() == Unit.PART && Math.abs(number) > 1)
        ? new MeasureReading.MissingUnit(number, expected)
        : as(number, unit.get());
  }

  private MeasureReading with(double number, String written) {
    Optional<Unit> unit = UnitSpellings.written(written, expected);
    if (unit.isPresent()) {
      return as(number, unit.get());
    }
    return new MeasureParts(expected, style)
        .read(number, written)
        .map(measure -> as(measure.number(), measure.unit()))
        .orElseGet(() -> unknown(written));
  }

  private MeasureReading as(double number, Unit unit) {
    if (unit.dimension() != expected) {
      return new MeasureReading.WrongKind(unit, expected);
    }
    if (unit == Unit.PIECE && Math.floor(number) != number) {
      return new MeasureReading.Unreadable(
          quoted() + " is not a whole number", "round it to a whole number, such as 24");
    }
    return new MeasureReading.Read(new Measure(number, unit));
  }

  private MeasureReading yesOrNo(String text) {
    return switch (text) {
      case "yes", "y", "true" -> as(1, Unit.ANSWER);
      case "no", "n", "false" -> as(0, Unit.ANSWER);
      default -> new MeasureReading.Unreadable(quoted() + " is neither yes nor no", suchAs());
    };
  }

  private MeasureReading unknown(String unit) {
    return new MeasureReading.Unreadable(
        "'" + unit + "' is not a unit known here",
        Nearest.to(unit, UnitSpellings.of(expected))
            .map(near -> "did you mean '" + near + "'?")
            .orElse(suchAs()));
  }

  private String suchAs() {
    return "write " + expected.noun() + ", such as " + expected.example();
  }

  private String quoted() {
    return "'" + PlainMarks.trimmed(written) + "'";
  }
}
