package ringbook.assess.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringbook.Scenes;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.PairGraph;
import ringbook.assess.coverage.PatchClass;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.View;
import ringbook.assess.coverage.Viewpoint;
import ringbook.geometry.Cylinder;
import ringbook.geometry.Plate;
import ringbook.geometry.Vec3;
import ringbook.shots.Leg.Setup;
import ringbook.shots.Pose;
import ringbook.shots.Scene;
import ringbook.shots.ShotPlan;
import ringbook.shots.Station;
import ringbook.shots.Strip;
import ringbook.units.Length;

/** What the trade knows about sets of photographs. All of it: common practice, no source. */
final class TradeFactsTest {

  private static final Scene POT = Scenes.pot();
  private static final Cylinder DRUM =
      new Cylinder(Length.ofCentimetres(30), Length.ofCentimetres(36));

  private static Coverage of(Seeing seeing, ShotPlan plan) {
    List<View> views = new ArrayList<>();
    plan.shots().forEach(shot -> views.add(seeing.look(Viewpoint.of(shot))));
    return Coverage.of(seeing, views);
  }

  /** Steps of 15° and about 30 a circuit reconstruct; 5 a circuit fail. */
  @ParameterizedTest
  @CsvSource({"5, 5", "8, 8", "24, 1", "30, 1", "36, 1"})
  void photographs_in_one_ring(int photos, int pieces) {
    Plans plans = new Plans(POT).ring(15, photos);
    Coverage coverage = of(plans.seeing(DRUM, 1500), plans.plan());
    PairGraph graph = coverage.graph();
    assertThat(graph.pieces())
        .as(
            "%d photographs: neighbours share %.0f %%, can match %.0f %%, needed %.0f %%",
            photos,
            100 * coverage.pair(0, 1).shared(),
            100 * coverage.pair(0, 1).matchable(),
            100 * graph.limit())
        .hasSize(pieces);
  }

  /** Rings 15° apart with a low one cover the sides of a free-standing object. */
  @Test
  void rings_fifteen_degrees_apart_cover_the_sides() {
    Plans plans = new Plans(POT).ring(-15, 30).ring(0, 30).ring(15, 30);
    Seeing seeing = plans.seeing(DRUM, 1500);
    Coverage coverage = of(seeing, plans.plan());
    double side = 0;
    double well = 0;
    for (int i = 0; i < seeing.surface().count(); i++) {
      if (Math.abs(seeing.surface().patches().normalZ(i)) < 0.1) {
        double area = seeing.surface().patches().area(i);
        side += area;
        well += coverage.patch(i).patchClass() == PatchClass.WELL ? area : 0;
      }
    }
    assertThat(well / side).as("share of the sides that is seen well").isGreaterThan(0.98);
    assertThat(coverage.graph().pieces()).as("rings tied to each other").hasSize(1);
    assertThat(coverage.graph().splitters()).as("more than a ring's two").hasSizeGreaterThan(2);
  }

  /**
   * Rows by thirds, crossed and slanted to either side, cover a hole through a plate as deep as
   * half its width: one row square on sees none of its wall well.
   */
  @Test
  void strips_by_thirds_cover_a_through_hole() {
    Scene scene =
        Scenes.with(
            POT,
            "subject.height",
            "5",
            "subject.width",
            "60",
            "place.highestLens",
            "250",
            "aim.detail",
            "3");
    Plate plate =
        new Plate(
            Length.ofCentimetres(60),
            Length.ofCentimetres(60),
            Length.ofCentimetres(5),
            List.of(new Plate.Hole(Length.ZERO, Length.ZERO, Length.ofCentimetres(10))),
            List.of());
    Seeing seeing = new Plans(scene).seeing(plate, 2500);
    List<View> square = new ArrayList<>();
    List<View> all = new ArrayList<>();
    for (Vec3 along : List.of(new Vec3(1, 0, 0), new Vec3(0, 1, 0))) {
      square.addAll(row(seeing, along, Vec3.UP));
    }
    all.addAll(square);
    for (Vec3 along : List.of(new Vec3(1, 0, 0), new Vec3(0, 1, 0))) {
      Vec3 across = along.cross(Vec3.UP);
      all.addAll(row(seeing, along, across.plus(Vec3.UP).unit()));
      all.addAll(row(seeing, along, Vec3.UP.minus(across).unit()));
    }
    double before = wall(seeing, Coverage.of(seeing, square));
    double after = wall(seeing, Coverage.of(seeing, all));
    assertThat(after)
        .as("wall of the hole seen well: square on %.2f, slanted too %.2f", before, after)
        .isGreaterThan(0.85);
    assertThat(before).isLessThan(0.7);
  }

  private static List<View> row(Seeing seeing, Vec3 along, Vec3 outwards) {
    double standoff = 0.6;
    Strip strip = new Strip(Length.ofCentimetres(45), 2.0 / 3, Length.ofCentimetres(60));
    Strip.Row row =
        new Strip.Row(
            seeing.middle(), along, outwards, new Length(standoff), (int) strip.fewest() + 2);
    Setup setup = new Setup(Pose.STANDING, seeing.scene().aim().hold(), new Length(standoff), 1);
    List<View> views = new ArrayList<>();
    for (Station station : strip.stations(row)) {
      views.add(seeing.look(new Viewpoint(station, setup)));
    }
    return views;
  }

  private static double wall(Seeing seeing, Coverage coverage) {
    double all = 0;
    double well = 0;
    for (int i = 0; i < seeing.surface().count(); i++) {
      String part = seeing.surface().patches().parts().get(seeing.surface().patches().part(i));
      if (part.startsWith("hole")) {
        double area = seeing.surface().patches().area(i);
        all += area;
        well += coverage.patch(i).patchClass() == PatchClass.WELL ? area : 0;
      }
    }
    return well / all;
  }
}
