package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import ringbook.figures.ChartModel.Along;
import ringbook.figures.Label.Anchor;

/** Puts marks, names and values onto a drawn chart, the words where they cover nothing. */
final class ChartLabels {

  private static final double GAP = 8;

  private final ChartModel model;
  private final ChartScale scale;
  private final Box area;
  private final SvgWriter svg;
  private final LabelPlacer placer;

  ChartLabels(ChartModel model, ChartScale scale, SvgWriter svg) {
    this.model = model;
    this.scale = scale;
    this.area = scale.area();
    this.svg = svg;
    placer = new LabelPlacer(new Box(area.left() + 2, 2, area.right() + 10, area.bottom() - 2));
  }

  void write() {
    Point corner = new Point(4, area.top() - 11);
    svg.text(
        placer.fixed(new Label(model.up().label(), corner, Anchor.START, 13, Label.Weight.NORMAL)));
    keepOffLines();
    for (ChartModel.Mark mark : model.marks()) {
      Point at = scale.at(mark.at());
      MarkShape.draw(svg, at, mark);
      placer.keepOff(new Box(at.x(), at.y(), at.x(), at.y()).grown(5));
    }
    for (ChartModel.Mark mark : model.marks()) {
      if (mark.key()) {
        svg.text(
            placer.fixed(Label.small(mark.text(), scale.at(mark.at()).plus(GAP, 4), Anchor.START)));
      }
    }
    for (ChartModel.Mark mark : model.marks()) {
      if (!mark.text().isEmpty() && !mark.key()) {
        svg.text(placer.beside(Label.small(mark.text(), scale.at(mark.at()), Anchor.START), GAP));
      }
    }
    for (ChartModel.Note note : model.notes()) {
      svg.text(
          placer.fixed(Label.small(note.text(), scale.at(note.at()).plus(0, 4), Anchor.START)));
    }
    model.bands().forEach(this::name);
    model.rules().forEach(this::name);
    model.series().forEach(this::name);
  }

  private void keepOffLines() {
    for (ChartModel.Series series : model.series()) {
      for (int i = 1; i < series.points().size(); i++) {
        placer.keepOff(scale.at(series.points().get(i - 1)), scale.at(series.points().get(i)));
      }
    }
    for (ChartModel.Rule rule : model.rules()) {
      if (rule.along() == Along.ACROSS) {
        double x = scale.x(rule.at());
        placer.keepOff(new Point(x, area.top()), new Point(x, area.bottom()));
      } else {
        double y = scale.y(rule.at());
        placer.keepOff(new Point(area.left(), y), new Point(area.right(), y));
      }
    }
  }

  private void name(ChartModel.Band band) {
    double middle = scale.x((band.from() + band.to()) / 2);
    Label label = Label.of(band.text(), new Point(middle, area.top() - 11), Anchor.MIDDLE);
    double half = label.box().width() / 2;
    double left = 16 + TextWidth.of(model.up().label(), 13) + half;
    double x = Math.max(left, Math.min(area.right() - half, middle));
    svg.text(placer.fixed(label.bold().movedTo(new Point(x, label.at().y()), Anchor.MIDDLE)));
  }

  private void name(ChartModel.Rule rule) {
    if (rule.text().isEmpty()) {
      return;
    }
    List<Label> places = new ArrayList<>();
    Label label = Label.small(rule.text(), new Point(0, 0), Anchor.START);
    if (rule.along() == Along.ACROSS) {
      for (double y = area.top() + 12; y < area.bottom(); y += 16) {
        places.add(label.movedTo(new Point(scale.x(rule.at()) + 5, y), Anchor.START));
        places.add(label.movedTo(new Point(scale.x(rule.at()) - 5, y), Anchor.END));
      }
    } else {
      for (double x = area.right() - 4; x > area.left() + 60; x -= 40) {
        places.add(label.movedTo(new Point(x, scale.y(rule.at()) - 6), Anchor.END));
        places.add(label.movedTo(new Point(x, scale.y(rule.at()) + 15), Anchor.END));
      }
    }
    svg.text(placer.place(label, places));
  }

  private void name(ChartModel.Series series) {
    if (series.label().isEmpty()) {
      return;
    }
    int last = series.points().size() - 1;
    List<Label> places = new ArrayList<>();
    Label label = Label.of(series.label(), new Point(0, 0), Anchor.START);
    for (int shift = 0; shift <= last; shift += 4) {
      for (int side : new int[] {1, -1}) {
        int index = (int) (series.labelAt() * last) + side * shift;
        if (index >= 0 && index <= last) {
          Point at = scale.at(series.points().get(index));
          places.add(label.movedTo(at.plus(7, -8), Anchor.START));
          places.add(label.movedTo(at.plus(-7, -8), Anchor.END));
          places.add(label.movedTo(at.plus(7, 17), Anchor.START));
          places.add(label.movedTo(at.plus(-7, 17), Anchor.END));
        }
      }
    }
    svg.text(placer.place(label, places));
  }
}
