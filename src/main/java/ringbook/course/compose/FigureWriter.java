package ringbook.course.compose;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringbook.course.ComposedFigure;
import ringbook.course.ComposedLesson.FigureBlock;
import ringbook.figures.Figure;
import ringbook.problems.Nearest;

/** Places figures and counts them through the course. */
final class FigureWriter {

  private final Scope scope;

  FigureWriter(Scope scope) {
    this.scope = scope;
  }

  void write(FenceWriter.Fence fence, Sink sink) {
    FigureSource figures = scope.page().course().parts().figures();
    String[] words = fence.rest().toString().split(" +", -1);
    String name = words[0];
    String caption = caption(fence);
    if (!figures.names().contains(name)) {
      scope.fault(
          name.isEmpty() ? fence.wordOffset() : fence.rest().getStartOffset(),
          name.isEmpty() ? "the figure has no name" : "no figure is called '" + name + "'",
          Nearest.help(name, figures.names()));
      return;
    }
    Map<String, String> options = options(fence, words, figures.options(name));
    if (!sink.takesBlocks()) {
      scope.fault(
          fence.wordOffset(),
          "a figure cannot stand inside a box, a list or a quotation",
          "put it before or after");
      return;
    }
    sink.add(
        new FigureBlock(
            scope.dropped()
                ? undrawn(name, options, caption, fence)
                : figure(name, options, caption, fence)));
  }

  private String caption(FenceWriter.Fence fence) {
    if (fence.body().isBlank()) {
      scope.fault(
          fence.wordOffset(), "the figure has no caption", "say below what it shows in a sentence");
      return "";
    }
    return OneParagraph.write(fence.body(), scope);
  }

  private Map<String, String> options(FenceWriter.Fence fence, String[] words, List<String> known) {
    Map<String, String> options = new LinkedHashMap<>();
    for (int i = 1; i < words.length; i++) {
      int sign = words[i].indexOf('=');
      String name = sign < 0 ? words[i] : words[i].substring(0, sign);
      if (sign < 0 || !known.contains(name)) {
        scope.fault(
            fence.rest().getStartOffset() + fence.rest().toString().indexOf(words[i]),
            sign < 0
                ? "'" + words[i] + "' is no option: a value is missing"
                : "the figure '" + words[0] + "' has no option '" + name + "'",
            sign < 0 ? "write it like name=value" : Nearest.help(name, known));
      } else {
        options.put(name, words[i].substring(sign + 1));
      }
    }
    return options;
  }

  private ComposedFigure figure(
      String name, Map<String, String> options, String caption, FenceWriter.Fence fence) {
    CourseScope course = scope.page().course();
    String id = id(name, fence);
    Figure drawn =
        course.parts().figures().draw(name, options, scope.values().reckoning(), id + "-");
    return new ComposedFigure(
        id,
        course.nextFigure(),
        caption,
        drawn.svg(),
        drawn.title(),
        drawn.description(),
        drawn.tableHead(),
        drawn.tableRows(),
        name,
        options);
  }

  /** A figure that stands in other scenes alone. */
  private ComposedFigure undrawn(
      String name, Map<String, String> options, String caption, FenceWriter.Fence fence) {
    return new ComposedFigure(
        id(name + "-other", fence), 0, caption, "", "", "", List.of(), List.of(), name, options);
  }

  private String id(String name, FenceWriter.Fence fence) {
    PageIds ids = scope.page().ids();
    return ids.full(ids.free(name, scope.places().apply(fence.wordOffset())));
  }
}
