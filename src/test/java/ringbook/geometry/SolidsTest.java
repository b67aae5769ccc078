package ringbook.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static ringbook.units.Length.ofCentimetres;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import ringbook.units.Angle;
import ringbook.units.Length;

/**
 * Solids against closed forms of area and volume. The numbers are worked out by hand from the
 * formulas of school geometry (ball, cylinder, cone; torus and turned bodies by the theorems of
 * Pappus), not by the methods under test.
 */
final class SolidsTest {

  private static final double PI = Math.PI;

  /** A solid and what school geometry says of it, in centimetres. */
  private record Known(Solid solid, double area, double volume) {}

  private static Map<String, Known> known() {
    Map<String, Known> all = new TreeMap<>();
    all.put("box 2 x 3 x 4", new Known(new Box(cm(2), cm(3), cm(4)), 52, 24));
    all.put("cylinder d 6 h 5", new Known(new Cylinder(cm(6), cm(5)), 48 * PI, 45 * PI));
    all.put("cone d 6 h 4", new Known(new Cone(cm(6), cm(0), cm(4)), 24 * PI, 12 * PI));
    // Frustum with radii 5 and 2 and height 4: slope 5.
    all.put(
        "frustum 10 to 4 h 4",
        new Known(
            new Cone(cm(10), cm(4), cm(4)), PI * (7 * 5 + 25 + 4), PI * 4 * (25 + 10 + 4) / 3));
    all.put("ball d 6", new Known(new Ball(cm(6)), 36 * PI, 36 * PI));
    all.put("torus 10 / 4", new Known(new Torus(cm(10), cm(4)), 40 * PI * PI, 40 * PI * PI));
    // Outside 2π·5·6, hole 2π·3·6, two rings π(25 − 9).
    all.put("tube 10 / 6 h 6", new Known(new Tube(cm(10), cm(6), cm(6)), 128 * PI, 96 * PI));
    // A beaker: radius 5, height 8, wall 1, floor 2.
    all.put("beaker", new Known(beaker(), PI * (80 + 25 + 9 + 48 + 16), PI * (200 - 96)));
    // The same with a drain hole of radius 1 through the floor.
    all.put(
        "beaker with drain",
        new Known(drained(), PI * (80 + 24 + 9 + 48 + 15 + 4), PI * (200 - 96 - 2)));
    // 20 x 10 x 3 with a hole of radius 2 and a pocket of radius 1 that goes 3 deep under 45°...
    // the
    // wall of a slanting cut is the circumference times the length of the axis.
    all.put(
        "plate",
        new Known(
            plate(),
            580 - 8 * PI + 12 * PI - PI * Math.sqrt(2) + 6 * PI + PI,
            600 - 12 * PI - 3 * PI));
    return all;
  }

  private static Length cm(double number) {
    return ofCentimetres(number);
  }

  private static Lathe.Point at(double radius, double height) {
    return new Lathe.Point(cm(radius), cm(height));
  }

  private static Lathe beaker() {
    return new Lathe(List.of(at(5, 0), at(5, 8)), List.of(at(4, 8), at(4, 2), at(0, 2)));
  }

  private static Lathe drained() {
    return new Lathe(List.of(at(5, 0), at(5, 8)), List.of(at(4, 8), at(4, 2), at(1, 2), at(1, 0)));
  }

  private static Plate plate() {
    return new Plate(
        cm(20),
        cm(10),
        cm(3),
        List.of(new Plate.Hole(cm(-5), cm(1), cm(4))),
        List.of(
            new Plate.Pocket(
                cm(4), cm(0), cm(2), cm(3), Angle.ofDegrees(45), Angle.ofDegrees(30))));
  }

