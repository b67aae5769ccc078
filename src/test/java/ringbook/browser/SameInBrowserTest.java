package ringbook.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.opentest4j.TestAbortedException;
import ringbook.Scenes;
import ringbook.course.compose.CourseSources;
import ringbook.figures.FigureShelf;
import ringbook.optics.Kit;
import ringbook.problems.Problems;
import ringbook.site.Browser;

/**
 * The script in a real browser, opened from disk, gives the same texts and the same bits as the
 * classes it was made from, for the whole range of scenes and for whatever a reader writes.
 * Chromium is the judge: other engines differ from it in sines, logarithms and rounding, which is
 * why none of these are the engine's own.
 */
final class SameInBrowserTest {

  private static final String SCRIPTS = "/ringbook/site/js/";
  private static final int BATCH = 25;

  /** Of workings and figures a scene is asked for one in so many; the seeds ask for all in turn. */
  private static final int PART = 8;

  /** Figures for which every patch of the object is looked at: up to seconds each in a browser. */
  private static final List<String> HEAVY = FigureShelf.patchwise();

  /** Of so many scenes, one is asked for each heavy figure. */
  private static final int HEAVY_PART = 100;

  private static final String[] NONE = {};

  private static final List<String> ANSWERS =
      List.of("", "42 cm", "0,5 m", "30", "f/5.6", "1/60 s", "12°", "75 %", "b", "a, c", "brick");

  private static final List<String> PLANS =
      List.of(
          "rings: 24 at 15°, 20 at 40°",
          "low ring: 24; top: 3; turned over: 12 at -10.5° without -30° to 150° at 1.1 m",
          "24 at 15° at 3 ft 6 1/2 in, 20 at 30° at 43.5 in",
          "strip: 6 at 0° facing 180°",
          "rings: 24 at",
          "brick");

  private static final String[] EXPRESSIONS = {
    "subject.height",
    "subject.height.in(\"inches\")",
    "ring.photos.number",
    "distance.standoff.symbol",
    "kit.name",
    "given(\"aim.step = 72°\").pair.shared",
    "given(\"kit = lens camera\").distance.largest",
    "given(\"subject.height = 500 km\").ring.photos",
    "(subject.height > subject.width)?then(\"tall\", \"wide\") + \" by \" + subject.width",
    "ring.photos * 2 - 1",
    "distance.fine && sharp.window",
    "distance.largest > 0.5",
    "sharp.opne",
    "subject.height)",
    "\"no end"
  };

  private static final Map<String, Kit> KITS =
      Map.of("lens camera", Scenes.potWithLensCamera().kit());

  @TempDir static Path folder;
  private static Browser browser;

