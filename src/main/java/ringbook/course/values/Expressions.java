package ringbook.course.values;

import freemarker.core.Environment;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.SimpleObjectWrapper;
import freemarker.template.Template;
import freemarker.template.TemplateBooleanModel;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateNumberModel;
import freemarker.template.TemplateScalarModel;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.Locale;
import java.util.Map;
import ringbook.ledger.Reckoning;
import ringbook.optics.Kit;

/** Works out the expressions of a text over one scene. */
public final class Expressions {

  private static final String BEFORE = "<#assign it = (";
  private static final String AFTER = ")>";
  private static final Configuration LOCKED = locked();

  private final SceneModel scene;

  /**
   * Expressions over the scene of {@code reckoning}.
   *
   * @param kits further kits that {@code given("kit = …")} may take, by name
   */
  public Expressions(Reckoning reckoning, Map<String, Kit> kits) {
    this.scene = new SceneModel(reckoning, "", new SceneChange(kits));
  }

  private Expressions(SceneModel scene) {
    this.scene = scene;
  }

  /** Expressions over another scene of the same course. */
  public Expressions over(Reckoning reckoning) {
    return new Expressions(new SceneModel(reckoning, "", scene.change()));
  }

  /** The scene and its quantities. */
  public Reckoning reckoning() {
    return scene.reckoning();
  }

  /**
   * What {@code expression} comes to.
   *
   * @throws ExpressionFault if it cannot be read or has no value
   */
  public Value evaluate(String expression) throws ExpressionFault {
    ExpressionGuard.check(expression);
    TemplateModel model = model(expression);
    Value value = value(model, expression);
    if (value instanceof Value.Plain plain
        && (plain.text().contains("Infinity") || plain.text().contains("NaN"))) {
      throw ExpressionFault.of(
          "the expression comes to '" + plain.text() + "', which is no number", "", "");
    }
    return value;
  }

  /**
   * Whether {@code expression} is true; a quantity that is no yes or no counts as true if it has a
   * value in this scene.
   *
   * @throws ExpressionFault if it cannot be read
   */
  public boolean holds(String expression) throws ExpressionFault {
    try {
      ExpressionGuard.check(expression);
      TemplateModel model = model(expression);
      if (model instanceof TemplateBooleanModel flag) {
        return flag.getAsBoolean();
      }
      value(model, expression);
      return true;
    } catch (ExpressionFault fault) {
      if (fault.refused()) {
        return false;
      }
      throw fault;
    } catch (TemplateException other) {
      throw unworkable(expression);
    }
  }

  private TemplateModel model(String expression) throws ExpressionFault {
    try {
      Template template = new Template("", BEFORE + expression + AFTER, LOCKED);
      Environment environment = template.createProcessingEnvironment(scene, Writer.nullWriter());
      environment.process();
      return environment.getCurrentNamespace().get("it");
    } catch (ParseException unreadable) {
      int offset = unreadable.getColumnNumber() - 1 - BEFORE.length();
      throw ExpressionFault.at(
          Math.max(0, Math.min(offset, expression.length())),
          "the expression '" + expression + "' cannot be read here",
          "look at its brackets, quotation marks and operators");
    } catch (ExpressionFault fault) {
      throw fault;
    } catch (TemplateException other) {
      throw other.getCause() instanceof ExpressionFault fault ? fault : unworkable(expression);
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
  }

  private static Value value(TemplateModel model, String expression) throws ExpressionFault {
    try {
      if (model instanceof QuantityModel quantity) {
        return quantity.value();
      }
      if (model instanceof ShownModel shown) {
        return shown.value();
      }
      if (model instanceof TemplateBooleanModel flag) {
        return new Value.Flag(flag.getAsBoolean());
      }
      if (model instanceof TemplateNumberModel number) {
        return new Value.Plain(PlainNumbers.text(number.getAsNumber().doubleValue()));
      }
      if (model instanceof TemplateScalarModel text) {
        return new Value.Plain(text.getAsString());
      }
    } catch (ExpressionFault fault) {
      throw fault;
    } catch (TemplateException other) {
      throw unworkable(expression);
    }
    throw notAValue(model, expression);
  }

  private static ExpressionFault notAValue(TemplateModel model, String expression) {
    String help =
        model instanceof SceneModel.Section section
            ? "write the key of one of its quantities, such as " + section.keys().get(0)
            : model instanceof TemplateHashModel
                ? "write the key of a quantity behind it"
                : "write the key of a quantity";
    return ExpressionFault.of("'" + expression.strip() + "' is not a value", help, "");
  }

  private static ExpressionFault unworkable(String expression) {
    return ExpressionFault.of(
        "the expression '" + expression + "' cannot be worked out",
        "see that every part is of the kind its operator needs: numbers with numbers, texts with texts",
        "");
  }

  private static Configuration locked() {
    Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
    configuration.setObjectWrapper(new SimpleObjectWrapper(Configuration.VERSION_2_3_34));
    configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    configuration.setAPIBuiltinEnabled(false);
    configuration.setTemplateLoader(null);
    configuration.setLocale(Locale.ROOT);
    configuration.setInterpolationSyntax(Configuration.DOLLAR_INTERPOLATION_SYNTAX);
    configuration.setTagSyntax(Configuration.ANGLE_BRACKET_TAG_SYNTAX);
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    configuration.setLogTemplateExceptions(false);
    configuration.setCustomNumberFormats(Map.of("plain", new PlainNumbers()));
    configuration.setNumberFormat("@plain");
    return configuration;
  }
}
