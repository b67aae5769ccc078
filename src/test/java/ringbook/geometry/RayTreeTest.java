package ringbook.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import georegression.metric.Intersection3D_F64;
import georegression.struct.line.LineSegment3D_F64;
import georegression.struct.point.Point3D_F64;
import georegression.struct.shapes.Triangle3D_F64;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ringbook.units.Length;

/** The ray tree against trying every triangle by another method, on random triangles and rays. */
final class RayTreeTest {

  private static final int SEEDS = Integer.getInteger("seeds", 20);

  static Mesh soup(Random random, int triangles, double size) {
    double[] xyz = new double[9 * triangles];
    int[] corners = new int[3 * triangles];
    for (int t = 0; t < triangles; t++) {
      for (int k = 0; k < 3; k++) {
        corners[3 * t + k] = 3 * t + k;
        for (int c = 0; c < 3; c++) {
          xyz[9 * t + 3 * k + c] =
              k == 0 ? random.nextDouble() : xyz[9 * t + c] + size * (random.nextDouble() - 0.5);
        }
      }
    }
    return Mesh.of(xyz, corners, new int[triangles], List.of("soup"));
  }

  /**
   * The way to the plane and then barycentric coordinates by a 3 x 3 system and Cramer's rule;
   * empty (infinite) where it misses.
   */
  private static double way(Mesh mesh, int t, Vec3 from, Vec3 to) {
    Vec3 a = mesh.point(mesh.corner(t, 0));
    Vec3 e1 = mesh.point(mesh.corner(t, 1)).minus(a);
    Vec3 e2 = mesh.point(mesh.corner(t, 2)).minus(a);
    Vec3 d = to.minus(from);
    Vec3 s = from.minus(a);
    double det = e1.cross(e2).dot(d.times(-1));
    double way = e1.cross(e2).dot(s) / det;
    double u = s.cross(e2).dot(d.times(-1)) / det;
    double v = e1.cross(s).dot(d.times(-1)) / det;
    return u >= 0 && v >= 0 && u + v <= 1 && way > 0 && way < 1 ? way : Double.POSITIVE_INFINITY;
  }

