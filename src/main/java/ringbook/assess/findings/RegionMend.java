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
 * or a few details aimed at the place. All are tried on a sample of its patches; of the best, the
 * fewest that do as well and hang together with the set are advised ({@link Fewest}).
 */
final class RegionMend {

  /** Patches of a place that are tried. */
  private static final int SAMPLE = 24;

  /** A few details are worth the trouble up to this many. */
  private static final int DETAILS = 10;

  /** What mends no more than this part is none. */
  private static final double LEAST = 0.1;

  /** Mends that are told. */
  private static final int TOLD = 2;

  private final Region region;
  private final Usual usual;
  private final Scene scene;
  private final Trial trial;
  private final Fewest fewest;

  RegionMend(Seeing seeing, Region region, Usual usual, Joined there) {
    this.region = region;
    this.usual = usual;
    scene = seeing.scene();
    trial = Trial.with(there.views(), seeing, region.numbers(), SAMPLE);
    fewest = new Fewest(seeing, region, there);
  }

  /** What helps in that pose, the cheapest of the best first; empty if nothing does. */
  List<Mend> in(Pose pose) {
    List<Kind> kinds = new ArrayList<>();
    for (Angle elevation : usual.elevations()) {
      kinds.add(arc(elevation, pose));
    }
    if (region.around().isAll()) {
      cones(pose, kinds);
    }
    details(pose, kinds);
    kinds.removeIf(kind -> kind.mended() <= LEAST);
    double best = 0;
    for (Kind kind : kinds) {
      best = Math.max(best, kind.mended());
    }
    double enough = Mend.AS_GOOD * best;
    kinds.sort(
        (a, b) ->
            a.mended() >= enough == b.mended() >= enough
                ? a.least() - b.least()
                : a.mended() >= enough ? -1 : 1);
    return chosen(kinds, enough, pose);
  }

  private List<Mend> chosen(List<Kind> kinds, double enough, Pose pose) {
    List<Mend> joined = new ArrayList<>();
    List<Mend> loose = new ArrayList<>();
    for (Kind kind : kinds) {
      int cap = joined.size() == TOLD ? joined.get(1).photographs() : Integer.MAX_VALUE;
      if (kind.least() >= cap || (kind.mended() < enough && !joined.isEmpty())) {
        break;
      }
      Fewest.Found found = fewest.of(kind, cap);
      if (found.mended() > LEAST) {
        (found.joined() ? joined : loose).add(mend(kind, found, pose));
      }
      List<Mend> ordered = Mend.ordered(joined);
      joined = new ArrayList<>(ordered.subList(0, Math.min(TOLD, ordered.size())));
    }
    List<Mend> told = joined.isEmpty() ? Mend.ordered(loose) : joined;
    return told.subList(0, Math.min(TOLD, told.size()));
  }

  private static Mend mend(Kind kind, Fewest.Found found, Pose pose) {
    String words = kind.words().of(found.stations());
    String posed = pose == Pose.STANDING ? words : "turn the object over and take " + words;
    String more = posed + (found.joined() ? "" : ", and more that join them to the others");
    List<Viewpoint> stations = new ArrayList<>(found.stations());
    stations.addAll(found.bridge());
    int between = found.bridge().size();
    String way =
        ", and "
            + (between == 1 ? "1 halfway" : between + " evenly")
            + " between them and the nearest of the others";
    return new Mend(between == 0 ? more : more + way, stations.size(), found.mended(), stations);
  }

  /** How many stations of one kind are laid out. */
  interface Layout {
    List<Viewpoint> of(int count);
  }

  /** What they are called. */
  interface Words {
    String of(List<Viewpoint> stations);
  }

  /**
   * One kind of photographs, of which more or fewer can be taken.
   *
   * @param least fewest that keep the rules
   * @param most so many as may help
   * @param mended part of the trouble that the most take away, by the sample
   */
  record Kind(int least, int most, Layout layout, Words words, double mended) {

    /** Whether each was chosen by itself, so that any of them can be left out. */
    boolean isSingle() {
      return least == 1;
    }
  }

  private Kind kind(int least, int most, Layout layout, Words words) {
    List<Viewpoint> stations = layout.of(most);
    return new Kind(least, most, layout, words, stations.size() >= 3 ? trial.mended(stations) : 0);
  }

  private Kind arc(Angle elevation, Pose pose) {
    Around seen = region.around();
    boolean mirrored = pose == Pose.TURNED_OVER && !seen.isAll();
    Around turned = mirrored ? new Around(seen.to().times(-1), seen.width()) : seen;
    Around around = turned.grown(Angle.ofDegrees(30));
    int least = Math.max(3, usual.fewest(around, elevation));
    return kind(
        least,
        Math.max(least, usual.most(around)),
        count -> usual.arc(around, elevation, count, usual.setup(pose)),
        stations ->
            (around.isAll()
                    ? "a ring of " + Say.photographs(stations.size())
                    : Say.photographs(stations.size()) + " " + around.words())
                + ", lens "
                + Say.length(scene, stations.get(0).station().position().z())
                + " above the floor");
  }

  /** Rings that look into a place from above or below, at two distances. */
  private void cones(Pose pose, List<Kind> into) {
    Around round = region.around();
    for (int degrees : new int[] {30, 45, 55, 65, 75}) {
      Angle elevation = Angle.ofDegrees(degrees);
      int least = usual.fewest(round, elevation);
      for (double share : new double[] {1, 0.65}) {
        into.add(
            kind(
                least,
                Math.max(least, usual.most(round)),
                count -> usual.cone(region.middle(), elevation, share, count, pose),
                ring ->
                    "a ring of " + Say.photographs(ring.size()) + " aimed at it, " + from(ring)));
      }
    }
  }

  private void details(Pose pose, List<Kind> into) {
    List<Viewpoint> chosen = trial.greedy(usual.details(region.middle(), pose), DETAILS);
    if (!chosen.isEmpty()) {
      into.add(
          new Kind(
              1,
              chosen.size(),
              count -> chosen.subList(0, count),
              some -> Say.photographs(some.size()) + " aimed at it, " + from(some),
              trial.mended(chosen)));
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
}
