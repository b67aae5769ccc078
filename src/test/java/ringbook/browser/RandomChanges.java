package ringbook.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import ringbook.shots.SceneField;
import ringbook.shots.SceneField.NumberField;
import ringbook.shots.SceneField.WordField;
import ringbook.units.Numbers;
import ringbook.units.Unit;

/** What a reader may state of a scene: sound, out of range, contradicting, or no number at all. */
final class RandomChanges {

  private static final String[] ODD = {
    "",
    "  ",
    "tall",
    "12",
    "1,5 cm",
    "16 1/2 in",
    "5'6\"",
    "-3 cm",
    "0",
    "1e3 mm",
    "½ m",
    "f/8",
    "1/125 s",
    "30 °",
    "75 %",
    "12 px",
    "3 parsec",
    "∞",
    "NaN",
    "0x10",
    "1.2.3 cm",
    "<b>",
    "٣ cm",
    "brick",
    "round",
    "glossy",
    "level",
    "99999999999999999999 km"
  };

  private final SplittableRandom random;

  RandomChanges(long seed) {
    random = new SplittableRandom(seed);
  }

  /** Keys and what is written for each, as {@link Page#change} takes them. */
  List<String[]> next() {
    List<String> keys = new ArrayList<>();
    List<String> written = new ArrayList<>();
    int count = random.nextInt(5);
    for (int i = 0; i < count; i++) {
      SceneField field = SceneField.ALL.get(random.nextInt(SceneField.ALL.size()));
      keys.add(random.nextInt(40) == 0 ? "subject.hieght" : field.key());
      written.add(random.nextInt(6) == 0 ? ODD[random.nextInt(ODD.length)] : sound(field));
    }
    return List.of(keys.toArray(String[]::new), written.toArray(String[]::new));
  }

  private String sound(SceneField field) {
    if (field instanceof WordField word) {
      return word.words().isEmpty()
          ? "thing " + random.nextInt(9)
          : word.words().get(random.nextInt(word.words().size()));
    }
    NumberField number = (NumberField) field;
    double value = number.low() + (number.high() - number.low()) * random.nextDouble() * 1.02;
    List<Unit> units = new ArrayList<>();
    for (Unit unit : Unit.values()) {
      if (unit.dimension() == number.unit().dimension()) {
        units.add(unit);
      }
    }
    Unit unit = random.nextBoolean() ? number.unit() : units.get(random.nextInt(units.size()));
    String text =
        Numbers.significant(unit.fromSi(number.unit().toSi(value)), 1 + random.nextInt(17));
    return unit == Unit.F_STOP ? "f/" + text : text + " " + unit.symbol();
  }
}
