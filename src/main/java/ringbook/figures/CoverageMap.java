package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.Limits;
import ringbook.assess.coverage.PatchClass.Group;
import ringbook.figures.Label.Anchor;
import ringbook.geometry.Patches;
import ringbook.ledger.Reckoning;
import ringbook.units.Num;
import ringbook.units.Numbers;
import ringbook.units.Unit;

/**
 * The surface unrolled: across, the direction round the object; down, its parts from top to bottom;
 * in every field, by how many photographs it is seen so that they can be matched.
 */
public final class CoverageMap {

  private static final double WIDTH = 560;

  /** Room for the names of the rows, more where they are long. */
  private static final double LEFT = 128;

  private static final double WIDEST_LEFT = 210;
  private static final double TOP = 40;
  private static final double ROW = 22;
  private static final int COLUMNS = 18;
  private static final int STEPS = 6;

  /** More rows would make letters too small where a page holds the whole drawing. */
  private static final int MOST_ROWS = 36;

  private static final int[] FROM = {1, Limits.VIEWS, 8, 16, 30};

  private final Coverage coverage;
  private final Patches patches;
  private final String name;
  private final List<Row> rows = new ArrayList<>();
  private final double left;

  /** A band of one part between two heights above the table. */
  private static final class Row {
    private final int part;
    private final double low;
    private final double high;
    private final double[] views = new double[COLUMNS];
    private final double[] area = new double[COLUMNS];

    Row(int part, double low, double high) {
      this.part = part;
      this.low = low;
      this.high = high;
    }

    int mean(int column) {
      return (int) Num.round(views[column] / area[column]);
    }
  }

  private CoverageMap(Coverage coverage, String name) {
    this.coverage = coverage;
    this.name = name;
    patches = coverage.seeing().surface().patches();
    for (int most = STEPS; most >= 1 && (rows.isEmpty() || rows.size() > MOST_ROWS); most--) {
      rows.clear();
      for (int part = 0; part < patches.parts().size(); part++) {
        addRows(part, most);
      }
    }
    rows.sort((a, b) -> Double.compare(b.low + b.high, a.low + a.high));
    double room = LEFT;
    for (Row row : rows) {
      room = Math.max(room, TextWidth.of(rowName(row), Label.SMALL) + 14);
    }
    left = Math.min(room, WIDEST_LEFT);
  }

