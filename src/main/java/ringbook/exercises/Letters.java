package ringbook.exercises;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Reads letters of options in a learner's answer: {@code a, c}; {@code a and c}; {@code ac}. */
final class Letters {

  private static final List<String> FILLERS =
      List.of("and", "then", "&", "+", "->", ">", "→", "-", "option", "options", "answer", "step");

  private Letters() {}

  /** The letter of the place {@code index}: a, b, c … */
  static String of(int index) {
    return String.valueOf(ChoiceTask.letter(index));
  }

  /** The letters of these places with commas: {@code a, c}. */
  static String list(List<Integer> indices) {
    List<String> letters = new ArrayList<>();
    indices.forEach(index -> letters.add(of(index)));
    return String.join(", ", letters);
  }

  /** The letters in words: {@code a}, {@code a and c}, {@code a, b and c}. */
  static String words(List<Integer> indices) {
    int last = indices.size() - 1;
    return last < 1
        ? list(indices)
        : list(indices.subList(0, last)) + " and " + of(indices.get(last));
  }

  /**
   * The places of the letters written, in the order written; empty where something else is written
   * than letters of {@code count} things.
   */
  static Optional<List<Integer>> read(String written, int count) {
    List<Integer> found = new ArrayList<>();
    for (String word : words(Plain.folded(written))) {
      if (FILLERS.contains(word)) {
        continue;
      }
      for (int i = 0; i < word.length(); i++) {
        int index = word.charAt(i) - 'a';
        if (index < 0 || index >= count) {
          return Optional.empty();
        }
        found.add(index);
      }
    }
    return found.isEmpty() ? Optional.empty() : Optional.of(found);
  }

  /** Those of 0 to {@code count} - 1 that are not in {@code found}. */
  static List<Integer> missing(List<Integer> found, int count) {
    List<Integer> missing = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      if (!found.contains(i)) {
        missing.add(i);
      }
    }
    return missing;
  }

  /** Those that are in {@code found} more than once, each once. */
  static List<Integer> doubled(List<Integer> found) {
    List<Integer> doubled = new ArrayList<>();
    for (int i = 0; i < found.size(); i++) {
      boolean again = found.indexOf(found.get(i)) < i;
      if (again && !doubled.contains(found.get(i))) {
        doubled.add(found.get(i));
      }
    }
    Collections.sort(doubled);
    return doubled;
  }

  /** What stands between blanks, commas, semicolons and brackets. */
  private static List<String> words(String text) {
    List<String> words = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    for (int i = 0; i <= text.length(); i++) {
      char c = i < text.length() ? text.charAt(i) : ' ';
      if (" ,;:/()[].".indexOf(c) < 0) {
        word.append(c);
      } else if (word.length() > 0) {
        words.add(word.toString());
        word.setLength(0);
      }
    }
    return words;
  }
}
