package ringbook.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import ringbook.geometry.Shape;
import ringbook.optics.Kit;
import ringbook.shots.Place.Corner;
import ringbook.shots.Place.Obstacle;
import ringbook.shots.Scene;
import ringbook.shots.SceneDraft;
import ringbook.shots.SceneField;
import ringbook.shots.SceneField.NumberField;
import ringbook.shots.SceneField.WordField;
import ringbook.units.Decimal;
import ringbook.units.Length;
import ringbook.units.Numbers;

/**
 * A scene as data: what it states, by key. Numbers are in SI, with all their digits, so that the
 * page has the very same scene.
 */
final class SceneData {

  private static final String OBSTACLES = "obstacles";
  private static final String SHAPE = "shape";

  private SceneData() {}

  /** Writes {@code scene} as an object. */
  static void write(Scene scene, JsonText out) {
    out.object();
    writeFields(SceneDraft.of(scene), "", out);
    out.member("basis", scene.kit().basis().name());
    writeObstacles(scene, out);
    writeShape(scene, out);
    out.endObject();
  }

  private static void writeObstacles(Scene scene, JsonText out) {
    out.name(OBSTACLES).array();
    for (Obstacle obstacle : scene.place().obstacles()) {
      out.object().member("name", obstacle.name()).name("corners").array();
      for (Corner corner : obstacle.corners()) {
        out.value(Numbers.shortest(corner.x().metres()));
        out.value(Numbers.shortest(corner.y().metres()));
      }
      out.endArray().endObject();
    }
    out.endArray();
  }

  /** Writes the kit of {@code scene} alone as an object. */
  static void writeKit(Scene scene, JsonText out) {
    out.object();
    writeFields(SceneDraft.of(scene), "kit.", out);
    out.member("basis", scene.kit().basis().name()).endObject();
  }

  private static void writeFields(SceneDraft draft, String section, JsonText out) {
    for (Map.Entry<String, Double> number : draft.numbers().entrySet()) {
      if (number.getKey().startsWith(section)) {
        out.member(number.getKey(), Numbers.shortest(number.getValue()));
      }
    }
    for (Map.Entry<String, String> word : draft.words().entrySet()) {
      if (word.getKey().startsWith(section)) {
        out.member(word.getKey(), word.getValue());
      }
    }
  }

  /** The scene that {@link #write} wrote. */
  static Scene read(JsonTree data, Reach reach) {
    SceneDraft draft = new SceneDraft().obstacles(obstacles(data));
    shape(data, reach).ifPresent(draft::keepShape);
    return readFields(draft, data).build();
  }

  /** Writes the form of the object; an empty list where it has none but its outline. */
  private static void writeShape(Scene scene, JsonText out) {
    out.name(SHAPE);
    scene
        .subject()
        .shape()
        .filter(ShapeData::isCarried)
        .ifPresentOrElse(shape -> ShapeData.write(shape, out), () -> out.array().endArray());
  }

  private static Optional<Shape> shape(JsonTree data, Reach reach) {
    return data.has(SHAPE) ? reach.shape(data.at(SHAPE)) : Optional.empty();
  }

  private static List<Obstacle> obstacles(JsonTree data) {
    List<Obstacle> obstacles = new ArrayList<>();
    for (JsonTree obstacle : data.at(OBSTACLES).items()) {
      obstacles.add(new Obstacle(obstacle.text("name"), corners(obstacle.at("corners").items())));
    }
    return obstacles;
  }

  /** The kit that {@link #writeKit} wrote, with what else {@code scene} states. */
  static Kit readKit(Scene scene, JsonTree data) {
    return readFields(SceneDraft.withoutKit(scene), data).build().kit();
  }

  /** Writes what {@code changed} states otherwise than {@code base}; empty where it is silent. */
  static void writeChanges(Scene base, Scene changed, JsonText out) {
    Map<String, String> before = stated(SceneDraft.of(base));
    Map<String, String> after = stated(SceneDraft.of(changed));
    out.object();
    for (SceneField field : SceneField.ALL) {
      String now = after.getOrDefault(field.key(), "");
      if (!now.equals(before.getOrDefault(field.key(), ""))) {
        out.member(field.key(), now);
      }
    }
    if (!changed.subject().shape().equals(base.subject().shape())) {
      writeShape(changed, out);
    }
    if (!changed.place().obstacles().equals(base.place().obstacles())) {
      writeObstacles(changed, out);
    }
    out.member("basis", changed.kit().basis().name()).endObject();
  }

  /** The scene that {@link #writeChanges} wrote over the same base. */
  static Scene readChanges(Scene base, JsonTree data, Reach reach) {
    Map<String, String> stated = stated(SceneDraft.of(base));
    data.members().forEach((key, value) -> stated.put(key, value.text()));
    SceneDraft draft =
        new SceneDraft()
            .obstacles(data.has(OBSTACLES) ? obstacles(data) : base.place().obstacles());
    (data.has(SHAPE) ? shape(data, reach) : base.subject().shape()).ifPresent(draft::keepShape);
    for (SceneField field : SceneField.ALL) {
      String now = stated.getOrDefault(field.key(), "");
      if (!now.isEmpty()) {
        state(draft, field, now);
      }
    }
    return draft.basis(Kit.Basis.valueOf(data.text("basis"))).build();
  }

  private static Map<String, String> stated(SceneDraft draft) {
    Map<String, String> stated = new TreeMap<>(draft.words());
    draft.numbers().forEach((key, si) -> stated.put(key, Numbers.shortest(si)));
    return stated;
  }

  private static SceneDraft readFields(SceneDraft draft, JsonTree data) {
    draft.basis(Kit.Basis.valueOf(data.text("basis")));
    for (SceneField field : SceneField.ALL) {
      if (data.has(field.key())) {
        state(draft, field, data.text(field.key()));
      }
    }
    return draft;
  }

  private static void state(SceneDraft draft, SceneField field, String stated) {
    if (field instanceof NumberField number) {
      draft.set(number, number(stated));
    } else {
      draft.set((WordField) field, stated);
    }
  }

  private static List<Corner> corners(List<JsonTree> flat) {
    List<Corner> corners = new ArrayList<>();
    for (int i = 0; i + 1 < flat.size(); i += 2) {
      corners.add(new Corner(length(flat.get(i)), length(flat.get(i + 1))));
    }
    return corners;
  }

  private static Length length(JsonTree metres) {
    return new Length(number(metres.text()));
  }

  static double number(String text) {
    return Decimal.parse(text)
        .orElseThrow(() -> new IllegalArgumentException("'" + text + "' is no number"));
  }
}
