/**
 * Exercises whose answer key is the ledger, and the marking of what learners hand in.
 *
 * <p><b>Contract.</b> An {@link ringbook.exercises.Exercise} that exists can be answered: its
 * quantity is known on its scene, or exactly one of its options is right. Marking never fails:
 * every text a learner may write gets a {@link ringbook.exercises.Verdict}, and every verdict has a
 * kind sentence, the working and what to do next ({@link ringbook.exercises.Feedback}). How much a
 * verdict is worth stands in {@link ringbook.exercises.Credit} alone.
 *
 * <p><b>Layer.</b> Above the ledger, below figures; pure Java, also compiled for the browser.
 *
 * <p><b>Start at</b> {@link ringbook.exercises.Marker}.
 */
package ringbook.exercises;
