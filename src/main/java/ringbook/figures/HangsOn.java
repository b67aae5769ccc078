package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.ledger.Reckoning;
import ringbook.units.Num;
import ringbook.units.Numbers;

/**
 * What becomes of the numbers of a plan if one of the measures behind them is a tenth too large.
 */
final class HangsOn {

  private static final double WIDTH = 560;
  private static final double LEFT = 150;
  private static final double TOP = 62;
  private static final double WIDE = 80;
  private static final double TALL = 34;
  private static final double ERROR = 1.1;

  private static final String[][] MEASURES = {
    {"subject.height", "height"},
    {"distance.turningWidth", "width"},
    {"place.tableHeight", "table height"},
    {"kit.focalLength", "focal length"},
    {"aim.fill", "share of frame"},
    {"aim.step", "turn"}
  };
  private static final String[][] RESULTS = {
    {"distance.standoff", "distance", "to the face"},
    {"distance.samplingMiddle", "pixel", "on the object"},
    {"ring.lensHeight", "height", "of the lens"},
    {"room.standing", "room", "needed"},
    {"ring.photos", "photographs", "in a ring"}
  };

  private final Reckoning reckoning;
  private final SvgWriter svg;
  private final List<List<String>> table = new ArrayList<>();

  private HangsOn(Reckoning reckoning, String idPrefix) {
    this.reckoning = reckoning;
    svg = new SvgWriter(WIDTH, TOP + TALL * MEASURES.length + 12, idPrefix);
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new HangsOn(reckoning, idPrefix).figure();
  }

  private Figure figure() {
    svg.text(Label.small("10 % too large:", new Point(LEFT - 10, TOP - 12), Anchor.END));
    List<String> head = new ArrayList<>(List.of("Measured 10 % too large"));
    for (int c = 0; c < RESULTS.length; c++) {
      double x = LEFT + WIDE * c + WIDE / 2;
      svg.text(Label.small(RESULTS[c][1], new Point(x, TOP - 26), Anchor.MIDDLE));
      svg.text(Label.small(RESULTS[c][2], new Point(x, TOP - 11), Anchor.MIDDLE));
      head.add(Sentence.capital(RESULTS[c][1]) + " " + RESULTS[c][2]);
    }
    for (int k = 0; k < MEASURES.length; k++) {
      double y = TOP + TALL * k;
      svg.text(Label.of(MEASURES[k][1], new Point(LEFT - 10, y + TALL / 2 + 5), Anchor.END));
      List<String> cells = new ArrayList<>(List.of(Sentence.capital(MEASURES[k][1])));
      for (int c = 0; c < RESULTS.length; c++) {
        double change = change(MEASURES[k][0], RESULTS[c][0]);
        double x = LEFT + WIDE * c;
        svg.box(new Box(x, y, x + WIDE, y + TALL), Stroke.solid(Ink.FAINT, 0.8), tone(change));
        Point at = new Point(x + WIDE / 2, y + TALL / 2 + 5);
        svg.bare(Label.of(told(change), at, Anchor.MIDDLE));
        cells.add(told(change));
      }
      table.add(cells);
    }
    String title = "What hangs on what";
    String description =
        "Rows are what you measure or choose, columns what follows. Each field says by how much the"
            + " result changes if the row is taken a tenth too large; 0 where it does not matter.";
    return new Figure(title, description, svg.svg(title, description), head, table);
  }

  private double change(String measure, String result) {
    double before = reckoning.si(result);
    double after = Curve.with(reckoning, measure, ERROR * reckoning.si(measure)).si(result);
    return before == 0 ? 0 : after / before - 1;
  }

  private static String told(double change) {
    String text = Numbers.fixed(Num.round(100 * Math.abs(change)), 0);
    return text.equals("0") ? "0" : (change < 0 ? "−" : "+") + text + "\u00a0%";
  }

  private static Fill tone(double change) {
    double size = Math.abs(change);
    if (size < 0.005) {
      return Fill.PAPER;
    }
    return size < 0.045 ? Fill.TONE_1 : size < 0.085 ? Fill.TONE_2 : Fill.TONE_4;
  }
}
