package ringbook.sheets;

import ringbook.exercises.Answer;

/**
 * An answer as it was handed in.
 *
 * @param learner the name
 * @param exercise its place in the course, from 0
 * @param text what was written
 * @param ownNumbers whether it answers the learner's own numbers, or else those of the course
 * @param place where it stands
 */
record Entry(String learner, int exercise, String text, boolean ownNumbers, Place place) {

  /**
   * Where an entry stands.
   *
   * @param file which of the sheets, from 0 in the order they were read
   * @param line its line, from 1
   * @param count how many entries came before it in all sheets
   */
  record Place(int file, int line, long count) {}

  Answer answer(String id) {
    return new Answer(learner, id, text);
  }
}
