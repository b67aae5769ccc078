package ringbook.charts;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import ringbook.figures.Fill;
import ringbook.figures.Ink;
import ringbook.figures.Stroke;
import ringbook.units.Decimal;

/** Colours and pens of the figures as the chart library wants them, and back to their classes. */
final class Palette {

  private Palette() {}

  static Color of(Ink ink) {
    return Color.decode(ink.colour());
  }

  static Color of(Fill fill) {
    return Color.decode(fill.colour());
  }

  static BasicStroke of(Stroke stroke) {
    float width = (float) stroke.width();
    if (stroke.dash().isEmpty()) {
      return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }
    List<Double> lengths = new ArrayList<>();
    for (String length : stroke.dash().split(" ", -1)) {
      lengths.add(Decimal.parse(length).orElseThrow());
    }
    float[] dash = new float[lengths.size()];
    for (int i = 0; i < dash.length; i++) {
      dash[i] = lengths.get(i).floatValue();
    }
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
  }

  /** The class for a stroke of that colour. */
  static String strokeClass(String colour) {
    for (Ink ink : Ink.values()) {
      if (ink.colour().equals(colour)) {
        return ink.styleClass();
      }
    }
    throw new IllegalArgumentException("no ink has the colour " + colour);
  }

  /** The class for a fill of that colour. */
  static String fillClass(String colour) {
    for (Fill fill : Fill.values()) {
      if (fill.colour().equals(colour)) {
        return fill.styleClass();
      }
    }
    throw new IllegalArgumentException("no fill has the colour " + colour);
  }
}
