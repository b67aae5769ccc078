package ringbook.course.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import ringbook.Scenes;
import ringbook.course.ComposedCourse;
import ringbook.course.ComposedExercise;
import ringbook.course.ComposedLesson;
import ringbook.course.ComposedLesson.Block;
import ringbook.course.ComposedLesson.Branch;
import ringbook.course.ComposedLesson.ExerciseBlock;
import ringbook.course.ComposedLesson.FigureBlock;
import ringbook.course.ComposedLesson.Markup;
import ringbook.exercises.ChoiceTask;
import ringbook.exercises.Exercise;
import ringbook.exercises.NumberTask;
import ringbook.exercises.Wording;
import ringbook.ledger.Reckoning;
import ringbook.problems.Position;

final class ComposerTest {

  private static final String FIGURE = "```figure square\nA square.\n```\n";

  @Test
  void a_value_knows_its_key_and_its_exact_number() {
    assertThat(Lessons.markup("Stand ${subject.height} away."))
        .isEqualTo(
            """
            <p>Stand <data class="quantity" data-key="subject.height" value="0.36">36\u00a0cm</data> away.</p>
            """);
  }

  @Test
  void a_value_of_a_changed_scene_knows_the_change() {
    assertThat(Lessons.markup("${given(\"subject.height = 0.5 m\").subject.height}"))
        .contains("data-given=\"subject.height = 0.5 m\" value=\"0.5\">50\u00a0cm</data>");
  }

  @Test
  void a_condition_keeps_its_text_or_leaves_it_out() {
    String body =
        "```when subject.height > 30\ntall\n```\n```unless subject.height > 30\nlow\n```\n";
    assertThat(Lessons.markup(body)).isEqualTo("<p>tall</p>\n");
  }

  @Test
  void what_another_scene_would_say_is_there_for_its_readers() {
    String body =
        """
        ```when subject.height > 30
        tall
        ```
        ```unless subject.height > 30
        low, ${subject.sway}

        ~~~figure square
        A square.
        ~~~
        ```
        """;
    List<Block> live = Lessons.lesson(body).live();
    Branch tall = (Branch) live.get(0);
    assertThat(tall.shown() && tall.wanted()).isTrue();
    assertThat(tall.condition()).isEqualTo("subject.height > 30");
    assertThat(((Markup) tall.blocks().get(0)).xhtml()).isEqualTo("<p>tall</p>\n");
    Branch low = (Branch) live.get(1);
    assertThat(low.shown() || low.wanted()).isFalse();
    FigureBlock undrawn = (FigureBlock) low.blocks().get(1);
    assertThat(undrawn.figure().number()).isZero();
    assertThat(undrawn.figure().name()).isEqualTo("square");
    assertThat(undrawn.figure().svg()).isEmpty();
  }

  @Test
  void branches_in_a_box_stand_in_its_markup_and_leave_no_trace_where_they_do_not_hold() {
    String body =
        """
        ````try
        - a

          ```when subject.height < 3
          ${subject.sway}
          ```
        - b

          ```unless subject.height < 3
          c
          ```
        ````
        """;
    String live = ((Markup) Lessons.lesson(body).live().get(0)).xhtml();
    assertThat(live)
        .contains("<div class=\"branch\" data-when=\"subject.height &lt; 3\" hidden=\"hidden\">")
        .contains("<div class=\"branch\" data-unless=\"subject.height &lt; 3\">\n<p>c</p>\n</div>");
    assertThat(Lessons.markup(body)).contains("<p>c</p>").doesNotContain("branch", "subject.");
  }

  @Test
  void a_value_that_is_more_than_its_key_carries_its_expression() {
    String body = "${(subject.height > 3)?then(\"tall\", \"low\")} ${subject.height.name}";
    assertThat(Lessons.markup(body))
        .startsWith("<p><span class=\"value\" data-value=\"(subject.height &gt; 3)?then(&quot;tall")
        .endsWith("\">tall</span> height of the object</p>\n");
  }

  @Test
  void figures_count_through_the_course_in_the_order_of_the_course_file() {
    ComposedCourse course =
        Lessons.compose(
                List.of(named("last", FIGURE), named("first", FIGURE + FIGURE)), "first", "last")
            .course()
            .orElseThrow();
    List<String> seen = new ArrayList<>();
    for (ComposedLesson lesson : course.lessons()) {
      for (Block block : lesson.blocks()) {
        ((FigureBlock) block).figure();
        seen.add(
            ((FigureBlock) block).figure().number() + " " + ((FigureBlock) block).figure().id());
      }
    }
    assertThat(seen).containsExactly("1 first--square", "2 first--square-2", "3 last--square");
  }