  /** For the ledger's standard plan. */
  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    SeenScene seen = new SeenScene(reckoning, 900);
    return of(seen.coverage(seen.plan()), reckoning.scene().subject().name(), idPrefix);
  }

  /**
   * For any set of views.
   *
   * @param name of the object
   * @param idPrefix put before every id
   */
  public static Figure of(Coverage coverage, String name, String idPrefix) {
    return new CoverageMap(coverage, name).figure(idPrefix);
  }

  private void addRows(int part, int most) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double area = 0;
    for (int i = 0; i < patches.count(); i++) {
      if (patches.part(i) == part) {
        low = Math.min(low, patches.z(i));
        high = Math.max(high, patches.z(i));
        area += patches.area(i);
      }
    }
    if (area == 0) {
      return;
    }
    double side = Math.sqrt(patches.area() / patches.count());
    int bands = (int) Math.max(1, Math.min(most, Math.floor((high - low) / (2 * side))));
    List<Row> found = new ArrayList<>();
    for (int k = bands - 1; k >= 0; k--) {
      double from = low + (high - low) * k / bands;
      found.add(new Row(part, from, low + (high - low) * (k + 1) / bands));
    }
    fill(found, low, high);
    rows.addAll(found);
  }

  private void fill(List<Row> found, double low, double high) {
    for (int i = 0; i < patches.count(); i++) {
      if (patches.part(i) == found.get(0).part) {
        double share = high > low ? (patches.z(i) - low) / (high - low) : 0;
        int band = (int) Math.min(found.size() - 1, Math.floor(share * found.size()));
        Row row = found.get(found.size() - 1 - band);
        int column = column(i);
        row.area[column] += patches.area(i);
        row.views[column] += patches.area(i) * coverage.patch(i).tied();
      }
    }
  }

  /** Columns run from the near side (−90°), where station 1 stands, as a ring is walked. */
  private int column(int i) {
    double turn = Num.atan2(patches.y(i), patches.x(i)) / (2 * Math.PI) + 0.25;
    turn -= Math.floor(turn);
    return (int) Math.min(COLUMNS - 1, Math.floor(turn * COLUMNS));
  }

  private Figure figure(String idPrefix) {
    double height = TOP + ROW * rows.size() + 76;
    SvgWriter svg = new SvgWriter(WIDTH, height, idPrefix);
    double wide = (WIDTH - left - 12) / COLUMNS;
    svg.text(
        Label.small(
            "seen from the near side on, as a ring is walked", new Point(left, 18), Anchor.START));
    for (int k = 0; k < rows.size(); k++) {
      Row row = rows.get(k);
      double y = TOP + ROW * k;
      String label = Sentence.fitted(rowName(row), Label.SMALL, left - 12);
      svg.text(Label.small(label, new Point(left - 8, y + 15), Anchor.END));
      for (int c = 0; c < COLUMNS; c++) {
        if (row.area[c] > 0) {
          cell(svg, new Box(left + wide * c, y, left + wide * (c + 1), y + ROW), row.mean(c));
        }
      }
    }
    drawAxis(svg, TOP + ROW * rows.size(), wide);
    drawKey(svg, height - 24);
    String title = "How many photographs see each spot so that they can be matched";
    String description = description();
    return new Figure(title, description, svg.svg(title, description), head(), table());
  }

  private void cell(SvgWriter svg, Box box, int views) {
    svg.box(box, Stroke.solid(Ink.FAINT, 0.6), tone(views));
    Point at = new Point(box.middleX(), box.middleY() + 4);
    svg.bare(Label.small(String.valueOf(views), at, Anchor.MIDDLE));
  }

  private static Fill tone(int views) {
    Fill fill = Fill.PAPER;
    for (int k = 0; k < FROM.length; k++) {
      fill = views >= FROM[k] ? Fill.TONES.get(k) : fill;
    }
    return fill;
  }

  private void drawAxis(SvgWriter svg, double y, double wide) {
    String[] sides = {"near", "right", "far", "left"};
    for (int k = 0; k < 4; k++) {
      double x = left + wide * COLUMNS * k / 4;
      svg.line(new Point(x, y), new Point(x, y + 6), Stroke.THIN);
      svg.text(Label.small(sides[k], new Point(x, y + 19), k == 0 ? Anchor.START : Anchor.MIDDLE));
    }
  }

  private void drawKey(SvgWriter svg, double y) {
    String[] texts = {"0", "1–2", "3–7", "8–15", "16–29", "30 and more"};
    double x = left;
    for (int k = 0; k < texts.length; k++) {
      Fill fill = k == 0 ? Fill.PAPER : Fill.TONES.get(k - 1);
      svg.box(new Box(x, y, x + 16, y + 14), Stroke.solid(Ink.FAINT, 0.6), fill);
      svg.text(Label.small(texts[k], new Point(x + 20, y + 12), Anchor.START));
      x += 32 + TextWidth.of(texts[k], Label.SMALL);
    }
    svg.text(Label.small("photographs", new Point(left - 8, y + 12), Anchor.END));
  }

  private String rowName(Row row) {
    double table = coverage.seeing().scene().place().tableHeight().metres();
    String part = patches.parts().get(row.part);
    Unit unit = coverage.seeing().scene().aim().lengths().axis(false);
    String height = Numbers.fixed(unit.fromSi(row.low - table), 0);
    String to = Numbers.fixed(unit.fromSi(row.high - table), 0);
    return (part.isEmpty() ? "surface" : part)
        + " "
        + (height.equals(to) ? height : height + "–" + to)
        + "\u00a0"
        + unit.symbol();
  }

  private static List<String> head() {
    return List.of("Part and height above the table", "Fewest", "Mean", "Most");
  }

  private List<List<String>> table() {
    List<List<String>> table = new ArrayList<>();
    for (Row row : rows) {
      int fewest = Integer.MAX_VALUE;
      int most = 0;
      double views = 0;
      double area = 0;
      for (int c = 0; c < COLUMNS; c++) {
        if (row.area[c] > 0) {
          fewest = Math.min(fewest, row.mean(c));
          most = Math.max(most, row.mean(c));
          views += row.views[c];
          area += row.area[c];
        }
      }
      table.add(
          List.of(
              rowName(row),
              String.valueOf(fewest),
              Numbers.fixed(views / area, 1),
              String.valueOf(most)));
    }
    return table;
  }

  private String description() {
    return "The surface of the "
        + name
        + " laid flat, with the number of matchable photographs in every field; darker is more. "
        + percent(Group.WELL)
        + " of the surface is seen well, "
        + percent(Group.THIN)
        + " thinly, "
        + percent(Group.UNSEEN)
        + " not at all.";
  }

  private String percent(Group group) {
    return Numbers.fixed(100 * coverage.share(group), 0) + "\u00a0%";
  }
}
