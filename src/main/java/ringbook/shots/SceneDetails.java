package ringbook.shots;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import ringbook.shots.SceneField.NumberField;
import ringbook.units.Details;
import ringbook.units.Num;
import ringbook.units.Unit;

/**
 * Number fields that a scene can do without: each has a usual value, or, where the key is about
 * something the object may not have, none. Usual values are common practice without a source unless
 * said otherwise; a group states its own.
 */
public final class SceneDetails {

  /**
   * One such field.
   *
   * @param usual its value in {@code unit} where a scene says nothing; NaN for none
   */
  private record Line(
      String key, String name, String symbol, Unit unit, double low, double high, double usual) {

    double usualSi() {
      return Double.isNaN(usual) ? 0 : unit.toSi(usual);
    }

    double in(Scene scene) {
      double si = stated(scene, key).orElse(usualSi());
      return unit == Unit.PIECE ? Num.round(si) : si;
    }

    NumberField field() {
      return new NumberField(key, name, symbol, unit, low, high, true, this::in);
    }
  }

  private static final double NONE = Double.NaN;

  private static final List<Line> ALL = new ArrayList<>();
  private static final Map<String, Line> BY_KEY = new LinkedHashMap<>();

  static {
    kit();
    subject();
    place();
    aim();
    ALL.forEach(line -> BY_KEY.put(line.key(), line));
  }

  private SceneDetails() {}

  /** Whether {@code key} is one of these fields. */
  public static boolean has(String key) {
    return BY_KEY.containsKey(key);
  }

  /** The usual value of {@code key} in SI, where it has one. */
  public static OptionalDouble usual(String key) {
    return line(key).filter(line -> !Double.isNaN(line.usual())).stream()
        .mapToDouble(Line::usualSi)
        .findFirst();
  }

  /** What holds for {@code key} in a scene, in SI: what it says itself, else the usual value. */
  public static double si(Scene scene, String key) {
    return stated(scene, key).orElseGet(() -> usual(key).orElseThrow());
  }

  /** What the scene itself says about {@code key}, in SI. */
  public static OptionalDouble stated(Scene scene, String key) {
    Details details =
        switch (key.substring(0, key.indexOf('.'))) {
          case "kit" -> scene.kit().details();
          case "subject" -> scene.subject().details();
          case "place" -> scene.place().details();
          default -> scene.aim().details();
        };
    return details.find(key);
  }

  /** All that the scene itself says about these fields, in SI, by key. */
  static Map<String, Double> statedBy(Scene scene) {
    Map<String, Double> stated = new LinkedHashMap<>(scene.kit().details().stated());
    stated.putAll(scene.subject().details().stated());
    stated.putAll(scene.place().details().stated());
    stated.putAll(scene.aim().details().stated());
    return stated;
  }

  /** The fields of one section, in the order of the course file. */
  static List<SceneField> of(String section) {
    List<SceneField> fields = new ArrayList<>();
    for (Line line : ALL) {
      if (line.key().startsWith(section + ".")) {
        fields.add(line.field());
      }
    }
    return fields;
  }

  /** Those of {@code numbers} that are details of {@code section}. */
  static Details pick(String section, Map<String, Double> numbers) {
    String prefix = section + ".";
    Map<String, Double> picked = new LinkedHashMap<>();
    for (Map.Entry<String, Double> number : numbers.entrySet()) {
      if (number.getKey().startsWith(prefix) && has(number.getKey())) {
        picked.put(number.getKey(), number.getValue());
      }
    }
    return new Details(picked);
  }

  private static Optional<Line> line(String key) {
    return Optional.ofNullable(BY_KEY.get(key));
  }

  private static void kit() {
    add("kit.lensOffset", "lens to the nearest edge of the camera", "o_{\\min}")
        .in(Unit.CENTIMETRE, 0.3, 30, 1.5);
    add("kit.lensFarOffset", "lens to the opposite edge of the camera", "o_{\\max}")
        .in(Unit.CENTIMETRE, 0.3, 40, 14);
    add("kit.fileSize", "file size of one photograph", "M_{1}").in(Unit.MEGABYTE, 0.1, 200, 6);
    add("kit.freeStorage", "free storage of the camera", "M").in(Unit.GIGABYTE, 0.1, 10_000, 8);
    add("kit.photosPerCharge", "photographs from one battery charge", "n_{\\mathrm{b}}")
        .in(Unit.PIECE, 10, 10_000, 600);
    add("kit.barLength", "length of a scale bar", "L").in(Unit.CENTIMETRE, 0.5, 500, 20);
    add("kit.barError", "how exactly the length of a scale bar is known", "\\sigma_{L}")
        .in(Unit.MILLIMETRE, 0.001, 10, 0.1);
    add("kit.baseIso", "lowest ISO setting", "S_{\\min}").in(Unit.ONE, 25, 3200, 100);
    add("kit.highestIso", "highest ISO setting whose noise is accepted", "S_{\\max}")
        .in(Unit.ONE, 25, 102_400, 800);
    add("kit.stabiliser", "stops gained by the stabiliser", "q_{\\mathrm{st}}")
        .in(Unit.STOP, 0, 8, 0);
    add("kit.polariserLoss", "stops lost in a polarising filter", "q_{\\mathrm{pol}}")
        .in(Unit.STOP, 1, 4, 1.5);
    add(
            "kit.polariserError",
            "turn of the filters away from fully crossed",
            "\\delta_{\\mathrm{x}}")
        .in(Unit.DEGREE, 0, 90, 3);
    add("kit.barCount", "number of scale bars", "m_{\\mathrm{b}}").in(Unit.PIECE, 1, 20, 2);
  }

