package ringbook.ledger;

import java.util.Optional;

/**
 * A heading of the ledger: entries whose keys begin with the same word.
 *
 * @param word the first part of the keys
 * @param title what stands under it
 */
public record Heading(String word, String title) {

  private static final String[][] TITLES = {
    {"kit", "Camera and lens"},
    {"subject", "The object"},
    {"place", "The place"},
    {"aim", "What is wanted"},
    {"distance", "Distance and framing"},
    {"sharp", "Sharpness"},
    {"light", "Light and exposure"},
    {"motion", "Movement and shutter"},
    {"flicker", "Flicker of lamps"},
    {"ring", "One ring"},
    {"pair", "Two neighbours"},
    {"rings", "Rings at heights"},
    {"low", "The low ring"},
    {"job", "The whole job"},
    {"pose", "The second pose"},
    {"room", "The room"},
    {"hole", "Holes and pockets"},
    {"strip", "Strips"},
    {"precision", "Precision"},
    {"scale", "True size"},
    {"check", "The check before you leave"},
    {"handover", "The hand-over"},
    {"fitness", "Is the object fit?"}
  };

  /** The heading that the entry with this key stands under. */
  public static Heading of(String key) {
    String word = key.substring(0, key.indexOf('.'));
    return new Heading(word, title(word).orElse(word));
  }

  private static Optional<String> title(String word) {
    for (String[] row : TITLES) {
      if (row[0].equals(word)) {
        return Optional.of(row[1]);
      }
    }
    return Optional.empty();
  }
}
