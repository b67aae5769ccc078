package ringbook.figures;

import java.util.List;
import ringbook.figures.Label.Anchor;
import ringbook.ledger.Outcome;

/** What stands in place of a drawing that this scene does not allow: the reason, in words. */
public final class RefusedFigure {

  private static final double WIDTH = 560;
  private static final double LINE = 20;

  private RefusedFigure() {}

  /** The reason and the nearest thing that works, as a figure. */
  public static Figure of(String name, Outcome.Refused refused, String idPrefix) {
    String words =
        refused.help().isEmpty()
            ? refused.reason()
            : ended(refused.reason()) + " " + Sentence.capital(refused.help());
    List<String> lines = Sentence.lines(ended(words), Label.SIZE, WIDTH - 60);
    SvgWriter svg = new SvgWriter(WIDTH, 60 + LINE * lines.size(), idPrefix);
    svg.box(svg.paper().grown(-6), Stroke.dashed(Ink.FAINT, 1.2, "6 4"), Fill.NONE);
    svg.text(
        Label.of("This cannot be drawn for this scene", new Point(30, 34), Anchor.START).bold());
    for (int i = 0; i < lines.size(); i++) {
      svg.text(Label.of(lines.get(i), new Point(30, 56 + LINE * i), Anchor.START));
    }
    String title = Sentence.capital(name) + " cannot be drawn for this scene";
    String description = ended(words);
    return new Figure(
        title,
        description,
        svg.svg(title, description),
        Readings.HEAD,
        List.of(List.of("Why not", description)));
  }

  private static String ended(String sentence) {
    return sentence.endsWith(".") ? sentence : sentence + ".";
  }
}