  private static void subject() {
    add("subject.holeDiameter", "diameter of the hole", "d_{\\mathrm{h}}")
        .in(Unit.CENTIMETRE, 0.1, 500, NONE);
    add("subject.holeDepth", "depth of the hole", "h_{\\mathrm{h}}")
        .in(Unit.CENTIMETRE, 0.1, 1000, NONE);
    add("subject.holeTilt", "rise of the hole's axis, seen from outside", "\\delta_{\\mathrm{h}}")
        .in(Unit.DEGREE, -90, 90, 0);
    add("subject.thinnest", "thickness of its thinnest part", "t_{\\mathrm{o}}")
        .in(Unit.MILLIMETRE, 0.01, 1000, NONE);
    add("subject.alike", "sides that look the same", "m_{\\mathrm{o}}").in(Unit.PIECE, 1, 360, 1);
    add("subject.sway", "how far a part moves between photographs", "v_{\\mathrm{o}}")
        .in(Unit.MILLIMETRE, 0, 100, 0);
  }

  private static void place() {
    add("place.bodyRoom", "room a person needs behind the lens", "b_{\\mathrm{p}}")
        .in(Unit.CENTIMETRE, 0, 200, 40);
    // 500 lx: the level for reading and writing of EN 12464-1 (from memory).
    add("place.illuminance", "illuminance at the object", "E").in(Unit.LUX, 1, 150_000, 500);
    add("place.mains", "frequency of the mains", "f_{\\mathrm{m}}").in(Unit.HERTZ, 50, 60, 50);
    // All of it: the worst case.
    add("place.flickerShare", "share of the lamps' light that flickers", "M_{\\mathrm{f}}")
        .in(Unit.PERCENT, 0, 100, 100);
    add("place.lampDistance", "distance from lamp to middle of the object", "d_{\\mathrm{l}}")
        .in(Unit.CENTIMETRE, 5, 2000, 150);
    add("place.lampFlux", "light that a bare lamp gives off", "\\Phi")
        .in(Unit.LUMEN, 1, 1_000_000, 800);
  }

  private static void aim() {
    add("aim.topElevation", "elevation of the highest ring", "e_{\\mathrm{top}}")
        .in(Unit.DEGREE, 0, 85, 45);
    add("aim.ringSpacing", "largest step from ring to ring", "\\Delta e_{\\max}")
        .in(Unit.DEGREE, 1, 60, 15);
    add("aim.poses", "poses of the object", "n_{\\mathrm{p}}").in(Unit.PIECE, 1, 2, 1);
    add("aim.spare", "spare photographs", "r").in(Unit.PERCENT, 0, 200, 10);
    add("aim.secondsPerPhoto", "time from photograph to photograph", "t_{1}")
        .in(Unit.SECOND, 0.2, 600, 6);
    add("aim.stripOverlap", "overlap along a strip", "q_{\\mathrm{s}}")
        .in(Unit.PERCENT, 10, 95, 200.0 / 3);
    add("aim.pointing", "how exactly a spot is found in a photograph", "\\sigma_{\\mathrm{px}}")
        .in(Unit.PIXEL, 0.01, 10, 0.5);
    add("aim.repeats", "photographs taken at each station", "k_{\\mathrm{r}}")
        .in(Unit.PIECE, 1, 20, 1);
    add("aim.motionBlur", "movement accepted during the exposure", "b_{\\mathrm{mov}}")
        .in(Unit.PIXEL, 0.1, 20, 1);
    // The rate at which the rule of one over the focal length blurs a point by 0.03 mm.
    add("aim.tremor", "how fast the hands turn the camera", "\\omega")
        .in(Unit.DEGREE_PER_SECOND, 0.05, 20, 1.7);
    add("aim.walkingSpeed", "walking speed while photographing", "V_{\\mathrm{w}}")
        .in(Unit.CENTIMETRE_PER_SECOND, 1, 300, 50);
    add("aim.turnRate", "turning rate of the turntable", "\\omega_{\\mathrm{t}}")
        .in(Unit.DEGREE_PER_SECOND, 0.1, 360, 6);
    add("aim.usualTime", "shutter time usually set, as marked", "t_{\\mathrm{u}}")
        .in(Unit.SECOND, 0.0001, 60, 0.008);
    add("aim.printDiagonal", "diagonal of a print to look at", "d_{\\mathrm{pr}}")
        .in(Unit.CENTIMETRE, 5, 1000, 30);
    // The distance at which the least spot that an eye sees is stated.
    add("aim.viewingDistance", "distance from eye to print", "d_{\\mathrm{eye}}")
        .in(Unit.CENTIMETRE, 10, 2000, 25);
    add("aim.tolerance", "largest error of size accepted", "T").in(Unit.MILLIMETRE, 0.001, 1000, 1);
  }

  private static Start add(String key, String name, String symbol) {
    return (unit, low, high, usual) -> ALL.add(new Line(key, name, symbol, unit, low, high, usual));
  }

  /** The second half of a line of the lists above. */
  @FunctionalInterface
  private interface Start {
    void in(Unit unit, double low, double high, double usual);
  }
}
