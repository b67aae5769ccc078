package ringbook.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import ringbook.course.compose.CourseSources;
import ringbook.output.site.SiteOutput;
import ringbook.problems.Problems;
import ringbook.site.Browser;
import ringbook.site.Browser.Size;

/**
 * What a reader waits for on the pages of the demo course, from disk: a page that opens on a slow
 * machine, a page that follows a changed input, a plan that is judged. Wall time, except for the
 * column that says processor.
 */
final class RealPages implements AutoCloseable {

  private static final int CHANGES = 15;

  /** Milliseconds between two changes: nobody writes faster. */
  private static final int PAUSE = 600;

  /** How many times slower a phone of the lower sort is taken to be. */
  private static final int SLOWED = 4;

  private final Browser browser;
  private final Path folder;
  private final String script;

  /** Makes the site. */
  RealPages(Browser browser) throws IOException {
    this.browser = browser;
    folder = Files.createTempDirectory("ringbook-pages");
    Problems problems = new Problems();
    new SiteOutput()
        .write(
            CourseSources.read(Path.of("lessons/course.yaml"), problems)
                .flatMap(sources -> sources.compose(problems))
                .orElseThrow(),
            folder);
    try (InputStream in = getClass().getResourceAsStream("/ringbook/browser/real-page.js")) {
      script = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Override
  public void close() throws IOException {
    try (Stream<Path> inside = Files.walk(folder)) {
      for (Path one : inside.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(one);
      }
    }
  }

  void print() {
    browser.look(Size.PHONE, false);
    browser.open(page("index"));
    opening("index", "one-ring", "light-and-hand");
    browser.look(Size.DESKTOP, false);
    command("Performance.enable", Map.of("timeDomain", "threadTicks"));
    changes("one-ring", "right-distance", "light-and-hand", "rings-at-heights");
    numbersAlone("one-ring", "right-distance", "light-and-hand", "rings-at-heights");
    plans();
  }

  private Path page(String name) {
    return folder.resolve("site/" + name + ".html");
  }

  private List<Double> numbers(String call, Object... arguments) {
    List<Double> numbers = new ArrayList<>();
    for (Object number : (List<?>) browser.run(script + "return " + call, arguments)) {
      numbers.add(((Number) number).doubleValue());
    }
    return numbers;
  }

  /** Medians, column by column. */
  private static List<Double> medians(List<List<Double>> rows) {
    List<Double> medians = new ArrayList<>();
    for (int column = 0; column < rows.get(0).size(); column++) {
      int at = column;
      medians.add(rows.stream().map(r -> r.get(at)).sorted().toList().get(rows.size() / 2));
    }
    return medians;
  }

  private static void line(String part, List<Double> milliseconds) {
    System.out.printf(Locale.ROOT, "%-34s", part);
    milliseconds.forEach(ms -> System.out.printf(Locale.ROOT, " %7.0f ms", ms));
    System.out.println();
  }

  private void opening(String... names) {
    System.out.println();
    System.out.println("a page opens, processor slowed " + SLOWED + " times   scripts    painted");
    command("Emulation.setCPUThrottlingRate", Map.of("rate", SLOWED));
    for (String name : names) {
      List<List<Double>> rows = new ArrayList<>();
      for (int i = 0; i < 5; i++) {
        browser.open(page(name));
        rows.add(numbers("opened()"));
      }
      line(name, medians(rows));
    }
    command("Emulation.setCPUThrottlingRate", Map.of("rate", 1));
  }

  private Map<String, Object> command(String name, Map<String, Object> parameters) {
    return browser.driver().executeCdpCommand(name, parameters);
  }

  private void changes(String... names) {
    System.out.println();
    System.out.println(
        "one input changed                     script    numbers    in view   quick figs    all"
            + " figs  processor");
    for (String name : names) {
      openReady(name);
      List<List<Double>> rows = new ArrayList<>();
      for (int i = 0; i <= CHANGES; i++) {
        rows.add(withProcessor("changeTo('aim.step', arguments[0])", 7 + i % 6 + "°"));
      }
      line(name + ", first", rows.get(0));
      line(name + ", then", medians(rows.subList(1, rows.size())));
      line(name + ", best", best(rows.subList(1, rows.size())));
      List<List<Double>> sizes = new ArrayList<>();
      for (int i = 0; i < 5; i++) {
        sizes.add(withProcessor("changeTo('subject.height', arguments[0])", 30 + i + " cm"));
      }
      line(name + ", another size", medians(sizes));
      browser.run("RingbookLive.scene.reset(); localStorage.clear()");
    }
  }

  /** Opens a page, its first figure in view, and the scene card on it. */
  private void openReady(String name) {
    browser.open(page(name));
    browser.run("return new Promise(done => RingbookLive.ready(() => done(true)))");
    browser.run("const p = document.querySelector('.plate'); if (p) { p.scrollIntoView(); }");
    numbers("opensCard('aim.step')");
  }

  /** The times of a change, and behind them those of the processor. */
  private List<Double> withProcessor(String change, String argument) {
    browser.run("return new Promise(done => setTimeout(() => done(true), arguments[0]))", PAUSE);
    double before = processor();
    List<Double> row = numbers(change, argument);
    row.add(processor() - before);
    return row;
  }

  /** What the main thread does until the numbers are painted, in milliseconds of the processor. */
  private void numbersAlone(String... names) {
    System.out.println();
    System.out.println(
        "until numbers are painted           processor      style     layout   | one"
            + " word painted  arithmetic");
    for (String name : names) {
      openReady(name);
      numbers("changeTo('aim.step', '6°')"); // the page then knows that the scene is the reader's
      List<List<Double>> rows = new ArrayList<>();
      for (int i = 0; i < 2 * CHANGES; i++) {
        List<Double> before = spent();
        numbers("changeNumbers('aim.step', arguments[0])", 7 + i % 6 + "°");
        List<Double> row = new ArrayList<>(spent());
        for (int column = 0; column < row.size(); column++) {
          row.set(column, row.get(column) - before.get(column));
        }
        numbers("settled()");
        row.addAll(numbers("changeWord(arguments[0])", "word " + i));
        row.addAll(numbers("arithmetic()"));
        rows.add(row);
      }
      List<List<Double>> warm = rows.subList(CHANGES, rows.size());
      line(name, medians(warm));
      line(name + ", best", best(warm));
      browser.run("RingbookLive.scene.reset(); localStorage.clear()");
    }
  }

  /** The least of each column: what is left of a shared machine's waiting. */
  private static List<Double> best(List<List<Double>> rows) {
    List<Double> least = new ArrayList<>();
    for (int column = 0; column < rows.get(0).size(); column++) {
      int at = column;
      least.add(rows.stream().mapToDouble(row -> row.get(at)).min().orElseThrow());
    }
    return least;
  }

  /** Milliseconds of the processor that the page's main thread has used. */
  private double processor() {
    return spent().get(0);
  }

  /** Milliseconds of the main thread: all, style, layout. */
  private List<Double> spent() {
    Map<String, Double> told = new TreeMap<>();
    for (Object metric : (List<?>) command("Performance.getMetrics", Map.of()).get("metrics")) {
      Map<?, ?> one = (Map<?, ?>) metric;
      told.put((String) one.get("name"), 1000 * ((Number) one.get("value")).doubleValue());
    }
    return Stream.of("TaskDuration", "RecalcStyleDuration", "LayoutDuration")
        .map(told::get)
        .toList();
  }

  private void plans() {
    System.out.println();
    System.out.println("a written plan is judged               first    another");
    browser.open(page("rings-at-heights"));
    judged("plan-owl");
    browser.open(page("rings-at-heights"));
    browser.run("document.querySelector('#exercise-plan-owl').scrollIntoView()");
    browser.until("window.RingbookSightOf");
    browser.run("return new Promise(done => setTimeout(() => done(true), 5000))"); // it is read
    judged("plan-owl, its question read");
  }

  private void judged(String part) {
    List<Double> times = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      String plan = "rings: 24 at -10°, 24 at " + (1 + i) + "°";
      Object time = browser.run(script + "return judged('plan-owl', arguments[0])", plan);
      times.add(((Number) time).doubleValue());
    }
    List<Double> others = times.subList(1, times.size()).stream().sorted().toList();
    line(part, List.of(times.get(0), others.get(others.size() / 2)));
  }
}
