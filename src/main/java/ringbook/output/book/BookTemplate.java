package ringbook.output.book;

import freemarker.cache.ClassTemplateLoader;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.DefaultObjectWrapperBuilder;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.Version;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;

/** Fills {@code book.ftlh}: from the pages to one XHTML text with the style sheet in its head. */
final class BookTemplate {

  private static final String FOLDER = "/ringbook/site/book";
  private static final Version VERSION = Configuration.VERSION_2_3_34;

  private BookTemplate() {}

  /** The whole book as one XHTML document. */
  static String fill(BookPages pages) throws IOException {
    StringWriter out = new StringWriter();
    try {
      configuration().getTemplate("book.ftlh").process(Map.of("book", pages, "css", css()), out);
    } catch (TemplateException wrong) {
      throw new IllegalStateException("book.ftlh: " + wrong.getMessage(), wrong);
    }
    return out.toString();
  }

  private static Configuration configuration() {
    Configuration configuration = new Configuration(VERSION);
    configuration.setTemplateLoader(new ClassTemplateLoader(BookTemplate.class, FOLDER));
    configuration.setObjectWrapper(new DefaultObjectWrapperBuilder(VERSION).build());
    configuration.setDefaultEncoding(StandardCharsets.UTF_8.name());
    configuration.setLocale(Locale.ROOT);
    configuration.setNumberFormat("computer");
    configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    configuration.setLogTemplateExceptions(false);
    return configuration;
  }

  private static String css() throws IOException {
    try (InputStream in = BookTemplate.class.getResourceAsStream(FOLDER + "/book.css")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
