package ringbook.ledger;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringbook.units.Lengths;

/** All quantities, by key, in the order of the appendix. */
public final class Ledger {

  private static final Ledger STANDARD = standardEntries();
  private static final Ledger INCHES = STANDARD.told(Quantity.Print.INCHES);
  private static final Ledger FINE_INCHES = STANDARD.told(Quantity.Print.FINE_INCHES);

  private final Map<String, Quantity> entries = new LinkedHashMap<>();
  private final Set<String> sections = new LinkedHashSet<>();

  private Ledger(List<Quantity> quantities) {
    for (Quantity quantity : quantities) {
      if (entries.put(quantity.key(), quantity) != null) {
        throw new IllegalArgumentException("two entries have the key " + quantity.key());
      }
      sections.add(quantity.key().substring(0, quantity.key().indexOf('.')));
    }
  }

  /** The ledger of the course. */
  public static Ledger standard() {
    return STANDARD;
  }

  /** The same with the lengths of objects and rooms told in these measures. */
  static Ledger in(Lengths lengths) {
    return lengths == Lengths.IMPERIAL ? INCHES : STANDARD;
  }

  /** The same with the digits that the numbers of a question need. */
  Ledger forQuestions() {
    return this == INCHES ? FINE_INCHES : this;
  }

  private Ledger told(Quantity.Print print) {
    return new Ledger(entries.values().stream().map(one -> one.told(print)).toList());
  }

  /** All entries. */
  public Collection<Quantity> quantities() {
    return entries.values();
  }

  /** All keys. */
  public List<String> keys() {
    return List.copyOf(entries.keySet());
  }

  /** What stands before the point in keys, in the order of the appendix; not to be changed. */
  public Set<String> sections() {
    return sections;
  }

  /** The entry with that key, if there is one. */
  public Optional<Quantity> find(String key) {
    return Optional.ofNullable(entries.get(key));
  }

  /**
   * The entry with that key.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Quantity get(String key) {
    return find(key)
        .orElseThrow(() -> new IllegalArgumentException("no quantity is called '" + key + "'"));
  }

  private static Ledger standardEntries() {
    List<Quantity> all = new ArrayList<>();
    all.addAll(Givens.entries());
    all.addAll(KitEntries.entries());
    all.addAll(LessonEntries.kit());
    all.addAll(DistanceEntries.entries());
    all.addAll(SamplingEntries.entries());
    all.addAll(FartherEntries.entries());
    all.addAll(TileEntries.entries());
    all.addAll(SharpEntries.entries());
    all.addAll(DepthEntries.entries());
    all.addAll(ViewEntries.entries());
    all.addAll(WaysOutEntries.entries());
    all.addAll(LessonEntries.sharp());
    all.addAll(LightEntries.entries());
    all.addAll(LampEntries.entries());
    all.addAll(LessonEntries.lamps());
    all.addAll(MotionEntries.entries());
    all.addAll(FlickerEntries.entries());
    all.addAll(RingEntries.entries());
    all.addAll(HeightEntries.ring());
    all.addAll(SeenEntries.entries());
    all.addAll(PairEntries.entries());
    all.addAll(RingsEntries.entries());
    all.addAll(HeightEntries.rings());
    all.addAll(LowEntries.entries());
    all.addAll(PoseEntries.entries());
    all.addAll(JobEntries.entries());
    all.addAll(DayEntries.entries());
    all.addAll(RoomEntries.entries());
    all.addAll(WayRoundEntries.entries());
    all.addAll(SpaceEntries.entries());
    all.addAll(HoleEntries.entries());
    all.addAll(EdgeEntries.hole());
    all.addAll(StripEntries.entries());
    all.addAll(EdgeEntries.strip());
    all.addAll(PrecisionEntries.entries());
    all.addAll(SetEntries.entries());
    all.addAll(ScaleEntries.entries());
    all.addAll(ScaleCheckEntries.entries());
    all.addAll(CheckEntries.entries());
    all.addAll(HandoverEntries.entries());
    all.addAll(FitnessEntries.entries());
    all.addAll(LessonEntries.fitness());
    return new Ledger(all);
  }
}
