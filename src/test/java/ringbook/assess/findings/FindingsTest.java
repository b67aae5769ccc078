package ringbook.assess.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import ringbook.Scenes;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.PatchClass;
import ringbook.assess.coverage.View;
import ringbook.assess.coverage.Viewpoint;
import ringbook.geometry.Cylinder;
import ringbook.geometry.Lathe;
import ringbook.geometry.Solid;
import ringbook.geometry.Tube;
import ringbook.shots.Place;
import ringbook.shots.Place.Corner;
import ringbook.shots.Place.Obstacle;
import ringbook.shots.Pose;
import ringbook.shots.Scene;
import ringbook.units.Length;

/** Faults that learners make are found, named, and mended by what is proposed. */
final class FindingsTest {

  private static final Scene POT = Scenes.pot();
  private static final Solid DRUM =
      new Cylinder(Length.ofCentimetres(30), Length.ofCentimetres(36));

  /** A cup whose foot is narrower than its belly, so that the low side leans over the table. */
  private static final Solid CUP =
      new Lathe(List.of(at(0, 0), at(7, 0), at(15, 22), at(15, 36), at(0, 36)), List.of());

  private static Lathe.Point at(double radius, double height) {
    return new Lathe.Point(Length.ofCentimetres(radius), Length.ofCentimetres(height));
  }

  private static <T extends Finding> T only(Assessment assessment, Class<T> kind) {
    List<T> found = new ArrayList<>();
    for (Finding finding : assessment.findings()) {
      if (kind.isInstance(finding)) {
        found.add(kind.cast(finding));
      }
    }
    assertThat(found).as(Plans.text(assessment)).isNotEmpty();
    return found.get(0);
  }

  /** The same assessment with a mend's photographs taken too. */
  private static Coverage mended(Assessment assessment, Finding finding) {
    List<View> views = new ArrayList<>(assessment.coverage().views());
    for (Viewpoint more : finding.cheapest().orElseThrow().stations()) {
      views.add(assessment.coverage().seeing().look(more));
    }
    return Coverage.of(assessment.coverage().seeing(), views);
  }

  @Test
  void five_photographs_fall_apart_and_about_24_do_not() {
    Assessment five = new Plans(POT).ring(15, 5).assess(DRUM);
    LegFinding.FallsApart finding = only(five, LegFinding.FallsApart.class);
    assertThat(five.findings().get(0)).as("gravest first").isSameAs(finding);
    assertThat(finding.pieces()).isEqualTo(5);
    assertThat(finding.text()).contains("Ring A: 5 photographs, 72° apart");
    Mend mend = finding.cheapest().orElseThrow();
    assertThat(5 + mend.photographs()).as(mend.words()).isBetween(20, 26);
    assertThat(mended(five, finding).graph().pieces()).hasSize(1);
  }

  @Test
  void a_gap_of_sixty_degrees_is_named_and_closed() {
    Assessment gap = new Plans(POT).ring(0, 30).without(140, 200).assess(DRUM);
    LegFinding.Gap finding = only(gap, LegFinding.Gap.class);
    assertThat(finding.text())
        .contains("Ring A between 138° and 210° (left on the ring plan)")
        .contains("5 more photographs between 138° and 210°");
    assertThat(finding.share()).isGreaterThan(0.01);
    Mend mend = finding.cheapest().orElseThrow();
    assertThat(mend.photographs()).isEqualTo(5);
    Coverage after = mended(gap, finding);
    double before = gap.coverage().share(PatchClass.Group.WELL);
    assertThat(after.share(PatchClass.Group.WELL) - before)
        .as("the share it promises")
        .isGreaterThan(0.6 * finding.share());
    assertThat(after.graph().splitters()).as("closed, it splits at two").hasSizeGreaterThan(1);
    assertThat(gap.coverage().graph().splitters()).as("open, it splits at one").hasSize(1);
  }

  /** Every mend that is named takes the weakness away when its photographs are taken. */
  @Test
  void a_set_that_hangs_on_single_photographs_is_named_and_mended() {
    Assessment open = new Plans(POT).ring(0, 24).without(90, 220).assess(DRUM);
    SetFinding.HangsOn finding = only(open, SetFinding.HangsOn.class);
    assertThat(finding.photographs()).hasSameSizeAs(open.coverage().graph().cuts());
    assertThat(finding.text()).as(Plans.text(open)).contains("ose ring A between");
    assertThat(finding.mends()).as(finding.text()).hasSize(2);
    for (Mend mend : finding.mends()) {
      List<View> views = new ArrayList<>(open.coverage().views());
      for (Viewpoint more : mend.stations()) {
        views.add(open.coverage().seeing().look(more));
      }
      assertThat(Coverage.of(open.coverage().seeing(), views).graph().cuts())
          .as(mend.words())
          .isEmpty();
    }
  }

