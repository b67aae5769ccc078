package ringbook.photos;

import java.util.Optional;
import ringbook.units.Numbers;

/** What a test photograph told, in words for a trainer. */
public final class PhotoReport {

  private PhotoReport() {}

  /**
   * Settings, doubts, surface and the kit to paste, with a line break at the end.
   *
   * @param name what the photograph is called
   */
  public static String of(
      String name, PhotoFacts facts, PhotoKit kit, Optional<SurfaceFacts> surface) {
    StringBuilder text = new StringBuilder(name).append(": ").append(settings(facts)).append('\n');
    for (String doubt : facts.doubts()) {
      text.append("doubt: ").append(doubt).append('\n');
    }
    text.append("surface: ")
        .append(
            surface.map(SurfaceFacts::reasoned).orElse("not known, as the pixels cannot be read."))
        .append('\n');
    text.append("Paste this into the course file in place of its kit:\n");
    return text.append(kit.block()).toString();
  }

  private static String settings(PhotoFacts facts) {
    Settings settings = facts.settings();
    Frame shown = facts.shown();
    StringBuilder line = new StringBuilder(facts.format().name());
    line.append(", ").append(shown.columns()).append(" × ").append(shown.rows()).append(" px");
    settings.focalLength().ifPresent(f -> add(line, "", number(f.millimetres()), " mm"));
    settings.equivalent().ifPresent(e -> add(line, "", number(e.millimetres()), " mm equivalent"));
    settings.fNumber().ifPresent(n -> add(line, "f/", number(n.value()), ""));
    settings.exposureSeconds().ifPresent(t -> line.append(", ").append(exposure(t)));
    settings.iso().ifPresent(iso -> add(line, "ISO ", Numbers.fixed(iso, 0), ""));
    return line.toString();
  }

  private static String exposure(double seconds) {
    return seconds < 0.3
        ? "1/" + Numbers.significant(1 / seconds, 3) + " s"
        : number(seconds) + " s";
  }

  private static void add(StringBuilder line, String before, String number, String after) {
    line.append(", ").append(before).append(number).append(after);
  }

  private static String number(double value) {
    return Numbers.significant(value, 4);
  }
}
