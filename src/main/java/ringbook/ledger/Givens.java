package ringbook.ledger;

import java.util.ArrayList;
import java.util.List;
import ringbook.shots.SceneField;
import ringbook.shots.SceneField.NumberField;

/** The entries that the scene states, one for each of its number fields. */
final class Givens {

  private Givens() {}

  static List<Quantity> entries() {
    List<Quantity> entries = new ArrayList<>();
    for (NumberField field : SceneField.numbers()) {
      entries.add(
          Entry.of(field.key(), field.name())
              .meaning("Stated for the group.")
              .symbol(field.symbol(), field.unit())
              .rounded(Rounding.significant(4))
              .source("the scene")
              .given(reckoning -> field.value().applyAsDouble(reckoning.scene())));
    }
    return entries;
  }
}