  @Test
  void a_bench_in_the_way_is_named_and_moved() {
    List<Corner> corners = new ArrayList<>();
    for (double[] xy : new double[][] {{0.42, -0.28}, {0.9, -0.28}, {0.9, 0.28}, {0.42, 0.28}}) {
      corners.add(new Corner(new Length(xy[0]), new Length(xy[1])));
    }
    Place old = POT.place();
    Place place =
        new Place(
            old.tableHeight(),
            old.lowestLens(),
            old.highestLens(),
            List.of(new Obstacle("workbench", corners)),
            old.details());
    Scene scene = new Scene(POT.kit(), POT.subject(), place, POT.aim());
    Assessment blocked = new Plans(scene).ring(0, 30).assess(DRUM);
    LegFinding.Gap finding = only(blocked, LegFinding.Gap.class);
    assertThat(finding.by()).containsExactly("workbench");
    assertThat(finding.blocked()).isNotEmpty();
    assertThat(finding.text()).contains("behind workbench").contains("move the object or the work");
    assertThat(only(blocked, LegFinding.Blind.class).by()).containsExactly("workbench");
  }

  @Test
  void a_forgotten_low_ring_shows_in_the_band_near_the_table() {
    Assessment high = new Plans(POT).ring(30, 30).ring(45, 30).assess(CUP);
    PlaceFinding.Unseen band = only(high, PlaceFinding.Unseen.class);
    assertThat(band.where()).startsWith("side, all round, 0\u00a0cm to ");
    assertThat(band.region().main()).isEqualTo(PatchClass.UNSEEN_SLANTED);
    Mend mend = band.cheapest().orElseThrow();
    double lens = mend.stations().get(0).station().position().z();
    assertThat(lens).as(mend.words()).isLessThan(0.92);
    assertThat(mend.mended()).as(mend.words()).isGreaterThan(0.4);
  }

  @Test
  void a_forgotten_hole_is_named_and_looked_into() {
    Tube tube =
        new Tube(Length.ofCentimetres(30), Length.ofCentimetres(22), Length.ofCentimetres(15));
    Assessment outside = new Plans(POT).ring(0, 30).ring(10, 30).assess(tube);
    PlaceFinding.Unseen hole = null;
    for (Finding finding : outside.findings()) {
      boolean unseen = finding instanceof PlaceFinding.Unseen;
      hole = unseen && finding.where().startsWith("hole") ? (PlaceFinding.Unseen) finding : hole;
    }
    assertThat(hole).as(Plans.text(outside)).isNotNull();
    Mend mend = hole.cheapest().orElseThrow();
    assertThat(mend.mended()).as(mend.words()).isGreaterThan(0.5);
    assertThat(mend.stations().get(0).station().position().z()).isGreaterThan(0.74 + 0.15);
  }

  @Test
  void the_underside_is_a_note_with_one_pose_and_a_hole_with_two() {
    Plans rings = new Plans(POT).ring(0, 30).ring(12, 30);
    PlaceFinding.NeedsPose note = only(rings.assess(DRUM), PlaceFinding.NeedsPose.class);
    assertThat(note.gravity()).isEqualTo(Gravity.NOTE);
    assertThat(note.text())
        .contains("The underside")
        .contains("cannot be seen in this pose: second pose needed")
        .contains("turn the object over");
    Scene two = Scenes.with(POT, "aim.poses", "2");
    Assessment wanted = new Plans(two).ring(0, 30).ring(12, 30).assess(DRUM);
    assertThat(only(wanted, PlaceFinding.NeedsPose.class).gravity()).isEqualTo(Gravity.HOLE);
  }

  @Test
  void wrong_focus_is_found_and_not_taken_for_anything_else() {
    Plans rings = new Plans(POT).ring(0, 30, Pose.STANDING, 0.6).ring(12, 30, Pose.STANDING, 0.6);
    Assessment soft = rings.assess(DRUM);
    LegFinding.OutOfFocus finding = only(soft, LegFinding.OutOfFocus.class);
    assertThat(finding.soft()).isGreaterThan(0.9);
    double focus = finding.cheapest().orElseThrow().stations().get(0).setup().focus().metres();
    assertThat(focus).as(finding.text()).isBetween(0.36, 0.55);
    assertThat(soft.findings())
        .as(Plans.text(soft))
        .noneMatch(f -> f instanceof LegFinding.FallsApart || f instanceof SetFinding.NotTied);
  }

  @Test
  void too_coarse_says_where_to_stand() {
    Scene fine = Scenes.with(POT, "aim.detail", "0.3");
    Assessment coarse = new Plans(fine).ring(0, 30).ring(12, 30).assess(DRUM);
    SetFinding.TooCoarse finding = only(coarse, SetFinding.TooCoarse.class);
    assertThat(finding.shown().millimetres()).isGreaterThan(0.3);
    assertThat(finding.cheapest()).isPresent();
  }

  @Test
  void a_second_pose_that_shares_nothing_is_not_tied() {
    Scene two = Scenes.with(POT, "aim.poses", "2");
    Plans plans = new Plans(two).ring(45, 30).ring(45, 30, Pose.TURNED_OVER, 1);
    Assessment apart = plans.assess(DRUM);
    SetFinding.NotTied finding = only(apart, SetFinding.NotTied.class);
    assertThat(finding.poses()).isTrue();
    assertThat(finding.text()).contains("the second pose is not tied to the first");
  }

  @Test
  void findings_come_the_gravest_first() {
    Assessment assessment = new Plans(POT).ring(15, 5).assess(CUP);
    List<Gravity> gravities = new ArrayList<>();
    assessment.findings().forEach(f -> gravities.add(f.gravity()));
    assertThat(gravities).isSorted();
  }
}
