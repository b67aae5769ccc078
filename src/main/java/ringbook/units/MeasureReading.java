package ringbook.units;

/** What came of reading a measure that a person wrote. */
public sealed interface MeasureReading {

  /** What is wrong, in words for the person who wrote it; empty for {@link Read}. */
  String message();

  /** What to write instead; empty for {@link Read}. */
  String help();

  /** The same with a length for an example that people would write who measure so. */
  default String help(Lengths lengths) {
    String help = help();
    String metric = Dimension.LENGTH.example();
    return help.endsWith(metric)
        ? help.substring(0, help.length() - metric.length()) + Dimension.LENGTH.example(lengths)
        : help;
  }

  /**
   * A number in a unit of the kind that was asked for.
   *
   * @param measure as it was written, not converted
   */
  record Read(Measure measure) implements MeasureReading {
    @Override
    public String message() {
      return "";
    }

    @Override
    public String help() {
      return "";
    }
  }

  /**
   * A number alone where it means nothing without a unit.
   *
   * @param number the number as written
   * @param expected the kind that was asked for
   */
  record MissingUnit(double number, Dimension expected) implements MeasureReading {
    @Override
    public String message() {
      return Numbers.shortest(number) + " has no unit";
    }

    @Override
    public String help() {
      return "write the unit too, such as " + expected.example();
    }
  }

  /**
   * A number in a unit of another kind.
   *
   * @param found the unit as written
   * @param expected the kind that was asked for
   */
  record WrongKind(Unit found, Dimension expected) implements MeasureReading {
    @Override
    public String message() {
      return "this is " + found.dimension().noun() + ", but " + expected.noun() + " is asked for";
    }

    @Override
    public String help() {
      return "write " + expected.noun() + ", such as " + expected.example();
    }
  }

  /**
   * No number with a unit.
   *
   * @param message what could not be read, in quotation marks, and why
   * @param help what to write instead
   */
  record Unreadable(String message, String help) implements MeasureReading {}
}
