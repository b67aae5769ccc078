package ringbook.site;

import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.opentest4j.TestAbortedException;

/**
 * A real browser for tests of pages: opens files from disk, without any network, and tells what a
 * reader would run into. One instance serves many pages.
 */
public final class Browser implements AutoCloseable {

  private static final File CHROMIUM = new File("/usr/bin/chromium");
  private static final File DRIVER = new File("/usr/bin/chromedriver");
  private static final Pattern ASKED =
      Pattern.compile(
          "\"method\":\"Network.requestWillBeSent\".*?\"request\":\\{.*?\"url\":\"([^\"]*)\"");

  /** Width and height of the part of the window that shows the page, in CSS pixels. */
  public enum Size {
    /** The narrowest page that must not scroll sideways (WCAG 2.2, success criterion 1.4.10). */
    NARROW(320, 640),
    PHONE(390, 844),
    DESKTOP(1280, 900);

    private final int width;
    private final int height;

    Size(int width, int height) {
      this.width = width;
      this.height = height;
    }
  }

  private static Browser shared;

  private final ChromeDriver driver;

  private Browser(ChromeDriver driver) {
    this.driver = driver;
  }

  /**
   * Starts the browser. Where it is missing the test is skipped, with a loud message, but fails on
   * a build server ({@code CI=true}).
   */
  public static Browser start() {
    if (!CHROMIUM.exists() || !DRIVER.exists()) {
      String message = "NOT TESTED IN A BROWSER: " + CHROMIUM + " and " + DRIVER + " are needed";
      System.err.println("\n*** " + message + " ***\n");
      if ("true".equals(System.getenv("CI"))) {
        throw new AssertionError(message);
      }
      throw new TestAbortedException(message);
    }
    ChromeDriverService service =
        new ChromeDriverService.Builder().usingDriverExecutable(DRIVER).usingAnyFreePort().build();
    ChromeDriver driver = new ChromeDriver(service, options());
    driver.manage().timeouts().scriptTimeout(Duration.ofMinutes(5));
    return new Browser(driver);
  }

  /**
   * One browser for all test classes that leave it as they found it; it ends with the last test.
   * Not for tests on several threads.
   */
  public static Browser shared() {
    if (shared == null) {
      shared = start();
      Runtime.getRuntime().addShutdownHook(new Thread(shared::close));
    }
    return shared;
  }

  private static ChromeOptions options() {
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    logs.enable(LogType.PERFORMANCE, Level.ALL);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(CHROMIUM);
    options.setCapability("goog:loggingPrefs", logs);
    options.addArguments("--headless=new", "--no-sandbox", "--disable-dev-shm-usage");
    options.addArguments("--disable-gpu", "--no-first-run", "--disable-sync");
    options.addArguments("--disable-background-networking", "--disable-component-update");
    options.addArguments("--disable-default-apps", "--metrics-recording-only");
    options.addArguments("--host-resolver-rules=MAP * ~NOTFOUND");
    return options;
  }

  /** Sets the size of the page and whether the reader's system is dark; holds for later pages. */
  public void look(Size size, boolean dark) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of(
            "width", size.width, "height", size.height, "deviceScaleFactor", 1, "mobile", false));
    Map<String, String> scheme =
        Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light");
    driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("features", List.of(scheme)));
  }

  /** From now on saves what a page gives its reader to keep, into this folder. */
  public void downloadTo(Path folder) {
    driver.executeCdpCommand(
        "Browser.setDownloadBehavior",
        Map.of("behavior", "allow", "downloadPath", folder.toAbsolutePath().toString()));
  }

  /** Waits up to a minute, which a busy machine may need, until a condition in JavaScript holds. */
  public void until(String condition) {
    new WebDriverWait(driver, Duration.ofSeconds(60), Duration.ofMillis(20))
        .until(any -> Boolean.TRUE.equals(run("return Boolean(" + condition + ")")));
  }

  /** The first element of the page that a selector of CSS finds. */
  public WebElement one(String selector) {
    return driver.findElement(By.cssSelector(selector));
  }

  /** All of them. */
  public List<WebElement> all(String selector) {
    return driver.findElements(By.cssSelector(selector));
  }

  /** Opens a page from disk, after forgetting what earlier pages logged. */
  public void open(Path page) {
    driver.manage().logs().get(LogType.BROWSER);
    driver.manage().logs().get(LogType.PERFORMANCE);
    driver.get(page.toUri().toString());
    run("return document.fonts.ready.then(() => true)");
  }

  /** Runs a script with {@code arguments} and gives what it returns. */
  public Object run(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  /** What the console says since the page was opened. */
  public List<String> console() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(LogEntry::getMessage)
        .toList();
  }

  /** Addresses asked for since the page was opened. */
  public List<String> requests() {
    List<String> addresses = new ArrayList<>();
    for (LogEntry entry : driver.manage().logs().get(LogType.PERFORMANCE)) {
      Matcher asked = ASKED.matcher(entry.getMessage());
      if (asked.find()) {
        addresses.add(asked.group(1));
      }
    }
    return addresses;
  }

  /** How many pixels the page is wider than its window. */
  public long overhang() {
    return (Long) run("const e = document.documentElement; return e.scrollWidth - e.clientWidth");
  }

  /** What the accessibility rules of the library axe-core find wrong, one line a finding. */
  public List<String> barriers() {
    return barriersBut("");
  }

  /** The same, but for elements that the selector {@code left} names; empty for all elements. */
  public List<String> barriersBut(String left) {
    driver.executeScript(axe());
    String context = left.isEmpty() ? "document" : "{exclude: [['" + left + "']]}";
    Object found = // no preload: it would ask for the style sheets once more
        run(
            "return axe.run("
                + context
                + ", {preload: false}).then(r => r.violations.map(v =>"
                + " v.id + ': ' + v.help + ' ' + v.nodes.map(n => n.html).join(' ')))");
    return ((List<?>) found).stream().map(String::valueOf).toList();
  }

  private static String axe() {
    try (InputStream in = AxeBuilder.class.getResourceAsStream("/axe.min.js")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The driver, for clicks and keys. */
  public ChromeDriver driver() {
    return driver;
  }

  /** Saves a picture of the window. */
  public void picture(Path file) throws IOException {
    Files.write(file, driver.getScreenshotAs(OutputType.BYTES));
  }

  @Override
  public void close() {
    driver.quit();
  }
}
