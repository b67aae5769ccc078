package ringbook.assess.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import ringbook.assess.Standing;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Viewpoint;
import ringbook.shots.Leg;
import ringbook.shots.Place;
import ringbook.shots.Scene;
import ringbook.shots.SceneDetails;
import ringbook.units.Angle;
import ringbook.units.Length;

/** Tries ways to close a gap in a ring: from the circle, from elsewhere, in a cleared room. */
final class GapMends {

  private final Seeing seeing;
  private final Usual usual;
  private final Leg leg;
  private final Circle circle;
  private final int free;
  private final List<Viewpoint> there;

  /**
   * For one ring.
   *
   * @param free how many of its photographs show the object
   * @param there all photographs of the plan
   */
  GapMends(Seeing seeing, Usual usual, Leg leg, int free, List<Viewpoint> there) {
    this.seeing = seeing;
    this.usual = usual;
    this.leg = leg;
    this.free = free;
    this.there = List.copyOf(there);
    circle = new Circle(leg, seeing.scene().kit().lens().closestFocus());
  }

  /**
   * What closes it, the cheapest first.
   *
   * @param step turn between photographs, in radians
   * @param suffering patches that are not seen well beside it
   */
  List<Mend> of(Around around, double step, int[] suffering) {
    Trial trial = new Trial(seeing, suffering, 60, there);
    List<Mend> mends = mends(around, step, trial);
    if (mends.isEmpty()) {
      cleared(around, suffering).ifPresent(mends::add);
    }
    return mends;
  }

  private List<Mend> mends(Around around, double step, Trial trial) {
    List<Mend> mends = new ArrayList<>();
    double before = trial.well(List.of());
    int steps = (int) Math.ceil(around.width().radians() / step - 0.01);
    // From the circle itself outwards and inwards, the nearest first.
    for (double scale : new double[] {1, 0.9, 1.1, 0.8, 1.25, 0.7, 1.4, 1.6, 0.6, 1.8, 2.1, 2.5}) {
      List<Viewpoint> arc = circle.arc(around, steps, scale);
      arc = arc.subList(1, arc.size());
      if (mends.isEmpty() && allStand(arc)) {
        add(fill(around, scale, arc.size()), arc, before, trial, mends);
      }
    }
    boolean open = by(around).isEmpty();
    for (double wanted :
        new double[] {usual.reach().within(), usual.reach().beyond(circle.floor(1))}) {
      double scale = wanted / circle.floor(1);
      if (!open && scale > 0.5 && scale < 4 && Math.abs(scale - 1) > 0.01) {
        whole(Math.floor(scale * 100) / 100, before, trial, mends);
      }
    }
    return Mend.ordered(mends);
  }

  private boolean allStand(List<Viewpoint> arc) {
    for (Viewpoint viewpoint : arc) {
      if (!usual.reach().holds(viewpoint.station().position())) {
        return false;
      }
    }
    return true;
  }

  private String fill(Around around, double scale, int count) {
    String words =
        leg.name()
            + ": "
            + count
            + " more "
            + (count == 1 ? "photograph" : "photographs")
            + " between "
            + Say.direction(around.from())
            + " and "
            + Say.direction(around.to());
    return scale == 1
        ? words
        : words
            + ", there from "
            + Say.length(seeing.scene(), circle.floor(scale))
            + " on the floor";
  }

  private void whole(double scale, double before, Trial trial, List<Mend> mends) {
    int count = Math.max(leg.stations().size(), free);
    List<Viewpoint> ring = circle.ring(count, scale);
    if (allStand(ring)) {
      int more = count - free;
      double well = trial.well(ring);
      double mended = (well - before) / Math.max(1e-9, 1 - before);
      if (mended > 0.1) {
        String words =
            "stand at "
                + Say.length(seeing.scene(), circle.floor(scale))
                + " on the floor all round "
                + leg.name();
        mends.add(new Mend(words, more, mended, ring));
      }
    }
  }

  private void add(
      String words, List<Viewpoint> arc, double before, Trial trial, List<Mend> mends) {
    double mended =
        trial.seeing().surface().count() == 0
            ? 1
            : (trial.well(arc) - before) / Math.max(1e-9, 1 - before);
    if (mended > 0.1) {
      mends.add(new Mend(words, arc.size(), mended, arc));
    }
  }

  /** What is in the way of a person there. */
  List<String> by(Around around) {
    TreeSet<String> names = new TreeSet<>();
    Length room = new Length(circle.floor(1) + SceneDetails.si(seeing.scene(), "place.bodyRoom"));
    for (int i = 1; i < 8; i++) {
      Angle azimuth = around.from().plus(around.width().times(i / 8.0));
      names.addAll(Standing.inTheWay(seeing.scene().place(), room, azimuth));
    }
    return List.copyOf(names);
  }

  /** The same eyes in a room without these things. */
  private Seeing without(List<String> names) {
    Scene old = seeing.scene();
    List<Place.Obstacle> rest = new ArrayList<>();
    for (Place.Obstacle obstacle : old.place().obstacles()) {
      if (!names.contains(obstacle.name())) {
        rest.add(obstacle);
      }
    }
    Scene cleared = new Scene(old.kit(), old.subject(), with(old.place(), rest), old.aim());
    return new Seeing(cleared, seeing.surface(), seeing.fNumber());
  }

  /**
   * What part of what is not seen well beside it a gap spoils that nothing closes: what the ring
   * would show if nothing were in the way.
   */
  double spoilt(Around around, double step, int[] suffering) {
    Trial trial = new Trial(without(by(around)), suffering, 60, there);
    double before = new Trial(seeing, suffering, 60, there).well(List.of());
    int steps = (int) Math.ceil(around.width().radians() / step - 0.01);
    return suffering.length == 0
        ? 0
        : Math.max(0, trial.well(circle.arc(around, steps, 1)) - before);
  }

  /** What moving the things in the way would do: the same stations in a room without them. */
  private Optional<Mend> cleared(Around around, int[] suffering) {
    List<String> names = by(around);
    if (names.isEmpty()) {
      return Optional.empty();
    }
    double nearest = Double.POSITIVE_INFINITY;
    Place place = seeing.scene().place();
    for (Place.Obstacle obstacle : place.obstacles()) {
      if (names.contains(obstacle.name())) {
        nearest = Math.min(nearest, Standing.nearestMetres(with(place, List.of(obstacle))));
      }
    }
    Scene old = seeing.scene();
    double before = new Trial(seeing, suffering, 60, there).well(List.of());
    double after = new Trial(without(names), suffering, 60, there).well(List.of());
    double mended = (after - before) / Math.max(1e-9, 1 - before);
    double room = circle.floor(1) + SceneDetails.si(old, "place.bodyRoom") - nearest;
    String words =
        "move the object or the "
            + String.join(" and the ", names)
            + " so that there are "
            + Say.length(seeing.scene(), room)
            + " more between them";
    return mended > 0.1 ? Optional.of(new Mend(words, 0, mended, List.of())) : Optional.empty();
  }

  private static Place with(Place place, List<Place.Obstacle> obstacles) {
    return new Place(
        place.tableHeight(), place.lowestLens(), place.highestLens(), obstacles, place.details());
  }
}
