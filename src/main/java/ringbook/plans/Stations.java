package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Viewpoint;
import ringbook.assess.findings.BestFocus;
import ringbook.geometry.Patches;
import ringbook.ledger.Reckoning;
import ringbook.shots.Leg.Setup;
import ringbook.shots.Pose;
import ringbook.shots.Station;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Num;

/**
 * All stations the planner chooses from, with what they see.
 *
 * @param reach where a person can hold the lens
 * @param rings by pose, from low to high
 * @param all the rings' stations, those half-way between them, and close-ups
 */
record Stations(Reach reach, List<RingViews> rings, List<Candidate> all) {

  private static final double STEEPEST = Angle.ofDegrees(85).radians();

  /** Another focus must show so much more to be worth a change. */
  private static final double BETTER = 1.15;

  static Stations of(Seeing seeing, Reckoning reckoning) {
    return new Search(seeing, reckoning).stations();
  }

  /** Finds them. */
  private static final class Search {
    private final Seeing seeing;
    private final Reckoning r;
    private final Reach reach;
    private final Angle limit;
    private final BestFocus focus;
    private final List<RingViews> rings = new ArrayList<>();
    private final List<Candidate> all = new ArrayList<>();

    Search(Seeing seeing, Reckoning reckoning) {
      this.seeing = seeing;
      r = reckoning;
      focus = new BestFocus(seeing);
      limit = r.scene().aim().stepLimit();
      Patches patches = seeing.surface().patches();
      double radius = 0;
      double top = 0;
      for (int i = 0; i < patches.count(); i++) {
        radius = Math.max(radius, Num.hypot(patches.x(i), patches.y(i)));
        top = Math.max(top, patches.z(i));
      }
      reach = Reach.of(r.scene(), radius, top);
    }

    Stations stations() {
      for (RingShape shape : shapes()) {
        RingViews ring = RingViews.of(shape, reach, limit, focused(shape), seeing);
        rings.add(ring);
        all.addAll(ring.stations());
      }
      rings.forEach(this::addBetween);
      if (!all.isEmpty()) {
        int[] missing = Wellness.of(seeing, all).missing();
        all.addAll(
            new CloseUps(seeing, reach, r.si("ring.radius"), this::setup).around(missing, poses()));
      }
      return new Stations(reach, rings, all);
    }

    /**
     * Focused as the ledger says, or where far more is sharp: into a vessel that is farther than
     * onto a wall. By three stations, a third of the way round apart.
     */
    private Setup focused(RingShape shape) {
      Setup usual = setup(shape.pose(), r.length("sharp.focus"));
      List<Station> stations = shape.stations(reach, limit);
      if (stations.isEmpty()) {
        return usual;
      }
      List<Viewpoint> three = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        three.add(new Viewpoint(stations.get(i * stations.size() / 3), usual));
      }
      return setup(shape.pose(), focus.most(three, BETTER));
    }

    private Setup setup(Pose pose, Length focus) {
      return new Setup(pose, r.scene().aim().hold(), focus, 1);
    }

    private List<Pose> poses() {
      return r.si("aim.poses") > 1 ? List.of(Pose.values()) : List.of(Pose.STANDING);
    }

    /** Every elevation within reach, half a step limit apart or less. */
    private List<RingShape> shapes() {
      double distance = r.si("ring.radius");
      double middle = seeing.middle().z();
      double low = elevation(reach.lowest() - middle, distance);
      double high = Math.min(STEEPEST, elevation(reach.highest() - middle, distance));
      int steps = (int) Math.ceil(Math.max(0, high - low) / (limit.radians() / 2));
      List<RingShape> shapes = new ArrayList<>();
      for (Pose pose : poses()) {
        for (int i = 0; i <= steps; i++) {
          double at = steps == 0 ? low : low + (high - low) * i / steps;
          shapes.add(new RingShape(pose, new Angle(at), new Length(distance), seeing.middle()));
        }
      }
      return shapes;
    }

    private static double elevation(double rise, double distance) {
      return Num.asin(Math.max(-1, Math.min(1, rise / distance)));
    }

    private void addBetween(RingViews ring) {
      if (ring.stations().isEmpty()) {
        return;
      }
      List<Angle> taken = new ArrayList<>();
      ring.stations().forEach(one -> taken.add(one.viewpoint().station().azimuth()));
      for (Station station : ring.shape().stations(reach, limit.times(0.5))) {
        boolean free = true;
        for (Angle other : taken) {
          double apart = Math.abs(other.minus(station.azimuth()).radians());
          free &= apart >= limit.radians() / 10;
        }
        if (free) {
          Viewpoint viewpoint = new Viewpoint(station, ring.stations().get(0).viewpoint().setup());
          all.add(new Candidate(viewpoint, ring.shape(), seeing.look(viewpoint)));
        }
      }
    }
  }
}
