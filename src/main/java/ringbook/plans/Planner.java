package ringbook.plans;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.Limits;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.View;
import ringbook.ledger.Outcome;
import ringbook.ledger.Reckoning;
import ringbook.shots.Leg.Setup;
import ringbook.units.Angle;

/**
 * Works out which photographs to take of an object in a room.
 *
 * <p>First the rings: of all elevations within reach, half a step limit apart, those that see what
 * rings can see with fewest photographs ({@link RingChoice}). Then single photographs for what is
 * left ({@link Extras}), from the rings' heights and from close by ({@link Stations}). Then what
 * can be spared goes ({@link Trim}); that is tried with the widest ring at every other height too,
 * and the least set wins. Pieces that do not hang together are bridged ({@link Chain}), and what a
 * bridge has made needless goes. Single photographs give way to even rings, arcs and strips ({@link
 * Evening}), and all is put into the order of walking ({@link Legs}). {@link CoverBound} says how
 * few any plan could have.
 */
public final class Planner {

  /** More candidate stations than this are not looked through: the limits are too tight. */
  private static final int MOST = 4000;

  /** The bound is worked out over about so many patches; any choice of patches gives a true one. */
  private static final int BOUND_PATCHES = 250;

  /** Other choices of rings that are worked out to the end. */
  private static final int OTHERS = 2;

  /** Times that legs may be focused anew: that may ask for a bridge, and so for another leg. */
  private static final int REFOCUSED = 2;

  private final Seeing seeing;
  private final Angle stepLimit;
  private final Stations stations;
  private final boolean[] targets;

  private Planner(Seeing seeing, Stations stations) {
    this.seeing = seeing;
    this.stations = stations;
    stepLimit = seeing.scene().aim().stepLimit();
    targets = Wellness.of(seeing, stations.all()).wells();
  }

  /** Why the scene allows no plan, if it does not. */
  public static Optional<Outcome.Refused> refusal(Reckoning reckoning) {
    for (String key : new String[] {"ring.radius", "sharp.focus", "sharp.fNumber"}) {
      if (reckoning.of(key) instanceof Outcome.Refused refused) {
        return Optional.of(refused);
      }
    }
    double perRing = 2 * Math.PI / reckoning.scene().aim().stepLimit().radians();
    if (perRing * perRing > MOST) {
      return Optional.of(
          new Outcome.Refused(
              "so small a turn asks for more photographs than a person takes",
              "a step limit of 6° or more can be planned"));
    }
    return Optional.empty();
  }

  /**
   * A plan; empty where no station at all can be used, where from none of them enough is seen well,
   * or for the reason {@link #refusal} gives.
   *
   * @param seeing the object in the scene, at the f-number of the ledger
   * @param reckoning the ledger of the same scene
   */
  public static Optional<Proposal> plan(Seeing seeing, Reckoning reckoning) {
    if (refusal(reckoning).isPresent()) {
      return Optional.empty();
    }
    Stations stations = Stations.of(seeing, reckoning);
    return stations.all().isEmpty() ? Optional.empty() : new Planner(seeing, stations).propose();
  }

  private Optional<Proposal> propose() {
    Trial best = null;
    for (boolean[] rings : choices()) {
      Trial trial = completed(rings);
      if (best == null || trial.all().size() < best.all().size()) {
        best = trial;
      }
    }
    if (best.all().isEmpty()) {
      return Optional.empty();
    }
    Chain chain = new Chain(seeing, stations.reach(), stations.all().get(0));
    Trim trim = new Trim(seeing, targets, stepLimit);
    List<Candidate> loose = trim.spared(chain.joined(best.all()));
    List<Candidate> ofRings = new ArrayList<>(best.ofRings());
    ofRings.retainAll(loose);
    List<Bunch> rings = Gathering.rings(ofRings);
    rings.forEach(ring -> loose.removeAll(ring.members()));
    List<Bunch> bunches = new Evening(seeing, targets, stations, chain, trim).evened(rings, loose);
    Legs legs = new Legs(seeing, bunches, targets);
    for (int round = 0; round < REFOCUSED && new Refocus(seeing, legs.bunches()).mend(); round++) {
      List<Candidate> all = legs.all();
      List<Candidate> joined = trim.spared(chain.joined(all), all);
      bunches = new ArrayList<>();
      for (Bunch bunch : legs.bunches()) {
        bunch.members().retainAll(joined);
        if (bunch.size() > 0) {
          bunches.add(bunch);
        }
      }
      joined.removeAll(all);
      bunches.addAll(Gathering.of(seeing, joined));
      legs = new Legs(seeing, bunches, targets);
    }
    boolean[] kept = Wellness.of(seeing, legs.all()).wells();
    return Optional.of(
        new Proposal(
            legs.plan(),
            legs.views(),
            bound(kept),
            stations.all().size(),
            legs.walk(),
            share(targets),
            share(kept)));
  }

