package ringbook.sheets;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import ringbook.problems.Nearest;
import ringbook.problems.Position;

/** Takes in answers one by one, whatever file they come from, and tells what is wrong with them. */
final class Intake {

  private static final int LONGEST_NAME = 100;
  private static final int LONGEST_ANSWER = 2000;

  private final SheetRules rules;
  private final Faults faults;
  private final EntrySort entries;
  private final Map<String, Integer> places = new HashMap<>();
  private int file = -1;
  private long count;

  Intake(SheetRules rules, Faults faults, EntrySort entries) {
    this.rules = rules;
    this.faults = faults;
    this.entries = entries;
    for (String id : rules.exercises()) {
      places.put(id, places.size());
    }
  }

  /** The next file begins. */
  void nextFile() {
    file++;
  }

  /** Whether an exercise goes by this id. */
  boolean knows(String id) {
    return places.containsKey(id);
  }

  /** How many answers were taken. */
  long count() {
    return count;
  }

  /** Takes what stands at {@code at}; it is kept if it can be marked. */
  void take(SheetRow row, Position at) {
    String learner = name(row.learner());
    String exercise = name(row.exercise());
    if (learner.isEmpty()) {
      faults.add(at, "the learner is missing", "write a name or a number for each learner");
    } else if (exercise.isEmpty()) {
      faults.add(at, "the exercise is missing", "write the id that stands beside the exercise");
    } else if (!places.containsKey(exercise)) {
      unknownExercise(learner, exercise, at);
    } else if (isReadable(learner, row.answer(), at)) {
      meant(learner, at)
          .ifPresent(
              name ->
                  numbers(row.numbers(), at)
                      .ifPresent(own -> keep(name, places.get(exercise), row.answer(), own, at)));
    }
  }

  private void unknownExercise(String learner, String exercise, Position at) {
    faults.add(
        at,
        "no exercise has the id '" + Quote.of(exercise) + "'",
        places.containsKey(learner)
            ? "the columns learner and exercise are exchanged: write the name first"
            : Nearest.help(exercise, rules.exercises()));
  }

  private boolean isReadable(String learner, String answer, Position at) {
    if (learner.indexOf('\ufffd') >= 0 || answer.indexOf('\ufffd') >= 0) {
      faults.add(at, SheetLine.Flaw.NOT_UTF_8.message(), SheetBytes.SAVE_AS);
      return false;
    }
    if (learner.length() > LONGEST_NAME || answer.length() > LONGEST_ANSWER) {
      boolean name = learner.length() > LONGEST_NAME;
      faults.add(
          at,
          (name ? "the name" : "the answer")
              + " is longer than "
              + (name ? LONGEST_NAME : LONGEST_ANSWER)
              + " letters",
          "shorten it, or look for a quotation mark that is missing");
      return false;
    }
    return true;
  }

  private Optional<String> meant(String learner, Position at) {
    if (rules.group().isEmpty()) {
      return Optional.of(learner);
    }
    Optional<String> meant = rules.group().get().meant(learner);
    if (meant.isEmpty()) {
      faults.add(
          at,
          "'" + Quote.of(learner) + "' is not on the class list",
          Nearest.to(learner, rules.group().get().names())
              .map(near -> "did you mean '" + Quote.of(near) + "'?")
              .orElse("add the name to the class list, or take the line out"));
    }
    return meant;
  }

  private Optional<Boolean> numbers(String written, Position at) {
    String said = written.strip();
    if (said.isEmpty()) {
      return Optional.of(rules.ownNumbers());
    }
    if (said.equals("own") || said.equals("book")) {
      return Optional.of(said.equals("own"));
    }
    faults.add(
        at,
        "'" + Quote.of(said) + "' does not say which numbers were used",
        "write own for the learner's own numbers, or book for those printed in the course");
    return Optional.empty();
  }

  private void keep(String learner, int exercise, String text, boolean own, Position at) {
    try {
      Entry.Place place = new Entry.Place(file, at.line(), count++);
      entries.add(new Entry(learner, exercise, text.strip(), own, place));
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  /** A name with single spaces, its accents written in one way. */
  static String name(String text) {
    String line = text.strip();
    boolean ascii = LearnerOrder.isAscii(line);
    String one = ascii ? line : Normalizer.normalize(line, Normalizer.Form.NFC);
    return isSpaced(one) ? one : one.replaceAll("\\s+", " ");
  }

  private static boolean isSpaced(String name) {
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      if ((c < ' ') || (c == ' ' && name.charAt(i + 1) == ' ')) {
        return false;
      }
    }
    return true;
  }
}
