package ringbook.output.pack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ringbook.course.ComposedCourse;
import ringbook.course.ComposedLesson;
import ringbook.course.ComposedLesson.Markup;
import ringbook.figures.TextWidth;
import ringbook.plans.LegWords;
import ringbook.plans.LockList;
import ringbook.shots.Leg;
import ringbook.shots.Scene;
import ringbook.shots.ShotPlan;

/** What stands on the card that a newcomer carries in the pocket. */
final class FieldCard {

  /** More runs than that do not fit on a quarter of the smaller paper. */
  private static final int RUNS = 12;

  /** Of the lines of the lessons, in millimetres: size of letters, room between lines. */
  private static final double LETTERS = 8.4 * 25.4 / 72;

  private static final double LEADING = 10.6 * 25.4 / 72;
  private static final double GAP = 0.8;

  /** On a quarter of the narrower paper, with room for a word in bold. */
  private static final double ACROSS = 82;

  /** Below the numbers of each photograph on a quarter of the lower paper. */
  private static final double BESIDE = 75;

  /** Below the runs: what these take themselves, and each of them. */
  private static final double BELOW_RUNS = 74;

  private static final double RUN = 7.2;

  private static final Pattern SUMMARY =
      Pattern.compile("<section class=\"summary\">(.*?)</section>", Pattern.DOTALL);
  private static final Pattern LINE = Pattern.compile("<li>(.*?)</li>", Pattern.DOTALL);

  private FieldCard() {}

  static Map<String, Object> model(ComposedCourse course, PackMatter matter) {
    Map<String, Object> card = new LinkedHashMap<>();
    card.put("object", matter.reckoning().scene().subject().name());
    card.put("kit", matter.reckoning().scene().kit().name());
    List<Map<String, String>> settings = new ArrayList<>();
    for (LockList.Setting setting : LockList.of(matter.reckoning())) {
      settings.add(Map.of("name", setting.name(), "value", setting.value()));
    }
    card.put("settings", settings);
    card.put(
        "runs",
        matter.plan().map(plan -> runs(plan, matter.reckoning().scene())).orElse(List.of()));
    card.put("more", matter.plan().map(plan -> plan.legs().size() - RUNS).orElse(0));
    card.put("total", LockList.total(matter.plan(), matter.reckoning()));
    int runs = Math.min(RUNS, matter.plan().map(plan -> plan.legs().size()).orElse(0));
    place(card, lines(course), runs);
    card.compute("more", (key, more) -> Math.max(0, (Integer) more));
    return card;
  }

  /** Places lines beside the runs as long as there is room, then below them. */
  static void place(Map<String, Object> card, List<String> lines, int runs) {
    List<String> beside = fitting(lines, BESIDE);
    card.put("lines", beside);
    card.put("further", fitting(lines.subList(beside.size(), lines.size()), below(runs)));
  }

  private static List<Map<String, String>> runs(ShotPlan plan, Scene scene) {
    LegWords words = new LegWords(plan, scene.aim().lengths());
    List<Map<String, String>> runs = new ArrayList<>();
    for (Leg leg : plan.legs().subList(0, Math.min(RUNS, plan.legs().size()))) {
      runs.add(
          Map.of(
              "name", LegWords.name(leg),
              "height", words.height(leg),
              "floor", words.floor(leg),
              "photos", String.valueOf(leg.photos())));
    }
    return runs;
  }

  /** Those lines of the lessons' summaries in which the author put something in bold. */
  static List<String> lines(ComposedCourse course) {
    List<String> lines = new ArrayList<>();
    for (ComposedLesson lesson : course.lessons()) {
      for (ComposedLesson.Block block : lesson.blocks()) {
        if (block instanceof Markup markup) {
          lines.addAll(bold(markup.xhtml()));
        }
      }
    }
    return lines;
  }

  private static double below(int runs) {
    return BELOW_RUNS - RUN * runs;
  }

  /** As many of the first lines as fit into a height in millimetres. */
  static List<String> fitting(List<String> lines, double height) {
    List<String> fitting = new ArrayList<>();
    double left = height;
    for (String line : lines) {
      left -= rows(line.replaceAll("<[^>]*>", "")) * LEADING + GAP;
      if (left < 0) {
        return fitting;
      }
      fitting.add(line);
    }
    return fitting;
  }

  /** How many rows the words of a line take. */
  private static int rows(String text) {
    int rows = 1;
    double across = 0;
    for (String word : text.split(" ", -1)) {
      double wide = TextWidth.of(word + " ", LETTERS);
      if (across > 0 && across + wide > ACROSS) {
        rows++;
        across = 0;
      }
      across += wide;
    }
    return rows;
  }

  private static List<String> bold(String xhtml) {
    List<String> lines = new ArrayList<>();
    Matcher summary = SUMMARY.matcher(xhtml);
    while (summary.find()) {
      Matcher line = LINE.matcher(summary.group(1));
      while (line.find()) {
        if (line.group(1).contains("<strong>")) {
          lines.add(line.group(1).strip());
        }
      }
    }
    return lines;
  }
}
