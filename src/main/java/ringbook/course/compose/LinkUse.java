package ringbook.course.compose;

import ringbook.problems.Position;

/**
 * A link to a place in a lesson, to be checked when all lessons have been written.
 *
 * @param lesson the lesson it leads to
 * @param anchor the name in that lesson; empty for its beginning
 * @param position where it stands
 */
record LinkUse(String lesson, String anchor, Position position) {}
