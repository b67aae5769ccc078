package ringbook.course.values;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringbook.optics.Kit;
import ringbook.problems.Nearest;
import ringbook.shots.Scene;
import ringbook.shots.SceneChanges;
import ringbook.shots.SceneDraft.Fault;

/**
 * Changes to a scene as a lesson writes them: {@code aim.step = 72°, subject.height = 20 cm}, or
 * {@code kit = name} for another kit of the course.
 */
record SceneChange(Map<String, Kit> kits) {

  Scene apply(Scene scene, String changes) throws ExpressionFault {
    Scene changed = scene;
    List<String> rest = new ArrayList<>();
    for (String change : changes.split(",", -1)) {
      int sign = change.indexOf('=');
      if (sign >= 0 && change.substring(0, sign).strip().equals("kit")) {
        changed = withKit(changed, change.substring(sign + 1).strip());
      } else {
        rest.add(change);
      }
    }
    if (rest.isEmpty()) {
      return changed;
    }
    SceneChanges.Result result = SceneChanges.apply(changed, String.join(",", rest));
    for (Fault fault : result.faults()) {
      throw ExpressionFault.of(fault.message(), fault.help(), "\"" + changes);
    }
    return result.scene().orElseThrow();
  }

  private Scene withKit(Scene scene, String name) throws ExpressionFault {
    Kit kit = kits.get(name);
    if (kit == null) {
      throw ExpressionFault.of(
          "the course has no other kit '" + name + "'", Nearest.help(name, kits.keySet()), name);
    }
    return new Scene(kit, scene.subject(), scene.place(), scene.aim());
  }
}
