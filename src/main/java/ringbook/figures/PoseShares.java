package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.PatchClass;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.View;
import ringbook.assess.coverage.Viewpoint;
import ringbook.assess.findings.BestFocus;
import ringbook.figures.Label.Anchor;
import ringbook.geometry.Patches;
import ringbook.ledger.Reckoning;
import ringbook.shots.Leg;
import ringbook.shots.Pose;
import ringbook.shots.SceneChanges;
import ringbook.shots.ShotPlan;
import ringbook.units.Length;
import ringbook.units.Numbers;

/**
 * Which pose sees what, by the way the surface faces: a bar for each, parted into what the first
 * pose sees well, both, the second, and neither alone.
 */
final class PoseShares {

  private static final double WIDTH = 560;
  private static final double LEFT = 138;
  private static final double LONG = 400;
  private static final double TOP = 20;
  private static final double PITCH = 40;
  private static final double THICK = 26;
  private static final String[] FACING = {
    "faces up", "slopes upwards", "upright", "slopes downwards", "faces down"
  };
  private static final String[] MARKS = {"1: ", "1+2: ", "2: ", "–: "};
  private static final String[] SEEN = {"first only", "both", "second only", "neither alone"};
  private static final Fill[] FILLS = {Fill.TONE_3, Fill.TONE_5, Fill.TONE_1, Fill.PAPER};

  /** Sines of 60° and 20°: from where a surface counts as level, and as sloping. */
  private static final double LEVEL = 0.8660254;

  private static final double SLOPING = 0.3420201;

  private final String name;
  private final double[][] area = new double[FACING.length][SEEN.length];

  private PoseShares(Reckoning reckoning) {
    name = reckoning.scene().subject().name();
    Reckoning both =
        Reckoning.of(SceneChanges.apply(reckoning.scene(), "aim.poses = 2").scene().orElseThrow());
    SeenScene seen = new SeenScene(both, 450);
    List<View> views = focused(seen.seeing(), seen.plan());
    Coverage first = of(seen.seeing(), views, Pose.STANDING);
    Coverage second = of(seen.seeing(), views, Pose.TURNED_OVER);
    Patches patches = seen.seeing().surface().patches();
    for (int i = 0; i < patches.count(); i++) {
      boolean one = first.patch(i).patchClass() == PatchClass.WELL;
      boolean two = second.patch(i).patchClass() == PatchClass.WELL;
      int column = one ? (two ? 1 : 0) : (two ? 2 : 3);
      area[facing(patches.normal(i).z())][column] += patches.area(i);
    }
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new PoseShares(reckoning).figure(idPrefix);
  }

  /** All photographs; those of legs whose focus leaves much blurred are focused elsewhere. */
  private static List<View> focused(Seeing seeing, ShotPlan plan) {
    List<View> all = new ArrayList<>();
    for (ShotPlan.Shot shot : plan.shots()) {
      all.add(seeing.look(Viewpoint.of(shot)));
    }
    BestFocus search = new BestFocus(seeing);
    int from = 0;
    for (Leg leg : plan.legs()) {
      int to = from + leg.stations().size();
      List<Length> best = search.sharper(all.subList(from, to));
      for (int i = from; !best.isEmpty() && i < to; i++) {
        all.set(i, seeing.focused(all.get(i), best.get(0)));
      }
      from = to;
    }
    return all;
  }

  private static Coverage of(Seeing seeing, List<View> views, Pose pose) {
    List<View> taken = new ArrayList<>();
    for (View view : views) {
      if (view.viewpoint().setup().pose() == pose) {
        taken.add(view);
      }
    }
    return Coverage.of(seeing, taken);
  }

  private static int facing(double up) {
    if (up > SLOPING) {
      return up > LEVEL ? 0 : 1;
    }
    return up < -SLOPING ? (up < -LEVEL ? 4 : 3) : 2;
  }

  private Figure figure(String idPrefix) {
    List<List<String>> table = new ArrayList<>();
    int bars = 0;
    for (double[] row : area) {
      bars += sum(row) > 0 ? 1 : 0;
    }
    double height = TOP + PITCH * bars + 44;
    SvgWriter svg = new SvgWriter(WIDTH, height, idPrefix);
    double y = TOP;
    for (int k = 0; k < FACING.length; k++) {
      double all = sum(area[k]);
      if (all == 0) {
        continue;
      }
      bar(svg, y, FACING[k], area[k], all);
      List<String> cells = new ArrayList<>(List.of(FACING[k]));
      for (double part : area[k]) {
        cells.add(percent(part / all));
      }
      table.add(cells);
      y += PITCH;
    }
    key(svg, y + 14);
    String title = "Which pose sees what";
    String description = description();
    List<String> head = new ArrayList<>(List.of("The surface"));
    head.addAll(List.of(SEEN));
    return new Figure(title, description, svg.svg(title, description), head, table);
  }

  private static void bar(SvgWriter svg, double y, String what, double[] parts, double all) {
    svg.text(Label.of(what, new Point(LEFT - 10, y + THICK / 2 + 5), Anchor.END));
    double x = LEFT;
    for (int c = 0; c < parts.length; c++) {
      double wide = LONG * parts[c] / all;
      if (wide > 0) {
        svg.box(new Box(x, y, x + wide, y + THICK), Stroke.THIN, FILLS[c]);
        String told = MARKS[c] + percent(parts[c] / all);
        if (TextWidth.of(told, Label.SMALL) < wide - 6) {
          Point at = new Point(x + wide / 2, y + THICK / 2 + 4);
          svg.bare(Label.small(told, at, Anchor.MIDDLE));
        }
      }
      x += wide;
    }
  }

  private static void key(SvgWriter svg, double y) {
    double x = LEFT;
    svg.text(Label.small("seen well by", new Point(LEFT - 10, y + 12), Anchor.END));
    for (int c = 0; c < SEEN.length; c++) {
      svg.box(new Box(x, y, x + 18, y + 15), Stroke.THIN, FILLS[c]);
      svg.text(Label.small(SEEN[c], new Point(x + 23, y + 12), Anchor.START));
      x += 40 + TextWidth.of(SEEN[c], Label.SMALL);
    }
  }

  private static double sum(double[] row) {
    double sum = 0;
    for (double part : row) {
      sum += part;
    }
    return sum;
  }

  private double share(int column) {
    double all = 0;
    double in = 0;
    for (double[] row : area) {
      all += sum(row);
      in += row[column];
    }
    return in / all;
  }

  private String description() {
    return "The surface of the "
        + name
        + " sorted by the way it faces, a bar for each, as planned for two poses, each run focused"
        + " where most of it is sharp. Of the whole surface the first pose alone sees "
        + percent(share(0))
        + " well, both poses "
        + percent(share(1))
        + ", the second alone "
        + percent(share(2))
        + ", and neither alone "
        + percent(share(3))
        + ".";
  }

  private static String percent(double share) {
    return Numbers.fixed(100 * share, 0) + "\u00a0%";
  }
}
