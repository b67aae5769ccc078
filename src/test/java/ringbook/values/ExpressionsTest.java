package ringbook.values;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringbook.Scenes;
import ringbook.ledger.Reckoning;
import ringbook.units.Lengths;

final class ExpressionsTest {

  private static final Expressions POT =
      new Expressions(
          Reckoning.of(Scenes.pot()), Map.of("lens-camera", Scenes.potWithLensCamera().kit()));

  /** The pot is 36 cm tall and 30 cm wide, its kit has a focal length of 4.8 mm. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "subject.height; 36\u00a0cm",
        "subject.height.number; 36",
        "subject.height.in(\"mm\"); 360\u00a0mm",
        "subject.height.in(\"inches\"); 14\u00a0in",
        "subject.height.name?cap_first; Height of the object",
        "kit.name; phone main camera",
        "given(\"subject.height = 0.5 m\").subject.height; 50\u00a0cm",
        "given(\"kit = lens-camera\").kit.focalLength; 35\u00a0mm",
        "given(\"kit = lens-camera, kit.focalLength = 50 mm\").kit.focalLength; 50\u00a0mm",
        "(subject.height > 30)?then(\"tall\", \"low\"); tall",
        "(subject.height > subject.width)?then(subject.height, subject.width); 36\u00a0cm",
        "\"about \" + subject.height; about 36\u00a0cm",
        "length(\"30 cm\"); 30\u00a0cm",
        "length(\"30 cm\", \"12 in\"); 30\u00a0cm",
        "given(\"aim.units = imperial\").aim.units; imperial",
        "1 + 2; 3"
      })
  void comes_to_the_text_a_person_would_write(String expression, String text) throws Exception {
    assertThat(text(POT.evaluate(expression))).isEqualTo(text);
  }

  /** 34 cm are 13.39 in, 6 ft are 182.88 cm (inch of 25.4 mm, NIST Special Publication 811). */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "length(\"34 cm\"); 13\u00a01/2\u00a0in",
        "length(\"30 cm\", \"12 in\"); 12\u00a0in",
        "length(\"6 ft\"); 6\u00a0ft",
        "\"about \" + length(\"2 m\"); about 6\u00a0ft\u00a06\u00a03/4\u00a0in",
        "(aim.units == \"imperial\")?then(\"12 in\", \"1 m\"); 12 in",
      })
  void a_stated_length_follows_the_measures(String expression, String text) throws Exception {
    Expressions inches = new Expressions(POT.reckoning().told(Lengths.IMPERIAL), Map.of());
    assertThat(text(inches.evaluate(expression))).isEqualTo(text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "length",
        "length(30)",
        "length(\"30\")",
        "length(\"30 kg\")",
        "length(\"30 cm\", \"12\")",
        "length(\"30 cm\", 12)",
        ".now",
        ".data_model",
        "(.version)",
        "\"freemarker.template.utility.ObjectConstructor\"?new()",
        "kit?api",
        "kit?keys",
        "\"1 + 1\"?eval",
        "\"${.now}\"",
        "\"<#assign x=1>\"?interpret",
        "subject.height?c",
        "kit.class",
        "subject.height.getClass()",
        "subject.height) x = (1",
        "1.5",
        "kit.focalLength * 1.5 + 0.05",
        "nothing",
        "it",
        ""
      })
  void reaches_nothing_but_the_scene(String expression) {
    ExpressionFault fault =
        catchThrowableOfType(ExpressionFault.class, () -> POT.evaluate(expression));
    assertThat(fault).isNotNull();
    assertThat(fault.fault()).isNotEmpty();
    assertThat(fault.offsetIn(expression)).isBetween(0, expression.length());
  }

  @Test
  void a_refused_value_is_told_apart_from_a_mistake() {
    String expression = "given(\"aim.detail = 0.01 mm\").distance.largest";
    ExpressionFault fault =
        catchThrowableOfType(ExpressionFault.class, () -> POT.evaluate(expression));
    assertThat(fault.refused()).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "subject.height; true",
        "subject.height > 40; false",
        "distance.fine && subject.height > 30; true",
        "given(\"aim.detail = 0.01 mm\").distance.largest; false",
        "given(\"aim.detail = 0.01 mm\").distance.largest > 0; false"
      })
  void a_condition_holds_where_it_is_true_or_has_a_value(String expression, boolean holds)
      throws Exception {
    assertThat(POT.holds(expression)).isEqualTo(holds);
  }

  private static String text(Value value) {
    if (value instanceof Value.OfQuantity quantity) {
      return quantity.text();
    }
    return value instanceof Value.Word word ? word.text() : ((Value.Plain) value).text();
  }
}
