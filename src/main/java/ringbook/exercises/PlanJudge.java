package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import ringbook.assess.Standing;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.findings.Assessment;
import ringbook.assess.findings.Finding;
import ringbook.assess.findings.Gravity;
import ringbook.assess.findings.LegFinding;
import ringbook.assess.findings.PlaceFinding;
import ringbook.exercises.PlanCheck.Lack;
import ringbook.plans.WrittenPlan;
import ringbook.plans.WrittenRun;
import ringbook.plans.WrittenRun.Sort;
import ringbook.shots.Leg;
import ringbook.shots.Ring;
import ringbook.shots.ShotPlan;
import ringbook.shots.Station;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Num;
import ringbook.units.Numbers;
import ringbook.units.Words;

/**
 * Holds a written plan against a scene: can each photograph be taken, are neighbours near enough to
 * be matched, is enough seen well by those that hang together. Photographs that cannot be taken are
 * told, and the others are judged; one that can be joined to no other shows nothing.
 */
final class PlanJudge {

  /** Steps may be over the limit by what a person rounds away. */
  private static final double HAIR = 1e-6;

  private final PlanGround ground;
  private final WrittenPlan written;
  private final double covered;
  private final List<Lack> lacks = new ArrayList<>();
  private final List<Leg> taken = new ArrayList<>();

  private PlanJudge(PlanGround ground, WrittenPlan written, double covered) {
    this.ground = ground;
    this.written = written;
    this.covered = covered;
  }

  /**
   * The plan judged.
   *
   * @param covered share of what can be seen at all that must be seen well
   */
  static PlanCheck check(PlanGround ground, WrittenPlan written, double covered) {
    return new PlanJudge(ground, written, covered).check();
  }

  private PlanCheck check() {
    ShotPlan laid = ground.layout().of(written);
    focus();
    laid.legs().forEach(this::reach);
    written.runs().forEach(this::step);
    if (taken.isEmpty()) {
      return new PlanCheck(laid.photos(), 0, 0, lacks, List.of(), Optional.empty());
    }
    ShotPlan plan = new ShotPlan(taken);
    PlanSeen seen = PlanSeen.of(ground, ground.coverage(plan));
    List<String> focus = List.of();
    if (seen.together() < covered && lacks.isEmpty()) {
      PlanFocus.Anew anew = PlanFocus.set(plan, seen.coverage());
      PlanSeen sharp = PlanSeen.of(ground, anew.coverage());
      if (sharp.together() >= covered) {
        seen = sharp;
        focus = anew.runs();
      }
    }
    boolean passes = seen.together() >= covered;
    if (!passes && lacks.isEmpty()) {
      lacks.add(found(plan, seen.coverage(), seen.shown(), seen.loose() > 0));
    }
    double shown = passes ? seen.together() : seen.shown();
    return new PlanCheck(
        laid.photos(), seen.loose(), shown, lacks, focus, Optional.of(seen.coverage()));
  }

  private void focus() {
    Length closest = ground.reckoning().scene().kit().lens().closestFocus();
    for (WrittenRun run : written.runs()) {
      double radius = ground.layout().radius(run).metres();
      double usual = ground.reckoning().si("ring.radius");
      double focus = ground.reckoning().si("sharp.focus") + radius - usual;
      if (focus < closest.metres() && lacks.isEmpty()) {
        lacks.add(
            new Lack(
                PlanLack.FOCUS,
                length(radius)
                    + " from the middle is too near: the lens focuses from "
                    + length(closest.metres())
                    + " on, and the near side of the object would be closer than that. Stand"
                    + " farther back."));
      }
    }
  }

  /** Keeps the stations of a leg that can be taken and tells the others. */
  private void reach(Leg leg) {
    List<Station> free = new ArrayList<>();
    List<Station> high = new ArrayList<>();
    List<Station> low = new ArrayList<>();
    List<Station> blocked = new ArrayList<>();
    for (Station station : leg.stations()) {
      double lens = station.position().z();
      if (ground.reach().holds(station.position())) {
        free.add(station);
      } else if (lens > ground.reach().highest()) {
        high.add(station);
      } else if (lens < ground.reach().lowest() - 1e-9) {
        low.add(station);
      } else {
        blocked.add(station);
      }
    }
    if (!free.isEmpty()) {
      taken.add(new Leg(leg.name(), leg.kind(), leg.setup(), free, leg.why()));
    }
    if (!high.isEmpty()) {
      tooHigh(leg, high);
    } else if (!low.isEmpty()) {
      tooLow(leg, low);
    } else if (!blocked.isEmpty()) {
      blocked(leg, blocked);
    }
  }

  private void tooHigh(Leg leg, List<Station> high) {
    double top = 0;
    for (Station station : high) {
      top = Math.max(top, station.position().z());
    }
    lack(
        PlanLack.REACH,
        name(leg)
            + ": the lens would be "
            + length(top)
            + " above the floor, and the group reaches "
            + length(ground.reach().highest())
            + ". Choose a lower angle, or stand nearer.");
  }

  private void tooLow(Leg leg, List<Station> low) {
    double least = low.get(0).position().z();
    double table = ground.reckoning().scene().place().tableHeight().metres();
    String why =
        least <= table
            ? "under the table top, which is in the way at "
            : "lower than the camera can be held: not below ";
    double limit = least <= table ? table : ground.reach().lowest();
    lack(
        PlanLack.REACH,
        name(leg)
            + ": the lens would be "
            + length(least)
            + " above the floor, "
            + why
            + length(limit)
            + ". Write “low ring” for the lowest that can be done.");
  }

