package ringbook.assess.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.PatchClass;
import ringbook.assess.coverage.PatchViews;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Viewpoint;
import ringbook.geometry.Vec3;
import ringbook.shots.Leg.Setup;
import ringbook.shots.ShotPlan;
import ringbook.shots.Station;
import ringbook.units.Length;

/** Finds plans that stand too far off for the detail wanted. */
final class Fineness {

  /** Part of what is seen that must be too coarse for the plan as a whole to be. */
  private static final double MOST = 0.5;

  private static final int SAMPLE = 120;

  private final ShotPlan plan;
  private final Coverage coverage;
  private final Seeing seeing;

  Fineness(ShotPlan plan, Coverage coverage) {
    this.plan = plan;
    this.coverage = coverage;
    seeing = coverage.seeing();
  }

  Optional<Finding> found() {
    double coarse = 0;
    double fine = 0;
    List<Double> best = new ArrayList<>();
    List<Integer> bad = new ArrayList<>();
    for (int i = 0; i < coverage.patches().size(); i++) {
      PatchViews patch = coverage.patch(i);
      double area = seeing.surface().patches().area(i);
      patch.sampling().ifPresent(s -> best.add(s.metres()));
      if (patch.patchClass() == PatchClass.COARSE) {
        coarse += area;
        bad.add(i);
      } else if (patch.patchClass() == PatchClass.WELL) {
        fine += area;
      }
    }
    if (coarse <= MOST * (coarse + fine) || bad.isEmpty()) {
      return Optional.empty();
    }
    best.sort(null);
    double pixels = seeing.scene().aim().pixelsPerDetail();
    Length shown = new Length(best.get(best.size() / 2) * pixels);
    return Optional.of(
        new SetFinding.TooCoarse(
            shown,
            seeing.scene().aim().detail(),
            coarse / seeing.surface().patches().area(),
            mends(bad.stream().mapToInt(Integer::intValue).toArray(), shown)));
  }

  private List<Mend> mends(int[] bad, Length shown) {
    Trial trial = new Trial(seeing, bad, SAMPLE, List.of());
    double far = distance();
    for (int percent = 95; percent >= 20; percent -= 5) {
      List<Viewpoint> nearer = nearer(percent / 100.0);
      double well = nearer.isEmpty() ? 0 : trial.well(nearer);
      if (well > 0.8) {
        String words =
            "stand at "
                + Say.length(seeing.scene(), far * percent / 100.0)
                + " from the middle instead of "
                + Say.length(seeing.scene(), far);
        return List.of(new Mend(words, 0, well, nearer));
      }
    }
    String words = "settle for details of " + Say.fine(shown) + ", or use a longer lens";
    return List.of(new Mend(words, 0, 1, List.of()));
  }

  private double distance() {
    Station first = plan.legs().get(0).stations().get(0);
    return first.position().minus(seeing.middle()).norm();
  }

  private List<Viewpoint> nearer(double scale) {
    List<Viewpoint> all = new ArrayList<>();
    double closest = seeing.scene().kit().lens().closestFocus().metres();
    for (ShotPlan.Shot shot : plan.shots()) {
      Station s = shot.station();
      Vec3 away = s.position().minus(s.target());
      Setup old = shot.leg().setup();
      double focus = old.focus().metres() - away.norm() * (1 - scale);
      if (focus <= closest) {
        return List.of();
      }
      Station moved =
          new Station(s.number(), s.azimuth(), s.target().plus(away.times(scale)), s.target());
      all.add(
          new Viewpoint(
              moved, new Setup(old.pose(), old.hold(), new Length(focus), old.repeats())));
    }
    return all;
  }
}
