package ringbook.sheets;

import java.util.List;

/**
 * One answer as a sheet has it, whatever its form.
 *
 * @param learner who
 * @param exercise to which exercise
 * @param answer what was written
 * @param numbers {@code own}, {@code book} or nothing: from which numbers it was worked out
 */
record SheetRow(String learner, String exercise, String answer, String numbers) {

  /** What every sheet must name. */
  static final List<String> COLUMNS = List.of("learner", "exercise", "answer");

  /** What a sheet may name beside. */
  static final String NUMBERS = "numbers";
}
