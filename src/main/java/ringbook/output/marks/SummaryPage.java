package ringbook.output.marks;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringbook.course.CourseInfo;
import ringbook.exercises.NumberTask;
import ringbook.exercises.Verdict;
import ringbook.output.Templates;
import ringbook.sheets.ClassTally;
import ringbook.sheets.ExerciseTally;
import ringbook.sheets.SummaryText;

/** The page for the trainer: how the class did, what went wrong, and who needs help with what. */
final class SummaryPage {

  private SummaryPage() {}

  /**
   * The whole page.
   *
   * @param pages the learners' pages by name, to link to
   */
  static String of(CourseInfo info, ClassTally tally, Map<String, String> pages)
      throws IOException {
    Map<String, Object> model = new LinkedHashMap<>();
    model.put("info", info);
    model.put(
        "style",
        Templates.style("css/palette")
            + Templates.style("css/inks")
            + Templates.style("css/marks"));
    model.put("points", SummaryText.points(tally.points()));
    model.put(
        "absent", tally.absent().isEmpty() ? "" : PageText.of(SummaryText.names(tally.absent())));
    model.put(
        "charts",
        List.of(ClassCharts.points(tally.points()), ClassCharts.exercises(tally.asked())));
    model.put("exercises", tally.asked().stream().map(SummaryPage::exercise).toList());
    List<Map<String, String>> links = new ArrayList<>();
    pages.forEach((name, page) -> links.add(Map.of("name", PageText.of(name), "page", page)));
    model.put("pages", links);
    return new Templates().fill("templates/summary", model);
  }

  private static Map<String, Object> exercise(ExerciseTally tally) {
    List<Map<String, String>> wrong = new ArrayList<>();
    for (ExerciseTally.Wrong way : tally.wrong()) {
      wrong.add(
          Map.of(
              "count", String.valueOf(way.count()),
              "label", way.label(),
              "says", says(tally, way.verdict()),
              "names", who(way)));
    }
    return Map.of(
        "title", tally.exercise().title(),
        "id", tally.exercise().id(),
        "answered", String.valueOf(tally.answered()),
        "right", String.valueOf(tally.right()),
        "wrong", wrong);
  }

  /** What the author says of a slip, with the numbers of the course. */
  private static String says(ExerciseTally tally, Verdict verdict) {
    return tally.exercise().task() instanceof NumberTask task
            && verdict instanceof Verdict.SlipMade slip
        ? task.slips().get(slip.index()).says().markdown()
        : "";
  }

  private static String who(ExerciseTally.Wrong way) {
    List<String> names = new ArrayList<>(way.names());
    long more = way.count() - names.size();
    if (more > 0) {
      names.add(more + " more");
    }
    return PageText.of(SummaryText.names(names));
  }
}
