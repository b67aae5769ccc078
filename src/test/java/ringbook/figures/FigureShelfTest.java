package ringbook.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import ringbook.Scenes;
import ringbook.geometry.Ball;
import ringbook.geometry.Shape;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.shots.Scene;
import ringbook.shots.SceneChanges;
import ringbook.shots.SceneDraft;

/** What holds for every figure. */
final class FigureShelfTest {

  private static final String ONE_OF_MANY =
      "(?<![0-9.,])1[ \u00a0](photographs|stations|rings|runs|slates|hollow marks|files|points)\\b";

  private static final Set<String> ELEMENTS =
      Set.of(
          "svg",
          "title",
          "desc",
          "g",
          "line",
          "polyline",
          "polygon",
          "circle",
          "rect",
          "path",
          "text");

  private static final Set<String> SEEN =
      Set.of("coverage-map", "who-sees", "ring-overlap", "precision-count", "pose-shares");

  private static final Set<String> COLOURED =
      Set.of(Ink.ACCENT.colour(), Ink.SECOND.colour(), Ink.THIRD.colour());

  static List<String> names() {
    return FigureShelf.names();
  }

  @ParameterizedTest
  @MethodSource("names")
  void a_figure_is_one_labelled_image_with_ids_of_its_own(String name) throws Exception {
    Figure figure = draw(name, Scenes.potWithHole(), "owl-3");
    Element root = SvgReading.root(figure.svg());
    assertThat(root.getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
    assertThat(root.getAttribute("role")).isEqualTo("img");
    assertThat(root.getAttribute("width")).isEqualTo("100%");
    assertThat(root.getAttribute("viewBox")).startsWith("0 0 560 ");
    assertThat(root.getAttribute("aria-labelledby")).isEqualTo("owl-3-title");
    assertThat(root.getAttribute("aria-describedby")).isEqualTo("owl-3-desc");
    List<String> ids = new ArrayList<>();
    for (Element element : SvgReading.all(root, "*")) {
      if (element.hasAttribute("id")) {
        ids.add(element.getAttribute("id"));
      }
    }
    assertThat(ids).containsExactly("owl-3-title", "owl-3-desc");
    assertThat(SvgReading.all(root, "title").get(0).getTextContent()).isEqualTo(figure.title());
    assertThat(SvgReading.all(root, "desc").get(0).getTextContent())
        .isEqualTo(figure.description());
  }

  @ParameterizedTest
  @MethodSource("names")
  void a_figure_uses_plain_shapes_and_the_classes_of_the_palette(String name) throws Exception {
    Set<String> classes = new HashSet<>(Set.of("", "fig"));
    Set<String> colours = new HashSet<>(Set.of("", "none"));
    for (Ink ink : Ink.values()) {
      classes.add(ink.styleClass());
      colours.add(ink.colour());
    }
    for (Fill fill : Fill.values()) {
      classes.add(fill.styleClass());
      colours.add(fill.colour());
    }
    String svg = draw(name, Scenes.potWithLensCamera(), "x").svg();
    assertThat(svg).doesNotContain("style=", "href", "url(", "var(", "NaN", "Infinity");
    for (Element element : SvgReading.all(SvgReading.root(svg), "*")) {
      assertThat(ELEMENTS).contains(element.getLocalName());
      assertThat(classes).contains(element.getAttribute("class").split(" "));
      assertThat(colours).contains(element.getAttribute("fill"), element.getAttribute("stroke"));
    }
  }

  /** WCAG 2.2, 1.4.1: of two lines in two colours, width or dashes tell them apart, too. */
  @ParameterizedTest
  @MethodSource("names")
  void lines_are_told_apart_by_more_than_their_colour(String name) throws Exception {
    Map<String, Set<String>> pens = new TreeMap<>();
    for (Element line :
        SvgReading.all(SvgReading.root(draw(name, Scenes.potWithLensCamera(), "x").svg()), "*")) {
      boolean open = line.getAttribute("fill").equals("none") || line.getLocalName().equals("line");
      if (open && COLOURED.contains(line.getAttribute("stroke"))) {
        String pen =
            line.getAttribute("stroke-width") + ": " + line.getAttribute("stroke-dasharray");
        pens.computeIfAbsent(pen, none -> new TreeSet<>()).add(line.getAttribute("stroke"));
      }
    }
    assertThat(pens).allSatisfy((pen, inks) -> assertThat(inks).as(pen).hasSize(1));
  }

  @ParameterizedTest
  @MethodSource("names")
  void the_same_scene_gives_the_same_bytes_in_any_language(String name) {
    Locale before = Locale.getDefault();
    Figure first = draw(name, Scenes.potWithHole(), "a");
    try {
      Locale.setDefault(Locale.GERMANY);
      assertThat(draw(name, Scenes.potWithHole(), "a")).isEqualTo(first);
    } finally {
      Locale.setDefault(before);
    }
  }

  /** Two objects of the same sizes but another form are told apart only by looking at them. */
  @ParameterizedTest
  @MethodSource("names")
  void patchwise_are_those_that_look_at_the_form_of_the_object(String name) {
    Scene plain = Scenes.pot();
    Scene ball = SceneDraft.of(plain).shape(Shape.of(new Ball(plain.subject().height()))).build();
    boolean differs = !draw(name, plain, "a").svg().equals(draw(name, ball, "a").svg());
    assertThat(FigureShelf.patchwise().contains(name)).isEqualTo(differs);
  }

  @Test
  void patchwise_are_figures() {
    assertThat(FigureShelf.names()).containsAll(FigureShelf.patchwise());
    assertThat(FigureShelf.patchwise()).isNotEmpty().doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("names")
  void its_table_tells_what_the_ledger_tells(String name) {
    assumeFalse(name.equals("match-survival"), "its rows are turns of their own: see ChartsTest");
    assumeFalse(name.equals("hangs-on"), "its rows are changes: see HangsOnTest");
    assumeFalse(SEEN.contains(name), "counted on the object's surface: see SeenFiguresTest");
    Reckoning reckoning = Reckoning.of(Scenes.potWithHole());
    Figure figure = FigureShelf.draw(name, Map.of(), reckoning, "a");
    List<String> checked = new ArrayList<>();
    for (Quantity quantity : reckoning.ledger().quantities()) {
      String told = reckoning.text(quantity.key());
      for (List<String> row : figure.tableRows()) {
        if (quantity.name().equalsIgnoreCase(row.get(0))) {
          assertThat(row.get(1)).as(row.get(0)).isEqualTo(told);
          checked.add(quantity.key());
        }
        int column = figure.tableHead().indexOf(capital(quantity.name()));
        if (column > 0
            && (row.get(0).contains("this ring") || row.get(0).contains("the one ring"))) {
          assertThat(row.get(column)).as(row.get(0)).isEqualTo(told);
          checked.add(quantity.key());
        }
      }
    }
    assertThat(checked).as("entries of the ledger in the table of " + name).hasSizeGreaterThan(1);
  }

  @ParameterizedTest
  @CsvSource({
    "two-rays, ring.realStep precision.pairDepth pair.alike",
    "job-path, distance.standoff sharp.focus rings.count ring.photos job.photos job.storage",
    "surface-match, fitness.textured fitness.matt fitness.opaque fitness.distinct",
    "object-choice, ring.realStep distance.samplingFar fitness.fit",
    "thin-parts, distance.samplingFar aim.pixelsPerDetail fitness.thinnestShown",
    "view-fan, kit.focalLength kit.angleShort distance.fieldShort distance.standoff",
    "equivalence, kit.diagonal kit.focalLength kit.cropFactor kit.sameView kit.angleDiagonal",
    "settings-lock, kit.focalLength sharp.focus sharp.fNumber motion.dialTime motion.dialIso",
    "lamp-light, distance.turningWidth place.lampDistance light.lampSpread light.pairSpread",
    "flicker-wave, flicker.pulses motion.time flicker.swing flicker.shortest",
    "crossed-filters, light.crossingLimit light.crossedStops",
    "shutter-line, motion.byWalking motion.byTurntable motion.byTremor light.timeBase",
    "framing, distance.standoff distance.filledLong distance.filledShort",
    "depth-of-field, sharp.focus sharp.fNumber sharp.nearLimit sharp.farLimit distance.far",
    "ring-plan, ring.photos ring.realStep ring.floorDistance ring.chord",
    "ring-side, ring.radius aim.elevation ring.lensHeight subject.height place.tableHeight",
    "few-or-many, ring.realStep ring.sharedArc pair.matchable",
    "sampling, distance.samplingNear distance.samplingFar distance.samplingWanted distance.largest",
    "f-number-window, sharp.open sharp.closed sharp.fNumber sharp.airyPixels kit.widest",
    "overlap-chart, ring.realStep pair.shared pair.matchable",
    "card-strip, job.runs job.slates job.files",
    "day-line, job.photos job.time job.day job.fewest job.fewestTime job.fewestDay",
    "missing-stations, ring.realStep check.gapOne check.gapMatchable aim.stepLimit",
    "sample-chance, check.sample job.photos check.chance aim.spare",
    "folder-tree, job.runs ring.photos job.files job.storage handover.hashDigits",
    "file-name, job.files handover.digits",
    "three-copies, job.storage handover.copies handover.storage",
    "bar-places, scale.longest kit.barLength kit.barCount",
    "scale-lever, kit.barLength scale.longest scale.carriedOne scale.times",
    "bar-length, kit.barLength scale.carriedOne scale.carried aim.tolerance scale.barNeeded",
    "match-survival, aim.decay"
  })
  void its_description_says_the_numbers_that_matter(String name, String keys) {
    Reckoning reckoning = Reckoning.of(Scenes.pot());
    String description = FigureShelf.draw(name, Map.of(), reckoning, "a").description();
    for (String key : keys.split(" ", -1)) {
      assertThat(description).contains(reckoning.text(key));
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void any_scene_gives_every_figure_or_its_reason(long seed) throws Exception {
    for (String name : FigureShelf.names()) {
      Figure figure = draw(name, Scenes.random(seed), "r");
      assertThat(SvgReading.root(figure.svg()).getLocalName()).as(name).isEqualTo("svg");
      assertThat(figure.svg()).as(name).doesNotContain("NaN", "Infinity");
      assertThat(figure.description()).as(name).endsWith(".");
      assertThat(figure.tableRows()).as(name).isNotEmpty();
      assertThat(figure.svg()).as(name).doesNotContainPattern(ONE_OF_MANY);
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void one_ring_and_one_photograph_over_the_top_are_told_as_one(String name) {
    // The lens at the height of the middle alone; then 90° over the top in steps of 60°.
    String level =
        "subject.height = 50 cm, place.tableHeight = 75 cm, place.lowestLens = 100 cm,"
            + " aim.topElevation = 0°";
    assertThat(told(name, "rings.count", level)).doesNotContainPattern(ONE_OF_MANY);
    assertThat(told(name, "rings.topViews", "aim.ringSpacing = 60°"))
        .doesNotContainPattern(ONE_OF_MANY);
  }

  private static String told(String name, String one, String changes) {
    Scene scene = SceneChanges.apply(Scenes.pot(), changes).scene().orElseThrow();
    assertThat(Reckoning.of(scene).text(one)).isEqualTo("1");
    return draw(name, scene, "f").svg();
  }

  @Test
  void counts_to_compare_can_be_chosen_and_wrong_ones_are_told() {
    Reckoning reckoning = Reckoning.of(Scenes.pot());
    Map<String, String> chosen = Map.of("many", "24", "few", "6");
    assertThat(FigureShelf.draw("few-or-many", chosen, reckoning, "a").description())
        .contains("With 24 photographs neighbours are a turn of 15° apart")
        .contains("With 6 photographs neighbours are a turn of 60° apart");
    for (String wrong : List.of("2", "121", "5.5", "lots")) {
      Figure told = FigureShelf.draw("few-or-many", Map.of("few", wrong), reckoning, "a");
      assertThat(told.description())
          .isEqualTo(
              "The option 'few' of this figure is '"
                  + wrong
                  + "'. Write a whole number from 3 to 120.");
    }
  }

  /** From −17° up both poses have a band in common; from 14° up a turn is left between them. */
  @ParameterizedTest
  @CsvSource({
    "place.lowestLens = 40 cm, Band common to both poses, Turn between the poses",
    "place.lowestLens = 105 cm, Turn between the poses, Band common to both poses"
  })
  void of_both_poses_it_tells_what_there_is(String place, String told, String left) {
    Scene scene = SceneChanges.apply(Scenes.pot(), place).scene().orElseThrow();
    List<String> rows = new ArrayList<>();
    draw("pose-bands", scene, "b").tableRows().forEach(row -> rows.add(row.get(0)));
    assertThat(rows).contains(told).doesNotContain(left);
  }

  @Test
  void an_unknown_name_is_a_mistake_of_the_program() {
    assertThatThrownBy(() -> draw("ring-plans", Scenes.pot(), "a"))
        .hasMessage("no figure is called 'ring-plans'");
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private static Figure draw(String name, ringbook.shots.Scene scene, String idPrefix) {
    return FigureShelf.draw(name, Map.of(), Reckoning.of(scene), idPrefix);
  }
}
