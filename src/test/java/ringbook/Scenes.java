package ringbook;

import java.util.SplittableRandom;
import java.util.stream.LongStream;
import ringbook.shots.Scene;
import ringbook.shots.SceneDraft;
import ringbook.shots.SceneField;
import ringbook.shots.SceneField.NumberField;
import ringbook.shots.SceneField.WordField;
import ringbook.units.Decimal;

/** Scenes for tests: the demo's two kits with the pot, and seeded random ones. */
public final class Scenes {

  private static final String[][] POT = {
    {"kit.name", "phone main camera"},
    {"kit.sensorWidth", "6.4"},
    {"kit.sensorHeight", "4.8"},
    {"kit.pixelsAcross", "4000"},
    {"kit.pixelsDown", "3000"},
    {"kit.focalLength", "4.8"},
    {"kit.widest", "1.8"},
    {"kit.closestFocus", "8"},
    {"subject.name", "terracotta strawberry pot"},
    {"subject.outline", "round"},
    {"subject.height", "36"},
    {"subject.width", "30"},
    {"subject.surface", "textured"},
    {"place.tableHeight", "74"},
    {"place.lowestLens", "40"},
    {"place.highestLens", "190"},
    {"aim.detail", "1"},
    {"aim.pixelsPerDetail", "3"},
    {"aim.fill", "75"},
    {"aim.hold", "upright"},
    {"aim.sharpShare", "50"},
    {"aim.blurLimit", "3"},
    {"aim.diffractionLimit", "3"},
    {"aim.elevation", "15"},
    {"aim.step", "12"},
    {"aim.stepLimit", "15"},
    {"aim.incidenceLimit", "60"},
    {"aim.decay", "18"}
  };

  private Scenes() {}

  /** The strawberry pot before the phone camera. */
  public static Scene pot() {
    return potDraft().build();
  }

  /** The strawberry pot before the camera with interchangeable lens. */
  public static Scene potWithLensCamera() {
    SceneDraft draft = potDraft();
    set(draft, "kit.name", "camera with interchangeable lens");
    set(draft, "kit.sensorWidth", "23.5");
    set(draft, "kit.sensorHeight", "15.6");
    set(draft, "kit.pixelsAcross", "6000");
    set(draft, "kit.pixelsDown", "4000");
    set(draft, "kit.focalLength", "35");
    set(draft, "kit.widest", "2");
    set(draft, "kit.narrowest", "16");
    set(draft, "kit.closestFocus", "30");
    return draft.build();
  }

  /** The pot with its cavity stated: open at the top. */
  public static Scene potWithHole() {
    return with(
        pot(), "subject.holeDiameter", "23", "subject.holeDepth", "34", "subject.holeTilt", "90");
  }

  /**
   * {@code scene} with some fields changed: key, number in the field's unit (or word), and so on.
   */
  public static Scene with(Scene scene, String... keysAndValues) {
    SceneDraft draft = SceneDraft.of(scene);
    for (int i = 0; i < keysAndValues.length; i += 2) {
      SceneField field = SceneField.byKey(keysAndValues[i]).orElseThrow();
      if (field instanceof NumberField number) {
        double written = Decimal.parse(keysAndValues[i + 1]).orElseThrow();
        draft.change(number, number.unit().toSi(written));
      } else {
        draft.set((WordField) field, keysAndValues[i + 1]);
      }
    }
    return draft.build();
  }

  /**
   * A scene drawn at random: every number field anywhere in its range, evenly by size where it
   * spans more than two powers of ten. Draws that contradict themselves are drawn again.
   */
  public static Scene random(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    while (true) {
      SceneDraft draft = new SceneDraft();
      for (SceneField field : SceneField.ALL) {
        if (field instanceof NumberField number) {
          if (!number.key().equals("kit.equivalent") && !number.key().equals("subject.depth")) {
            draft.set(number, number.unit().toSi(draw(random, number.low(), number.high())));
          }
        } else if (field instanceof WordField word) {
          draft.set(
              word,
              word.words().isEmpty()
                  ? "thing"
                  : word.words().get(random.nextInt(word.words().size())));
        }
      }
      if (draft.faults().isEmpty()) {
        return draft.build();
      }
    }
  }

  /** Seeds for properties: {@code -Dseed=17} repeats one, {@code -Dseeds=5000} runs more. */
  public static LongStream seeds() {
    return seeds(200);
  }

  /** The same with another number of seeds where none is asked for. */
  public static LongStream seeds(int usual) {
    Long one = Long.getLong("seed");
    return one != null ? LongStream.of(one) : LongStream.range(0, Long.getLong("seeds", usual));
  }

  private static double draw(SplittableRandom random, double low, double high) {
    if (low > 0 && high / low > 100) {
      return low * Math.pow(high / low, random.nextDouble());
    }
    return low + (high - low) * random.nextDouble();
  }

  private static SceneDraft potDraft() {
    SceneDraft draft = new SceneDraft();
    for (String[] row : POT) {
      set(draft, row[0], row[1]);
    }
    return draft;
  }

  private static void set(SceneDraft draft, String key, String written) {
    SceneField field = SceneField.byKey(key).orElseThrow();
    if (field instanceof NumberField number) {
      draft.set(number, number.unit().toSi(Decimal.parse(written).orElseThrow()));
    } else {
      draft.set((WordField) field, written);
    }
  }
}
