package ringbook.output.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringbook.browser.FieldJson;
import ringbook.course.BackPage;
import ringbook.course.ComposedCourse;
import ringbook.course.ComposedExercise;
import ringbook.course.ComposedLesson;
import ringbook.output.Output;
import ringbook.output.Templates;

/** Writes the course as a website into the folder {@code site}. */
public final class SiteOutput implements Output {

  /** The page to open first, relative to the folder of the course. */
  public static final String FIRST_PAGE = "site/index.html";

  /** The page for the shoot itself. */
  private static final String FIELD_VIEW = ComposedCourse.FIELD_VIEW + ".html";

  @Override
  public String name() {
    return "site";
  }

  @Override
  public void write(ComposedCourse course, Path folder) throws IOException {
    Path site = folder.resolve(name());
    Files.createDirectories(site);
    Assets.copyTo(site);
    PlacedStyles styles = new PlacedStyles();
    for (Map.Entry<String, String> page : pages(course, styles).entrySet()) {
      Files.writeString(site.resolve(page.getKey()), SharedLetters.in(page.getValue()));
    }
    Files.writeString(site.resolve(Assets.PLACED), styles.sheet());
    if (isLive(course)) {
      Assets.copyCalculationsTo(site);
      Files.writeString(site.resolve("js/course.js"), course.script());
    }
    if (course.field().isPresent()) {
      String sheet = FieldJson.of(course.field().get());
      Assets.copyFieldViewTo(site);
      Files.writeString(site.resolve("js/shoot.js"), "var RingbookShoot = " + sheet + ";\n");
    }
  }

  /** Whether the pages can work numbers out themselves. */
  private static boolean isLive(ComposedCourse course) {
    return !course.script().isEmpty() && Assets.hasCalculations();
  }

  private static Map<String, String> pages(ComposedCourse course, PlacedStyles styles)
      throws IOException {
    Templates templates = new Templates();
    Fragments fragments = new Fragments(course.quantities(), styles);
    Map<String, String> pages = new LinkedHashMap<>();
    Map<String, Object> first = model(course, -1);
    first.put("exercises", exercises(course));
    pages.put("index.html", templates.fill("templates/index", first));
    for (ComposedLesson lesson : course.lessons()) {
      Map<String, Object> model = model(course, pages.size() - 1);
      model.put("lesson", lesson);
      model.put("pieces", Piece.all(lesson.live(), fragments));
      pages.put(lesson.id() + ".html", templates.fill("templates/lesson", model));
    }
    for (BackPage page : course.back()) {
      Map<String, Object> model = model(course, pages.size() - 1);
      model.put("lesson", page);
      model.put("pieces", Piece.all(page.live(), fragments));
      pages.put(page.id() + ".html", templates.fill("templates/back", model));
    }
    Map<String, Object> last = model(course, pages.size() - 1);
    last.put("groups", QuantityGroup.of(course.quantities(), fragments));
    pages.put("quantities.html", templates.fill("templates/quantities", last));
    if (course.field().isPresent()) {
      pages.put(FIELD_VIEW, templates.fill("templates/field-view", model(course, -1)));
    }
    return pages;
  }

  /** The ids of the exercises that are handed in, by the file of their lesson. */
  private static Map<String, List<String>> exercises(ComposedCourse course) {
    Map<String, List<String>> ids = new LinkedHashMap<>();
    for (ComposedLesson lesson : course.lessons()) {
      ids.put(
          lesson.id() + ".html",
          lesson.blocks().stream()
              .filter(ComposedLesson.ExerciseBlock.class::isInstance)
              .map(block -> ((ComposedLesson.ExerciseBlock) block).exercise())
              .filter(exercise -> !exercise.kind().isEmpty())
              .map(ComposedExercise::id)
              .toList());
    }
    return ids;
  }

  /** What every page shows; {@code here} is its place on the walk, or -1 for the first page. */
  private static Map<String, Object> model(ComposedCourse course, int here) {
    List<Station> stations = Station.all(course);
    List<Station> walk = Station.walk(course);
    Map<String, Object> model = new LinkedHashMap<>();
    model.put("info", course.info());
    model.put("styles", Assets.STYLES);
    model.put("live", isLive(course));
    model.put("scripts", Assets.SCRIPTS);
    model.put("answering", Assets.ANSWERING);
    model.put("stations", stations);
    model.put("dial", StationDial.of(stations, here < 0 ? -1 : stations.indexOf(walk.get(here))));
    model.put("back", Station.back(course));
    model.put("field", course.field().orElse(null));
    model.put("fieldScripts", Assets.FIELD_SCRIPTS);
    if (here >= 0) {
      model.put("here", walk.get(here));
    }
    if (here > 0) {
      model.put("previous", walk.get(here - 1));
    }
    if (here >= 0 && here < walk.size() - 1) {
      model.put("next", walk.get(here + 1));
    }
    return model;
  }
}
