package ringbook.bench;

import java.util.ArrayList;
import java.util.List;
import ringbook.geometry.Box;
import ringbook.geometry.Mesh;
import ringbook.geometry.Patches;
import ringbook.geometry.RayTree;
import ringbook.geometry.RayWalk;
import ringbook.geometry.Sight;
import ringbook.geometry.Torus;
import ringbook.geometry.Vec3;
import ringbook.units.Angle;
import ringbook.units.Length;

/** What the ray benches measure: a torus and a block on a table's height, stations all around. */
final class RayTask {

  private static final int PATCHES = 20_000;

  final Mesh mesh;
  final Patches patches;
  final List<Vec3> stations = new ArrayList<>();

  /**
   * The task.
   *
   * @param triangles about how many
   * @param count stations
   * @param open leaves one triangle out, so that nothing can be said of inside and outside
   */
  RayTask(int triangles, int count, boolean open) {
    // A torus has about 4π²Rr / (edge² √3/4) triangles.
    double area = 4 * Math.PI * Math.PI * 0.15 * 0.06;
    double edge = Math.sqrt(area / triangles * 4 / Math.sqrt(3)) * 0.965;
    Mesh closed =
        Mesh.joined(
            List.of(
                new Torus(new Length(0.3), new Length(0.12)).mesh(new Length(edge)),
                new Box(new Length(0.08), new Length(0.08), new Length(0.2))
                    .mesh(new Length(3 * edge))));
    mesh = open ? withoutLast(closed) : closed;
    patches = Patches.of(mesh, PATCHES);
    for (int i = 0; i < count; i++) {
      Vec3 out =
          Vec3.towards(
              Angle.ofDegrees(360.0 * i * 7 / count), Angle.ofDegrees(5 + 60.0 * i / count));
      stations.add(new Vec3(0, 0, 0.06).plus(out.times(0.8)));
    }
  }

  private static Mesh withoutLast(Mesh mesh) {
    double[] xyz = new double[3 * mesh.points()];
    for (int p = 0; p < mesh.points(); p++) {
      xyz[3 * p] = mesh.x(p);
      xyz[3 * p + 1] = mesh.y(p);
      xyz[3 * p + 2] = mesh.z(p);
    }
    int[] corners = new int[3 * (mesh.triangles() - 1)];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = mesh.corner(i / 3, i % 3);
    }
    return Mesh.of(xyz, corners, new int[corners.length / 3], List.of("all"));
  }

  long pairs() {
    return (long) patches.count() * stations.size();
  }

  /** Every ray alone; gives how many are blocked. */
  long oneByOne(RayTree tree) {
    RayWalk walk = new RayWalk(tree);
    long blocked = 0;
    for (Vec3 s : stations) {
      for (int i = 0; i < patches.count(); i++) {
        if (walk.blocked(s.x(), s.y(), s.z(), patches.x(i), patches.y(i), patches.z(i))) {
          blocked++;
        }
      }
    }
    return blocked;
  }

  /** All patches of a station at a time; gives how many are seen. */
  long stationByStation(RayTree tree) {
    boolean[] seen = new boolean[patches.count()];
    Sight sight = Sight.of(mesh, tree, patches);
    long sum = 0;
    for (Vec3 s : stations) {
      sight.visible(s, seen);
      for (boolean one : seen) {
        sum += one ? 1 : 0;
      }
    }
    return sum;
  }
}
