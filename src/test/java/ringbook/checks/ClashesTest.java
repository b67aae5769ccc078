package ringbook.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import ringbook.Scenes;
import ringbook.ledger.Outcome;
import ringbook.ledger.Reckoning;

/**
 * Rules a newcomer has heard that seem to contradict each other: for each clash the numbers of the
 * ledger that settle it are known for the demo scene, and they do settle it. The rules are common
 * practice, no source.
 */
final class ClashesTest {

  private static final Reckoning PHONE = Reckoning.of(Scenes.pot());
  private static final Reckoning LENS_CAMERA = Reckoning.of(Scenes.potWithLensCamera());

  private static void known(String... keys) {
    List<String> missing = new ArrayList<>();
    for (String key : keys) {
      for (Reckoning reckoning : List.of(PHONE, LENS_CAMERA)) {
        if (!(reckoning.ledger().find(key).isPresent()
            && reckoning.of(key) instanceof Outcome.Known)) {
          missing.add(key);
        }
      }
    }
    assertThat(missing).isEmpty();
  }

  private static Reckoning with(String... changes) {
    return Reckoning.of(Scenes.with(Scenes.potWithLensCamera(), changes));
  }

  /** The low figure lets two pictures show each spot; matching asks for many. */
  @Test
  void overlap_of_half_or_of_four_fifths() {
    known("strip.imagesPerPoint", "strip.rayAngle", "pair.shared", "pair.alike", "pair.matchable");
    Reckoning half = with("aim.stripOverlap", "50");
    Reckoning much = with("aim.stripOverlap", "80");
    assertThat(half.si("strip.imagesPerPoint")).isEqualTo(2);
    assertThat(much.si("strip.imagesPerPoint")).isEqualTo(5);
    assertThat(much.si("strip.rayAngle")).isLessThan(half.si("strip.rayAngle"));
    // Sharing surface is not yet matching it: the same word for two tasks.
    assertThat(PHONE.si("pair.matchable")).isLessThan(PHONE.si("pair.shared"));
  }

  /** Neighbours are near enough to match; the whole ring is wide enough to be precise. */
  @Test
  void narrow_steps_and_wide_rays() {
    known(
        "ring.realStep",
        "aim.stepLimit",
        "ring.views",
        "pair.matchable",
        "precision.pairDepth",
        "precision.wallDepth",
        "precision.ringAcross");
    assertThat(PHONE.si("ring.realStep")).isLessThanOrEqualTo(PHONE.si("aim.stepLimit"));
    assertThat(PHONE.si("precision.wallDepth")).isLessThan(PHONE.si("precision.pairDepth") / 4);
  }

  /** The window says how far to stop down; where it is empty, standing back opens it. */
  @Test
  void stopping_down_and_diffraction() {
    known("sharp.open", "sharp.closed", "sharp.window", "sharp.balance", "sharp.fNumber");
    Reckoning empty = with("aim.sharpShare", "100", "aim.blurLimit", "1");
    assertThat(empty.yes("sharp.window")).isFalse();
    assertThat(empty.si("sharp.open")).isGreaterThan(empty.si("sharp.closed"));
    assertThat(empty.si("sharp.standBack")).isGreaterThan(empty.si("distance.standoff"));
  }

  /** One focus holds a whole ring sharp; another focus has another focal length in pixels. */
  @Test
  void locked_focus_and_close_work() {
    known(
        "sharp.focus",
        "sharp.nearLimit",
        "sharp.farLimit",
        "sharp.near",
        "sharp.far",
        "sharp.focalPixels",
        "kit.focalPixels");
    assertThat(LENS_CAMERA.si("sharp.nearLimit"))
        .isLessThanOrEqualTo(LENS_CAMERA.si("sharp.near") * (1 + 1e-9));
    assertThat(LENS_CAMERA.si("sharp.farLimit"))
        .isGreaterThanOrEqualTo(LENS_CAMERA.si("sharp.far") * (1 - 1e-9));
    Reckoning closer = with("subject.width", "15", "subject.height", "18");
    assertThat(closer.si("sharp.focalPixels") - LENS_CAMERA.si("sharp.focalPixels"))
        .as("pixels the focal length grows by")
        .isGreaterThan(1);
  }

  /** One bar sets the scale; a difference that can raise an alarm takes two. */
  @Test
  void one_scale_bar() {
    known("scale.oneBar", "scale.barsNeeded", "scale.carried", "scale.enough", "scale.alarm");
    assertThat(PHONE.si("scale.barsNeeded")).isEqualTo(1);
    assertThat(PHONE.yes("scale.enough")).isTrue();
    // What two good bars may differ by is more than one bar is off: a single one never shows it.
    assertThat(PHONE.si("scale.alarm")).isGreaterThan(3 * PHONE.si("scale.oneBar"));
  }

  /** A wall is walked along, a vase walked round: its own counts, and the same final checks. */
  @Test
  void rules_for_buildings() {
    known(
        "ring.closing",
        "ring.photos",
        "rings.photos",
        "rings.topReachable",
        "job.photos",
        "strip.photos",
        "scale.carried",
        "precision.enough");
    assertThat(PHONE.si("ring.photos")).isGreaterThan(PHONE.si("strip.photos"));
    assertThat(PHONE.si("ring.closing")).as("views that show all round").isGreaterThan(2);
  }
}
