package ringbook.output.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Follows the links of a written site. */
final class SiteLinks {

  private static final Pattern LINK = Pattern.compile(" (?:href|src)=\"([^\"]*)\"");

  private SiteLinks() {}

  static List<Path> pages(Path site) throws IOException {
    try (Stream<Path> all = Files.list(site)) {
      return all.filter(p -> p.toString().endsWith(".html")).sorted().toList();
    }
  }

  static long count(Path site) throws IOException {
    long links = 0;
    for (Path page : pages(site)) {
      links += LINK.matcher(Files.readString(page)).results().count();
    }
    return links;
  }

  /** Links that lead to no file or no place in a file, as {@code page: link}. */
  static List<String> broken(Path site) throws IOException {
    List<String> broken = new ArrayList<>();
    for (Path page : pages(site)) {
      for (MatchResult link : LINK.matcher(Files.readString(page)).results().toList()) {
        if (!leads(page, link.group(1))) {
          broken.add(page.getFileName() + ": " + link.group(1));
        }
      }
    }
    return broken;
  }

  private static boolean leads(Path page, String href) throws IOException {
    if (href.startsWith("https://")) {
      return true; // never followed: tests need no network
    }
    String[] parts = href.split("#", 2);
    Path target = parts[0].isEmpty() ? page : page.resolveSibling(parts[0]);
    return Files.isRegularFile(target)
        && (parts.length == 1 || Files.readString(target).contains(" id=\"" + parts[1] + "\""));
  }
}