  @TestFactory
  Stream<DynamicTest> closedFormsAreThoseOfSchoolGeometry() {
    return known().entrySet().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.getKey(),
                    () -> {
                      Known known = one.getValue();
                      assertThat(known.solid().area() * 1e4)
                          .isCloseTo(known.area(), within(1e-9 * known.area()));
                      assertThat(known.solid().volume() * 1e6)
                          .isCloseTo(known.volume(), within(1e-9 * known.volume()));
                    }));
  }

  /** The error of the triangles falls with the square of the edge: order near 2. */
  @TestFactory
  Stream<DynamicTest> trianglesComeNearWithTheSquareOfTheEdge() {
    return known().entrySet().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.getKey(), () -> requireOrder(one.getKey(), one.getValue().solid())));
  }

  private static void requireOrder(String name, Solid solid) {
    double[] area = new double[3];
    double[] volume = new double[3];
    for (int i = 0; i < 3; i++) {
      Mesh mesh = solid.mesh(Length.ofMillimetres(4 / Math.pow(2, i)));
      area[i] = Math.abs(mesh.area() / solid.area() - 1);
      volume[i] = Math.abs(mesh.volume() / solid.volume() - 1);
    }
    System.out.printf(
        Locale.ROOT,
        "%-20s area off by %.1e, order %.2f; volume off by %.1e, order %.2f%n",
        name,
        area[2],
        order(area),
        volume[2],
        order(volume));
    assertThat(area[2]).isLessThan(1.5e-3);
    assertThat(volume[2]).isLessThan(1.5e-3);
    if (area[0] > 1e-9) {
      assertThat(order(area)).isBetween(1.7, 2.4);
    }
    // The two faces of a tube's wall are off by the same, so that nothing is left to shrink.
    if (volume[2] > 1e-5) {
      assertThat(order(volume)).isBetween(1.7, 2.4);
    }
  }

  private static double order(double[] errors) {
    return Math.log(errors[0] / errors[2]) / Math.log(4);
  }

  @Test
  void solidsOfOnePieceAreClosed() {
    for (Map.Entry<String, Known> one : known().entrySet()) {
      for (double edge : new double[] {0.3, 1, 5}) {
        MeshFaults faults = MeshFaults.of(one.getValue().solid().mesh(cm(edge)));
        if (!one.getKey().equals("plate")) {
          assertThat(faults.isClosed()).as("%s at %s cm: %s", one.getKey(), edge, faults).isTrue();
          assertThat(faults.emptyTriangles()).as(one.getKey()).isZero();
        }
      }
    }
  }

  @Test
  void partsHaveNamesAPersonUnderstands() {
    assertThat(drained().mesh(cm(1)).parts())
        .containsExactlyInAnyOrder("base", "side", "rim", "inside", "floor", "hole");
    assertThat(beaker().mesh(cm(1)).parts())
        .containsExactlyInAnyOrder("base", "side", "rim", "inside", "floor");
    assertThat(plate().mesh(cm(1)).parts())
        .containsExactlyInAnyOrder(
            "front", "back", "left", "right", "top", "base", "hole 1", "pocket 1");
    assertThat(new Ball(cm(1)).mesh(cm(1)).parts())
        .containsExactlyInAnyOrder("lower half", "upper half");
  }

  /** Counting random points of the bounds is a route of its own to the volume. */
  @TestFactory
  Stream<DynamicTest> theInsideTestCountsTheVolume() {
    return known().entrySet().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.getKey(),
                    () -> {
                      Solid solid = one.getValue().solid();
                      Bounds b = solid.bounds();
                      java.util.Random random = new java.util.Random(5);
                      int inside = 0;
                      int all = 40_000;
                      for (int i = 0; i < all; i++) {
                        Vec3 size = b.size();
                        inside +=
                            solid.contains(
                                    b.low()
                                        .plus(
                                            new Vec3(
                                                size.x() * random.nextDouble(),
                                                size.y() * random.nextDouble(),
                                                size.z() * random.nextDouble())))
                                ? 1
                                : 0;
                      }
                      double block = b.size().x() * b.size().y() * b.size().z();
                      double share = solid.volume() / block;
                      double sigma = Math.sqrt(share * (1 - share) / all);
                      assertThat((double) inside / all).isCloseTo(share, within(4 * sigma + 1e-12));
                    }));
  }

  @Test
  void overlappingSolidsShowOnlyWhatCanBeTouched() {
    // Two unit balls whose middles are 1 radius apart: the union's area is two balls less two caps.
    double r = 0.05;
    Ball ball = new Ball(new Length(2 * r));
    Shape two =
        new Shape(
            List.of(
                Placed.of("left", ball, Placement.NONE),
                Placed.of("right", ball, Placement.upright(new Vec3(r, 0, 0)))));
    double cap = 2 * PI * r * (r / 2);
    double lens = PI * Math.pow(r - r / 2, 2) * (3 * r - (r - r / 2)) / 3 * 2;
    Mesh mesh = two.mesh(new Length(0.002));
    assertThat(mesh.area()).isCloseTo(2 * (4 * PI * r * r - cap), within(1e-3 * mesh.area()));
    assertThat(mesh.volume())
        .isCloseTo(2 * 4.0 / 3 * PI * r * r * r - lens, within(2e-3 * mesh.volume()));
  }

  @Test
  void blocksThatTouchHaveNoSurfaceBetween() {
    Box box = new Box(cm(4), cm(4), cm(4));
    Shape stacked =
        new Shape(
            List.of(
                Placed.of("below", box, Placement.NONE),
                Placed.of("above", box, Placement.upright(new Vec3(0, 0, 0.04)))));
    Mesh mesh = stacked.mesh(cm(1));
    assertThat(mesh.area() * 1e4).isCloseTo(2 * 16 + 4 * 32, within(1e-3));
    assertThat(mesh.volume() * 1e6).isCloseTo(128, within(1e-3));
  }

  @Test
  void twoSolidsInOnePlaceCountOnce() {
    Box box = new Box(cm(4), cm(4), cm(4));
    Shape twice =
        new Shape(
            List.of(
                Placed.of("one", box, Placement.NONE), Placed.of("other", box, Placement.NONE)));
    assertThat(twice.mesh(cm(1)).area()).isCloseTo(box.area(), within(1e-9));
  }

  @Test
  void turnedOverStandsOnItsTop() {
    Mesh cone = new Cone(cm(10), cm(4), cm(6)).mesh(cm(0.5));
    Mesh over = cone.turnedOver(Angle.ofDegrees(180), Angle.ZERO);
    assertThat(over.bounds().low().z()).isCloseTo(0, within(1e-15));
    assertThat(over.bounds().high().z()).isCloseTo(0.06, within(1e-12));
    assertThat(over.volume()).isCloseTo(cone.volume(), within(1e-15));
    assertThat(over.isClosed()).isTrue();
    // The wide end is now on top.
    assertThat(new Scan(over).contains(new Vec3(0.045, 0, 0.059))).isTrue();
    assertThat(new Scan(over).contains(new Vec3(0.045, 0, 0.001))).isFalse();
  }

  @Test
  void placedAndBackIsTheSamePoint() {
    Placement lean = new Placement(new Vec3(1, 2, 3), Angle.ofDegrees(50), Angle.ofDegrees(200));
    Vec3 point = new Vec3(0.3, -0.4, 0.9);
    assertThat(lean.own(lean.outside(point)).minus(point).norm()).isLessThan(1e-15);
    assertThat(lean.turned(Vec3.UP).angleTo(Vec3.UP).degrees()).isCloseTo(50, within(1e-12));
    Vec3 top = lean.turned(Vec3.UP);
    assertThat(Math.toDegrees(Math.atan2(top.y(), top.x())) + 360).isCloseTo(200, within(1e-9));
  }

  @Test
  void impossibleSolidsAreRefused() {
    assertThatThrownBy(() -> new Tube(cm(3), cm(4), cm(1)))
        .hasMessage("the hole of a tube must be smaller than the tube");
    assertThatThrownBy(() -> new Ball(cm(0))).hasMessageContaining("diameter of a ball");
    assertThatThrownBy(() -> new Lathe(List.of(at(1, 3), at(1, 0)), List.of()))
        .hasMessageContaining("encloses nothing");
    assertThatThrownBy(
            () -> new Lathe(List.of(at(5, 0), at(5, 8)), List.of(at(6, 7), at(2, 2), at(0, 2))))
        .hasMessageContaining("crosses itself");
  }
}
