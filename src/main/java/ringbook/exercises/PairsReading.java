package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads an answer such as {@code 1c 2a 3b}, {@code 1-c, 2: a; 3 = b} or, all letters in order,
 * {@code c a b}.
 */
final class PairsReading {

  private PairsReading() {}

  /**
   * For each number the place of its letter, -1 where none is given; empty where the answer cannot
   * be read or gives a number twice.
   */
  static Optional<List<Integer>> read(String written, int numbers, int letters) {
    Optional<List<Integer>> bare = Letters.read(written, letters);
    if (bare.isPresent()) {
      return bare.get().size() == numbers ? bare : Optional.empty();
    }
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < numbers; i++) {
      found.add(-1);
    }
    int number = -1;
    String text = Plain.folded(written);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      int digit = c - '1';
      int letter = c - 'a';
      if (digit >= 0 && digit < numbers && number < 0 && found.get(digit) < 0) {
        number = digit;
      } else if (letter >= 0 && letter < letters && number >= 0) {
        found.set(number, letter);
        number = -1;
      } else if (" ,;:=->().→/".indexOf(c) < 0) {
        return Optional.empty();
      }
    }
    return number < 0 && any(found) ? Optional.of(found) : Optional.empty();
  }

  private static boolean any(List<Integer> found) {
    return found.stream().anyMatch(letter -> letter >= 0);
  }
}
