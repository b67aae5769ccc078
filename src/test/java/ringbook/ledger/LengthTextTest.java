package ringbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringbook.Scenes;
import ringbook.units.Lengths;
import ringbook.units.MeasureReader;
import ringbook.units.MeasureReading;
import ringbook.units.NumberStyle;

/** Lengths of the ledger in feet and inches. */
final class LengthTextTest {

  private static final Ledger INCHES = Ledger.in(Lengths.IMPERIAL);

  private static String text(String key, double centimetres) {
    return INCHES.get(key).text(centimetres / 100).replace('\u00a0', ' ');
  }

  /**
   * Sheets of paper: 8 1/2 in by 11 in are 215.9 mm by 279.4 mm (ANSI Y14.1), and A4, 210 mm by 297
   * mm (ISO 216), is commonly told as 8.27 in by 11.7 in. A yard is 91.44 cm (agreement of 1959).
   */
  @ParameterizedTest
  @CsvSource({
    "21.59, 8 1/2 in",
    "27.94, 11 in",
    "21, 8.3 in",
    "29.7, 11.7 in",
    "91.44, 3 ft",
    "42, 16 1/2 in",
    "30, 11 3/4 in",
    "190, 6 ft 2 3/4 in",
    "0.5, 5 mm"
  })
  void what_people_measured(double centimetres, String expected) {
    assertThat(text("subject.height", centimetres)).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "42.48, 16.7 in",
    "21, 8.27 in",
    "91.3, 35.9 in",
    "91.4, 3 ft",
    "91.9, 3 ft 0.2 in",
    "95.3, 3 ft 1.5 in",
    "99.9, 3 ft 3.3 in",
    "100.1, 3 ft 3 1/2 in",
    "123.4, 4 ft 1/2 in"
  })
  void what_was_worked_out_is_told_about_as_finely(double centimetres, String expected) {
    assertThat(text("distance.standoff", centimetres)).isEqualTo(expected);
  }

  /** 1 m/s is 39.37 in/s, by the inch of exactly 25.4 mm (NIST Special Publication 811, B.8). */
  @ParameterizedTest
  @CsvSource({"100, 39.4 in/s", "50, 19.7 in/s", "2.54, 1 in/s"})
  void speeds_are_told_in_inches_a_second(double centimetres, String expected) {
    assertThat(text("aim.walkingSpeed", centimetres)).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "subject.height, 1 mm to 32.8 ft, Stated for the group.",
    "kit.lensFarOffset, 3 mm to 15.7 in, 'Stated for the group; 5.5 in where nothing is said.'",
    "aim.walkingSpeed, 0.394 to 118 in/s, 'Stated for the group; 19.7 in/s where nothing is"
        + " said.'",
    "kit.barError, 0.001 to 10 mm, 'Stated for the group; 0.1 mm where nothing is said.'",
    "aim.step, 1° to 120°, Stated for the group.",
    "kit.polariserError, 0° to 90°, 'Stated for the group; 3° where nothing is said.'",
  })
  void limits_and_usual_values_are_told_in_inches(String key, String range, String meaning) {
    Quantity quantity = INCHES.get(key);
    assertThat(quantity.rangeText().replace('\u00a0', ' ')).isEqualTo(range);
    assertThat(quantity.meaning().replace('\u00a0', ' ')).isEqualTo(meaning);
  }

  @Test
  void fine_lengths_and_those_of_the_camera_stay_in_millimetres() {
    assertThat(text("aim.detail", 0.025)).isEqualTo("0.25 mm");
    assertThat(text("kit.focalLength", 3.5)).isEqualTo("35 mm");
    assertThat(text("distance.standoff", Double.POSITIVE_INFINITY)).isEqualTo("∞");
  }

  /**
   * Read back, no text is further off than one step of the last digit that is printed in metres.
   */
  @Test
  void no_text_is_coarser_than_the_ledger_rounds() {
    Scenes.seeds()
        .forEach(
            seed -> {
              Reckoning reckoning = Reckoning.of(Scenes.random(seed)).told(Lengths.IMPERIAL);
              for (Quantity quantity : INCHES.quantities()) {
                if (quantity.isInInches()
                    && reckoning.of(quantity.key()) instanceof Outcome.Known known
                    && Math.abs(known.si()) < Double.POSITIVE_INFINITY) {
                  assertClose(quantity, known.si());
                }
              }
            });
  }

  private static void assertClose(Quantity quantity, double si) {
    String text = quantity.text(si);
    boolean below = text.startsWith("-");
    MeasureReading reading =
        MeasureReader.read(
            below ? text.substring(1) : text, quantity.unit().dimension(), NumberStyle.POINT);
    assertThat(reading).as("%s: %s", quantity.key(), text).isInstanceOf(MeasureReading.Read.class);
    double read = ((MeasureReading.Read) reading).measure().si() * (below ? -1 : 1);
    boolean stated = quantity.definition() instanceof Quantity.Given;
    double step =
        stated
            ? 0.01
            : quantity.unit().toSi(2 * quantity.rounding().slack(quantity.unit().fromSi(si)));
    assertThat(Math.abs(read - si))
        .as("%s: %s", quantity.key(), text)
        .isLessThanOrEqualTo(1.3 * step);
  }
}
