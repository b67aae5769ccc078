package ringbook.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringbook.units.Length;

/** The surface in patches: how many, how alike, and where. */
final class PatchesTest {

  private static Length cm(double number) {
    return Length.ofCentimetres(number);
  }

  private static List<Solid> solids() {
    return List.of(
        new Ball(cm(20)),
        new Box(cm(30), cm(20), cm(10)),
        new Torus(cm(20), cm(6)),
        new Tube(cm(20), cm(10), cm(15)),
        new Cone(cm(20), cm(0), cm(30)));
  }

  @Test
  void areasAreNearlyAlikeHoweverTheTrianglesLie() {
    for (Solid solid : solids()) {
      for (double edge : new double[] {0.3, 1, 4}) {
        Mesh mesh = solid.mesh(cm(edge));
        Patches patches = Patches.of(mesh, 2000);
        assertThat(patches.count()).isBetween(1990, 2010);
        assertThat(patches.area()).isCloseTo(mesh.area(), within(1e-12));
        assertThat(patches.spread(0.95)).as("%s at %s cm", solid, edge).isLessThan(1.35);
        assertThat(patches.spread(1)).as("%s at %s cm", solid, edge).isLessThan(2);
      }
    }
  }

  @Test
  void pointsLieOnTheSurfaceAndNormalsPointOut() {
    Patches patches = Patches.of(new Ball(cm(20)).mesh(cm(0.5)), 3000);
    Vec3 middle = new Vec3(0, 0, 0.1);
    for (int i = 0; i < patches.count(); i++) {
      Vec3 out = patches.point(i).minus(middle);
      assertThat(out.norm()).isBetween(0.0998, 0.1);
      assertThat(out.angleTo(patches.normal(i)).degrees()).isLessThan(2.5);
      assertThat(patches.normal(i).norm()).isCloseTo(1, within(1e-12));
    }
  }

  /** A patch is compact: no point of the surface is farther from a patch than a few patch sizes. */
  @Test
  void patchesCoverTheSurfaceEvenly() {
    Mesh mesh = new Torus(cm(20), cm(6)).mesh(cm(0.3));
    Patches patches = Patches.of(mesh, 1500);
    double size = Math.sqrt(mesh.area() / patches.count());
    for (int t = 0; t < mesh.triangles(); t += 7) {
      Vec3 p = mesh.point(mesh.corner(t, 0));
      double nearest = Double.POSITIVE_INFINITY;
      for (int i = 0; i < patches.count(); i++) {
        nearest = Math.min(nearest, patches.point(i).minus(p).norm());
      }
      assertThat(nearest).isLessThan(1.6 * size);
    }
  }

  @Test
  void everyPartHasItsShare() {
    Patches patches = Patches.of(new Box(cm(30), cm(20), cm(1)).mesh(cm(2)), 500);
    double[] area = new double[patches.parts().size()];
    for (int i = 0; i < patches.count(); i++) {
      area[patches.part(i)] += patches.area(i);
    }
    assertThat(area[patches.parts().indexOf("top")]).isCloseTo(0.06, within(1e-9));
    assertThat(area[patches.parts().indexOf("left")]).isCloseTo(0.002, within(1e-9));
  }

  @Test
  void oneWantedGivesOneForEachPart() {
    assertThat(Patches.of(new Box(cm(3), cm(2), cm(1)).mesh(cm(2)), 1).count()).isEqualTo(6);
  }
}
