package ringbook.output.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringbook.course.ComposedCourse;
import ringbook.course.ComposedLesson;
import ringbook.output.Output;

/** Writes the course as a website into the folder {@code site}. */
public final class SiteOutput implements Output {

  /** The page to open first, relative to the folder of the course. */
  public static final String FIRST_PAGE = "site/index.html";

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
      Files.writeString(site.resolve(page.getKey()), page.getValue());
    }
    Files.writeString(site.resolve(Assets.PLACED), styles.sheet());
  }

  private static Map<String, String> pages(ComposedCourse course, PlacedStyles styles)
      throws IOException {
    Templates templates = new Templates();
    Fragments fragments = new Fragments(course.quantities(), styles);
    List<Station> stations = Station.all(course);
    Map<String, String> pages = new LinkedHashMap<>();
    pages.put("index.html", templates.fill("index", model(course, stations, -1)));
    for (ComposedLesson lesson : course.lessons()) {
      Map<String, Object> model = model(course, stations, pages.size() - 1);
      model.put("lesson", lesson);
      model.put("pieces", lesson.blocks().stream().map(b -> Piece.of(b, fragments)).toList());
      pages.put(lesson.id() + ".html", templates.fill("lesson", model));
    }
    Map<String, Object> last = model(course, stations, stations.size() - 1);
    last.put("groups", QuantityGroup.of(course.quantities(), fragments));
    pages.put("quantities.html", templates.fill("quantities", last));
    return pages;
  }

  private static Map<String, Object> model(
      ComposedCourse course, List<Station> stations, int here) {
    Map<String, Object> model = new LinkedHashMap<>();
    model.put("info", course.info());
    model.put("styles", Assets.STYLES);
    model.put("stations", stations);
    model.put("dial", StationDial.of(stations, here));
    if (here >= 0) {
      model.put("here", stations.get(here));
    }
    if (here > 0) {
      model.put("previous", stations.get(here - 1));
    }
    if (here >= 0 && here < stations.size() - 1) {
      model.put("next", stations.get(here + 1));
    }
    return model;
  }
}
