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
import ringbook.plans.LegWords;
import ringbook.plans.LockList;
import ringbook.shots.Leg;
import ringbook.shots.ShotPlan;

/** What stands on the card that a newcomer carries in the pocket. */
final class FieldCard {

  /** More runs than that do not fit on a quarter of the smaller paper. */
  private static final int RUNS = 12;

  /** So many letters of lines fit below the numbers of each photograph. */
  private static final int LETTERS = 820;

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
    card.put("runs", matter.plan().map(FieldCard::runs).orElse(List.of()));
    card.put("more", matter.plan().map(plan -> plan.legs().size() - RUNS).orElse(0));
    card.put("total", LockList.total(matter.plan(), matter.reckoning()));
    card.put("lines", lines(course));
    card.compute("more", (key, more) -> Math.max(0, (Integer) more));
    return card;
  }

  private static List<Map<String, String>> runs(ShotPlan plan) {
    LegWords words = new LegWords(plan);
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
    int letters = 0;
    for (ComposedLesson lesson : course.lessons()) {
      for (ComposedLesson.Block block : lesson.blocks()) {
        if (block instanceof Markup markup) {
          for (String line : bold(markup.xhtml())) {
            letters += line.replaceAll("<[^>]*>", "").length();
            if (letters <= LETTERS) {
              lines.add(line);
            }
          }
        }
      }
    }
    return lines;
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
