package ringbook.assess.findings;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Viewpoint;
import ringbook.geometry.Vec3;
import ringbook.shots.Pose;
import ringbook.shots.Scene;
import ringbook.units.Angle;
import ringbook.units.Num;

/**
 * Looks for photographs that would show a place well: a ring or an arc more at the usual distance,
 * or a few details aimed at the place. All are tried on a sample of its patches.
 */
final class RegionMend {

  /** Patches of a place that are tried. */
  private static final int SAMPLE = 24;

  /** A few details are worth the trouble up to this many. */
  private static final int DETAILS = 10;

  /** What mends no more than this part is none. */
  private static final double LEAST = 0.1;

  private final Region region;
  private final Usual usual;
  private final Angle step;
  private final Scene scene;
  private final Trial trial;
  private final double before;

  RegionMend(Seeing seeing, Region region, Usual usual, List<Viewpoint> there) {
    this.region = region;
    this.usual = usual;
    scene = seeing.scene();
    step = scene.aim().step();
    trial = new Trial(seeing, region.numbers(), SAMPLE, there);
    before = trial.well(List.of());
  }

  /** What helps in that pose, the cheapest of the best first; empty if nothing does. */
  List<Mend> in(Pose pose) {
    List<Mend> all = new ArrayList<>();
    for (Angle elevation : usual.elevations()) {
      arc(elevation, pose, all);
    }
    if (region.around().isAll()) {
      cones(pose, all);
    }
    details(pose, all);
    all.removeIf(mend -> mend.mended() <= LEAST);
    List<Mend> ordered = Mend.ordered(all);
    return ordered.subList(0, Math.min(2, ordered.size()));
  }

  private void arc(Angle elevation, Pose pose, List<Mend> into) {
    Around seen = region.around();
    boolean mirrored = pose == Pose.TURNED_OVER && !seen.isAll();
    Around turned = mirrored ? new Around(seen.to().times(-1), seen.width()) : seen;
    Around around = turned.grown(Angle.ofDegrees(30));
    List<Viewpoint> stations = usual.arc(around, elevation, step, usual.setup(pose));
    if (stations.size() >= 3) {
      Vec3 lens = stations.get(0).station().position();
      String what =
          around.isAll()
              ? "a ring of " + Say.photographs(stations.size())
              : Say.photographs(stations.size()) + " " + around.words();
      add(
          what + ", lens " + Say.length(scene, lens.z()) + " above the floor",
          stations,
          pose,
          into);
    }
  }

  /** Rings that look into a place from above or below, at two distances. */
  private void cones(Pose pose, List<Mend> into) {
    for (int elevation : new int[] {30, 45, 55, 65, 75}) {
      for (double share : new double[] {1, 0.65}) {
        List<Viewpoint> ring =
            usual.cone(region.middle(), Angle.ofDegrees(elevation), share, step, pose);
        if (ring.size() >= 3) {
          String words =
              "a ring of " + Say.photographs(ring.size()) + " aimed at it, " + from(ring);
          add(words, ring, pose, into);
        }
      }
    }
  }

  private void details(Pose pose, List<Mend> into) {
    List<Viewpoint> chosen = trial.greedy(usual.details(region.middle(), pose), DETAILS);
    if (!chosen.isEmpty()) {
      add(Say.photographs(chosen.size()) + " aimed at it, " + from(chosen), chosen, pose, into);
    }
  }

  private String from(List<Viewpoint> chosen) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double near = Double.POSITIVE_INFINITY;
    double far = 0;
    for (Viewpoint viewpoint : chosen) {
      Vec3 away = viewpoint.station().position().minus(viewpoint.station().target());
      double elevation = new Angle(Num.asin(away.z() / away.norm())).degrees();
      low = Math.min(low, elevation);
      high = Math.max(high, elevation);
      near = Math.min(near, away.norm());
      far = Math.max(far, away.norm());
    }
    String slope = span(slope(low), slope(high));
    String way = span(Say.length(scene, near), Say.length(scene, far));
    return "from " + slope + ", focused at " + way;
  }

  private static String slope(double degrees) {
    String size = Say.degrees(Angle.ofDegrees(Math.abs(degrees)));
    return Math.abs(degrees) < 0.5
        ? "level"
        : size + (degrees > 0 ? " above level" : " below level");
  }

  private static String span(String from, String to) {
    return from.equals(to) ? from : from + " to " + to;
  }

  private void add(String words, List<Viewpoint> stations, Pose pose, List<Mend> into) {
    double mended = (trial.well(stations) - before) / Math.max(1e-9, 1 - before);
    String posed = pose == Pose.STANDING ? words : "turn the object over and take " + words;
    into.add(new Mend(posed, stations.size(), mended, stations));
  }
}
