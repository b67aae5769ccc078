package ringbook.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Spellings: common practice, no source; thousands by spaces: ISO 80000-1 (from memory). */
final class MeasureReaderTest {

  private static MeasureReading read(String text, Dimension dimension) {
    return MeasureReader.read(text, dimension, NumberStyle.EITHER);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "42 cm|LENGTH|42|CENTIMETRE",
        "42cm|LENGTH|42|CENTIMETRE",
        "1.5 m|LENGTH|1.5|METRE",
        "1,5 m|LENGTH|1.5|METRE",
        "1 200 mm|LENGTH|1200|MILLIMETRE",
        "1\u202f200\u00a0mm|LENGTH|1200|MILLIMETRE",
        "1'200 mm|LENGTH|1200|MILLIMETRE",
        "16 1/2 in|LENGTH|16.5|INCH",
        "1/2 in|LENGTH|0.5|INCH",
        "½ in|LENGTH|0.5|INCH",
        "16½ in.|LENGTH|16.5|INCH",
        "5' 11\"|LENGTH|71|INCH",
        "5'11\"|LENGTH|71|INCH",
        "5 ft 11 in|LENGTH|71|INCH",
        "5′ 11 1/2″|LENGTH|71.5|INCH",
        "-5' 6\"|LENGTH|-66|INCH",
        "5'|LENGTH|5|FOOT",
        "12 cM|LENGTH|12|CENTIMETRE",
        "30 MM|LENGTH|30|MILLIMETRE",
        "2 M|LENGTH|2|METRE",
        "5 µm|LENGTH|5|MICROMETRE",
        "5 μm|LENGTH|5|MICROMETRE",
        "1.5e-3 m|LENGTH|0.0015|METRE",
        "−3 mm|LENGTH|-3|MILLIMETRE",
        "-3 mm|LENGTH|-3|MILLIMETRE",
        "+3mm|LENGTH|3|MILLIMETRE",
        "1/125 s|TIME|0.008|SECOND",
        "1/125|TIME|0.008|SECOND",
        "1/2.5 s|TIME|0.4|SECOND",
        "8 ms|TIME|8|MILLISECOND",
        "f/8|F_NUMBER|8|F_STOP",
        "f 8|F_NUMBER|8|F_STOP",
        "F8|F_NUMBER|8|F_STOP",
        "ƒ/5,6|F_NUMBER|5.6|F_STOP",
        "8|F_NUMBER|8|F_STOP",
        "12°|ANGLE|12|DEGREE",
        "12 deg|ANGLE|12|DEGREE",
        "12 degrees|ANGLE|12|DEGREE",
        "45 %|SHARE|45|PERCENT",
        "45%|SHARE|45|PERCENT",
        "0.45|SHARE|0.45|PART",
        "30 photos|COUNT|30|PIECE",
        "30|COUNT|30|PIECE",
        "yes|YES_NO|1|ANSWER",
        " No |YES_NO|0|ANSWER",
        "-3|RATIO|-3|ONE",
        "−3|RATIO|-3|ONE",
        "4,000 px|PIXELS|-|-",
        "1,234,567 px|PIXELS|1234567|PIXEL",
        "1.234,5 mm|LENGTH|1234.5|MILLIMETRE",
        "1,234.5 mm|LENGTH|1234.5|MILLIMETRE",
        "0,125 mm|LENGTH|0.125|MILLIMETRE",
        "120 cd/m2|LUMINANCE|120|CANDELA_PER_SQUARE_METRE",
        "12 cm2|AREA|12|SQUARE_CENTIMETRE",
        "2 stops|STOPS|2|STOP",
        "25 mb|DATA|25|MEGABYTE",
      })
  void reads_what_people_write(String text, Dimension dimension, String number, String unit) {
    MeasureReading reading = read(text, dimension);
    if (number.equals("-")) {
      assertThat(reading).as(text).isInstanceOf(MeasureReading.Unreadable.class);
      return;
    }
    assertThat(reading)
        .as(text)
        .isEqualTo(
            new MeasureReading.Read(new Measure(Double.parseDouble(number), Unit.valueOf(unit))));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "42|LENGTH|42 has no unit|write the unit too, such as 42 cm",
        "45|SHARE|45 has no unit|write the unit too, such as 80 %",
        "42 cm|ANGLE|this is a length, but an angle is asked for|write an angle, such as 12°",
        "f/8|LENGTH|this is an f-number, but a length is asked for|write a length, such as 42 cm",
        "42 cn|LENGTH|'cn' is not a unit known here|did you mean 'cm'?",
        "4 parsnips|LENGTH|'parsnips' is not a unit known here|write a length, such as 42 cm",
        "about 42 cm|LENGTH|'about 42 cm' does not begin with a number|write a length, such as 42"
            + " cm",
        "' '|LENGTH|there is nothing here|write a length, such as 42 cm",
        "1,500 m|LENGTH|'1,500 m' can be read in two ways|write 1500, or 1.500 if the comma is the"
            + " decimal mark",
        "1.5 h 30 min|TIME|'h 30 min' is not a unit known here|write a time, such as 1/125 s",
        "30 min 1 h|TIME|'min 1 h' is not a unit known here|write a time, such as 1/125 s",
        "1 m 20|LENGTH|'m 20' is not a unit known here|write a length, such as 42 cm",
        "3 ft 6 cm|LENGTH|'ft 6 cm' is not a unit known here|write a length, such as 42 cm",
        "1/0 s|TIME|'1/0 s' divides by zero|write a time, such as 1/125 s",
        "1.2.3 m|LENGTH|'1.2.3 m' has its points or commas in unusual places|write one decimal mark"
            + " and no marks for thousands, such as 1.5",
        "2.5 photos|COUNT|'2.5 photos' is not a whole number|round it to a whole number, such as"
            + " 24",
        "perhaps|YES_NO|'perhaps' is neither yes nor no|write yes or no, such as yes",
      })
  void says_what_is_wrong(String text, Dimension dimension, String message, String help) {
    MeasureReading reading = read(text, dimension);
    assertThat(reading.message()).isEqualTo(message);
    assertThat(reading.help()).isEqualTo(help);
  }

  @Test
  void a_style_settles_what_a_comma_means() {
    assertThat(MeasureReader.read("1,500 m", Dimension.LENGTH, NumberStyle.POINT))
        .isEqualTo(new MeasureReading.Read(new Measure(1500, Unit.METRE)));
    assertThat(MeasureReader.read("1,500 m", Dimension.LENGTH, NumberStyle.COMMA))
        .isEqualTo(new MeasureReading.Read(new Measure(1.5, Unit.METRE)));
    assertThat(MeasureReader.read("1.500 m", Dimension.LENGTH, NumberStyle.COMMA))
        .isEqualTo(new MeasureReading.Read(new Measure(1500, Unit.METRE)));
    assertThat(MeasureReader.read("1,5 m", Dimension.LENGTH, NumberStyle.POINT).help())
        .isEqualTo("write one decimal mark and no marks for thousands, such as 1.5");
  }

  @Test
  void no_two_units_are_spelled_alike_letter_case_ignored() {
    for (Unit unit : Unit.values()) {
      for (String spelling : unit.spellings()) {
        assertThat(UnitSpellings.written(spelling, unit.dimension())).contains(unit);
        for (Dimension other : Dimension.values()) {
          assertThat(UnitSpellings.written(Words.upper(spelling), other))
              .as(spelling)
              .contains(unit);
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void every_example_reads_as_its_kind(Dimension dimension) {
    assertThat(read(dimension.example(), dimension)).isInstanceOf(MeasureReading.Read.class);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "42|CENTIMETRE|42 cm|42\u00a0cm",
        "0.008|SECOND|1/125 s|1/125\u00a0s",
        "0.5|SECOND|0.5 s|0.5\u00a0s",
        "0.3|SECOND|1/3.3 s|1/3.3\u00a0s",
        "8|F_STOP|f/8|f/8",
        "24|PIECE|24|24",
        "80|PERCENT|80 %|80\u00a0%",
        "12|DEGREE|12°|12°",
        "-3|MILLIMETRE|-3 mm|\u22123\u00a0mm",
        "12500|PIXEL|12500 px|12\u202f500\u00a0px",
        "1|ANSWER|yes|yes",
        "0|ANSWER|no|no",
        "1|STOP|1 stop|1\u00a0stop",
        "2|STOP|2 stops|2\u00a0stops",
        "0.00025|SECOND|1/4000 s|1/4000\u00a0s",
        "0|SECOND|0 s|0\u00a0s",
      })
  void prints_for_people(double number, Unit unit, String plain, String page) {
    assertThat(MeasurePrinter.PLAIN.print(new Measure(number, unit), 6)).isEqualTo(plain);
    assertThat(MeasurePrinter.PAGE.print(new Measure(number, unit), 6)).isEqualTo(page);
  }

  @Test
  void what_is_printed_reads_back_the_same() {
    for (long seed = 1; seed <= 50; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      for (Unit unit : Unit.values()) {
        double size =
            Math.pow(10, random.nextDouble(-4, unit.dimension() == Dimension.SHARE ? 0 : 6));
        double number = unit == Unit.PIECE || unit == Unit.ANSWER ? random.nextInt(2) : size;
        for (MeasurePrinter printer : List.of(MeasurePrinter.PAGE, MeasurePrinter.PLAIN)) {
          String text = printer.print(new Measure(number, unit), 6);
          assertThat(read(text, unit.dimension()))
              .as("%s, seed %d", text, seed)
              .isInstanceOf(MeasureReading.Read.class);
          Measure back = ((MeasureReading.Read) read(text, unit.dimension())).measure();
          assertThat(back.unit()).isEqualTo(unit);
          // Exposures are printed as one over two digits or more.
          double rounding = unit == Unit.SECOND && number < 1.0 / 3 ? 0.05 : 1e-5;
          assertThat(back.number())
              .as("%s, seed %d", text, seed)
              .isCloseTo(number, within(rounding * number));
        }
      }
    }
  }

  /** A person who measures in inches is shown one; what is no length stays. */
  @Test
  void an_example_is_in_the_measures_of_the_reader() {
    MeasureReading bare = MeasureReader.read("42", Dimension.LENGTH, NumberStyle.POINT);
    assertThat(bare.help(Lengths.METRIC)).isEqualTo("write the unit too, such as 42 cm");
    assertThat(bare.help(Lengths.IMPERIAL)).isEqualTo("write the unit too, such as 16 1/2 in");
    assertThat(MeasureReader.read("x", Dimension.ANGLE, NumberStyle.POINT).help(Lengths.IMPERIAL))
        .isEqualTo("write an angle, such as 12°");
  }
}
