package ringbook.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import ringbook.Scenes;
import ringbook.problems.Problem;
import ringbook.problems.Problems;
import ringbook.shots.Scene;
import ringbook.shots.SceneDraft;
import ringbook.shots.SceneField;
import ringbook.shots.SceneField.NumberField;

final class CourseFileReaderTest {

  private static final Path DEMO = Path.of("lessons/course.yaml");

  private static String demo() throws IOException {
    return Files.readString(DEMO);
  }

  private static List<String> problems(String text) {
    Problems problems = new Problems();
    assertThat(CourseFileReader.read("course.yaml", text, problems)).isEmpty();
    return problems.sorted().stream().map(Problem::toString).toList();
  }

  @Test
  void reads_the_course_of_the_demo() throws IOException {
    Problems problems = new Problems();
    CourseFile course = CourseFileReader.read("course.yaml", demo(), problems).orElseThrow();
    assertThat(problems.sorted()).isEmpty();
    assertThat(course.info().title()).isEqualTo("Round the pot");
    assertThat(course.info().date()).isEqualTo("2026-11-02");
    Scene pot = Scenes.with(Scenes.potWithHole(), "subject.thinnest", "6");
    for (NumberField field : SceneField.numbers()) {
      assertThat(field.value().applyAsDouble(course.scene()))
          .as(field.key())
          .isEqualTo(field.value().applyAsDouble(pot));
    }
    assertThat(course.otherKits().get("lens camera")).isEqualTo(Scenes.potWithLensCamera().kit());
    assertThat(course.scene().place().obstacles()).hasSize(2);
  }

  @Test
  void an_evaluation_has_a_person_a_day_and_this_edition() throws IOException {
    String dated = "date: 2026-11-02\n";
    String whole = demo().replace(dated, dated + "evaluated by: Ida\nevaluated on: 2026-11-02\n");
    CourseFile course = CourseFileReader.read("c.yaml", whole, new Problems()).orElseThrow();
    assertThat(course.info().evaluated()).contains(new Evaluation("Ida", "2026-11-02"));
    String place = at(whole, "evaluated on", 15);
    assertThat(problems(whole.replace("on: 2026-11-02", "on: 2026-11-01")))
        .containsExactly(
            place
                + "error: the evaluation of 2026-11-01 is older than the edition of 2026-11-02\n"
                + "  mend: take both lines out until this edition has been evaluated");
    assertThat(problems(whole.replace("on: 2026-11-02", "on: soon")))
        .containsExactly(
            place
                + "error: 'soon' is not a date\n"
                + "  mend: write year-month-day, such as 2026-11-02");
    assertThat(problems(whole.replace("evaluated on: 2026-11-02\n", "")))
        .singleElement()
        .asString()
        .contains("'evaluated by' stands alone: an evaluation has a person and a day");
    assertThat(problems(whole.replace("evaluated by: Ida\n", "")))
        .singleElement()
        .asString()
        .contains("'evaluated on' stands alone: an evaluation has a person and a day");
  }

  /** Though the units stand behind what is wrong. */
  @Test
  void a_course_in_inches_is_told_examples_in_inches() throws IOException {
    String metric = demo().replace("  table height: 74 cm", "  table height: high");
    String inches = metric.replace("\naim:\n", "\naim:\n  units: imperial\n");
    assertThat(problems(metric)).singleElement().asString().endsWith("a length, such as 42 cm");
    assertThat(problems(inches)).singleElement().asString().endsWith("such as 16 1/2 in");
    assertThat(problems(inches.replace("height: high", "height: 29 in").replace("[[", "[[1, ")))
        .isNotEmpty()
        .allSatisfy(problem -> assertThat(problem).contains("write [4 ft, -20 in]: to the right"));
  }

