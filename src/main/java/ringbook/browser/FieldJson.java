package ringbook.browser;

import ringbook.plans.FieldSheet;
import ringbook.plans.FieldSheet.Run;
import ringbook.plans.FieldSheet.Stop;
import ringbook.shots.Place.Corner;
import ringbook.shots.Place.Obstacle;
import ringbook.shots.Scene;
import ringbook.shots.Subject;
import ringbook.units.Numbers;

/**
 * A field sheet as JSON: {@code {object, kit, total, lack, seconds, locks, outline, obstacles,
 * runs}}. Everything a person reads is text as printed; {@code x}, {@code y} and {@code corners}
 * are metres in plan, for the drawing, as text.
 */
public final class FieldJson {

  private FieldJson() {}

  /** The text; the same sheet gives the same text. */
  public static String of(FieldSheet sheet) {
    Scene scene = sheet.scene();
    JsonText out = new JsonText().object();
    out.member("object", scene.subject().name()).member("kit", scene.kit().name());
    out.member("total", sheet.total()).member("lack", sheet.lack());
    out.member("seconds", Numbers.shortest(sheet.secondsPerPhoto())).name("locks").array();
    sheet
        .locks()
        .forEach(
            lock ->
                out.object().member("name", lock.name()).member("value", lock.value()).endObject());
    out.endArray();
    room(scene, out);
    out.name("runs").array();
    sheet.runs().forEach(run -> run(run, out));
    return out.endArray().endObject().toString();
  }

  private static void room(Scene scene, JsonText out) {
    Subject subject = scene.subject();
    out.name("outline").object().name("round").value(subject.outline() == Subject.Outline.ROUND);
    out.member("width", metres(subject.width().metres()));
    out.member("depth", metres(subject.depth().metres())).endObject();
    out.name("obstacles").array();
    for (Obstacle obstacle : scene.place().obstacles()) {
      out.array();
      for (Corner corner : obstacle.corners()) {
        out.object().member("x", metres(corner.x().metres()));
        out.member("y", metres(corner.y().metres())).endObject();
      }
      out.endArray();
    }
    out.endArray();
  }

  private static String metres(double metres) {
    return Numbers.fixed(metres, 3);
  }

  private static void run(Run run, JsonText out) {
    out.object().member("name", run.name()).member("why", run.why());
    out.member("height", run.height()).member("floor", run.floor()).member("away", run.away());
    out.member("aim", run.aim()).member("setup", run.setup());
    out.member("repeats", String.valueOf(run.repeats()));
    out.member("photos", String.valueOf(run.photos()));
    out.name("turned").value(run.turned()).member("before", run.before()).name("stops").array();
    run.stops().forEach(stop -> stop(stop, out));
    out.endArray().endObject();
  }

  private static void stop(Stop stop, JsonText out) {
    out.object().member("number", String.valueOf(stop.station().number()));
    out.member("clock", stop.clock()).member("angle", stop.angle()).member("height", stop.height());
    out.member("floor", stop.floor()).member("away", stop.away()).member("tilt", stop.tilt());
    out.member("aim", stop.aim()).member("place", stop.place());
    out.member("way", stop.way()).member("inTheWay", stop.inTheWay());
    out.member("x", metres(stop.station().position().x()));
    out.member("y", metres(stop.station().position().y())).endObject();
  }
}
