package ringbook.course.compose;

import java.util.ArrayList;
import java.util.List;
import ringbook.course.ComposedLesson.Block;
import ringbook.course.ComposedLesson.Markup;

/** Gathers the blocks of a lesson, or the markup inside a box, a list or a quotation. */
final class Sink {

  private final StringBuilder markup = new StringBuilder();
  private final List<Block> blocks = new ArrayList<>();
  private final boolean takesBlocks;

  private Sink(boolean takesBlocks) {
    this.takesBlocks = takesBlocks;
  }

  /** For the blocks of a whole lesson. */
  static Sink ofLesson() {
    return new Sink(true);
  }

  /** For something that can hold markup only. */
  static Sink ofMarkup() {
    return new Sink(false);
  }

  /** Whether figures and exercises may stand here. */
  boolean takesBlocks() {
    return takesBlocks;
  }

  void add(String xhtml) {
    markup.append(xhtml).append('\n');
  }

  /** Adds markup with the line ends it has. */
  void addText(String xhtml) {
    markup.append(xhtml);
  }

  void add(Block block) {
    flush();
    blocks.add(block);
  }

  /** The markup since the last figure or exercise. */
  String markup() {
    return markup.toString();
  }

  /** All blocks in order. */
  List<Block> blocks() {
    flush();
    return blocks;
  }

  private void flush() {
    if (!markup.isEmpty()) {
      blocks.add(new Markup(markup.toString()));
      markup.setLength(0);
    }
  }
}
