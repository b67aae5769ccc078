package ringbook.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.GZIPOutputStream;
import ringbook.Scenes;
import ringbook.browser.CourseData;
import ringbook.site.Browser;

/**
 * Prints the sizes of the pages' scripts and how long its calls take in a real browser, from disk:
 * the first time, then the median of many. The last column sets each against a fixed piece of
 * arithmetic in the same page. Then what a reader waits for on real pages: {@link RealPages}.
 */
public final class PageBench {

  private static final String SCRIPTS = "/ringbook/site/js/";

  private PageBench() {}

  /** Runs the bench; no arguments. */
  public static void main(String[] arguments) throws IOException {
    Path folder = Files.createTempDirectory("ringbook-bench");
    for (String name : List.of("calc.js", "sight.js")) {
      byte[] script = script(name);
      System.out.printf(
          Locale.ROOT, "%s %,d bytes, %,d compressed%n", name, script.length, compressed(script));
      Files.write(folder.resolve(name), script);
    }
    CourseData course =
        new CourseData(
            "bench", Scenes.pot(), Map.of("lens camera", Scenes.potWithLensCamera().kit()));
    Files.writeString(folder.resolve("course.js"), course.script());
    Files.copy(
        PageBench.class.getResourceAsStream("/ringbook/browser/bench.js"),
        folder.resolve("bench.js"));
    Files.writeString(
        folder.resolve("page.html"),
        "<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><title>Bench</title>"
            + "<script>var begun = performance.now();</script><script src=\"calc.js\"></script>"
            + "<script>var loaded = performance.now() - begun; begun = performance.now();</script>"
            + "<script src=\"sight.js\"></script>"
            + "<script src=\"course.js\"></script><script src=\"bench.js\"></script>");
    try (Browser browser = Browser.start()) {
      browser.open(folder.resolve("page.html"));
      double load = ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
      System.out.printf(Locale.ROOT, "load of the machine: %.1f%n", load);
      browser.driver().manage().timeouts().scriptTimeout(Duration.ofMinutes(5));
      print((List<?>) browser.run("return bench()"));
      try (RealPages pages = new RealPages(browser)) {
        pages.print();
      }
    } finally {
      for (String name : List.of("calc.js", "sight.js", "course.js", "bench.js", "page.html")) {
        Files.deleteIfExists(folder.resolve(name));
      }
      Files.deleteIfExists(folder);
    }
  }

  private static void print(List<?> rows) {
    double unit = number(((List<?>) rows.get(rows.size() - 1)).get(2));
    System.out.println("part                              first      warm   warm / reference");
    for (Object row : rows) {
      List<?> cells = (List<?>) row;
      System.out.printf(
          Locale.ROOT,
          "%-28s %7.1f ms %7.2f ms %10.3f%n",
          cells.get(0),
          number(cells.get(1)),
          number(cells.get(2)),
          number(cells.get(2)) / unit);
    }
  }

  private static double number(Object cell) {
    return ((Number) cell).doubleValue();
  }

  private static byte[] script(String name) throws IOException {
    try (InputStream in = PageBench.class.getResourceAsStream(SCRIPTS + name)) {
      if (in == null) {
        throw new IOException(name + " was not built");
      }
      return in.readAllBytes();
    }
  }

  private static int compressed(byte[] script) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (OutputStream zipped = new GZIPOutputStream(bytes)) {
      zipped.write(script);
    }
    return bytes.size();
  }
}
