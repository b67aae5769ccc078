package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.PatchViews;
import ringbook.figures.Label.Anchor;
import ringbook.geometry.Vec3;
import ringbook.ledger.Reckoning;
import ringbook.ledger.RefusedException;
import ringbook.shots.Leg;
import ringbook.shots.Station;
import ringbook.shots.Subject;
import ringbook.units.Angle;
import ringbook.units.Numbers;

/** Which stations of the ring see one spot, from above and from the side, with their rays. */
final class WhoSees {

  private static final double WIDTH = 560;
  private static final double HEIGHT = 560;

  private final Reckoning reckoning;
  private final SvgWriter svg;
  private final View plan;
  private final View side;
  private final Leg ring;
  private final PatchViews patch;
  private final Vec3 spot;

  private WhoSees(Reckoning reckoning, String idPrefix) {
    this.reckoning = reckoning;
    svg = new SvgWriter(WIDTH, HEIGHT, idPrefix);
    SeenScene seen = new SeenScene(reckoning, 600);
    ring = seen.ring();
    Coverage coverage = seen.coverage(ring);
    int facing = seen.facing(ring.stations().get(0));
    spot = seen.seeing().surface().patches().point(facing);
    patch = coverage.patch(facing);
    if (patch.views().isEmpty()) {
      throw new RefusedException(
          "no station of this ring sees the middle of the side well: " + patch.patchClass().words(),
          "change the elevation of the ring or the f-number");
    }
    double reach = Math.max(farthest(), SubjectOutline.reach(reckoning.scene().subject()));
    plan = new View(158 / reach, new Point(WIDTH / 2, 196));
    side = new View(158 / reach, new Point(WIDTH / 2, 470));
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new WhoSees(reckoning, idPrefix).figure();
  }

  private double farthest() {
    double farthest = 0;
    for (Station station : ring.stations()) {
      Vec3 at = station.position();
      farthest = Math.max(farthest, new Vec3(at.x(), at.y(), 0).norm());
    }
    return farthest;
  }

  private double middle() {
    return ring.stations().get(0).target().z();
  }

  private Point above(Vec3 at) {
    return plan.at(at.x(), at.y());
  }

  /** From the right: near to the left, up is up. */
  private Point beside(Vec3 at) {
    return side.at(at.y(), (at.z() - middle()));
  }

  private Figure figure() {
    Subject subject = reckoning.scene().subject();
    SubjectOutline.draw(svg, plan, subject);
    double half = SubjectOutline.halfDepth(subject);
    double tall = subject.height().metres() / 2;
    svg.polygon(
        List.of(
            side.at(-half, -tall), side.at(half, -tall), side.at(half, tall), side.at(-half, tall)),
        Stroke.OUTLINE,
        Fill.FAINT);
    for (int i = 0; i < ring.stations().size(); i++) {
      station(ring.stations().get(i), patch.views().contains(i));
    }
    svg.dot(above(spot), 4, Fill.TEXT);
    svg.dot(beside(spot), 4, Fill.TEXT);
    svg.text(Label.of("from above", new Point(16, 24), Anchor.START).bold());
    svg.text(Label.of("from the side", new Point(16, 400), Anchor.START).bold());
    key();
    String title = "Who sees one spot";
    String description = description();
    return new Figure(
        title, description, svg.svg(title, description), List.of("Quantity", "Value"), table());
  }

  private void station(Station station, boolean sees) {
    Stroke ray = Stroke.solid(Ink.ACCENT, 1);
    for (int k = 0; k < 2; k++) {
      Point at = k == 0 ? above(station.position()) : beside(station.position());
      if (sees) {
        svg.line(at, k == 0 ? above(spot) : beside(spot), ray);
        svg.dot(at, 3.4, Fill.ACCENT);
      } else {
        svg.circle(at, 3.2, Stroke.solid(Ink.FAINT, 1.2), Fill.PAPER);
      }
    }
  }

  private void key() {
    svg.dot(new Point(400, 20), 3.4, Fill.ACCENT);
    svg.text(Label.small("sees the spot well", new Point(410, 24), Anchor.START));
    svg.circle(new Point(400, 38), 3.2, Stroke.solid(Ink.FAINT, 1.2), Fill.PAPER);
    svg.text(Label.small("does not", new Point(410, 42), Anchor.START));
    String angles =
        "rays " + degrees(patch.smallest()) + " to " + degrees(patch.largest()) + " apart";
    svg.text(Label.small(angles, new Point(WIDTH - 16, 400), Anchor.END));
  }

  private static String degrees(Angle angle) {
    return Numbers.fixed(angle.degrees(), 0) + "°";
  }

  private List<List<String>> table() {
    List<Integer> numbers = new ArrayList<>();
    for (int view : patch.views()) {
      numbers.add(view + 1);
    }
    List<List<String>> table = new ArrayList<>();
    table.add(List.of("Stations that see the spot well", Sentence.runs(numbers)));
    table.add(List.of("Number of them", String.valueOf(numbers.size())));
    table.add(List.of("Smallest angle between two rays", degrees(patch.smallest())));
    table.add(List.of("Largest angle between two rays", degrees(patch.largest())));
    table.add(
        List.of(
            "Photographs in which it is recognised, on average",
            Numbers.fixed(patch.matchable(), 1)));
    return table;
  }

  private String description() {
    return patch.views().size()
        + " of "
        + ring.stations().size()
        + " stations see a spot at half height well; their rays meet at angles from "
        + degrees(patch.smallest())
        + " to "
        + degrees(patch.largest())
        + ". The others see it too slanted or not at all.";
  }
}