  @Test
  void a_link_to_another_lesson_finds_its_heading() {
    Composer.Result result =
        Lessons.compose(
            List.of(named("a", "[over](lesson:b#there)"), named("b", "## Over there {#there}")),
            "a",
            "b");
    Markup markup = (Markup) result.course().orElseThrow().lessons().get(0).blocks().get(0);
    assertThat(markup.xhtml()).isEqualTo("<p><a href=\"course:b#b--there\">over</a></p>\n");
  }

  @Test
  void the_same_course_gives_the_same_bytes() throws Exception {
    LessonSource all = Lessons.small(Files.readString(Lessons.FOLDER.resolve("all.md")));
    assertThat(Lessons.compose(List.of(all), "small"))
        .isEqualTo(Lessons.compose(List.of(all), "small"));
  }

  @Test
  void a_lesson_is_well_formed_and_its_ids_are_unique() throws Exception {
    List<String> ids = new ArrayList<>();
    String text = Files.readString(Lessons.FOLDER.resolve("all.md"));
    StringBuilder page = new StringBuilder("<body>");
    for (Block block : Lessons.lesson(text).blocks()) {
      page.append(block instanceof Markup markup ? markup.xhtml() : "");
    }
    NodeList elements = parsed(page.append("</body>").toString()).getElementsByTagName("*");
    for (int i = 0; i < elements.getLength(); i++) {
      if (((Element) elements.item(i)).hasAttribute("id")) {
        ids.add(((Element) elements.item(i)).getAttribute("id"));
      }
    }
    assertThat(ids).isNotEmpty().doesNotHaveDuplicates();
    assertThat(ids).allMatch(id -> id.startsWith("small--"));
  }

  @Test
  void an_exercise_is_worked_out_for_its_own_scene() {
    Exercise owl =
        exercise(
            "owl",
            "The owl is ${subject.height} tall.",
            new NumberTask("subject.height", OptionalDouble.empty()));
    ComposedExercise composed = exercise(List.of(owl), "```exercise owl\n```\n");
    assertThat(composed.number()).isEqualTo(1);
    assertThat(composed.questionXhtml()).contains(">45\u00a0cm</data> tall.");
    assertThat(composed.answer()).isEqualTo("45\u00a0cm");
    assertThat(composed.answerHint()).isEqualTo("a length, with its unit");
    assertThat(composed.solutionXhtml()).contains("45\u00a0cm");
  }

  @Test
  void a_choice_gives_its_options_and_says_why() {
    ChoiceTask task =
        new ChoiceTask(
            List.of(
                new ChoiceTask.Option(wording("*No* & never"), false, wording("It does.")),
                new ChoiceTask.Option(
                    wording("**Yes**, at ${subject.height}"), true, wording("So."))));
    ComposedExercise composed =
        exercise(List.of(exercise("pick", "Which?", task)), "```exercise pick\n```\n");
    assertThat(composed.options())
        .contains(new ComposedExercise.Option("a", "<em>No</em> &amp; never"));
    assertThat(composed.answer()).isEqualTo("b) Yes, at 45\u00a0cm");
    assertThat(composed.solutionXhtml())
        .contains("<b>a, wrong:</b> It does.")
        .contains("b, right:");
  }

  @Test
  void a_fault_in_an_exercise_is_told_in_its_own_file() {
    Exercise bad =
        exercise(
            "bad",
            "First line.\nSecond ${subject.hight}.",
            new NumberTask("subject.height", OptionalDouble.empty()));
    Composer.Result result =
        Lessons.compose(List.of(Lessons.small("```exercise bad\n```\n")), List.of(bad), "small");
    assertThat(result.problems().get(0).position())
        .isEqualTo(new Position("exercises/x.yaml", 8, 14));
  }

  private static ComposedExercise exercise(List<Exercise> exercises, String body) {
    Composer.Result result = Lessons.compose(List.of(Lessons.small(body)), exercises, "small");
    Block block = result.course().orElseThrow().lessons().get(0).blocks().get(0);
    return ((ExerciseBlock) block).exercise();
  }

  private static Exercise exercise(String id, String ask, ringbook.exercises.Task task) {
    Reckoning reckoning = Reckoning.of(Scenes.with(Scenes.pot(), "subject.height", "45"));
    return new Exercise(id, "The owl", wording(ask), Optional.empty(), reckoning, task);
  }

  private static Wording wording(String markdown) {
    return new Wording(markdown, new Position("exercises/x.yaml", 7, 5));
  }

  private static LessonSource named(String id, String body) {
    return new LessonSource(id + ".md", "---\nid: " + id + "\ntitle: T\naim: A.\n---\n" + body);
  }

  private static Document parsed(String xhtml) throws Exception {
    return DocumentBuilderFactory.newDefaultInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(xhtml)));
  }
}
