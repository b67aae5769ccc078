package ringbook.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import ringbook.shots.Scene;
import ringbook.shots.SceneDetails;
import ringbook.shots.SceneField;
import ringbook.shots.SceneField.NumberField;
import ringbook.units.Numbers;
import ringbook.units.Unit;

/** The entries that the scene states, one for each of its number fields. */
final class Givens {

  private static final List<String> FROM_EACH_OTHER =
      List.of("kit.sensorWidth", "kit.sensorHeight", "kit.focalLength", "kit.equivalent");

  private Givens() {}

  static List<Quantity> entries() {
    List<Quantity> entries = new ArrayList<>();
    for (NumberField field : SceneField.numbers()) {
      entries.add(
          Entry.of(field.key(), field.name())
              .symbol(field.symbol(), field.unit())
              .rounded(rounding(field))
              .range(range(field))
              .source("the scene")
              .given(reckoning -> value(field, reckoning.scene())));
    }
    return entries;
  }

  /** A time is stated as it stands on a camera; nobody needs a ten-thousandth of a share. */
  private static Rounding rounding(NumberField field) {
    return field.key().equals("aim.usualTime")
        ? Rounding.fraction(3)
        : Rounding.significant(field.unit() == Unit.PERCENT ? 3 : 4);
  }

  /** What a given is, with the value that holds where nothing is said. */
  static String meaning(Quantity given) {
    OptionalDouble usual = SceneDetails.usual(given.key());
    if (usual.isPresent()) {
      return "Stated for the group; "
          + usual(given, usual.getAsDouble())
          + " where nothing is said.";
    }
    return SceneDetails.has(given.key())
        ? "Stated for the group, where there is one."
        : "Stated for the group.";
  }

  private static String usual(Quantity given, double si) {
    if (given.isInInches()) {
      return given.text(si);
    }
    String symbol = given.unit().symbol();
    String space = symbol.isEmpty() || given.unit() == Unit.DEGREE ? "" : "\u00a0";
    return Numbers.significant(given.unit().fromSi(si), 3) + space + symbol;
  }

  /** What may be written; sensor and lens follow from each other where only one is written. */
  private static Range range(NumberField field) {
    if (FROM_EACH_OTHER.contains(field.key())) {
      return Range.above(0);
    }
    return Range.between(field.unit().toSi(field.low()), field.unit().toSi(field.high()));
  }

  private static double value(NumberField field, Scene scene) {
    if (SceneDetails.has(field.key())
        && SceneDetails.usual(field.key()).isEmpty()
        && SceneDetails.stated(scene, field.key()).isEmpty()) {
      throw new RefusedException(
          "nothing is said about the " + field.name(),
          "state '" + field.label() + ":' under '" + field.section() + ":'");
    }
    return field.value().applyAsDouble(scene);
  }
}
