package ringbook.course;

import java.util.List;
import ringbook.course.ComposedLesson.Block;

/**
 * A page at the back of the course, such as the glossary: composed like a lesson, but no station of
 * the way round and without exercises.
 *
 * @param id its name in links and file names
 * @param title plain text
 * @param aim one sentence that says what the page is for, plain text
 * @param blocks its content in order, text and figures, for the course's own scene
 * @param live the same, and with it what it says for other scenes; see {@link ComposedLesson#live}
 */
public record BackPage(String id, String title, String aim, List<Block> blocks, List<Block> live) {

  public BackPage {
    blocks = List.copyOf(blocks);
    live = List.copyOf(live);
  }
}
