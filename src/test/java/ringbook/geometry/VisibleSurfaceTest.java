package ringbook.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.apache.commons.math3.analysis.solvers.LaguerreSolver;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringbook.units.Length;

/** What part of a surface is seen from a finite distance, against closed forms and a quartic. */
final class VisibleSurfaceTest {

  private static final double R = 0.1;

  private static double seen(Sight sight, Vec3 camera, double limitDegrees) {
    Patches patches = sight.patches();
    boolean[] seen = new boolean[patches.count()];
    sight.visible(camera, seen);
    double area = 0;
    for (int i = 0; i < seen.length; i++) {
      Vec3 view = camera.minus(patches.point(i));
      if (seen[i] && view.angleTo(patches.normal(i)).degrees() <= limitDegrees) {
        area += patches.area(i);
      }
    }
    return area / patches.area();
  }

  /** The cap of a sphere at distance d from its middle: (1 − R/d) / 2, by elementary geometry. */
  @ParameterizedTest
  @CsvSource({"1.2", "1.5", "2", "4", "20"})
  void a_sphere_shows_its_cap(double distances) {
    Mesh ball = new Ball(new Length(2 * R)).mesh(new Length(0.003));
    Patches patches = Patches.of(ball, 8000);
    Sight sight = Sight.of(ball, RayTree.of(ball), patches);
    Vec3 out = new Vec3(0.36, 0.48, 0.8).times(R * distances);
    assertThat(seen(sight, new Vec3(0, 0, R).plus(out), 90))
        .isCloseTo((1 - 1 / distances) / 2, within(0.004));
  }

  /**
   * With a largest incidence i the cap reaches to the polar angle i − asin(sin i · R/d): the law of
   * sines in the triangle of middle, patch and camera.
   */
  @ParameterizedTest
  @CsvSource({"1.5, 60", "2, 60", "4, 45", "4, 75", "20, 30"})
  void a_sphere_shows_a_smaller_cap_under_an_incidence_limit(double distances, double limit) {
    Mesh ball = new Ball(new Length(2 * R)).mesh(new Length(0.003));
    Patches patches = Patches.of(ball, 8000);
    Sight sight = Sight.of(ball, RayTree.of(ball), patches);
    double i = Math.toRadians(limit);
    double polar = i - Math.asin(Math.sin(i) / distances);
    Vec3 camera = new Vec3(0, 0, R).plus(new Vec3(-0.48, 0.36, 0.8).times(R * distances));
    assertThat(seen(sight, camera, limit)).isCloseTo((1 - Math.cos(polar)) / 2, within(0.004));
  }

  /** From a point level with it, the side of a cylinder shows acos(R/d)/π of itself. */
  @ParameterizedTest
  @CsvSource({"1.3", "2", "5"})
  void a_cylinder_shows_less_than_half_its_side(double distances) {
    Mesh cylinder = new Cylinder(new Length(2 * R), new Length(0.3)).mesh(new Length(0.004));
    Patches patches = Patches.of(cylinder, 8000);
    Sight sight = Sight.of(cylinder, RayTree.of(cylinder), patches);
    boolean[] seen = new boolean[patches.count()];
    sight.visible(new Vec3(R * distances, 0, 0.15), seen);
    double side = 0;
    double all = 0;
    for (int i = 0; i < seen.length; i++) {
      if (patches.parts().get(patches.part(i)).equals("side")) {
        all += patches.area(i);
        side += seen[i] ? patches.area(i) : 0;
      } else {
        assertThat(seen[i]).isFalse();
      }
    }
    assertThat(side / all).isCloseTo(Math.acos(1 / distances) / Math.PI, within(0.006));
  }

