package ringbook.site;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import nu.validator.client.EmbeddedValidator;
import org.xml.sax.SAXException;

/**
 * Checks a page with the validator library nu.validator (HTML living standard), without network.
 * Two remarks are left out: slashes in void elements, which are allowed, and what it says of a
 * security policy, because to it no file is of the same origin as another; {@link Browser} proves
 * the policy.
 */
public final class ValidPage {

  private static final Pattern MESSAGE =
      Pattern.compile("\\{\"type\":\"[^}]*?\"message\":\"([^\"]*)\"[^}]*\\}");

  /** Its schemas call themselves once for every part of a page: long lessons need a deep stack. */
  private static final long STACK_BYTES = 256L << 20;

  private ValidPage() {}

  /** All errors and warnings of the page. */
  public static List<String> faults(Path page) throws IOException {
    FutureTask<String> report = new FutureTask<>(() -> report(page));
    Thread deep = new Thread(null, report, "page validator", STACK_BYTES);
    deep.start();
    try {
      return faults(report.get());
    } catch (ExecutionException e) {
      throw new IOException(page.toString(), e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException(e);
    }
  }

  private static String report(Path page) throws IOException, SAXException {
    EmbeddedValidator validator = new EmbeddedValidator();
    validator.setOutputFormat(EmbeddedValidator.OutputFormat.JSON);
    return validator.validate(page);
  }

  private static List<String> faults(String report) {
    List<String> faults = new ArrayList<>();
    Matcher message = MESSAGE.matcher(report);
    while (message.find()) {
      String text = message.group(1);
      if (!text.startsWith("Trailing slash") && !text.startsWith("Resource violates Content")) {
        faults.add(message.group());
      }
    }
    return faults;
  }
}
