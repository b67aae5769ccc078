package ringbook.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import ringbook.figures.ChartModel.Axis;
import ringbook.figures.ChartModel.Mark;
import ringbook.figures.ChartModel.Series;
import ringbook.figures.ChartModel.Shape;
import ringbook.figures.ChartModel.Tick;
import ringbook.figures.ChartModel.Value;

final class ChartDrawingTest {

  private static final Axis ACROSS = new Axis("<turn>", 0, 10, List.of(new Tick(1234.5, "x")));
  private static final Axis UP = new Axis("share & part", 0, 4, List.of(new Tick(2, "1,000.5")));

  @Test
  void marks_lie_where_the_axes_say() throws Exception {
    Element root = SvgReading.root(chart().svg());
    List<Element> dots = new ArrayList<>();
    for (Element circle : SvgReading.all(root, "circle")) {
      if (circle.getAttribute("class").contains("fig-fill-accent")) {
        dots.add(circle);
      }
    }
    assertThat(dots).hasSize(3);
    double x0 = SvgReading.number(dots.get(0), "cx");
    double y0 = SvgReading.number(dots.get(0), "cy");
    double width = SvgReading.number(dots.get(1), "cx") - x0;
    double height = y0 - SvgReading.number(dots.get(1), "cy");
    assertThat(width).isGreaterThan(400);
    assertThat(height).isGreaterThan(200);
    // The third mark lies at 3 of 10 across and 1 of 4 up.
    assertThat(SvgReading.number(dots.get(2), "cx")).isCloseTo(x0 + 0.3 * width, within(0.01));
    assertThat(SvgReading.number(dots.get(2), "cy")).isCloseTo(y0 - 0.25 * height, within(0.01));
  }

  @Test
  void texts_are_text_and_ticks_are_as_given() throws Exception {
    List<String> texts = new ArrayList<>();
    for (Element text : SvgReading.all(SvgReading.root(chart().svg()), "text")) {
      texts.add(text.getTextContent());
      assertThat(text.getAttribute("class")).matches("fig-text|fig-paper fig-fill-paper");
    }
    assertThat(texts).contains("<turn>", "share & part", "1,000.5", "the line");
  }

  @Test
  void a_series_is_one_stroke_with_its_own_dashes() throws Exception {
    List<Element> strokes = new ArrayList<>();
    for (Element path : SvgReading.all(SvgReading.root(chart().svg()), "polyline")) {
      if (path.getAttribute("class").equals("fig-second")) {
        strokes.add(path);
      }
    }
    assertThat(strokes).hasSize(1);
    assertThat(strokes.get(0).getAttribute("stroke-dasharray")).isEqualTo("8 4");
    assertThat(strokes.get(0).getAttribute("fill")).isEqualTo("none");
  }

  private static Figure chart() {
    List<Value> line = List.of(new Value(0, 0), new Value(5, 1), new Value(10, 4));
    List<Mark> marks = List.of(dot(0, 0), dot(10, 4), dot(3, 1));
    Series series = new Series("the line", Stroke.dashed(Ink.SECOND, 2, "8 4"), line, 0.5);
    ChartModel model =
        new ChartModel(
            "A chart",
            "A line.",
            ACROSS,
            UP,
            List.of(),
            List.of(),
            List.of(series),
            marks,
            List.of(),
            List.of("x"),
            List.of(List.of("1")));
    return ChartDrawing.of(model, "c");
  }

  private static Mark dot(double x, double y) {
    return new Mark(new Value(x, y), "", Shape.DOT, Ink.ACCENT, false);
  }
}
