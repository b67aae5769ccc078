package ringbook.exercises;

/**
 * What a learner handed in for one exercise, as written.
 *
 * @param learner the name or number the learner goes by
 * @param exercise id of the exercise
 * @param text the answer; blank where none was given
 */
public record Answer(String learner, String exercise, String text) {}
