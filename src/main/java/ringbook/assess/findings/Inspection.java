package ringbook.assess.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.PatchClass;
import ringbook.assess.coverage.PatchClass.Group;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.View;
import ringbook.assess.coverage.Viewpoint;
import ringbook.shots.Leg;
import ringbook.shots.Pose;
import ringbook.shots.SceneDetails;
import ringbook.shots.ShotPlan;
import ringbook.shots.Station;

/**
 * Goes through a plan in order: does the set hang together, do the rings go round, are they in
 * focus and fine enough; then, with the mends of all that taken as done, which places are left.
 */
final class Inspection {

  /** Places with less of the surface are not named one by one. */
  private static final double SMALL = 0.003;

  /** Most places that are named. */
  private static final int PLACES = 8;

  private final ShotPlan plan;
  private final Coverage coverage;
  private final Seeing seeing;
  private final Usual usual;
  private Coverage now;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Viewpoint> there = new ArrayList<>();

  Inspection(ShotPlan plan, Coverage coverage) {
    this.plan = plan;
    this.coverage = coverage;
    seeing = coverage.seeing();
    usual = new Usual(seeing, plan);
  }

  List<Finding> findings() {
    focus();
    legs();
    for (View view : now.views()) {
      there.add(view.viewpoint());
    }
    int before = there.size();
    findings.addAll(new Ties(plan, now, usual).among(findings));
    for (Finding finding : findings) {
      // New focus is taken as done above; a second picture from the same spot shows nothing more.
      if (!(finding instanceof LegFinding.OutOfFocus || finding instanceof SetFinding.HangsOn)) {
        finding.cheapest().ifPresent(mend -> there.addAll(mend.stations()));
      }
    }
    places(before);
    findings.sort(
        (a, b) ->
            a.gravity() == b.gravity()
                ? Double.compare(b.share(), a.share())
                : a.gravity().compareTo(b.gravity()));
    return findings;
  }

  /** Legs in the wrong focus; what follows judges them as if they were mended. */
  private void focus() {
    LegFocus focus = new LegFocus(coverage, usual);
    List<View> views = new ArrayList<>();
    for (Leg leg : plan.legs()) {
      int first = views.size();
      List<View> old = coverage.views().subList(first, first + leg.stations().size());
      Optional<Finding> wrong = focus.of(leg, old);
      wrong.ifPresent(findings::add);
      wrong
          .filter(finding -> finding.gravity() == Gravity.HOLE)
          .flatMap(Finding::cheapest)
          .ifPresentOrElse(
              mend -> mend.stations().forEach(v -> views.add(seeing.look(v))),
              () -> views.addAll(old));
    }
    now = findings.isEmpty() ? coverage : Coverage.of(seeing, views);
  }

  private void legs() {
    int first = 0;
    for (Leg leg : plan.legs()) {
      List<View> views = now.views().subList(first, first + leg.stations().size());
      blind(leg, views);
      if (leg.kind() == Leg.Kind.RING) {
        findings.addAll(new RingGaps(now, usual, leg, views).found());
      }
      first += views.size();
    }
    new Fineness(plan, now).found().ifPresent(findings::add);
  }

  private void blind(Leg leg, List<View> views) {
    List<Integer> stations = new ArrayList<>();
    TreeSet<String> by = new TreeSet<>();
    for (View view : views) {
      if (view.count() == 0) {
        Station station = view.viewpoint().station();
        stations.add(station.number());
        seeing.room().between(station.position(), seeing.middle()).ifPresent(by::add);
      }
    }
    if (!stations.isEmpty()) {
      double share = stations.size() / (double) usual.photographs();
      findings.add(new LegFinding.Blind(leg.name(), stations, List.copyOf(by), share));
    }
  }

  /** Places that are bad now and stay so with the mends so far. */
  private void places(int before) {
    Coverage after = now;
    if (there.size() > before) {
      List<View> views = new ArrayList<>(now.views());
      for (Viewpoint more : there.subList(before, there.size())) {
        views.add(seeing.look(more));
      }
      after = Coverage.of(seeing, views);
    }
    Joined taken = new Joined(seeing, after.views());
    boolean coarse = findings.stream().anyMatch(f -> f instanceof SetFinding.TooCoarse);
    int small = 0;
    double rest = 0;
    int named = 0;
    for (Region region : Regions.of(after)) {
      if (coarse && region.main() == PatchClass.COARSE) {
        continue;
      }
      if (region.share() < SMALL || named >= PLACES) {
        small++;
        rest += region.share();
      } else {
        named++;
        findings.add(judged(region, taken));
      }
    }
    if (rest > SMALL) {
      findings.add(new PlaceFinding.SmallPlaces(small, rest));
    }
  }

  private Finding judged(Region region, Joined taken) {
    boolean unseen = region.main().group() == Group.UNSEEN;
    boolean wanted =
        SceneDetails.si(seeing.scene(), "aim.poses") > 1
            || !plan.legsOf(Pose.TURNED_OVER).isEmpty();
    RegionMend search = new RegionMend(seeing, region, usual, taken);
    boolean rests = unseen && region.rests();
    List<Mend> mends = new ArrayList<>();
    if (!rests) {
      mends.addAll(search.in(Pose.STANDING));
    }
    if (mends.isEmpty() || wanted) {
      List<Mend> turned = search.in(Pose.TURNED_OVER);
      if (unseen && mends.isEmpty() && !turned.isEmpty()) {
        return new PlaceFinding.NeedsPose(region, wanted, turned);
      }
      if (wanted) {
        mends.addAll(turned);
        return thinOrUnseen(region, unseen, Mend.ordered(mends));
      }
    }
    return thinOrUnseen(region, unseen, mends);
  }

  private static Finding thinOrUnseen(Region region, boolean unseen, List<Mend> mends) {
    return unseen ? new PlaceFinding.Unseen(region, mends) : new PlaceFinding.Thin(region, mends);
  }
}
