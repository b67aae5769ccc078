package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import ringbook.assess.findings.Reach;
import ringbook.geometry.Vec3;
import ringbook.ledger.Reckoning;
import ringbook.plans.WrittenRun.Directions;
import ringbook.plans.WrittenRun.Kind;
import ringbook.plans.WrittenRun.Sort;
import ringbook.shots.Leg;
import ringbook.shots.Leg.Setup;
import ringbook.shots.Pose;
import ringbook.shots.Ring;
import ringbook.shots.ShotPlan;
import ringbook.shots.Station;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Num;

/**
 * Lays a written plan out as stations: at the usual distance and focus of the scene where it names
 * no other distance. Another distance moves the focus by as much, so that the same spot of the
 * object is sharpest. What is out of reach is laid out like the rest.
 */
public final class PlanLayout {

  /** A focus nearer than this is no focus; whoever asks for it is told so before. */
  private static final double NEAREST_FOCUS = 1e-3;

  private final Reckoning r;
  private final Vec3 middle;
  private final double lowest;
  private final List<Leg> legs = new ArrayList<>();
  private int rings;

  /**
   * For a scene.
   *
   * @throws ringbook.ledger.RefusedException where it has no distance or focus
   */
  public PlanLayout(Reckoning reckoning) {
    r = reckoning;
    middle = new Vec3(0, 0, r.si("ring.middleHeight"));
    lowest = new Reach(r.scene()).lowest();
  }

  /** The plan, a leg a run, in the order written. */
  public ShotPlan of(WrittenPlan written) {
    legs.clear();
    rings = 0;
    for (WrittenRun run : written.runs()) {
      List<Station> stations = stations(run, written);
      if (!stations.isEmpty()) {
        legs.add(new Leg(name(run), kind(run), setup(run), stations, ""));
      }
    }
    return new ShotPlan(legs);
  }

  /** From the lens to the middle of the object in a run. */
  public Length radius(WrittenRun run) {
    OptionalDouble standoff = run.where().standoff();
    return standoff.isPresent() ? new Length(standoff.getAsDouble()) : r.length("ring.radius");
  }

  /** How steeply a run looks; of an arc over the top, where it begins. */
  public Angle elevation(WrittenRun run, WrittenPlan written) {
    if (run.where().elevation().isPresent()) {
      return Angle.ofDegrees(run.where().elevation().getAsDouble());
    }
    if (run.kind() == Kind.LOW_RING) {
      double sine = (lowest - middle.z()) / radius(run).metres();
      return new Angle(Num.asin(Math.max(-1, Math.min(1, sine))));
    }
    return run.kind() == Kind.STRIP ? Angle.ZERO : highest(run.pose(), written);
  }

  private Angle highest(Pose pose, WrittenPlan written) {
    double high = -1;
    for (WrittenRun run : written.runs()) {
      boolean counts = run.pose() == pose && run.kind() != Kind.TOP && run.kind() != Kind.STRIP;
      high = counts ? Math.max(high, elevation(run, written).radians()) : high;
    }
    return high < 0 ? r.angle("rings.highest") : new Angle(high);
  }

  private Setup setup(WrittenRun run) {
    double focus = r.si("sharp.focus") + radius(run).metres() - r.length("ring.radius").metres();
    Length set = new Length(Math.max(NEAREST_FOCUS, focus));
    return new Setup(run.pose(), r.scene().aim().hold(), set, 1);
  }

  private static Leg.Kind kind(WrittenRun run) {
    return switch (run.kind()) {
      case RING, LOW_RING -> Leg.Kind.RING;
      case TOP -> Leg.Kind.TOP;
      case STRIP -> Leg.Kind.STRIP;
    };
  }

  private String name(WrittenRun run) {
    boolean turned = run.pose() == Pose.TURNED_OVER;
    String plain =
        switch (run.kind()) {
          case RING, LOW_RING -> LegNames.ring(rings++);
          case TOP -> turned ? "underside" : "top";
          case STRIP -> "strip";
        };
    String name = plain;
    for (int i = 2; isTaken(name); i++) {
      name = plain + " " + i;
    }
    return name;
  }

  private boolean isTaken(String name) {
    return legs.stream().anyMatch(leg -> leg.name().equals(name));
  }

  private List<Station> stations(WrittenRun run, WrittenPlan written) {
    Length radius = radius(run);
    Angle elevation = elevation(run, written);
    if (run.kind() == Kind.TOP) {
      return new TopArc(middle, radius, elevation).stations(run.photos());
    }
    if (run.kind() == Kind.STRIP) {
      return row(run, elevation);
    }
    Ring ring = new Ring(new Length(middle.z()), radius, elevation, run.photos());
    Directions directions = run.where().directions();
    return switch (directions.sort()) {
      case OVER -> over(ring, directions);
      case WITHOUT -> without(ring, directions);
      default -> ring.stations();
    };
  }

  private static List<Station> over(Ring ring, Directions arc) {
    List<Station> stations = new ArrayList<>();
    boolean whole = arc.width() >= 360;
    int steps = whole ? ring.photos() : Math.max(1, ring.photos() - 1);
    for (int i = 0; i < ring.photos(); i++) {
      Angle azimuth = Angle.ofDegrees(arc.from() + arc.width() * i / steps);
      stations.add(new Station(i + 1, azimuth, ring.positionAt(azimuth), ring.target()));
    }
    return stations;
  }

  private static List<Station> without(Ring ring, Directions arc) {
    List<Station> stations = new ArrayList<>();
    for (Station station : ring.stations()) {
      double turns = (station.azimuth().degrees() - arc.from()) / 360;
      if (360 * (turns - Math.floor(turns)) > arc.width()) {
        stations.add(station.numbered(stations.size() + 1));
      }
    }
    return stations;
  }

  /** A row along the object, the first and the last photograph over its two ends. */
  private List<Station> row(WrittenRun run, Angle elevation) {
    Directions directions = run.where().directions();
    Angle azimuth =
        directions.sort() == Sort.FACING ? Angle.ofDegrees(directions.from()) : Ring.FIRST;
    Vec3 outwards = Vec3.towards(azimuth, elevation);
    double turn = azimuth.radians();
    Vec3 along = new Vec3(-Num.sin(turn), Num.cos(turn), 0);
    double length =
        Math.abs(along.x()) * r.si("subject.width") + Math.abs(along.y()) * r.si("subject.depth");
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < run.photos(); i++) {
      double share = run.photos() == 1 ? 0 : i / (run.photos() - 1.0) - 0.5;
      Vec3 target = middle.plus(along.times(share * length));
      Vec3 lens = target.plus(outwards.times(radius(run).metres()));
      stations.add(Station.at(i + 1, lens, target));
    }
    return stations;
  }
}
