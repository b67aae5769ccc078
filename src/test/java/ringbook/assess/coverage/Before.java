package ringbook.assess.coverage;

import java.util.ArrayList;
import java.util.List;
import ringbook.Scenes;
import ringbook.geometry.Bounds;
import ringbook.geometry.Mesh;
import ringbook.geometry.Solid;
import ringbook.geometry.Vec3;
import ringbook.shots.Aim.Hold;
import ringbook.shots.Leg;
import ringbook.shots.Pose;
import ringbook.shots.Ring;
import ringbook.shots.Scene;
import ringbook.shots.Station;
import ringbook.units.Angle;
import ringbook.units.FNumber;
import ringbook.units.Length;
import ringbook.units.Numbers;

/** Objects before cameras, for tests. */
final class Before {

  private Before() {}

  /** A scene with no limits but those of looking: all is sharp, fine and in the picture. */
  static Scene open(Solid solid, String incidenceDegrees) {
    Bounds bounds = solid.bounds();
    Vec3 size = bounds.high().minus(bounds.low());
    return Scenes.with(
        Scenes.pot(),
        "subject.height",
        text(100 * size.z()),
        "subject.width",
        text(100 * size.x()),
        "kit.focalLength",
        "2",
        "place.tableHeight",
        "74",
        "aim.incidenceLimit",
        incidenceDegrees,
        "aim.blurLimit",
        "20",
        "aim.diffractionLimit",
        "20",
        "aim.detail",
        "100",
        "aim.pixelsPerDetail",
        "1");
  }

  private static String text(double value) {
    return Numbers.fixed(value, 6);
  }

  /** A solid on the table of a scene. */
  static Seeing seeing(Scene scene, Solid solid, int patches) {
    return seeing(scene, solid.mesh(Length.ofMillimetres(3)), patches);
  }

  /** A mesh that stands on z = 0, put on the table of a scene. */
  static Seeing seeing(Scene scene, Mesh mesh, int patches) {
    Vec3 table = new Vec3(0, 0, scene.place().tableHeight().metres());
    return new Seeing(scene, Surface.of(mesh.moved(table), patches), new FNumber(16));
  }

  static Leg.Setup setup(Length focus) {
    return new Leg.Setup(Pose.STANDING, Hold.UPRIGHT, focus, 1);
  }

  /** A lens at a place as seen from the middle of the object, looking at that. */
  static Viewpoint towards(Seeing seeing, Angle azimuth, Angle elevation, double metres) {
    Vec3 position = seeing.middle().plus(Vec3.towards(azimuth, elevation).times(metres));
    Station station = new Station(1, azimuth, position, seeing.middle());
    return new Viewpoint(station, setup(new Length(metres)));
  }

  /** A whole ring round the middle of the object. */
  static List<View> ring(Seeing seeing, double metres, double elevationDegrees, int photos) {
    Ring ring =
        new Ring(
            new Length(seeing.middle().z()),
            new Length(metres),
            Angle.ofDegrees(elevationDegrees),
            photos);
    List<View> views = new ArrayList<>();
    for (Station station : ring.stations()) {
      views.add(seeing.look(new Viewpoint(station, setup(new Length(metres)))));
    }
    return views;
  }

  /** Share of the surface, or of one part of it, that looks so. */
  static double share(Seeing seeing, View view, java.util.function.Predicate<Look> wanted) {
    double in = 0;
    for (int i = 0; i < seeing.surface().count(); i++) {
      in += wanted.test(view.look(i)) ? seeing.surface().patches().area(i) : 0;
    }
    return in / seeing.surface().patches().area();
  }
}
