package ringbook.output.pack;

import ringbook.ledger.Outcome;
import ringbook.ledger.Reckoning;

/** The numbers of the ledger as the templates of the sheets read them. */
public final class PackNumbers {

  private static final String NONE = "–";

  private final Reckoning reckoning;

  PackNumbers(Reckoning reckoning) {
    this.reckoning = reckoning;
  }

  /** The value with its unit; a dash where the scene allows none. */
  public String of(String key) {
    return known(key) ? reckoning.text(key) : NONE;
  }

  /** Behind a number of things; beside lengths in inches, "32 in all" would be a length. */
  public String inAll() {
    return reckoning.scene().aim().lengths().either("in all", "altogether");
  }

  /** Whether the scene allows a value. */
  public boolean known(String key) {
    return reckoning.of(key) instanceof Outcome.Known;
  }

  /** Whether the scene allows a value and it is above nothing. */
  public boolean some(String key) {
    return reckoning.of(key) instanceof Outcome.Known known && known.si() > 0;
  }

  /** Whether a question of the ledger is answered with yes. */
  public boolean yes(String key) {
    return known(key) && reckoning.yes(key);
  }
}
