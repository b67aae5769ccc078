package ringbook.output.pack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringbook.figures.LegPlan;
import ringbook.figures.ShotRings;
import ringbook.plans.Clock;
import ringbook.plans.LegWords;
import ringbook.plans.LockList;
import ringbook.plans.PlanWords;
import ringbook.shots.Leg;
import ringbook.shots.Scene;
import ringbook.shots.ShotPlan;
import ringbook.shots.Station;

/** The shot table: a page of all runs, then a page for each with a row for every station. */
final class ShotTable {

  /** Shorter legs stand in one column. */
  private static final int FEW = 8;

  /** Rows that find room below the head of a leg, and on a page of their own, on either paper. */
  private static final int BELOW_HEAD = 18;

  private static final int WHOLE_PAGE = 30;

  private final Scene scene;
  private final ShotPlan plan;
  private final LegWords words;

  private ShotTable(Scene scene, ShotPlan plan) {
    this.scene = scene;
    this.plan = plan;
    words = new LegWords(plan, scene.aim().lengths());
  }

  static Map<String, Object> model(PackMatter matter, ShotPlan plan) {
    Scene scene = matter.reckoning().scene();
    return new ShotTable(scene, plan).model(LockList.total(matter.plan(), matter.reckoning()));
  }

  private Map<String, Object> model(String total) {
    Map<String, Object> table = new LinkedHashMap<>();
    table.put("object", scene.subject().name());
    table.put("total", total);
    table.put("above", ShotRings.smallAbove(scene, plan, "above-").svg());
    table.put("side", ShotRings.smallSide(scene, plan, "side-").svg());
    table.put("legs", plan.legs().stream().map(this::leg).toList());
    return table;
  }

  private Map<String, Object> leg(Leg leg) {
    List<Map<String, String>> rows = new ArrayList<>();
    List<Integer> blocked = new ArrayList<>();
    boolean oneAim = leg.stations().stream().map(words.words()::aim).distinct().count() == 1;
    for (Station station : leg.stations()) {
      List<String> inTheWay = LegWords.inTheWay(scene, station);
      if (!inTheWay.isEmpty()) {
        blocked.add(station.number());
      }
      rows.add(
          Map.of(
              "number", String.valueOf(station.number()),
              "clock", Clock.of(station.azimuth()),
              "height", words.height(station),
              "floor", words.floor(station),
              "note", String.join(", ", inTheWay) + (oneAim ? "" : words.words().aim(station))));
    }
    String id = "leg-" + plan.legs().indexOf(leg) + "-";
    Map<String, Object> model = new LinkedHashMap<>();
    model.put("name", LegWords.name(leg));
    model.put("title", PlanWords.title(leg));
    model.put("why", leg.why());
    model.put("photos", String.valueOf(leg.photos()));
    model.put("height", words.height(leg));
    model.put("floor", words.floor(leg));
    model.put("away", words.away(leg));
    model.put("aim", words.aim(leg));
    model.put("focus", words.words().length(leg.setup().focus().metres()));
    model.put("setup", capital(words.words().setup(leg)));
    model.put("blocked", !blocked.isEmpty());
    model.put("figure", LegPlan.draw(scene, leg, blocked, id).svg());
    model.put("heights", differ(rows, "height"));
    model.put("floors", differ(rows, "floor"));
    model.put("pages", pages(rows));
    return model;
  }

  /** What is the same at every station stands in the head alone. */
  private static boolean differ(List<Map<String, String>> rows, String column) {
    return rows.stream().map(row -> row.get(column)).distinct().count() > 1;
  }

  /** The rows of each page, in one column or two. */
  static <T> List<List<List<T>>> pages(List<T> rows) {
    List<List<List<T>>> pages = new ArrayList<>();
    int from = 0;
    while (from < rows.size()) {
      int room = 2 * (pages.isEmpty() ? BELOW_HEAD : WHOLE_PAGE);
      List<T> page = rows.subList(from, Math.min(rows.size(), from + room));
      pages.add(halves(page));
      from += page.size();
    }
    return pages;
  }

  private static <T> List<List<T>> halves(List<T> rows) {
    if (rows.size() <= FEW) {
      return List.of(rows);
    }
    int first = (rows.size() + 1) / 2;
    return List.of(rows.subList(0, first), rows.subList(first, rows.size()));
  }

  private static String capital(String sentence) {
    return sentence.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + sentence.substring(1);
  }
}
