package ringbook.assess.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Viewpoint;

/**
 * Takes photographs away from a mend as long as it mends a place as well, tried on many patches;
 * then adds what it takes to join the rest to the set.
 */
final class Fewest {

  /** What mends this part is told to mend all. */
  private static final double ALL = Mend.ALL + 1e-6;

  /** So many more than the fewest may join by themselves. */
  private static final int DENSER = 2;

  /** Patches of a place that are tried at most. */
  private static final int PATCHES = 200;

  private final Seeing seeing;
  private final Region region;
  private final Joined there;
  private Optional<Trial> made = Optional.empty();

  Fewest(Seeing seeing, Region region, Joined there) {
    this.seeing = seeing;
    this.region = region;
    this.there = there;
  }

  /**
   * The fewest of a kind.
   *
   * @param stations of that kind
   * @param bridge more on the way to the set; mostly none
   * @param mended part of the trouble they take away, 0 to 1
   * @param joined whether they hang together with the photographs that there are
   */
  record Found(List<Viewpoint> stations, List<Viewpoint> bridge, double mended, boolean joined) {}

  /**
   * The fewest of a kind.
   *
   * @param cap nobody wants to know how so many or more are joined
   */
  Found of(RegionMend.Kind kind, int cap) {
    double all = mended(kind, kind.most());
    double goal = all > ALL ? ALL : Mend.ALL * all;
    int count = kind.isSingle() ? kind.most() : enough(kind, goal);
    List<Viewpoint> fewest = kind.layout().of(count);
    if (kind.isSingle()) {
      fewest = needed(fewest, goal);
      count = fewest.size();
    }
    boolean known = there.has(fewest.get(0).setup().pose());
    if (!known || count >= cap) {
      return new Found(fewest, List.of(), trial().mended(fewest), false);
    }
    if (there.joins(fewest)) {
      return new Found(fewest, List.of(), trial().mended(fewest), true);
    }
    List<Viewpoint> bridge = there.bridge(fewest);
    for (int more = 1; !kind.isSingle() && more <= DENSER && count + more <= kind.most(); more++) {
      List<Viewpoint> denser = kind.layout().of(count + more);
      if ((bridge.isEmpty() || more < bridge.size()) && there.joins(denser)) {
        return new Found(denser, List.of(), trial().mended(denser), true);
      }
    }
    List<Viewpoint> both = new ArrayList<>(fewest);
    both.addAll(bridge);
    return new Found(fewest, bridge, trial().mended(both), !bridge.isEmpty());
  }

  /** Of photographs chosen one by one those without which less is mended. */
  private List<Viewpoint> needed(List<Viewpoint> all, double goal) {
    List<Viewpoint> needed = new ArrayList<>(all);
    for (Viewpoint one : all) {
      List<Viewpoint> rest = new ArrayList<>(needed);
      rest.remove(one);
      if (!rest.isEmpty() && trial().mended(rest) >= goal) {
        needed = rest;
      }
    }
    return needed;
  }

  /** The least is mostly enough; else it is found by halving, and fewer tried behind it. */
  private int enough(RegionMend.Kind kind, double goal) {
    if (mended(kind, kind.least()) >= goal) {
      return kind.least();
    }
    int low = kind.least() + 1;
    int high = kind.most();
    while (high > low) {
      int middle = (low + high) / 2;
      if (mended(kind, middle) >= goal) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    while (high > kind.least() + 1 && mended(kind, high - 1) >= goal) {
      high--;
    }
    return high;
  }

  private double mended(RegionMend.Kind kind, int count) {
    return trial().mended(kind.layout().of(count));
  }

  private Trial trial() {
    if (made.isEmpty()) {
      made = Optional.of(Trial.with(there.views(), seeing, region.numbers(), PATCHES));
    }
    return made.get();
  }
}
