package ringbook.sheets;

import java.util.Optional;

/**
 * A line of a sheet.
 *
 * @param text without its line end; empty where it has a flaw
 * @param number from 1
 * @param flaw why it cannot be read
 */
record SheetLine(String text, int number, Optional<Flaw> flaw) {

  /** What keeps a line from being read. */
  enum Flaw {
    NOT_UTF_8(
        "the sheet is not UTF-8 but something else, most likely Windows-1252", SheetBytes.SAVE_AS),
    NUL("the line holds bytes that are no text", "save the sheet again, as CSV UTF-8"),
    TOO_LONG(
        "the line is longer than " + SheetLines.LONGEST + " bytes",
        "look for a line end that is missing, or a picture that was pasted in");

    private final String message;
    private final String help;

    Flaw(String message, String help) {
      this.message = message;
      this.help = help;
    }

    String message() {
      return message;
    }

    String help() {
      return help;
    }
  }
}
