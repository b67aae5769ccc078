package ringbook.figures;

import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.figures.SvgWriter.Sweep;
import ringbook.ledger.Reckoning;

/** What may change within a set and what may not, with the values to lock, under three padlocks. */
final class SettingsLock {

  private static final double WIDTH = 560;
  private static final double COLUMN = 184;
  private static final double TOP = 118;
  private static final double LINE = 44;

  private final Readings readings;
  private final SvgWriter svg;

  /** A setting with its value. */
  private record Setting(String name, String value) {}

  private SettingsLock(Reckoning reckoning, String idPrefix) {
    readings = new Readings(reckoning);
    svg = new SvgWriter(WIDTH, TOP + 5 * LINE, idPrefix);
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new SettingsLock(reckoning, idPrefix).figure();
  }

  private Figure figure() {
    column(0, "never in a set", never());
    column(1, "once a ring or light", once());
    column(2, "as you like", free());
    readings.tabulate(
        "kit.focalLength",
        "kit.pixelsAcross",
        "kit.pixelsDown",
        "sharp.focus",
        "sharp.fNumber",
        "motion.dialTime",
        "motion.dialIso");
    return readings.figure(svg, "What to lock", description());
  }

  private List<Setting> never() {
    return List.of(
        new Setting("lens and zoom", readings.text("kit.focalLength")),
        new Setting(
            "size of the picture",
            readings.text("kit.pixelsAcross") + " × " + readings.text("kit.pixelsDown")),
        new Setting("digital zoom, cutting", "off"),
        new Setting("flash, filters, beauty", "off"),
        new Setting("joining pictures", "off"));
  }

  private List<Setting> once() {
    return List.of(
        new Setting("focus: once a ring", told("sharp.focus")),
        new Setting("f-number", told("sharp.fNumber")),
        new Setting("exposure time", told("motion.dialTime")),
        new Setting("ISO", told("motion.dialIso")),
        new Setting("white balance", "one fixed value"));
  }

  private static List<Setting> free() {
    return List.of(
        new Setting("your place", "that is the idea"),
        new Setting("where you aim", "at the object"),
        new Setting("spare photographs", "the more the better"),
        new Setting("pauses", "settings stay"));
  }

  private String told(String key) {
    return readings.known(key) ? readings.text(key) : "see its lesson";
  }

  private void column(int number, String title, List<Setting> settings) {
    double middle = WIDTH / 2 + (number - 1) * COLUMN;
    padlock(new Point(middle, 52), number);
    svg.text(Label.of(title, new Point(middle, 92), Anchor.MIDDLE).bold());
    for (int i = 0; i < settings.size(); i++) {
      double y = TOP + 6 + i * LINE;
      svg.text(Label.of(settings.get(i).name(), new Point(middle, y), Anchor.MIDDLE));
      svg.text(Label.small(settings.get(i).value(), new Point(middle, y + 16), Anchor.MIDDLE));
    }
  }

  /** A padlock with its body below {@code at}: 0 shut, 1 lifted, 2 swung open. */
  private void padlock(Point at, int open) {
    double lift = open == 0 ? 0 : 8;
    double swing = open == 2 ? 16 : 0;
    Stroke pen = Stroke.solid(Ink.INK, 3);
    Point hoop = at.plus(swing, -14 - lift);
    svg.arc(hoop, 8, new Sweep(0, Math.PI), pen);
    svg.line(hoop.plus(-8, 0), at.plus(swing - 8, 0), pen);
    svg.line(hoop.plus(8, 0), hoop.plus(8, open == 0 ? 14 : 6), pen);
    Box body = new Box(at.x() - 14, at.y() - 6, at.x() + 14, at.y() + 16);
    svg.box(body, Stroke.OUTLINE, open == 0 ? Fill.ACCENT : open == 1 ? Fill.FAINT : Fill.PAPER);
  }

  private String description() {
    return "Three padlocks. Shut, never changed within a set: "
        + words(never())
        + ". Half open, changed once for a ring or a light: "
        + words(once())
        + ". Open: "
        + words(free())
        + ".";
  }

  private static String words(List<Setting> settings) {
    return Sentence.list(
        settings.stream().map(setting -> setting.name() + " (" + setting.value() + ")").toList());
  }
}
