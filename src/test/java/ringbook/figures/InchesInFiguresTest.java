package ringbook.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import ringbook.Scenes;
import ringbook.ledger.Reckoning;
import ringbook.plans.FieldSheet;
import ringbook.shots.Scene;
import ringbook.units.Lengths;

/** Where people measure in inches, figures and the plan of the day tell no length in metres. */
final class InchesInFiguresTest {

  /** Centimetres and metres; millimetres are the camera's, and a speed is no length. */
  private static final Pattern METRIC =
      Pattern.compile("[^<>]{0,40}(?:\\d[ \\u00a0]|, )(?:cm|m)\\b(?!/s)[^<>]{0,20}");

  private static final Scene SCENE = Scenes.potWithHole().in(Lengths.IMPERIAL);

  @Test
  void figures_have_neither_labels_nor_axes_in_metres() {
    Reckoning reckoning = Reckoning.of(SCENE);
    StringBuilder all = new StringBuilder();
    for (String name : FigureShelf.names()) {
      Figure figure = FigureShelf.draw(name, Map.of(), reckoning, "a-");
      all.append(found(name, figure.svg() + figure.description() + figure.tableRows()));
    }
    assertThat(all.toString()).isEmpty();
    Figure metric = FigureShelf.draw("ring-plan", Map.of(), Reckoning.of(Scenes.pot()), "a-");
    assertThat(found("ring-plan", metric.svg())).isNotEmpty(); // so that the pattern finds them
  }

  @Test
  void the_plan_of_the_day_neither() {
    FieldSheet sheet = FieldSheet.of(Reckoning.of(SCENE));
    assertThat(sheet.runs()).isNotEmpty();
    assertThat(sheet.toString().replace(SCENE.toString(), "")).contains(" in");
    String told = sheet.runs() + " " + sheet.locks() + sheet.total();
    assertThat(found("plan", told)).isEmpty();
  }

  private static String found(String what, String text) {
    StringBuilder all = new StringBuilder();
    Matcher metric = METRIC.matcher(text);
    while (metric.find()) {
      all.append(what).append(": ").append(metric.group()).append('\n');
    }
    return all.toString();
  }
}