  @Test
  void tells_every_fault_at_once_and_where_it_stands() throws IOException {
    String broken =
        demo()
            .replace("title: Round the pot", "titel: Round the pot")
            .replace("sensor width: 6.4 mm", "sensor width: 6.4 kg")
            .replace("height: 36 cm", "hight: 36 cm")
            .replace("fill: 75 %", "fill: 750 %")
            .replace("surface: textured", "surface: shiny")
            .replace("- one-ring", "- right-distance");
    List<String> problems = problems(broken);
    assertThat(problems)
        .anySatisfy(
            p ->
                assertThat(p)
                    .isEqualTo(
                        "course.yaml:2:1: error: a course file has no field 'titel'\n"
                            + "  mend: did you mean 'title'?"))
        .anySatisfy(p -> assertThat(p).startsWith("course.yaml:2:1: error: 'title:' is missing"))
        .anySatisfy(
            p ->
                assertThat(p)
                    .startsWith(
                        at(broken, "6.4 kg", 17)
                            + "error: width of the sensor: 'kg' is not a unit"))
        .anySatisfy(
            p ->
                assertThat(p)
                    .isEqualTo(
                        at(broken, "hight", 3)
                            + "error: 'subject' has no field 'hight'\n"
                            + "  mend: did you mean 'height'?"))
        .anySatisfy(
            p ->
                assertThat(p)
                    .startsWith(
                        at(broken, "- right-distance", 5)
                            + "error: lesson 'right-distance' is named twice"))
        .anySatisfy(
            p ->
                assertThat(p)
                    .startsWith(
                        at(broken, "750 %", 9)
                            + "error: share of the frame the object may fill is out of range: 750"
                            + " %"))
        .anySatisfy(
            p ->
                assertThat(p)
                    .startsWith(
                        at(broken, "shiny", 12)
                            + "error: surface of the object cannot be 'shiny'"));
    assertThat(problems).anySatisfy(p -> assertThat(p).contains("height of the object is missing"));
    assertThat(problems).hasSize(8);
  }

  /** The place of a message: the last line that holds {@code words}. */
  private static String at(String text, String words, int column) {
    List<String> lines = text.lines().toList();
    int line = lines.size();
    while (!lines.get(line - 1).contains(words)) {
      line--;
    }
    return "course.yaml:" + line + ":" + column + ": ";
  }

  @Test
  void tells_what_is_missing() {
    List<String> problems =
        problems("title: A\ndate: 2026-01-02\nlessons: [one-ring]\nkit:\n  name: x\n");
    assertThat(problems).anySatisfy(p -> assertThat(p).contains("'subject:' is missing"));
    assertThat(problems)
        .anySatisfy(
            p ->
                assertThat(p)
                    .startsWith("course.yaml:4:1: error: pixels along the long side is missing"));
  }

  @Test
  void takes_a_kit_by_its_equivalent() throws IOException {
    String text =
        demo()
            .replace("sensor width: 6.4 mm", "equivalent: 26 mm")
            .replace("  sensor height: 4.8 mm\n", "");
    Scene scene = CourseFileReader.read("course.yaml", text, new Problems()).orElseThrow().scene();
    // 26 mm on a 43.27 mm diagonal against 4.8 mm: a diagonal of 7.99 mm, so 6.39 mm by 4.79 mm at
    // 4:3.
    assertThat(scene.kit().sensor().width().millimetres()).isBetween(6.38, 6.40);
    assertThat(scene.kit().basis()).isEqualTo(ringbook.optics.Kit.Basis.FROM_EQUIVALENT);
    assertThat(SceneDraft.of(scene).build()).isEqualTo(scene);
  }

  @Test
  void answers_broken_yaml_with_a_place() {
    assertThat(problems("title: [unclosed\n"))
        .singleElement()
        .asString()
        .startsWith("course.yaml:2:1: error: this is not YAML");
    assertThat(problems("")).singleElement().asString().contains("the file is empty");
    assertThat(problems("a: &x [1]\nb: *x\n"))
        .anySatisfy(p -> assertThat(p).contains("anchors and repeats"));
  }
}
