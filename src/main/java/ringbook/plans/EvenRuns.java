package ringbook.plans;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import ringbook.assess.coverage.Viewpoint;
import ringbook.geometry.ArcSet.Span;
import ringbook.geometry.Vec3;
import ringbook.plans.Bunch.Form;
import ringbook.shots.Leg.Setup;
import ringbook.shots.Pose;
import ringbook.shots.Station;
import ringbook.units.Angle;
import ringbook.units.Length;

/**
 * Even runs in the place of photographs here and there: rings and arcs at one height with one step,
 * strips upwards at one hour in even steps.
 */
final class EvenRuns {

  /** So many more or fewer photographs are tried. */
  private static final int MORE = 3;

  /** Where between two steps a ring begins, as parts of a step. */
  private static final double[] PHASES = {0, 0.25, 0.5, 0.75};

  /** Heights that are tried for one run. */
  private static final int HEIGHTS = 3;

  /** Two photographs side by side stand so far to either side, as an angle. */
  private static final double SIDE = Angle.ofDegrees(5).radians();

  /** So far inside the ends of what the room leaves, as a part of it. */
  private static final double HAIR = 1e-6;

  private static final double FULL = 2 * Math.PI;

  private final Stations stations;

  EvenRuns(Stations stations) {
    this.stations = stations;
  }

  /**
   * A run that could be walked: all stations are within reach.
   *
   * @param form of the bunch it makes
   * @param shapes for each station the ring it stands on
   * @param viewpoints in no order that matters
   */
  record Run(Form form, List<RingShape> shapes, List<Viewpoint> viewpoints) {
    int size() {
      return viewpoints.size();
    }

    /** Runs of one kind differ in place only. */
    List<Object> kind() {
      boolean abreast = form == Form.UPWARDS && size() > 1 && shapes.get(0).equals(shapes.get(1));
      return List.of(form, size(), abreast);
    }
  }

  /** What could take the place of a bunch. */
  List<Run> instead(Bunch bunch) {
    List<Run> runs = new ArrayList<>();
    if (bunch.form() == Form.CLOSE) {
      return runs;
    }
    if (bunch.form() == Form.UPWARDS) {
      upwards(bunch, runs);
    }
    for (RingShape shape : shapes(bunch)) {
      level(bunch, shape, runs);
    }
    return runs;
  }

  /** The same run with so many photographs. */
  List<Run> with(Bunch bunch, int photos) {
    List<Run> runs = new ArrayList<>();
    if (bunch.form() == Form.UPWARDS) {
      double[] ends = Bunch.heights(bunch.members());
      Arc arc = Arc.of(bunch.members());
      double side = arc.width() / 2;
      if (side < SIDE / 2) {
        strip(bunch, arc.from(), 0, ends, photos, runs);
      } else if (photos % 2 == 0) {
        strip(bunch, arc.from() + side, side, ends, photos / 2, runs);
      }
    } else if (bunch.form() != Form.CLOSE) {
      round(bunch, bunch.first().ring(), photos, runs);
    }
    return runs;
  }

  /** Rings of the pose between the lowest and the highest photograph, those in the middle first. */
  private List<RingShape> shapes(Bunch bunch) {
    double[] ends = Bunch.heights(bunch.members());
    double mean = bunch.elevation().radians();
    List<RingShape> shapes = new ArrayList<>();
    for (RingViews ring : stations.rings()) {
      double at = ring.shape().elevation().radians();
      boolean within = at > ends[0] - 0.02 && at < ends[1] + 0.02;
      if (ring.shape().pose() == bunch.pose() && within) {
        shapes.add(ring.shape());
      }
    }
    shapes.sort(Comparator.comparingDouble(s -> Math.abs(s.elevation().radians() - mean)));
    return shapes.subList(0, Math.min(HEIGHTS, shapes.size()));
  }

