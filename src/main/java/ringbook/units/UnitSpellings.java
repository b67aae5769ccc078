package ringbook.units;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the unit that a text spells. */
final class UnitSpellings {

  private static final Map<String, List<Unit>> EXACT = new LinkedHashMap<>();
  private static final Map<String, List<Unit>> LOWER = new LinkedHashMap<>();

  static {
    for (Unit unit : Unit.values()) {
      for (String spelling : of(unit)) {
        EXACT.computeIfAbsent(spelling, s -> new ArrayList<>()).add(unit);
        LOWER.computeIfAbsent(Words.lower(spelling), s -> new ArrayList<>()).add(unit);
      }
    }
  }

  private UnitSpellings() {}

  /**
   * The unit that {@code text} spells, letter for letter if any does, else in other letter case;
   * one of the {@code preferred} kind where several fit. A full stop at the end is overlooked.
   */
  static Optional<Unit> written(String text, Dimension preferred) {
    String name = text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
    List<Unit> exact = EXACT.get(name);
    return exact != null
        ? Optional.of(best(exact, preferred))
        : Optional.ofNullable(LOWER.get(Words.lower(name))).map(units -> best(units, preferred));
  }

  private static Unit best(List<Unit> units, Dimension preferred) {
    Unit best = units.get(0);
    for (Unit unit : units) {
      best = unit.dimension() == preferred ? unit : best;
    }
    return best;
  }

  /** All ways to write units of one kind. */
  static List<String> of(Dimension dimension) {
    List<String> all = new ArrayList<>();
    for (Unit unit : Unit.values()) {
      if (unit.dimension() == dimension) {
        all.addAll(of(unit));
      }
    }
    return all;
  }

  private static List<String> of(Unit unit) {
    List<String> all = new ArrayList<>();
    if (!unit.symbol().isEmpty()) {
      all.add(unit.symbol());
    }
    all.addAll(unit.spellings());
    return all;
  }
}