  /** The rings found best, and the same with their largest ring at some other heights. */
  private List<boolean[]> choices() {
    List<RingViews> rings = stations.rings();
    RingChoice choice = new RingChoice(rings, areas(), targets, stepLimit.radians());
    boolean[] chosen = choice.chosen();
    int largest = -1;
    for (int r = 0; r < chosen.length; r++) {
      boolean larger = largest < 0 || rings.get(r).photos() > rings.get(largest).photos();
      largest = chosen[r] && larger ? r : largest;
    }
    List<boolean[]> choices = new ArrayList<>();
    for (int r = 0; largest >= 0 && r < chosen.length; r++) {
      boolean samePose = rings.get(r).shape().pose() == rings.get(largest).shape().pose();
      boolean ring = rings.get(r).photos() * 2 > rings.get(largest).photos();
      if (!chosen[r] && samePose && ring) {
        boolean[] other = chosen.clone();
        other[largest] = false;
        other[r] = true;
        choices.add(other);
      }
    }
    choices.sort(Comparator.comparingDouble(choice::cost));
    List<boolean[]> best = new ArrayList<>(List.of(chosen));
    best.addAll(choices.subList(0, Math.min(OTHERS, choices.size())));
    return best;
  }

  private double[] areas() {
    double[] areas = new double[targets.length];
    for (int i = 0; i < areas.length; i++) {
      areas[i] = seeing.surface().patches().area(i);
    }
    return areas;
  }

  /**
   * A choice of rings worked out.
   *
   * @param all photographs
   * @param ofRings those that were chosen as rings, some of which may have been spared
   */
  private record Trial(List<Candidate> all, List<Candidate> ofRings) {}

  /** Some rings, with all that is needed and nothing that is not. */
  private Trial completed(boolean[] rings) {
    List<Candidate> chosen = new ArrayList<>();
    for (int r = 0; r < rings.length; r++) {
      if (rings[r]) {
        chosen.addAll(tied(stations.rings().get(r)));
      }
    }
    List<Candidate> ofRings = List.copyOf(chosen);
    List<Candidate> pool = new ArrayList<>();
    for (Candidate candidate : stations.all()) {
      if (!chosen.contains(candidate)) {
        pool.add(candidate);
      }
    }
    Wellness seen = Wellness.of(seeing, chosen);
    boolean[] wanted = targets.clone();
    boolean[] wells = seen.wells();
    for (int i = 0; i < wanted.length; i++) {
      wanted[i] &= !wells[i];
    }
    for (int number : Extras.choose(seen.tally(), Candidate.views(pool), wanted)) {
      chosen.add(pool.get(number));
    }
    return new Trial(new Trim(seeing, targets, stepLimit).trimmed(chosen), ofRings);
  }

  /** The stations of a ring, or more of them where neighbours are not tied: corners need that. */
  private List<Candidate> tied(RingViews ring) {
    RingViews tied = ring;
    for (double step = 1; step > 0.45; step -= 0.2) {
      if (step < 1) {
        Setup setup = ring.stations().get(0).viewpoint().setup();
        tied = RingViews.of(ring.shape(), stations.reach(), stepLimit.times(step), setup, seeing);
      }
      List<View> views = Candidate.views(tied.stations());
      if (Coverage.graph(seeing, views).pieces().size() == 1) {
        return tied.stations();
      }
    }
    return ring.stations();
  }

  private double share(boolean[] patches) {
    double in = 0;
    for (int i = 0; i < patches.length; i++) {
      in += patches[i] ? seeing.surface().patches().area(i) : 0;
    }
    return in / seeing.surface().patches().area();
  }

  /**
   * Over every candidate station and some of the patches.
   *
   * @param kept what the plan sees well, and so must any plan that is as good
   */
  private int bound(boolean[] kept) {
    int count = 0;
    for (int i = 0; i < targets.length; i++) {
      count += targets[i] && kept[i] ? 1 : 0;
    }
    int every = Math.max(1, count / BOUND_PATCHES);
    int[] row = new int[targets.length];
    List<List<Integer>> seers = new ArrayList<>();
    int at = 0;
    for (int i = 0; i < targets.length; i++) {
      row[i] = targets[i] && kept[i] && at++ % every == 0 ? seers.size() : -1;
      if (row[i] >= 0) {
        seers.add(new ArrayList<>());
      }
    }
    List<Candidate> all = stations.all();
    for (int s = 0; s < all.size(); s++) {
      for (int patch : all.get(s).view().wells()) {
        if (row[patch] >= 0) {
          seers.get(row[patch]).add(s);
        }
      }
    }
    List<int[]> arrays = new ArrayList<>();
    for (List<Integer> of : seers) {
      arrays.add(of.stream().mapToInt(Integer::intValue).toArray());
    }
    return new CoverBound(arrays, all.size()).stations(Limits.VIEWS);
  }
}
