package ringbook.output.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import ringbook.site.Browser;
import ringbook.site.Browser.Size;
import ringbook.site.ValidPage;

/** The project's own course as a site. */
final class CourseSiteTest {

  private static Path site;

  @BeforeAll
  static void write() throws IOException {
    site = DemoSite.shared().folder().resolve("site");
  }

  @Test
  void every_page_is_valid_and_every_link_leads_somewhere() throws IOException {
    for (Path page : SiteLinks.pages(site)) {
      assertThat(ValidPage.faults(page)).as("%s", page).isEmpty();
    }
    assertThat(SiteLinks.broken(site)).isEmpty();
  }

  @Test
  void every_page_works_in_a_browser_narrow_and_wide() throws IOException {
    try (Browser browser = Browser.start()) {
      for (Size size : List.of(Size.NARROW, Size.DESKTOP)) {
        browser.look(size, size == Size.DESKTOP); // dark on wide pages
        for (Path page : SiteLinks.pages(site)) {
          assertWorks(browser, page);
        }
      }
    }
  }

  private static void assertWorks(Browser browser, Path page) {
    browser.open(page);
    browser.run("document.querySelectorAll('details').forEach(d => d.open = true)");
    assertThat(browser.overhang()).as("%s", page).isZero();
    assertThat(browser.barriers()).as("%s", page).isEmpty();
    assertThat(browser.console()).as("%s", page).isEmpty();
    assertThat(browser.requests()).allMatch(address -> address.startsWith("file:"));
  }
}
