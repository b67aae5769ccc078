package ringbook.values;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.optics.Kit;
import ringbook.problems.Nearest;
import ringbook.shots.SceneChanges;
import ringbook.shots.SceneDraft.Fault;
import ringbook.shots.SceneField;
import ringbook.shots.SceneField.WordField;
import ringbook.units.Words;

/**
 * A scene with its ledger as expressions see it: sections, and what is in them.
 *
 * @param reckoning its quantities
 * @param given the changes to the scene as the author wrote them; empty for the scene itself
 * @param kits further kits that changes may take up, by name
 * @param others the same scene with changes that were asked for before, by their text, so that a
 *     table does not work out a scene anew for every cell
 */
record SceneScope(
    Reckoning reckoning, String given, Map<String, Kit> kits, Map<String, SceneScope> others) {

  SceneScope(Reckoning reckoning, String given, Map<String, Kit> kits) {
    this(reckoning, given, kits, new LinkedHashMap<>());
  }

  /** The section of that name. */
  Operand section(String name) throws ExpressionFault {
    Set<String> sections = reckoning.ledger().sections();
    if (!sections.contains(name)) {
      throw ExpressionFault.of(
          "no part of the ledger is called '" + name + "'", Nearest.help(name, sections), name);
    }
    return new Operand.OfSection(name, this);
  }

  /** The same scene with changes such as {@code aim.step = 72°, subject.height = 20 cm}. */
  SceneScope given(String changes) throws ExpressionFault {
    SceneScope known = others.get(changes);
    if (known != null) {
      return known;
    }
    SceneChanges.Result result = SceneChanges.apply(reckoning.scene(), changes, kits);
    for (Fault fault : result.faults()) {
      throw ExpressionFault.of(fault.message(), fault.help(), "\"" + changes);
    }
    SceneScope changed =
        new SceneScope(reckoning.over(result.scene().orElseThrow()), Words.trimmed(changes), kits);
    others.put(changes, changed);
    return changed;
  }

  /** The quantity or the word that the scene states under {@code key}. */
  Operand field(String key) throws ExpressionFault {
    Optional<Quantity> quantity = reckoning.ledger().find(key);
    if (quantity.isPresent()) {
      return new Operand.OfQuantity(quantity.get(), this);
    }
    if (SceneField.byKey(key).orElse(null) instanceof WordField word) {
      String text = word.value().apply(reckoning.scene());
      return new Operand.Shown(new Value.Word(key, given, text), text);
    }
    throw ExpressionFault.of("no quantity is called '" + key + "'", help(key), key);
  }

  /** The keys of the quantities in a section. */
  List<String> keys(String section) {
    List<String> keys = new ArrayList<>();
    for (String key : reckoning.ledger().keys()) {
      if (key.startsWith(section + ".")) {
        keys.add(key);
      }
    }
    return keys;
  }

  private String help(String key) {
    return Nearest.to(key, reckoning.ledger().keys())
        .map(near -> "did you mean '" + near + "'?")
        .orElseGet(
            () -> "known here: " + String.join(", ", keys(key.substring(0, key.indexOf('.')))));
  }
}
