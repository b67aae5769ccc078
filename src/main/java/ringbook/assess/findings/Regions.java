package ringbook.assess.findings;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.PatchClass;
import ringbook.assess.coverage.PatchClass.Group;
import ringbook.geometry.Patches;
import ringbook.geometry.Vec3;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Lengths;
import ringbook.units.Num;

/** Puts patches in trouble together into places: neighbours of one part and one group. */
final class Regions {

  private final Coverage coverage;
  private final Patches patches;
  private final double table;
  private final Lengths lengths;
  private final double all;

  private Regions(Coverage coverage) {
    this.coverage = coverage;
    patches = coverage.seeing().surface().patches();
    table = coverage.seeing().scene().place().tableHeight().metres();
    lengths = coverage.seeing().scene().aim().lengths();
    all = patches.area();
  }

  /** The places that are not seen well, the largest first. */
  static List<Region> of(Coverage coverage) {
    return new Regions(coverage).found();
  }

  private List<Region> found() {
    Neighbours neighbours = new Neighbours(patches);
    boolean[] known = new boolean[patches.count()];
    List<Region> regions = new ArrayList<>();
    for (int start = 0; start < known.length; start++) {
      if (!known[start] && group(start) != Group.WELL) {
        regions.add(region(spread(start, neighbours, known)));
      }
    }
    regions.sort((a, b) -> Double.compare(b.share(), a.share()));
    return regions;
  }

  /** Whether the patch lies on the table. */
  private boolean rests(int i) {
    return patches.normalZ(i) < Region.DOWN && patches.z(i) - table < Region.ON_TABLE;
  }

  private Group group(int i) {
    return coverage.patch(i).patchClass().group();
  }

  private List<Integer> spread(int start, Neighbours neighbours, boolean[] known) {
    List<Integer> found = new ArrayList<>();
    Deque<Integer> open = new ArrayDeque<>();
    known[start] = true;
    open.add(start);
    while (!open.isEmpty()) {
      int at = open.remove();
      found.add(at);
      for (int next : neighbours.of(at)) {
        boolean alike =
            patches.part(next) == patches.part(at)
                && group(next) == group(at)
                && rests(next) == rests(at);
        if (alike && !known[next]) {
          known[next] = true;
          open.add(next);
        }
      }
    }
    found.sort(null);
    return found;
  }

  private Region region(List<Integer> found) {
    double area = 0;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    Vec3 middle = Vec3.ZERO;
    Vec3 facing = Vec3.ZERO;
    for (int i : found) {
      double one = patches.area(i);
      area += one;
      low = Math.min(low, patches.z(i) - table);
      high = Math.max(high, patches.z(i) - table);
      middle = middle.plus(patches.point(i).times(one));
      facing = facing.plus(patches.normal(i).times(one));
    }
    Around around = around(found);
    return new Region(
        found,
        main(found),
        area / all,
        patches.parts().get(patches.part(found.get(0))),
        around.from(),
        around.width(),
        new Length(Math.max(0, low)),
        new Length(Math.max(0, high)),
        middle.times(1 / area),
        lengths,
        facing.times(1 / area));
  }

  private Around around(List<Integer> found) {
    double[] azimuths = new double[found.size()];
    for (int k = 0; k < azimuths.length; k++) {
      azimuths[k] = Num.atan2(patches.y(found.get(k)), patches.x(found.get(k)));
    }
    boolean onAxis = found.stream().allMatch(this::isOnAxis);
    return onAxis ? new Around(Angle.ZERO, Angle.FULL_TURN) : Around.of(azimuths);
  }

  /** Whether the patch reaches over the axis, so that its direction says nothing. */
  private boolean isOnAxis(int i) {
    return Num.hypot(patches.x(i), patches.y(i)) < Math.sqrt(patches.area(i));
  }

  private PatchClass main(List<Integer> found) {
    Map<PatchClass, Double> areas = new TreeMap<>();
    PatchClass best = coverage.patch(found.get(0)).patchClass();
    for (int i : found) {
      areas.merge(coverage.patch(i).patchClass(), patches.area(i), Double::sum);
    }
    for (Map.Entry<PatchClass, Double> one : areas.entrySet()) {
      best = one.getValue() > areas.get(best) ? one.getKey() : best;
    }
    return best;
  }
}
