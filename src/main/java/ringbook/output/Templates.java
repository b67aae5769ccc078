package ringbook.output;

import freemarker.cache.ClassTemplateLoader;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;

/**
 * The templates and style sheets of all formats. They are data in the folder {@code site} of the
 * project, one sub-folder a format, and travel in the jar; names are paths in it without ending.
 */
public final class Templates {

  private static final String ROOT = "ringbook/site/";

  private final Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);

  /** The templates on the class path. */
  public Templates() {
    configuration.setTemplateLoader(
        new ClassTemplateLoader(Templates.class.getClassLoader(), ROOT));
    configuration.setDefaultEncoding("UTF-8");
    configuration.setLocale(Locale.ROOT);
    configuration.setNumberFormat("computer");
    configuration.setRecognizeStandardFileExtensions(true);
    configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    configuration.setLogTemplateExceptions(false);
  }

  /** The page that the template of this name, such as {@code book/book}, makes of the model. */
  public String fill(String name, Map<String, ?> model) throws IOException {
    StringWriter page = new StringWriter();
    try {
      configuration.getTemplate(name + ".ftlh").process(model, page);
    } catch (TemplateException fault) {
      throw new IllegalStateException("template " + name + ": " + fault.getMessage(), fault);
    }
    return page.toString();
  }

  /** The text of a style sheet, such as {@code css/palette}. */
  public static String style(String name) throws IOException {
    String file = ROOT + name + ".css";
    try (InputStream in = Templates.class.getClassLoader().getResourceAsStream(file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
