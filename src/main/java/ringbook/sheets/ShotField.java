package ringbook.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringbook.plans.ShotColumn;
import ringbook.units.Unit;

/**
 * A column as a table names it: which one, and in which unit its bare numbers are.
 *
 * @param name of the column without its unit
 * @param unit of bare numbers; {@link Unit#ONE} for words and counts
 */
record ShotField(String name, Unit unit) {

  /** A column only people add. */
  static final String KIND = "kind";

  /** Why a leg is there; only in JSON. */
  static final String WHY = "why";

  private static final Map<String, Unit> SUFFIXES =
      Map.of(
          "_cm", Unit.CENTIMETRE,
          "_mm", Unit.MILLIMETRE,
          "_m", Unit.METRE,
          "_in", Unit.INCH,
          "_ft", Unit.FOOT,
          "_deg", Unit.DEGREE);

  /** The column that a head names, in small letters with spaces or underscores. */
  static Optional<ShotField> named(String written) {
    String head = written.strip().replace(' ', '_').replace('-', '_');
    if (head.equals(KIND) || head.equals(WHY)) {
      return Optional.of(new ShotField(head, Unit.ONE));
    }
    for (ShotColumn column : ShotColumn.values()) {
      if (head.equals(column.head()) || head.equals(column.plainName())) {
        return Optional.of(new ShotField(column.plainName(), column.unit()));
      }
      for (Map.Entry<String, Unit> suffix : SUFFIXES.entrySet()) {
        boolean fits = suffix.getValue().dimension() == column.unit().dimension();
        if (fits && head.equals(column.plainName() + suffix.getKey())) {
          return Optional.of(new ShotField(column.plainName(), suffix.getValue()));
        }
      }
    }
    return Optional.empty();
  }

  boolean is(ShotColumn column) {
    return name.equals(column.plainName());
  }

  /** What is missing in a table that names only these columns; each text names one or two. */
  static List<String> missing(List<ShotField> named) {
    List<String> missing = new ArrayList<>();
    need(named, missing, ShotColumn.LEG, ShotColumn.LEG);
    need(named, missing, ShotColumn.AZIMUTH, ShotColumn.CLOCK);
    need(named, missing, ShotColumn.LENS_HEIGHT, ShotColumn.LENS_HEIGHT);
    need(named, missing, ShotColumn.FLOOR_DISTANCE, ShotColumn.DISTANCE);
    return missing;
  }

  private static void need(
      List<ShotField> named, List<String> missing, ShotColumn one, ShotColumn other) {
    if (named.stream().noneMatch(field -> field.is(one) || field.is(other))) {
      missing.add(
          one == other ? "'" + one.head() + "'" : "'" + one.head() + "' or '" + other.head() + "'");
    }
  }
}
