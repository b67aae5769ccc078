package ringbook.cli;

import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Surface;
import ringbook.ledger.Reckoning;
import ringbook.shots.Scene;
import ringbook.shots.SceneChanges;
import ringbook.shots.SceneDraft;
import ringbook.shots.SceneField;
import ringbook.shots.SceneText;
import ringbook.units.Length;

/** What a plan is made for. */
final class PlanScene {

  /** About so many patches: enough to find a pocket, few enough to plan in seconds. */
  private static final int PATCHES = 1000;

  /** Edges of round parts, as a part of the object's size. */
  private static final double EDGE = 1.0 / 40;

  /** A scene for those who have no course file. Common practice, no source. */
  private static final String[][] USUAL = {
    {"kit.name", "phone main camera"},
    {"kit.sensorWidth", "6.4 mm"},
    {"kit.sensorHeight", "4.8 mm"},
    {"kit.pixelsAcross", "4000 px"},
    {"kit.pixelsDown", "3000 px"},
    {"kit.focalLength", "4.8 mm"},
    {"kit.widest", "f/1.8"},
    {"kit.closestFocus", "8 cm"},
    {"subject.name", "object"},
    {"subject.outline", "round"},
    {"subject.height", "30 cm"},
    {"subject.width", "20 cm"},
    {"subject.surface", "textured"},
    {"place.tableHeight", "74 cm"},
    {"place.lowestLens", "40 cm"},
    {"place.highestLens", "190 cm"},
    {"aim.detail", "1 mm"},
    {"aim.pixelsPerDetail", "3 px"},
    {"aim.fill", "75 %"},
    {"aim.hold", "upright"},
    {"aim.sharpShare", "50 %"},
    {"aim.blurLimit", "3 px"},
    {"aim.diffractionLimit", "3 px"},
    {"aim.elevation", "15°"},
    {"aim.step", "12°"},
    {"aim.stepLimit", "15°"},
    {"aim.incidenceLimit", "60°"},
    {"aim.decay", "18°"}
  };

  private PlanScene() {}

  /** The scene that {@link SceneChanges} start from where there is no course file. */
  static Scene usual() {
    SceneDraft draft = new SceneDraft();
    for (String[] row : USUAL) {
      SceneField field = SceneField.byKey(row[0]).orElseThrow();
      SceneText.set(draft, field, row[1], false)
          .ifPresent(
              fault -> {
                throw new IllegalStateException(fault.message());
              });
    }
    return draft.build();
  }

  /** The object of a scene before its camera. */
  static Seeing seeing(Reckoning reckoning) {
    Scene scene = reckoning.scene();
    double size = Math.max(scene.subject().height().metres(), scene.subject().width().metres());
    Surface surface = Surface.of(scene.standing(new Length(EDGE * size)), PATCHES);
    return new Seeing(scene, surface, reckoning.fNumber("sharp.fNumber"));
  }
}