  @BeforeAll
  static void open() throws IOException {
    copy(SCRIPTS + "calc.js", "calc.js");
    copy(SCRIPTS + "sight.js", "sight.js");
    copy("/ringbook/browser/calls.js", "calls.js");
    Files.writeString(
        folder.resolve("page.html"),
        "<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><title>Calls</title>"
            + "<script src=\"calc.js\"></script><script src=\"sight.js\"></script>"
            + "<script src=\"calls.js\"></script>");
    browser = Browser.start();
    browser.open(folder.resolve("page.html"));
    browser.driver().manage().timeouts().scriptTimeout(Duration.ofMinutes(2));
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  private static void copy(String from, String to) throws IOException {
    try (InputStream in = SameInBrowserTest.class.getResourceAsStream(from)) {
      if (in != null) {
        Files.copy(in, folder.resolve(to));
      } else if ("true".equals(System.getenv("CI"))) {
        throw new AssertionError(from + " was not built");
      } else {
        throw new TestAbortedException("NOT TESTED IN A BROWSER: " + from + " was not built");
      }
    }
  }

  /** All there is to know of a random scene, then of the same with what a reader states. */
  private static Calls everythingFor(long seed) {
    String course = new CourseData("course", Scenes.random(seed), KITS).course();
    Calls calls = new Calls().add("open", course).far("open", course);
    calls.add("numbers").add("texts");
    share(Page.keys(), seed).forEach(key -> calls.add("working", key));
    share(SightPage.figures(), seed).stream()
        .filter(name -> !HEAVY.contains(name))
        .forEach(name -> calls.far("figure", name, NONE, "a-"));
    if (seed % HEAVY_PART < HEAVY.size()) {
      calls.far("figure", HEAVY.get((int) (seed % HEAVY_PART)), NONE, "a-");
    }
    if (seed % PART == 0) {
      calls.add("evaluate", (Object) EXPRESSIONS).add("holds", (Object) EXPRESSIONS).add("fields");
      calls.far("fieldSheet");
    }
    RandomChanges changes = new RandomChanges(seed);
    for (int i = 0; i < 2; i++) {
      List<String[]> change = changes.next();
      calls.add("change", change.get(0), change.get(1)).add("numbers").add("texts");
    }
    return calls;
  }

  private static List<String> share(String[] names, long seed) {
    List<String> share = new ArrayList<>();
    for (int i = (int) (seed % PART); i < names.length; i += PART) {
      share.add(names[i]);
    }
    return share;
  }

  private static void assertSame(List<Calls> all, int size) {
    for (int from = 0; from < all.size(); from += size) {
      List<Calls> batch = all.subList(from, Math.min(from + size, all.size()));
      Object digests =
          browser.run(
              "return arguments[0].map(calls => digest(answersTo(calls)))",
              batch.stream().map(Calls::forScript).toList());
      for (int i = 0; i < batch.size(); i++) {
        String expected = batch.get(i).answers();
        if (!Calls.digest(expected).equals(((List<?>) digests).get(i))) {
          assertSameLines(from + i, answer(batch.get(i)), expected);
        }
      }
    }
  }

  /** The first line that differs says enough; the whole is thousands of lines. */
  private static void assertSameLines(int scene, String found, String expected) {
    List<String> lines = found.lines().toList();
    List<String> right = expected.lines().toList();
    for (int i = 0; i < Math.min(lines.size(), right.size()); i++) {
      assertThat(lines.get(i)).as("scene %d, line %d", scene, i + 1).isEqualTo(right.get(i));
    }
    assertThat(lines).hasSameSizeAs(right);
    throw new AssertionError("scene " + scene + ": the lines agree but the digests do not");
  }

  private static String answer(Calls calls) {
    return (String) browser.run("return answersTo(arguments[0])", calls.forScript());
  }

  @Test
  void exercises_are_posed_and_marked_the_same() throws IOException {
    Problems problems = new Problems();
    String script =
        CourseSources.read(Path.of("lessons/course.yaml"), problems)
            .flatMap(sources -> sources.compose(problems))
            .orElseThrow()
            .script();
    JsonTree data =
        JsonTree.read(script.substring("var RingbookCourse = ".length(), script.lastIndexOf(';')));
    List<Calls> all = new ArrayList<>();
    data.at("exercises")
        .members()
        .forEach((id, exercise) -> all.add(marking(data.text("course"), id, exercise.text())));
    assertThat(all).isNotEmpty();
    assertSame(all, 1); // a plan is judged patch by patch
  }

  private static Calls marking(String course, String id, String exercise) {
    // A plan is judged patch by patch, a variant by the plan that solves it: seconds each in a
    // page. The worker's script poses and marks all kinds, but is asked for plans alone.
    boolean plan = exercise.contains("\"kind\":\"plan\"");
    Calls calls = new Calls();
    call(calls, plan, "open", course);
    call(calls, plan, "take", exercise);
    for (String learner : plan ? List.of("") : List.of("", "Ada Lovelace", "zoë", "Ζωή")) {
      call(calls, plan, "question", id, learner);
      for (String answer : plan ? List.of("", "rings: 5 at 15°", "brick") : ANSWERS) {
        call(calls, plan, "mark", id, learner, answer);
      }
    }
    String[] units = {"aim.units"};
    call(calls, plan, "change", units, new String[] {"imperial"});
    call(calls, plan, "question", id, "");
    if (!plan) {
      ANSWERS.forEach(answer -> calls.add("mark", id, "zoë", answer));
    }
    if (plan) {
      calls.far("judge", id, "", "rings: 5 at 15°", "a-").far("judge", id, "", "brick", "a-");
      PLANS.forEach(text -> calls.far("plan", text));
    }
    return calls;
  }

  private static void call(Calls calls, boolean far, String name, Object... arguments) {
    if (far) {
      calls.far(name, arguments);
    } else {
      calls.add(name, arguments);
    }
  }

  @Test
  void a_thousand_scenes_come_out_the_same() {
    List<Calls> all = new ArrayList<>();
    Scenes.seeds(1000).forEach(seed -> all.add(everythingFor(seed)));
    assertSame(all, BATCH);
  }
}