  /** The error falls as the patches get finer. */
  @Test
  void finer_patches_come_nearer_to_the_cap() {
    double[] error = new double[3];
    for (int k = 0; k < 3; k++) {
      Mesh ball = new Ball(new Length(2 * R)).mesh(new Length(0.012 / (1 << k)));
      Patches patches = Patches.of(ball, 500 << (2 * k));
      Sight sight = Sight.of(ball, RayTree.of(ball), patches);
      double sum = 0;
      for (int a = 0; a < 24; a++) {
        Vec3 out = new Vec3(Math.cos(a), Math.sin(a), 0.2 * (a % 5)).unit().times(3 * R);
        double off = seen(sight, new Vec3(0, 0, R).plus(out), 90) - 1.0 / 3;
        sum += off * off;
      }
      error[k] = Math.sqrt(sum / 24);
    }
    double order = Math.log(error[0] / error[2]) / Math.log(4);
    System.out.printf(
        Locale.ROOT,
        "cap of a sphere: off by %.1e, %.1e, %.1e; order %.2f%n",
        error[0],
        error[1],
        error[2],
        order);
    assertThat(error[2]).isLessThan(2e-3);
    assertThat(order).isGreaterThan(0.8);
  }

  /** A torus hides part of itself; the other route finds the roots of its quartic (Laguerre). */
  @ParameterizedTest
  @CsvSource({"0.5, 0.0, 0.06", "0.4, 0.3, 0.2", "0.0, 0.05, 0.6", "0.25, 0.1, 0.12"})
  void a_torus_hides_what_its_quartic_says(double x, double y, double z) {
    double large = 0.15;
    double small = 0.05;
    Mesh torus = new Torus(new Length(2 * large), new Length(2 * small)).mesh(new Length(0.004));
    Patches patches = Patches.of(torus, 1500);
    Sight sight = Sight.of(torus, RayTree.of(torus), patches);
    Vec3 camera = new Vec3(x, y, z);
    boolean[] seen = new boolean[patches.count()];
    sight.visible(camera, seen);
    int differ = 0;
    int hidden = 0;
    Vec3 middle = new Vec3(0, 0, small);
    for (int i = 0; i < seen.length; i++) {
      Vec3 p = onTorus(patches.point(i).minus(middle), large, small);
      Vec3 c = camera.minus(middle);
      boolean faces = c.minus(p).dot(outward(p, large)) > 0;
      boolean free = faces && !meets(c, p, large, small);
      differ += free == seen[i] ? 0 : 1;
      hidden += faces && !free ? 1 : 0;
    }
    // Only at the edges of what is seen may facets and the true surface differ.
    assertThat(differ).isLessThan(25);
    assertThat(hidden).isGreaterThan(z < 0.5 ? 20 : -1);
  }

  private static Vec3 outward(Vec3 p, double large) {
    double flat = Math.hypot(p.x(), p.y());
    return new Vec3(p.x() - large * p.x() / flat, p.y() - large * p.y() / flat, p.z()).unit();
  }

  private static Vec3 onTorus(Vec3 p, double large, double small) {
    double flat = Math.hypot(p.x(), p.y());
    Vec3 ring = new Vec3(large * p.x() / flat, large * p.y() / flat, 0);
    return ring.plus(p.minus(ring).unit().times(small));
  }

  /** (|q|² + R² − r²)² = 4R²(x² + y²) on q = c + t (p − c), strictly between the ends. */
  private static boolean meets(Vec3 c, Vec3 p, double large, double small) {
    Vec3 d = p.minus(c);
    double a = d.dot(d);
    double b = 2 * c.dot(d);
    double e = c.dot(c) + large * large - small * small;
    double k = 4 * large * large;
    double fa = d.x() * d.x() + d.y() * d.y();
    double fb = 2 * (c.x() * d.x() + c.y() * d.y());
    double fc = c.x() * c.x() + c.y() * c.y();
    double[] quartic = {
      e * e - k * fc, 2 * b * e - k * fb, b * b + 2 * a * e - k * fa, 2 * a * b, a * a
    };
    for (Complex root : new LaguerreSolver().solveAllComplex(quartic, 0.3)) {
      if (Math.abs(root.getImaginary()) < 1e-7
          && root.getReal() > 1e-4
          && root.getReal() < 1 - 1e-4) {
        return true;
      }
    }
    return false;
  }
}
