package ringbook.output.site;

import freemarker.cache.ClassTemplateLoader;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.util.Locale;
import java.util.Map;

/** The page templates of the site. */
final class Templates {

  private final Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);

  Templates() {
    configuration.setTemplateLoader(
        new ClassTemplateLoader(Templates.class.getClassLoader(), Assets.ROOT + "templates"));
    configuration.setDefaultEncoding("UTF-8");
    configuration.setLocale(Locale.ROOT);
    configuration.setNumberFormat("computer");
    configuration.setRecognizeStandardFileExtensions(true);
    configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    configuration.setLogTemplateExceptions(false);
  }

  /** The page that the template of this name makes of the model. */
  String fill(String name, Map<String, Object> model) throws IOException {
    StringWriter page = new StringWriter();
    try {
      configuration.getTemplate(name + ".ftlh").process(model, page);
    } catch (TemplateException fault) {
      throw new IllegalStateException("site template " + name, fault);
    }
    return page.toString();
  }
}
