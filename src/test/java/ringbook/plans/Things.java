package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Surface;
import ringbook.geometry.Lathe;
import ringbook.geometry.Mesh;
import ringbook.geometry.Solid;
import ringbook.geometry.Vec3;
import ringbook.ledger.Reckoning;
import ringbook.shots.Place.Corner;
import ringbook.shots.Place.Obstacle;
import ringbook.shots.Scene;
import ringbook.shots.SceneDraft;
import ringbook.units.Length;

/** Objects to plan for, in their scenes. */
final class Things {

  private Things() {}

  /** An open pot with a drain hole, 36 cm tall and 30 cm across. */
  static Lathe pot() {
    return new Lathe(
        List.of(point(10, 0), point(13, 12), point(14, 30), point(15, 31), point(15, 36)),
        List.of(
            point(13.5, 36),
            point(12.5, 30),
            point(11.5, 12),
            point(9, 3),
            point(1.2, 3),
            point(1.2, 0)));
  }

  private static Lathe.Point point(double radius, double height) {
    return new Lathe.Point(Length.ofCentimetres(radius), Length.ofCentimetres(height));
  }

  /** The workbench and the wall of the demo. */
  static List<Obstacle> demoRoom() {
    return List.of(box("wall", -1.6, 1.5, 2.2, 1.65), box("workbench", 0.45, -0.75, 1.25, -0.2));
  }

  static Obstacle box(String name, double x1, double y1, double x2, double y2) {
    List<Corner> corners = new ArrayList<>();
    double[][] all = {{x1, y1}, {x2, y1}, {x2, y2}, {x1, y2}};
    for (double[] one : all) {
      corners.add(new Corner(Length.ofMetres(one[0]), Length.ofMetres(one[1])));
    }
    return new Obstacle(name, corners);
  }

  static Scene in(Scene scene, List<Obstacle> obstacles) {
    return SceneDraft.of(scene).obstacles(obstacles).build();
  }

  static Seeing seeing(Scene scene, Solid solid, int patches) {
    return seeing(scene, solid.mesh(Length.ofMillimetres(8)), patches);
  }

  /** A mesh that stands on z = 0, on the table of a scene, at the f-number of the ledger. */
  static Seeing seeing(Scene scene, Mesh mesh, int patches) {
    Vec3 table = new Vec3(0, 0, scene.place().tableHeight().metres());
    Reckoning reckoning = Reckoning.of(scene);
    return new Seeing(
        scene, Surface.of(mesh.moved(table), patches), reckoning.fNumber("sharp.fNumber"));
  }
}
