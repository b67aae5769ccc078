package ringbook.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringbook.plans.ShotColumn;
import ringbook.problems.Nearest;
import ringbook.problems.Position;
import ringbook.problems.Problems;
import ringbook.shots.Aim.Hold;
import ringbook.shots.Leg;
import ringbook.shots.Leg.Kind;
import ringbook.shots.Leg.Setup;
import ringbook.shots.Pose;
import ringbook.shots.ShotPlan;
import ringbook.shots.Station;
import ringbook.units.Length;
import ringbook.units.Words;

/** Takes in stations row by row and makes legs of them. */
final class ShotIntake {

  /**
   * More stations than anybody photographs from, so that a wrong file is not worked on for hours.
   */
  private static final int MOST = 5000;

  private record Placed(Position at, Station station) {}

  /** A leg as it grows; its first row says how it is shot. */
  private static final class Draft {
    private final ShotRow first;
    private final Setup setup;
    private final List<Placed> placed = new ArrayList<>();

    Draft(ShotRow first, Setup setup) {
      this.first = first;
      this.setup = setup;
    }
  }

  private final ShotDefaults defaults;
  private final Problems problems;
  private final Map<String, Draft> drafts = new LinkedHashMap<>();
  private int rows;

  ShotIntake(ShotDefaults defaults, Problems problems) {
    this.defaults = defaults;
    this.problems = problems;
  }

  boolean isEmpty() {
    return rows == 0;
  }

  void take(ShotRow row) {
    rows++;
    if (rows > MOST) {
      if (rows == MOST + 1) {
        problems.add(row.at(), "the table has more than " + MOST + " stations", "split it");
      }
      return;
    }
    int before = problems.size();
    String name = row.text(ShotColumn.LEG);
    if (name.isEmpty()) {
      row.fault(ShotColumn.LEG, "it is missing", "write a name such as ring A", problems);
    }
    Optional<Setup> setup = setup(row);
    Optional<Integer> number = row.count(ShotColumn.NUMBER, problems);
    Optional<Station> station = new ShotPlacing(row, defaults, problems).station();
    if (problems.size() > before || setup.isEmpty() || station.isEmpty()) {
      return;
    }
    Draft draft = drafts.computeIfAbsent(name, key -> new Draft(row, setup.get()));
    sameSetup(row, draft, setup.get());
    int next = draft.placed.isEmpty() ? 1 : last(draft).number() + 1;
    draft.placed.add(new Placed(row.at(), station.get().numbered(number.orElse(next))));
  }

  private static Station last(Draft draft) {
    return draft.placed.get(draft.placed.size() - 1).station();
  }

  private Optional<Setup> setup(ShotRow row) {
    Optional<Pose> pose = word(row, ShotColumn.POSE, Pose.STANDING, Pose.values());
    Optional<Hold> hold = word(row, ShotColumn.HOLD, defaults.hold(), Hold.values());
    double focus = row.si(ShotColumn.FOCUS, problems).orElse(defaults.focus().metres());
    if (!(focus > 0)) {
      row.fault(ShotColumn.FOCUS, "it must be above 0", "write a distance", problems);
      return Optional.empty();
    }
    int repeats = row.count(ShotColumn.PHOTOS, problems).orElse(1);
    return pose.isEmpty() || hold.isEmpty()
        ? Optional.empty()
        : Optional.of(new Setup(pose.get(), hold.get(), new Length(focus), repeats));
  }

  private <E extends Enum<E>> Optional<E> word(
      ShotRow row, ShotColumn column, E usual, E[] values) {
    if (!row.states(column)) {
      return Optional.of(usual);
    }
    String written = Words.lower(row.text(column)).replace('_', ' ');
    List<String> words = new ArrayList<>();
    for (E value : values) {
      String word = Words.lower(value.name()).replace('_', ' ');
      if (word.equals(written)) {
        return Optional.of(value);
      }
      words.add(word);
    }
    row.fault(
        column, "it cannot be '" + Quote.of(written) + "'", Nearest.help(written, words), problems);
    return Optional.empty();
  }

  private void sameSetup(ShotRow row, Draft draft, Setup setup) {
    if (!setup.equals(draft.setup)) {
      problems.add(
          row.at(),
          "pose, hold, focus or photographs differ from those of the first station of "
              + Quote.of(row.text(ShotColumn.LEG))
              + " at "
              + draft.first.at(),
          "a leg is shot without a change: make them alike, or give this part a name of its own");
    }
  }

  /** The plan of all rows; empty, with the faults told, if two stations have one number. */
  Optional<ShotPlan> plan() {
    List<Leg> legs = new ArrayList<>();
    int before = problems.size();
    for (Map.Entry<String, Draft> draft : drafts.entrySet()) {
      List<Placed> placed = new ArrayList<>(draft.getValue().placed);
      placed.sort(Comparator.comparingInt(one -> one.station().number()));
      if (differ(draft.getKey(), placed)) {
        ShotRow first = draft.getValue().first;
        legs.add(
            new Leg(
                draft.getKey(),
                kind(draft.getKey(), first),
                draft.getValue().setup,
                placed.stream().map(Placed::station).toList(),
                first.text(ShotField.WHY)));
      }
    }
    return problems.size() == before ? Optional.of(new ShotPlan(legs)) : Optional.empty();
  }

  private boolean differ(String name, List<Placed> sorted) {
    boolean differ = true;
    for (int i = 1; i < sorted.size(); i++) {
      int number = sorted.get(i).station().number();
      if (sorted.get(i - 1).station().number() == number) {
        problems.add(
            sorted.get(i).at(),
            Quote.of(name) + " has two stations " + number,
            "the other one is at " + sorted.get(i - 1).at() + "; number them anew");
        differ = false;
      }
    }
    return differ;
  }

  private static final List<String> DETAILS = List.of("extras", "arc", "sparse", "close", "view");

  /** As the table says, or as the first word of the name says; a ring if neither does. */
  private static Kind kind(String name, ShotRow first) {
    String stated = Words.lower(first.text(ShotField.KIND));
    String words = stated.isEmpty() ? Words.lower(name) : stated;
    if (words.startsWith("underside")) {
      return Kind.TOP;
    }
    if (DETAILS.stream().anyMatch(words::startsWith)) {
      return Kind.DETAIL;
    }
    for (Kind kind : Kind.values()) {
      if (words.startsWith(Words.lower(kind.name()))) {
        return kind;
      }
    }
    return Kind.RING;
  }
}