  private void blocked(Leg leg, List<Station> blocked) {
    TreeSet<String> names = new TreeSet<>();
    double body = ringbook.shots.SceneDetails.si(ground.reckoning().scene(), "place.bodyRoom");
    List<String> directions = new ArrayList<>();
    for (Station station : blocked) {
      double out = Num.hypot(station.position().x(), station.position().y());
      names.addAll(
          Standing.inTheWay(
              ground.reckoning().scene().place(), new Length(out + body), station.azimuth()));
      directions.add(Numbers.fixed(Num.round(folded(station.azimuth())), 0) + "°");
    }
    lack(
        PlanLack.REACH,
        name(leg)
            + ": at "
            + blocked.size()
            + " of its "
            + leg.stations().size()
            + " places nobody can stand with the camera, because of the "
            + String.join(" and the ", names)
            + (directions.size() == 1
                ? " (at " + directions.get(0) + ")"
                : " (" + directions.get(0) + " to " + directions.get(directions.size() - 1) + ")")
            + ". Leave that arc out (write 'without' and the two ends of the arc), or stand"
            + " nearer.");
  }

  /** From −180° up to 180°, as the ring plan has them. */
  private static double folded(Angle azimuth) {
    double turns = azimuth.degrees() / 360 + 0.5;
    return 360 * (turns - Math.floor(turns)) - 180;
  }

  private void step(WrittenRun run) {
    boolean ring = run.kind() == WrittenRun.Kind.RING || run.kind() == WrittenRun.Kind.LOW_RING;
    if (!ring) {
      return;
    }
    Angle limit = ground.reckoning().scene().aim().stepLimit();
    Angle elevation = ground.layout().elevation(run, written);
    double step = turn(run).radians();
    double rays = 2 * Num.asin(Num.cos(elevation.radians()) * Num.sin(Math.min(Math.PI, step) / 2));
    if (rays > limit.radians() * (1 + HAIR)) {
      double fewest = Ring.photosForRays(limit, elevation);
      boolean over = run.where().directions().sort() == Sort.OVER;
      lack(
          PlanLack.STEP,
          Words.count(run.photos(), "photograph")
              + " at "
              + degrees(elevation)
              + (run.photos() == 1
                  ? " has no neighbours to be matched with."
                  : " are "
                      + degrees(new Angle(step))
                      + " apart: too far to be matched with their neighbours.")
              + " Their lines of sight may differ by "
              + degrees(limit)
              + " at most"
              + (over ? "." : ", which takes " + Numbers.fixed(fewest, 0) + " at this height."));
    }
  }

  /** Turn from one photograph of a ring to the next. */
  private static Angle turn(WrittenRun run) {
    WrittenRun.Directions directions = run.where().directions();
    if (directions.sort() != Sort.OVER) {
      return Angle.FULL_TURN.times(1.0 / run.photos());
    }
    double turns = (directions.to() - directions.from()) / 360;
    double part = turns - Math.floor(turns);
    return Angle.FULL_TURN.times(
        part > 0 ? part / Math.max(1, run.photos() - 1) : 1.0 / run.photos());
  }

  private Lack found(ShotPlan plan, Coverage coverage, double shown, boolean apart) {
    Assessment assessment = Assessment.of(ground.seeing(), plan, coverage.views());
    Optional<Finding> worst = worst(assessment.findings(), apart);
    String told = worst.map(finding -> " " + finding.text()).orElse("");
    if (apart) {
      return new Lack(
          PlanLack.APART,
          "The photographs fall into "
              + coverage.graph().pieces().size()
              + " pieces that share too little to be joined."
              + told);
    }
    return new Lack(
        PlanLack.SPOTS,
        "Of what can be seen at all it shows "
            + percent(shown)
            + " well; "
            + percent(covered)
            + " are asked for."
            + told);
  }

  private Optional<Finding> worst(List<Finding> findings, boolean apart) {
    for (Finding finding : findings) {
      boolean breaks = finding.gravity() == Gravity.BREAKS;
      boolean tells = finding.gravity() != Gravity.NOTE && finding.cheapest().isPresent();
      if (breaks == apart && (breaks || (tells && matters(finding)))) {
        return Optional.of(finding);
      }
    }
    return Optional.empty();
  }

  private boolean matters(Finding finding) {
    if (finding instanceof PlaceFinding.Unseen unseen) {
      return ground.canBeSeen(unseen.region().patches());
    }
    if (finding instanceof LegFinding.OutOfFocus) {
      return false; // nobody can write a focus
    }
    return !(finding instanceof PlaceFinding.Thin thin)
        || ground.canBeSeen(thin.region().patches());
  }

  private void lack(PlanLack kind, String words) {
    lacks.add(new Lack(kind, words));
  }

  private static String name(Leg leg) {
    String name = leg.name();
    return (char) (name.charAt(0) - 'a' + 'A') + name.substring(1);
  }

  private static String degrees(Angle angle) {
    return Numbers.trimmed(Numbers.fixed(angle.degrees(), 1)) + "°";
  }

  static String percent(double share) {
    return Numbers.fixed(Math.floor(100 * share + 1e-9), 0) + "\u00a0%";
  }

  private String length(double metres) {
    return ground.reckoning().scene().aim().lengths().roughly(metres);
  }
}
