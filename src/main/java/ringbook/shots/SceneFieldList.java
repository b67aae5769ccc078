package ringbook.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import ringbook.optics.Lens;
import ringbook.optics.Sensor;
import ringbook.shots.SceneField.NumberField;
import ringbook.shots.SceneField.WordField;
import ringbook.shots.Subject.Outline;
import ringbook.shots.Subject.Surface;
import ringbook.units.Lengths;
import ringbook.units.Unit;
import ringbook.units.Words;

/** The list of all scene fields, in the order of the course file. */
final class SceneFieldList {

  private SceneFieldList() {}

  static List<SceneField> all() {
    List<SceneField> all = new ArrayList<>();
    addKit(all);
    all.addAll(SceneDetails.of("kit"));
    addSubject(all);
    all.addAll(SceneDetails.of("subject"));
    addPlace(all);
    all.addAll(SceneDetails.of("place"));
    addAim(all);
    all.addAll(SceneDetails.of("aim"));
    all.add(
        new WordField(
            "aim.units",
            "measures that lengths are told in",
            words(Lengths.values()),
            true,
            s -> word(s.aim().lengths())));
    return List.copyOf(all);
  }

  private static void addKit(List<SceneField> all) {
    all.add(new WordField("kit.name", "name of the kit", List.of(), false, s -> s.kit().name()));
    all.add(
        number(
            "kit.sensorWidth",
            "width of the sensor",
            "w",
            Unit.MILLIMETRE,
            1,
            100,
            true,
            s -> sensor(s).width().metres()));
    all.add(
        number(
            "kit.sensorHeight",
            "height of the sensor",
            "h",
            Unit.MILLIMETRE,
            1,
            100,
            true,
            s -> sensor(s).height().metres()));
    all.add(
        number(
            "kit.pixelsAcross",
            "pixels along the long side",
            "W_{\\mathrm{px}}",
            Unit.PIXEL,
            100,
            100_000,
            false,
            s -> sensor(s).pixelsAcross()));
    all.add(
        number(
            "kit.pixelsDown",
            "pixels along the short side",
            "H_{\\mathrm{px}}",
            Unit.PIXEL,
            100,
            100_000,
            false,
            s -> sensor(s).pixelsDown()));
    all.add(
        number(
            "kit.focalLength",
            "focal length",
            "f",
            Unit.MILLIMETRE,
            0.5,
            2000,
            true,
            s -> lens(s).focalLength().metres()));
    all.add(
        number(
            "kit.equivalent",
            "35 mm equivalent focal length",
            "f_{35}",
            Unit.MILLIMETRE,
            5,
            5000,
            true,
            s -> lens(s).focalLength().times(sensor(s).cropFactor()).metres()));
    all.add(
        number(
            "kit.widest",
            "widest aperture (smallest f-number)",
            "N_{\\min}",
            Unit.F_STOP,
            0.7,
            64,
            false,
            s -> lens(s).widest().value()));
    all.add(
        number(
            "kit.narrowest",
            "narrowest aperture (largest f-number)",
            "N_{\\max}",
            Unit.F_STOP,
            0.7,
            128,
            true,
            s -> lens(s).narrowest().value()));
    all.add(
        number(
            "kit.closestFocus",
            "closest focus distance",
            "u_{\\min}",
            Unit.CENTIMETRE,
            0.1,
            1000,
            false,
            s -> lens(s).closestFocus().metres()));
  }

  private static void addSubject(List<SceneField> all) {
    all.add(
        new WordField(
            "subject.name", "name of the object", List.of(), false, s -> s.subject().name()));
    all.add(
        new WordField(
            "subject.outline",
            "shape of the object seen from above",
            words(Outline.values()),
            false,
            s -> word(s.subject().outline())));
    all.add(
        number(
            "subject.height",
            "height of the object",
            "h_{\\mathrm{o}}",
            Unit.CENTIMETRE,
            0.1,
            1000,
            false,
            s -> s.subject().height().metres()));
    all.add(
        number(
            "subject.width",
            "width of the object",
            "w_{\\mathrm{o}}",
            Unit.CENTIMETRE,
            0.1,
            1000,
            false,
            s -> s.subject().width().metres()));
    all.add(
        number(
            "subject.depth",
            "depth of the object",
            "d_{\\mathrm{o}}",
            Unit.CENTIMETRE,
            0.1,
            1000,
            true,
            s -> s.subject().depth().metres()));
    all.add(
        new WordField(
            "subject.surface",
            "surface of the object",
            words(Surface.values()),
            false,
            s -> word(s.subject().surface())));
  }

