package ringbook.figures;

import java.util.Map;
import ringbook.ledger.Reckoning;

/** Draws one kind of diagram. */
@FunctionalInterface
public interface Drawing {

  /**
   * The diagram for the scene of {@code reckoning}.
   *
   * @param options what the author chose, by name
   * @param idPrefix put before every id, so that ids stay unique on a page
   * @throws ringbook.ledger.RefusedException if the scene has no number that the diagram needs
   */
  Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix);
}
