package ringbook.course.compose;

import com.vladsch.flexmark.ast.FencedCodeBlock;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import com.vladsch.flexmark.util.sequence.SegmentedSequence;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringbook.course.ComposedLesson.Branch;
import ringbook.course.markdown.Markdown;
import ringbook.problems.Nearest;
import ringbook.values.ExpressionFault;

/** Writes fences: what their first word says they are. */
final class FenceWriter {

  /** Boxes and the headings they have where the author gives none. */
  private static final Map<String, String> BOXES =
      Map.of(
          "caution", "Take care", "try", "Try it", "slips", "Common slips", "summary", "In short");

  private static final List<String> WORDS =
      List.of(
          "figure",
          "working",
          "exercise",
          "when",
          "unless",
          "caution",
          "try",
          "slips",
          "summary",
          "table",
          TermList.FENCE);

  private static final List<String> PLAIN = List.of("text", "shell", "csv", "yaml", "markdown");

  private final Scope scope;

  FenceWriter(Scope scope) {
    this.scope = scope;
  }

  void write(FencedCodeBlock fence, Sink sink) {
    if (fence.getClosingMarker().isEmpty()) {
      scope.fault(
          fence,
          "the fence '" + fence.getOpeningMarker() + fence.getInfo() + "' is not closed",
          "end it with a line of '" + fence.getOpeningMarker() + "'");
    }
    Fence read = Fence.of(fence);
    if (BOXES.containsKey(read.word())) {
      box(read, sink);
      return;
    }
    switch (read.word()) {
      case "when" -> condition(read, true, sink);
      case "unless" -> condition(read, false, sink);
      case "working" -> working(read, sink);
      case "figure" -> new FigureWriter(scope).write(read, sink);
      case "table" -> new StockTableWriter(scope).write(read, sink);
      case TermList.FENCE -> new TermsWriter(scope).write(read, sink);
      case "exercise" -> new ExerciseWriter(scope).write(read, sink);
      default -> plain(read, sink);
    }
  }

  private void working(Fence fence, Sink sink) {
    if (FadedWriter.isMeant(fence)) {
      FadedWriter.write(scope, fence, sink);
    } else {
      sink.add(new WorkingWriter(scope).write(fence));
    }
  }

  private void plain(Fence fence, Sink sink) {
    if (!fence.word().isEmpty() && !PLAIN.contains(fence.word())) {
      List<String> known = new ArrayList<>(WORDS);
      known.addAll(PLAIN);
      scope.fault(
          fence.wordOffset(),
          "no fence begins with '" + fence.word() + "'",
          Nearest.help(fence.word(), known));
    }
    sink.add("<pre><code>" + Xhtml.text(fence.body().normalizeEOL()) + "</code></pre>");
  }

  private void box(Fence fence, Sink sink) {
    String title =
        fence.rest().isEmpty() ? BOXES.get(fence.word()) : OneParagraph.write(fence.rest(), scope);
    sink.add(
        "<section class=\""
            + fence.word()
            + "\"><h3>"
            + title
            + "</h3>\n"
            + new BlockWriter(scope).inside(Markdown.parse(fence.body()))
            + "</section>");
  }

  private void condition(Fence fence, boolean wanted, Sink sink) {
    boolean kept = wanted;
    String expression = fence.rest().toString();
    try {
      kept = scope.values().holds(expression) == wanted;
    } catch (ExpressionFault fault) {
      int offset = fence.rest().getStartOffset() + fault.offsetIn(expression);
      scope.fault(offset, fault.fault(), fault.help());
    }
    // What does not hold is written all the same: a reader's scene may turn it round, and a wrong
    // name must not wait for that.
    Sink inner = sink.takesBlocks() ? Sink.ofLesson() : Sink.ofMarkup();
    new BlockWriter(kept ? scope : scope.dropping()).write(Markdown.parse(fence.body()), inner);
    if (sink.takesBlocks()) {
      sink.add(new Branch(expression, wanted, kept, inner.blocks()));
    } else {
      sink.add(Branches.open(expression, wanted, kept) + "\n" + inner.markup() + Branches.CLOSE);
    }
  }

  /**
   * A fence taken apart.
   *
   * @param word the first word behind the backticks; may be empty
   * @param wordOffset where it stands
   * @param rest what follows on the same line
   * @param body the lines between
   */
  record Fence(String word, int wordOffset, BasedSequence rest, BasedSequence body) {

    static Fence of(FencedCodeBlock block) {
      BasedSequence info = block.getInfo();
      int end = 0;
      while (end < info.length() && info.charAt(end) != ' ') {
        end++;
      }
      int offset = info.isEmpty() ? block.getStartOffset() : info.getStartOffset();
      return new Fence(
          info.subSequence(0, end).toString(),
          offset,
          info.subSequence(end, info.length()).trim(),
          lines(block));
    }

    /** The lines without the indentation of the fence, each at its place in the file. */
    private static BasedSequence lines(FencedCodeBlock block) {
      List<BasedSequence> lines = block.getContentLines();
      return lines.isEmpty()
          ? block.getChars().subSequence(0, 0)
          : SegmentedSequence.create(block.getChars().getBaseSequence(), lines);
    }
  }
}
