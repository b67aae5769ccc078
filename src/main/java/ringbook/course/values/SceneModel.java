package ringbook.course.values;

import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateScalarModel;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.problems.Nearest;
import ringbook.shots.SceneField;
import ringbook.shots.SceneField.WordField;

/** A scene with its ledger as expressions see it: section, then field. */
record SceneModel(Reckoning reckoning, String given, SceneChange change)
    implements TemplateHashModel {

  @Override
  public TemplateModel get(String section) throws TemplateModelException {
    if (section.equals("given")) {
      return (TemplateMethodModelEx) this::given;
    }
    // FreeMarker looks here for its own variables too; those are never found.
    if (!sections().contains(section)) {
      throw ExpressionFault.of(
          "no part of the ledger is called '" + section + "'",
          Nearest.help(section, sections()),
          section);
    }
    return new Section(section, this);
  }

  @Override
  public boolean isEmpty() {
    return false;
  }

  private TemplateModel given(List<?> arguments) throws TemplateModelException {
    if (arguments.size() != 1 || !(arguments.get(0) instanceof TemplateScalarModel written)) {
      throw ExpressionFault.of(
          "'given' needs one text in quotation marks",
          "write for example given(\"aim.step = 72°\")",
          "given");
    }
    String changes = written.getAsString();
    return new SceneModel(
        Reckoning.of(change.apply(reckoning.scene(), changes)), changes.strip(), change);
  }

  private Set<String> sections() {
    Set<String> sections = new LinkedHashSet<>();
    for (String key : reckoning.ledger().keys()) {
      sections.add(key.substring(0, key.indexOf('.')));
    }
    return sections;
  }

  /** One section: its quantities, and the words the scene states in it. */
  record Section(String name, SceneModel scene) implements TemplateHashModel {

    @Override
    public TemplateModel get(String field) throws TemplateModelException {
      String key = name + "." + field;
      Optional<Quantity> quantity = scene.reckoning.ledger().find(key);
      if (quantity.isPresent()) {
        return QuantityModel.of(quantity.get(), scene.reckoning, scene.given);
      }
      if (SceneField.byKey(key).orElse(null) instanceof WordField word) {
        String text = word.value().apply(scene.reckoning.scene());
        return new ShownModel(new Value.Word(key, scene.given, text), text);
      }
      throw ExpressionFault.of("no quantity is called '" + key + "'", help(key), key);
    }

    @Override
    public boolean isEmpty() {
      return false;
    }

    /** The keys a reader may use here. */
    List<String> keys() {
      List<String> keys = new ArrayList<>();
      for (String key : scene.reckoning.ledger().keys()) {
        if (key.startsWith(name + ".")) {
          keys.add(key);
        }
      }
      return keys;
    }

    private String help(String key) {
      return Nearest.to(key, scene.reckoning.ledger().keys())
          .map(near -> "did you mean '" + near + "'?")
          .orElseGet(() -> "known here: " + String.join(", ", keys()));
    }
  }
}
