package ringbook.shots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ringbook.Scenes;
import ringbook.course.CourseFileReader;
import ringbook.geometry.Bounds;
import ringbook.geometry.Mesh;
import ringbook.geometry.Patches;
import ringbook.geometry.RayTree;
import ringbook.geometry.Vec3;
import ringbook.problems.Problem;
import ringbook.problems.Problems;
import ringbook.units.Length;

/** From the course file to the surface that stands on the table. */
final class SubjectShapeTest {

  private static String demo() throws IOException {
    return Files.readString(Path.of("lessons/course.yaml"));
  }

  /** The demo with another shape; text below 'shape:' up to the place goes. */
  private static String with(String shape) throws IOException {
    String text = demo();
    int from = text.indexOf("  shape:");
    int to = text.indexOf("# Plan positions");
    return text.substring(0, from) + shape + "\n" + text.substring(to);
  }

  private static Scene scene(String text) {
    Problems problems = new Problems();
    var course = CourseFileReader.read("lessons/course.yaml", text, problems);
    assertThat(problems.sorted()).isEmpty();
    return course.orElseThrow().scene();
  }

  private static List<String> faults(String text) {
    Problems problems = new Problems();
    assertThat(CourseFileReader.read("course.yaml", text, problems)).isEmpty();
    return problems.sorted().stream().map(Problem::toString).toList();
  }

  @Test
  void the_pot_of_the_demo_stands_on_the_table_with_pockets_and_a_drain_hole() throws IOException {
    Mesh pot = scene(demo()).standing(Length.ofMillimetres(6));
    Bounds bounds = pot.bounds();
    assertThat(bounds.low().z()).isCloseTo(0.74, within(1e-12));
    assertThat(bounds.high().z()).isCloseTo(1.10, within(1e-12));
    assertThat(bounds.size().x()).isCloseTo(0.30, within(1e-12));
    assertThat(bounds.size().y()).isCloseTo(0.30, within(1e-12));
    assertThat(pot.parts())
        .contains("side", "rim", "inside", "floor", "hole", "base", "pocket 1", "pocket 6");
    RayTree tree = RayTree.of(pot);
    // Straight up through the drain hole, and beside it.
    assertThat(tree.blocked(new Vec3(0, 0, 0.5), new Vec3(0, 0, 2))).isFalse();
    assertThat(tree.blocked(new Vec3(0.03, 0, 0.5), new Vec3(0.03, 0, 2))).isTrue();
    // Into pocket 1 along its axis, and through the wall between two pockets.
    Vec3 inPocket = new Vec3(0.09, 0.052, 0.74 + 0.208);
    Vec3 along =
        Vec3.towards(ringbook.units.Angle.ofDegrees(30), ringbook.units.Angle.ofDegrees(40));
    assertThat(tree.blocked(inPocket, inPocket.plus(along.times(0.3)))).isFalse();
    assertThat(tree.blocked(new Vec3(0, 0, 0.96), new Vec3(1, 0, 0.96))).isTrue();
    // A wall of about 1.2 cm on some 0.3 m² of outside.
    assertThat(pot.volume() * 1e6).isBetween(3000.0, 6000.0);
  }

  @Test
  void every_pocket_gets_its_patches() throws IOException {
    Mesh pot = scene(demo()).standing(Length.ofMillimetres(6));
    Patches patches = Patches.of(pot, 4000);
    int[] count = new int[patches.parts().size()];
    for (int i = 0; i < patches.count(); i++) {
      count[patches.part(i)]++;
    }
    int first = count[patches.parts().indexOf("pocket 1")];
    assertThat(first).isGreaterThan(10);
    assertThat(count[patches.parts().indexOf("pocket 2")]).isBetween(first - 3, first + 3);
    assertThat(patches.spread(0.95)).isLessThan(1.4);
  }

  @Test
  void without_a_shape_it_is_a_cylinder_of_the_stated_sizes() {
    Mesh mesh = Scenes.pot().subject().mesh(Length.ofCentimetres(1));
    assertThat(mesh.isClosed()).isTrue();
    assertThat(mesh.volume()).isCloseTo(Math.PI * 0.15 * 0.15 * 0.36, within(1e-3 * mesh.volume()));
  }

  @Test
  void another_size_stretches_the_shape_and_another_object_drops_it() throws IOException {
    Scene pot = scene(demo());
    Scene tall = SceneChanges.apply(pot, "subject.height=54 cm").scene().orElseThrow();
    assertThat(tall.subject().mesh(Length.ofCentimetres(1)).bounds().size().z())
        .isCloseTo(0.54, within(1e-12));
    assertThat(tall.subject().shape()).isPresent();
    Scene bell = SceneChanges.apply(pot, "subject.name=brass bell").scene().orElseThrow();
    assertThat(bell.subject().shape()).isEmpty();
  }

  @Test
  void a_shape_stretched_to_a_small_disc_gets_no_more_triangles_than_as_it_was_drawn()
      throws IOException {
    Scene pot = scene(demo());
    Subject drawn = pot.subject();
    Subject disc =
        SceneChanges.apply(pot, "subject.height = 3 mm, subject.width = 25 mm")
            .scene()
            .orElseThrow()
            .subject();
    int asDrawn = drawn.mesh(drawn.height().plus(drawn.width()).times(1.0 / 40)).triangles();
    assertThat(disc.mesh(disc.height().plus(disc.width()).times(1.0 / 40)).triangles())
        .isLessThan(2 * asDrawn);
  }

  @Test
  void faults_of_a_shape_are_told_where_they_stand() throws IOException {
    String shape =
        """
          shape:
            - solid: cilinder
            - solid: cylinder
              diameter: 5 kg
              hight: 3 cm
            - solid: tube
              outer diameter: 3 cm
              inner diameter: 5 cm
              height: 3 cm
            - solid: turned
              outside: [[1 cm]]
        """;
    List<String> faults = faults(with(shape));
    assertThat(faults)
        .anySatisfy(f -> assertThat(f).contains("no solid 'cilinder'").contains("cylinder"))
        .anySatisfy(f -> assertThat(f).contains("'kg' is not a unit"))
        .anySatisfy(f -> assertThat(f).contains("'height' is missing"))
        .anySatisfy(f -> assertThat(f).contains("no field 'hight'"))
        .anySatisfy(f -> assertThat(f).contains("hole of a tube must be smaller"))
        .anySatisfy(f -> assertThat(f).contains("2 lengths were expected"));
    assertThat(faults).allSatisfy(f -> assertThat(f).matches("(?s)course.yaml:\\d+:\\d+: .*"));
  }

  @Test
  void millimetres_taken_for_metres_are_told_with_both_numbers(@TempDir Path folder)
      throws IOException {
    String shape = "  shape: [{solid: cylinder, diameter: 300 m, height: 360 m}]";
    assertThat(faults(with(shape)))
        .singleElement()
        .satisfies(
            f ->
                assertThat(f)
                    .contains("the shape is 360 m high, but 'height' says 36 cm")
                    .contains("millimetres and metres are mixed up"));
  }
}
