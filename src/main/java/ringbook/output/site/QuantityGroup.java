package ringbook.output.site;

import freemarker.core.TemplateXMLOutputModel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringbook.course.ComposedQuantity;
import ringbook.ledger.Heading;

/**
 * Quantities whose keys begin with the same word.
 *
 * @param name that word
 * @param title what they are about
 * @param rows the quantities in order
 */
public record QuantityGroup(String name, String title, List<Row> rows) {

  /** Keeps the rows. */
  public QuantityGroup {
    rows = List.copyOf(rows);
  }

  /**
   * One quantity.
   *
   * @param entry its plain texts
   * @param symbol typeset
   * @param formula typeset
   */
  public record Row(
      ComposedQuantity entry, TemplateXMLOutputModel symbol, TemplateXMLOutputModel formula) {}

  /** The quantities by group, both in the order of the ledger. */
  static List<QuantityGroup> of(List<ComposedQuantity> quantities, Fragments fragments) {
    Map<String, List<Row>> groups = new LinkedHashMap<>();
    for (ComposedQuantity entry : quantities) {
      String group = entry.key().substring(0, entry.key().indexOf('.'));
      Row row =
          new Row(
              entry,
              fragments.ready(entry.symbolXhtml()),
              fragments.ready(repeats(entry) ? "" : entry.formulaXhtml()));
      groups.computeIfAbsent(group, g -> new ArrayList<>()).add(row);
    }
    return groups.entrySet().stream()
        .map(e -> new QuantityGroup(e.getKey(), Heading.of(e.getKey() + ".").title(), e.getValue()))
        .toList();
  }

  /** Of a stated number the rule says no more than the meaning does. */
  private static boolean repeats(ComposedQuantity entry) {
    String meaning = entry.meaning();
    return meaning.regionMatches(true, 0, entry.formulaXhtml(), 0, entry.formulaXhtml().length());
  }
}
