package ringbook.figures;

import java.util.List;
import ringbook.shots.Subject;
import ringbook.units.Num;

/** The object in plan. */
final class SubjectOutline {

  private SubjectOutline() {}

  static void draw(SvgWriter svg, View view, Subject subject) {
    double x = subject.width().metres() / 2;
    double y = halfDepth(subject);
    if (subject.outline() == Subject.Outline.ROUND) {
      svg.circle(view.origin(), x * view.scale(), Stroke.OUTLINE, Fill.FAINT);
    } else {
      svg.polygon(
          List.of(view.at(-x, -y), view.at(x, -y), view.at(x, y), view.at(-x, y)),
          Stroke.OUTLINE,
          Fill.FAINT);
    }
  }

  /** Middle to front, in metres. */
  static double halfDepth(Subject subject) {
    return subject.depth().metres() / 2;
  }

  /** The smallest box round it on the drawing. */
  static Box box(View view, Subject subject) {
    double x = subject.width().metres() / 2;
    double y = halfDepth(subject);
    return Plan.box(List.of(view.at(-x, -y), view.at(x, y)));
  }

  /** Middle to the outermost point, in metres. */
  static double reach(Subject subject) {
    double half = subject.width().metres() / 2;
    return subject.outline() == Subject.Outline.ROUND ? half : Num.hypot(half, halfDepth(subject));
  }
}
