package ringbook.browser;

import java.util.LinkedHashMap;
import java.util.Map;
import ringbook.optics.Kit;
import ringbook.shots.Scene;

/**
 * What the pages of one course share: its scene and the kits a reader may take up by name.
 *
 * @param title its title, from which the variants of exercises are drawn
 * @param scene the course's own scene
 * @param kits further kits, by name
 */
record LiveCourse(String title, Scene scene, Map<String, Kit> kits) {

  /**
   * The course that {@code data} describes.
   *
   * @throws IllegalArgumentException if it is not what {@link CourseData} writes
   */
  static LiveCourse read(String data, Reach reach) {
    JsonTree tree = JsonTree.read(data);
    Scene scene = SceneData.read(tree.at("scene"), reach);
    Map<String, Kit> kits = new LinkedHashMap<>();
    tree.at("kits").members().forEach((name, kit) -> kits.put(name, SceneData.readKit(scene, kit)));
    return new LiveCourse(tree.text("title"), scene, kits);
  }
}