  private static void addPlace(List<SceneField> all) {
    all.add(
        number(
            "place.tableHeight",
            "height of the table",
            "z_{\\mathrm{t}}",
            Unit.CENTIMETRE,
            0,
            300,
            false,
            s -> s.place().tableHeight().metres()));
    all.add(
        number(
            "place.lowestLens",
            "lowest lens height within reach",
            "z_{\\min}",
            Unit.CENTIMETRE,
            0,
            300,
            false,
            s -> s.place().lowestLens().metres()));
    all.add(
        number(
            "place.highestLens",
            "highest lens height within reach",
            "z_{\\max}",
            Unit.CENTIMETRE,
            1,
            400,
            false,
            s -> s.place().highestLens().metres()));
  }

  private static void addAim(List<SceneField> all) {
    all.add(
        number(
            "aim.detail",
            "smallest detail wanted",
            "\\delta",
            Unit.MILLIMETRE,
            0.001,
            100,
            false,
            s -> s.aim().detail().metres()));
    all.add(
        number(
            "aim.pixelsPerDetail",
            "pixels the smallest detail must span",
            "k",
            Unit.PIXEL,
            1,
            20,
            false,
            s -> s.aim().pixelsPerDetail()));
    all.add(
        number(
            "aim.fill",
            "share of the frame the object may fill",
            "\\varphi",
            Unit.PERCENT,
            5,
            100,
            false,
            s -> s.aim().fill()));
    all.add(
        new WordField(
            "aim.hold",
            "how the camera is held",
            words(Aim.Hold.values()),
            false,
            s -> word(s.aim().hold())));
    all.add(
        number(
            "aim.sharpShare",
            "share of the object's depth one photograph must hold sharp",
            "\\sigma",
            Unit.PERCENT,
            1,
            100,
            false,
            s -> s.aim().sharpShare()));
    all.add(
        number(
            "aim.blurLimit",
            "widest blur spot taken for sharp",
            "b",
            Unit.PIXEL,
            0.5,
            20,
            false,
            s -> s.aim().blurLimit()));
    all.add(
        number(
            "aim.diffractionLimit",
            "widest diffraction disc accepted",
            "a_{\\mathrm{px}}",
            Unit.PIXEL,
            0.5,
            20,
            false,
            s -> s.aim().diffractionLimit()));
    all.add(
        number(
            "aim.elevation",
            "elevation of the ring",
            "e",
            Unit.DEGREE,
            -30,
            85,
            false,
            s -> s.aim().elevation().radians()));
    all.add(
        number(
            "aim.step",
            "turn from photograph to photograph",
            "\\alpha",
            Unit.DEGREE,
            1,
            120,
            false,
            s -> s.aim().step().radians()));
    all.add(
        number(
            "aim.stepLimit",
            "largest turn with reliable matches",
            "\\alpha_{\\max}",
            Unit.DEGREE,
            1,
            120,
            false,
            s -> s.aim().stepLimit().radians()));
    all.add(
        number(
            "aim.incidenceLimit",
            "most slanted view that still counts",
            "i_{\\max}",
            Unit.DEGREE,
            10,
            89,
            false,
            s -> s.aim().incidenceLimit().radians()));
    all.add(
        number(
            "aim.decay",
            "turn over which matches fall to 1/e",
            "\\tau",
            Unit.DEGREE,
            1,
            180,
            false,
            s -> s.aim().decay().radians()));
  }

  private static NumberField number(
      String key,
      String name,
      String symbol,
      Unit unit,
      double low,
      double high,
      boolean optional,
      ToDoubleFunction<Scene> value) {
    return new NumberField(key, name, symbol, unit, low, high, optional, value);
  }

  private static Sensor sensor(Scene scene) {
    return scene.kit().sensor();
  }

  private static Lens lens(Scene scene) {
    return scene.kit().lens();
  }

  private static String word(Enum<?> constant) {
    return Words.lower(constant.name());
  }

  private static List<String> words(Enum<?>[] constants) {
    List<String> words = new ArrayList<>();
    for (Enum<?> constant : constants) {
      words.add(word(constant));
    }
    return words;
  }
}
