package ringbook.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import ringbook.Scenes;
import ringbook.ledger.Reckoning;
import ringbook.plans.StandardPlan;
import ringbook.shots.Leg;
import ringbook.shots.Place.Corner;
import ringbook.shots.Place.Obstacle;
import ringbook.shots.Scene;
import ringbook.shots.SceneChanges;
import ringbook.shots.SceneDraft;
import ringbook.shots.ShotPlan;
import ringbook.units.Length;

/** Names of walls and furniture in plans stand inside or beside them, not across their edges. */
final class NamesOfFurnitureTest {

  /** A wall and a bench as in the demo; seen nearer and further off by objects of other sizes. */
  private static final List<Obstacle> ROOM =
      List.of(box("wall", -1.6, 1.5, 2.2, 1.65), box("workbench", 0.45, -0.75, 1.25, -0.2));

  @ParameterizedTest
  @ValueSource(
      strings = {
        "subject.height = 36 cm",
        "subject.height = 84 cm, subject.width = 48 cm, place.tableHeight = 0 cm",
        "subject.height = 6 cm, subject.width = 8 cm",
        "subject.height = 18 cm, subject.width = 16 cm"
      })
  void names_lie_on_no_edge(String object) throws Exception {
    Scene scene =
        SceneDraft.of(SceneChanges.apply(Scenes.pot(), object).scene().orElseThrow())
            .obstacles(ROOM)
            .build();
    Reckoning reckoning = Reckoning.of(scene);
    ShotPlan plan = StandardPlan.of(reckoning).orElseThrow();
    List<Figure> figures = new ArrayList<>();
    figures.add(FigureShelf.draw("ring-plan", Map.of(), reckoning, "r"));
    figures.add(FigureShelf.draw("ways-round", Map.of(), reckoning, "w"));
    figures.add(ShotRings.above(scene, plan, "a"));
    figures.add(ShotRings.smallAbove(scene, plan, "s"));
    for (Leg leg : plan.legs()) {
      figures.add(LegPlan.draw(scene, leg, List.of(), "l"));
    }
    int names = 0;
    for (Figure figure : figures) {
      names += names(figure);
    }
    assertThat(names).isGreaterThan(2);
  }

  /** How many there are; each is looked at. */
  private static int names(Figure figure) throws Exception {
    Element root = SvgReading.root(figure.svg());
    int names = 0;
    for (Element text : SvgReading.all(root, "text")) {
      String name = text.getTextContent();
      if (name.equals("wall") || name.equals("workbench")) {
        names++;
        for (Element polygon : SvgReading.all(root, "polygon")) {
          off(name + " in " + figure.title(), box(text, root), corners(polygon));
        }
      }
    }
    return names;
  }

  private static void off(String what, Box label, List<Point> outline) {
    for (int i = 0; i < outline.size(); i++) {
      Box.Part part = label.partOf(outline.get(i), outline.get((i + 1) % outline.size()));
      assertThat(part.to()).as(what).isLessThanOrEqualTo(part.from());
    }
  }

  private static Box box(Element text, Element root) {
    Label.Anchor end = Label.Anchor.START;
    for (Label.Anchor anchor : Label.Anchor.values()) {
      end = anchor.svg().equals(text.getAttribute("text-anchor")) ? anchor : end;
    }
    Point at = new Point(SvgReading.number(text, "x"), SvgReading.number(text, "y"));
    Box box = Label.small(text.getTextContent(), at, end).box();
    String[] paper = root.getAttribute("viewBox").split(" ", -1);
    assertThat(box.left()).isGreaterThanOrEqualTo(0);
    assertThat(box.right()).isLessThanOrEqualTo(Double.parseDouble(paper[2]));
    return box;
  }

  private static List<Point> corners(Element polygon) {
    List<Point> corners = new ArrayList<>();
    for (String pair : polygon.getAttribute("points").trim().split(" ", -1)) {
      String[] xy = pair.split(",", -1);
      corners.add(new Point(Double.parseDouble(xy[0]), Double.parseDouble(xy[1])));
    }
    return corners;
  }

  private static Obstacle box(String name, double left, double front, double right, double back) {
    return new Obstacle(
        name,
        List.of(
            corner(left, front), corner(right, front), corner(right, back), corner(left, back)));
  }

  private static Corner corner(double x, double y) {
    return new Corner(Length.ofMetres(x), Length.ofMetres(y));
  }
}
