package ringbook.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import ringbook.Scenes;
import ringbook.ledger.Reckoning;
import ringbook.shots.Place.Corner;
import ringbook.shots.Place.Obstacle;
import ringbook.shots.Scene;
import ringbook.shots.SceneDraft;
import ringbook.units.Length;

final class RingPlanTest {

  /** Coordinates are printed to a hundredth. */
  private static final double ROUNDING = 0.0071;

  @ParameterizedTest
  @ValueSource(strings = {"120", "72", "12", "7", "5", "1"})
  void stations_lie_evenly_on_a_true_circle(String step) throws Exception {
    Reckoning reckoning = Reckoning.of(Scenes.with(Scenes.pot(), "aim.step", step));
    List<Point> stations = stations(RingPlan.draw(reckoning, Map.of(), "p").svg());
    assertThat(stations).hasSize((int) Math.ceil(360 / Double.parseDouble(step) - 1e-9));
    Point middle = middle(stations);
    double radius = middle.distanceTo(stations.get(0));
    for (int i = 0; i < stations.size(); i++) {
      double turn = 2 * Math.PI * i / stations.size() - Math.PI / 2;
      Point expected = middle.towards(turn, radius);
      assertThat(stations.get(i).distanceTo(expected)).isLessThan(2 * ROUNDING);
    }
  }

  @Test
  void the_object_is_drawn_to_the_scale_of_the_ring() throws Exception {
    Reckoning reckoning = Reckoning.of(Scenes.pot());
    Element root = SvgReading.root(RingPlan.draw(reckoning, Map.of(), "p").svg());
    List<Element> circles = SvgReading.all(root, "circle");
    double ring = SvgReading.number(circles.get(0), "r");
    double pot = SvgReading.number(circles.get(1), "r");
    double expected = 0.15 / reckoning.si("ring.floorDistance");
    assertThat(pot / ring).isCloseTo(expected, within(1e-4));
  }

  @Test
  void stations_before_the_workbench_are_hollow_and_named() throws Exception {
    Figure figure = RingPlan.draw(Reckoning.of(withBench(Scenes.pot())), Map.of(), "p");
    List<Integer> hollow = new ArrayList<>();
    for (Element group : SvgReading.all(SvgReading.root(figure.svg()), "g")) {
      Element mark = SvgReading.all(group, "circle").get(0);
      if (mark.getAttribute("class").contains("fig-fill-paper")) {
        hollow.add(Integer.valueOf(group.getAttribute("data-station")));
      }
    }
    // Azimuths of the stations run from -90° in steps of 12°; the bench covers x from 38 cm to
    // 130 cm and y from -30 cm to 35 cm. The circle has a radius of 53.6 cm and the person needs
    // 40 cm behind it, so every direction between the near corners is blocked: -38° to 43°, by
    // hand the stations at -30° to 42° and no others.
    assertThat(hollow).containsExactly(6, 7, 8, 9, 10, 11, 12);
    assertThat(figure.description()).contains("blocked by workbench: stations 6 to 12");
    assertThat(figure.tableRows()).contains(List.of("Blocked stations", "6 to 12"));
    assertThat(Reckoning.of(withBench(Scenes.pot())).si("room.stationsLost")).isEqualTo(7);
  }

  @Test
  void numbers_thin_out_but_one_stays() throws Exception {
    Reckoning reckoning = Reckoning.of(Scenes.with(Scenes.pot(), "aim.step", "3"));
    Element root = SvgReading.root(RingPlan.draw(reckoning, Map.of(), "p").svg());
    List<String> texts = new ArrayList<>();
    for (Element text : SvgReading.all(root, "text")) {
      texts.add(text.getTextContent());
    }
    assertThat(texts).contains("1", "5", "10", "115").doesNotContain("2", "3", "119", "120");
  }

  @Test
  void the_radius_does_not_run_through_its_own_number() throws Exception {
    Reckoning reckoning = Reckoning.of(Scenes.pot());
    Element root = SvgReading.root(RingPlan.draw(reckoning, Map.of(), "p").svg());
    Element number = null;
    for (Element text : SvgReading.all(root, "text")) {
      boolean radius = text.getTextContent().startsWith("53.6");
      number = radius && text.getAttribute("text-anchor").equals("middle") ? text : number;
    }
    assertThat(number).isNotNull();
    Point at = new Point(SvgReading.number(number, "x"), SvgReading.number(number, "y") - 4);
    for (Element line : SvgReading.all(root, "line")) {
      Box drawn = new Box(at.x(), at.y(), at.x(), at.y()).grown(12);
      Point from = new Point(SvgReading.number(line, "x1"), SvgReading.number(line, "y1"));
      Point to = new Point(SvgReading.number(line, "x2"), SvgReading.number(line, "y2"));
      Box.Part through = drawn.partOf(from, to);
      assertThat(through.to()).isLessThanOrEqualTo(through.from());
    }
  }

  private static Scene withBench(Scene scene) {
    double[][] corners = {{0.38, -0.3}, {1.3, -0.3}, {1.3, 0.35}, {0.38, 0.35}};
    List<Corner> outline = new ArrayList<>();
    for (double[] corner : corners) {
      outline.add(new Corner(Length.ofMetres(corner[0]), Length.ofMetres(corner[1])));
    }
    return SceneDraft.of(scene).obstacles(List.of(new Obstacle("workbench", outline))).build();
  }

  private static List<Point> stations(String svg) throws Exception {
    List<Point> stations = new ArrayList<>();
    for (Element group : SvgReading.all(SvgReading.root(svg), "g")) {
      if (group.hasAttribute("data-station")) {
        Element mark = SvgReading.all(group, "circle").get(0);
        stations.add(new Point(SvgReading.number(mark, "cx"), -SvgReading.number(mark, "cy")));
      }
    }
    // y of the drawing runs down: turned here so that directions run anticlockwise again.
    List<Point> upright = new ArrayList<>();
    for (Point station : stations) {
      upright.add(new Point(station.x(), -station.y()));
    }
    return upright;
  }

  private static Point middle(List<Point> stations) {
    double x = 0;
    double y = 0;
    for (Point station : stations) {
      x += station.x() / stations.size();
      y += station.y() / stations.size();
    }
    return new Point(x, y);
  }
}
