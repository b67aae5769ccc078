package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.ledger.Reckoning;

/** The files of the day in the order they are taken: a slate, a run, the next slate, and so on. */
final class CardStrip {

  private static final double WIDTH = 560;
  private static final double TOP = 40;
  private static final double ROW = 27;
  private static final double SLATE = 128;
  private static final double BAR = 154;
  private static final double LONGEST = 216;
  private static final int MOST_ROWS = 11;
  private static final int MOST_FRAMES = 60;

  private final Readings readings;
  private final SvgWriter svg;
  private final List<Run> runs = new ArrayList<>();

  /** Photographs without a break, with the numbers of their files. */
  private record Run(String name, int photos, int first) {

    int last() {
      return first + photos - 1;
    }

    String told() {
      return photos + ": files " + first + " to " + last();
    }
  }

  private CardStrip(Reckoning reckoning, String idPrefix) {
    readings = new Readings(reckoning);
    gather();
    int rows = Math.min(runs.size(), MOST_ROWS + 1) + 1;
    svg = new SvgWriter(WIDTH, TOP + rows * ROW + 10, idPrefix);
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new CardStrip(reckoning, idPrefix).figure();
  }

  private void gather() {
    int ring = (int) (readings.si("ring.photos") * readings.si("aim.repeats"));
    int poses = (int) readings.si("aim.poses");
    for (int pose = 1; pose <= poses; pose++) {
      String before = pose == 1 ? "" : "Pose " + pose + ": ";
      int rings = (int) readings.si(pose == 1 ? "rings.count" : "pose.rings");
      for (int i = 1; i <= rings; i++) {
        add(before + (pose == 1 ? "Ring " : "ring ") + i, ring);
      }
      add(before + (pose == 1 ? "Over the top" : "top"), (int) readings.si("rings.topViews"));
    }
  }

  private void add(String name, int photos) {
    int before = runs.isEmpty() ? 0 : runs.get(runs.size() - 1).last();
    runs.add(new Run(name, photos, before + 2)); // the slate comes first
  }

  private Figure figure() {
    svg.text(Label.of("slate", new Point(SLATE + 18, TOP - 16), Anchor.END).bold());
    svg.text(Label.of("photographs of the run", new Point(BAR, TOP - 16), Anchor.START).bold());
    int rows = 0;
    for (Run run : runs) {
      if (rows == MOST_ROWS && runs.size() > MOST_ROWS) {
        String more = "… and " + (runs.size() - rows) + " more";
        svg.text(Label.of(more, new Point(14, middle(rows) + 5), Anchor.START));
        rows++;
        break;
      }
      draw(run, rows++);
    }
    svg.text(Label.of("The end", new Point(14, middle(rows) + 5), Anchor.START));
    slate(middle(rows));
    readings.tabulate(
        "rings.count", "ring.photos", "rings.topViews", "job.runs", "job.slates", "job.files");
    runs.forEach(run -> readings.row(run.name(), run.told()));
    return readings.figure(svg, "The day as it lies on the card", description());
  }

  private static double middle(int row) {
    return TOP + row * ROW + 8;
  }

  private void draw(Run run, int row) {
    double y = middle(row);
    svg.text(Label.of(run.name(), new Point(14, y + 5), Anchor.START));
    slate(y);
    int most = runs.stream().mapToInt(Run::photos).max().orElse(1);
    double length = Math.max(4, LONGEST * run.photos() / most);
    svg.box(new Box(BAR, y - 8, BAR + length, y + 8), Stroke.THIN, Fill.FAINT);
    for (int i = 1; i < run.photos() && most <= MOST_FRAMES; i++) {
      double x = BAR + length * i / run.photos();
      svg.line(new Point(x, y - 8), new Point(x, y + 8), Stroke.solid(Ink.FAINT, 0.6));
    }
    svg.text(Label.of(run.told(), new Point(BAR + length + 8, y + 5), Anchor.START));
  }

  private void slate(double y) {
    svg.box(new Box(SLATE, y - 8, SLATE + 18, y + 8), Stroke.OUTLINE, Fill.ACCENT);
  }

  private String description() {
    Run first = runs.get(0);
    Run last = runs.get(runs.size() - 1);
    return "A list from top to bottom in the order of shooting. Each run begins with a photograph"
        + " of the slate. It begins with "
        + first.name()
        + " ("
        + first.told()
        + ") and ends with "
        + last.name()
        + " ("
        + last.told()
        + ") and a slate. There are "
        + readings.count("job.runs", "run")
        + " and "
        + readings.count("job.slates", "slate")
        + "; with the spare photographs that makes "
        + readings.text("job.files")
        + " files.";
  }
}