  private void level(Bunch bunch, RingShape shape, List<Run> runs) {
    int size = bunch.size();
    for (int photos = Math.max(2, size - MORE); photos <= size + MORE; photos++) {
      round(bunch, shape, photos, runs);
    }
  }

  /** All round or as far as the room lets, or over the arc that the bunch is spread over. */
  private void round(Bunch bunch, RingShape shape, int photos, List<Run> runs) {
    Arc arc = Arc.of(bunch.members());
    double steps = Math.max(1, photos - 1);
    if (!arc.isRound()) {
      ring(bunch, shape, arc.from(), arc.width() / steps, photos, runs);
      return;
    }
    List<Span> free = stations.reach().free(shape.floorDistance());
    boolean open = free.size() == 1 && free.get(0).width().radians() < FULL;
    if (open) {
      double width = free.get(0).width().radians() * (1 - 2 * HAIR);
      double from = free.get(0).from().radians() + HAIR * width;
      ring(bunch, shape, from, width / steps, photos, runs);
    }
    for (double phase : PHASES) {
      double step = FULL / photos;
      ring(bunch, shape, arc.from() + phase * step, step, photos, runs);
    }
  }

  private void ring(
      Bunch bunch, RingShape shape, double from, double step, int photos, List<Run> runs) {
    List<RingShape> shapes = new ArrayList<>();
    List<Viewpoint> viewpoints = new ArrayList<>();
    Setup setup = bunch.first().viewpoint().setup();
    for (int i = 0; i < photos; i++) {
      Station station = shape.at(i + 1, new Angle(from + i * step));
      // Where something stands in the way, the ring has a gap.
      if (stations.reach().holds(station.position())) {
        shapes.add(shape);
        viewpoints.add(new Viewpoint(station, setup));
      }
    }
    if (!viewpoints.isEmpty() && photos - viewpoints.size() <= photos / 3) {
      runs.add(new Run(form(shape), shapes, viewpoints));
    }
  }

  private static Form form(RingShape shape) {
    return shape.elevation().radians() >= Gathering.STEEP ? Form.ABOVE : Form.LEVEL;
  }

  private void upwards(Bunch bunch, List<Run> runs) {
    double[] ends = Bunch.heights(bunch.members());
    Arc arc = Arc.of(bunch.members());
    for (double share : PHASES) {
      double azimuth = arc.from() + (share + 0.125) * arc.width();
      for (int photos = Math.max(2, bunch.size() - 1); photos <= bunch.size() + 1; photos++) {
        strip(bunch, azimuth, 0, ends, photos, runs);
      }
      int half = (bunch.size() + 1) / 2;
      for (int heights = Math.max(2, half - 1); heights <= half; heights++) {
        strip(bunch, azimuth, SIDE, ends, heights, runs);
      }
    }
  }

  /** One photograph at each height, or two side by side. */
  private void strip(
      Bunch bunch, double azimuth, double side, double[] ends, int heights, List<Run> runs) {
    RingShape first = bunch.first().ring();
    Pose pose = bunch.pose();
    Length distance = first.distance();
    Vec3 middle = first.middle();
    List<RingShape> shapes = new ArrayList<>();
    List<Viewpoint> viewpoints = new ArrayList<>();
    Setup setup = bunch.first().viewpoint().setup();
    for (int i = 0; i < heights; i++) {
      double share = heights == 1 ? 0.5 : i / (heights - 1.0);
      Angle rise = new Angle(ends[0] + (ends[1] - ends[0]) * share);
      RingShape shape = new RingShape(pose, rise, distance, middle);
      for (double turn : side == 0 ? new double[] {0} : new double[] {-side, side}) {
        Station station = shape.at(shapes.size() + 1, new Angle(azimuth + turn));
        if (!stations.reach().holds(station.position())) {
          return;
        }
        shapes.add(shape);
        viewpoints.add(new Viewpoint(station, setup));
      }
    }
    runs.add(new Run(Form.UPWARDS, shapes, viewpoints));
  }
}