  @Test
  void agreesWithTryingEveryTriangle() {
    int blocked = 0;
    int rays = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      Random random = new Random(seed);
      int count = 1 + random.nextInt(300);
      Mesh mesh = soup(random, count, random.nextDouble() * 0.6);
      RayTree tree = RayTree.of(mesh);
      for (int i = 0; i < 300; i++) {
        Vec3 from = point(random);
        Vec3 to = point(random);
        double nearest = Double.POSITIVE_INFINITY;
        int which = RayTree.NO_TRIANGLE;
        for (int t = 0; t < count; t++) {
          double way = way(mesh, t, from, to);
          if (way < nearest) {
            nearest = way;
            which = t;
          }
        }
        assertThat(tree.blocked(from, to)).isEqualTo(which >= 0);
        RayTree.Hit hit = tree.nearest(from, to);
        assertThat(hit.triangle()).isEqualTo(which);
        if (which >= 0) {
          assertThat(hit.distance()).isCloseTo(nearest * to.minus(from).norm(), within(1e-9));
          blocked++;
        }
        rays++;
      }
    }
    assertThat(blocked).isBetween(rays / 20, rays * 9 / 10);
  }

  /** A walk begins where the last ray was blocked; that must not show in its answers. */
  @Test
  void answersDoNotHangOnTheRayBefore() {
    int blocked = 0;
    int rays = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      Random random = new Random(2000 + seed);
      Mesh mesh = soup(random, 1 + random.nextInt(400), random.nextDouble() * 0.6);
      RayWalk walk = new RayWalk(RayTree.of(mesh));
      Vec3 from = point(random);
      Vec3 to = point(random);
      for (int i = 0; i < 300; i++) {
        // Mostly a neighbour of the last ray, now and then another one.
        to = i % 20 == 0 ? point(random) : to.plus(point(random).times(0.03));
        from = i % 50 == 0 ? point(random) : from;
        boolean any = false;
        for (int t = 0; t < mesh.triangles(); t++) {
          any |= way(mesh, t, from, to) < 1;
        }
        assertThat(walk.blocked(from.x(), from.y(), from.z(), to.x(), to.y(), to.z()))
            .isEqualTo(any);
        blocked += any ? 1 : 0;
        rays++;
      }
    }
    assertThat(blocked).isBetween(rays / 20, rays * 9 / 10);
  }

  /** Intersections of a library of another maker: georegression, which BoofCV rests on. */
  @Test
  void agreesWithAGeometryLibrary() {
    int blocked = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      Random random = new Random(1000 + seed);
      Mesh mesh = soup(random, 100, 0.3);
      RayTree tree = RayTree.of(mesh);
      for (int i = 0; i < 100; i++) {
        Vec3 from = point(random);
        Vec3 to = point(random);
        LineSegment3D_F64 ray = new LineSegment3D_F64(at(from), at(to));
        boolean hit = false;
        for (int t = 0; t < mesh.triangles() && !hit; t++) {
          Triangle3D_F64 triangle =
              new Triangle3D_F64(
                  at(mesh.point(mesh.corner(t, 0))),
                  at(mesh.point(mesh.corner(t, 1))),
                  at(mesh.point(mesh.corner(t, 2))));
          hit = Intersection3D_F64.intersection(triangle, ray, new Point3D_F64()) == 1;
        }
        assertThat(tree.blocked(from, to)).isEqualTo(hit);
        blocked += hit ? 1 : 0;
      }
    }
    assertThat(blocked).isBetween(SEEDS * 5, SEEDS * 95);
  }

  private static Point3D_F64 at(Vec3 p) {
    return new Point3D_F64(p.x(), p.y(), p.z());
  }

  static Vec3 point(Random random) {
    return new Vec3(
        3 * random.nextDouble() - 1, 3 * random.nextDouble() - 1, 3 * random.nextDouble() - 1);
  }

  @Test
  void noRaySlipsThroughAnEdgeOrACorner() {
    Mesh ball = new Ball(new Length(2)).mesh(new Length(0.3));
    RayTree tree = RayTree.of(ball);
    Vec3 inside = new Vec3(0.013, 0.021, 1.017);
    for (int t = 0; t < ball.triangles(); t++) {
      for (int k = 0; k < 3; k++) {
        Vec3 a = ball.point(ball.corner(t, k));
        Vec3 b = ball.point(ball.corner(t, (k + 1) % 3));
        for (double s : new double[] {0, 0.1, 0.25, 0.5, 0.7}) {
          Vec3 on = a.plus(b.minus(a).times(s));
          assertThat(tree.blocked(inside, inside.plus(on.minus(inside).times(2)))).isTrue();
          assertThat(tree.blocked(inside.plus(on.minus(inside).times(2)), inside)).isTrue();
        }
      }
    }
  }

  @Test
  void raysAlongAxesAndFacesAreAnswered() {
    RayTree tree =
        RayTree.of(new Box(new Length(2), new Length(2), new Length(2)).mesh(new Length(0.5)));
    assertThat(tree.blocked(new Vec3(0, 0, 1), new Vec3(5, 0, 1))).isTrue();
    assertThat(tree.blocked(new Vec3(0, 0, 1), new Vec3(0, 0, 9))).isTrue();
    assertThat(tree.blocked(new Vec3(-5, 0, 1.3), new Vec3(5, 0, 1.3))).isTrue();
    assertThat(tree.blocked(new Vec3(-5, 0, 2.0001), new Vec3(5, 0, 2.0001))).isFalse();
    assertThat(tree.blocked(new Vec3(-5, 3, 0), new Vec3(5, 3, 0))).isFalse();
  }

  @Test
  void aRayMayBeginAndEndOnTheSurface() {
    Mesh mesh = new Box(new Length(2), new Length(2), new Length(2)).mesh(new Length(2));
    RayTree tree = RayTree.of(mesh);
    assertThat(tree.blocked(new Vec3(0.3, 0.2, 2), new Vec3(0.3, 0.2, 7))).isFalse();
    assertThat(tree.blocked(new Vec3(0.3, 0.2, 7), new Vec3(0.3, 0.2, 2))).isFalse();
    assertThat(tree.blocked(new Vec3(0.3, 0.2, 0), new Vec3(0.3, 0.2, 2))).isFalse();
    assertThat(tree.blocked(new Vec3(0.3, 0.2, -0.1), new Vec3(0.3, 0.2, 2))).isTrue();
  }

  @Test
  void nothingBlocksInAnEmptyMesh() {
    RayTree tree = RayTree.of(Mesh.of(new double[0], new int[0], new int[0], List.of()));
    assertThat(tree.blocked(Vec3.ZERO, Vec3.UP)).isFalse();
    assertThat(tree.nearest(Vec3.ZERO, Vec3.UP)).isEqualTo(RayTree.Hit.NONE);
  }

  @Test
  void manyTrianglesInOnePlaceDoNotOverwhelmIt() {
    double[] xyz = {0, 0, 0, 1, 0, 0, 0, 1, 0};
    int[] corners = new int[3 * 5000];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = i % 3;
    }
    RayTree tree = RayTree.of(Mesh.of(xyz, corners, new int[5000], List.of("heap")));
    assertThat(tree.blocked(new Vec3(0.2, 0.2, -1), new Vec3(0.2, 0.2, 1))).isTrue();
    assertThat(tree.blocked(new Vec3(0.8, 0.8, -1), new Vec3(0.8, 0.8, 1))).isFalse();
  }
}
