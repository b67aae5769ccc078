package ringbook.course.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ringbook.Scenes;
import ringbook.course.ComposedCourse;
import ringbook.course.ComposedLesson.Markup;
import ringbook.course.CourseFile;
import ringbook.course.CourseInfo;
import ringbook.problems.Position;
import ringbook.problems.Problem;

/** Pages at the back: the glossary and what the lessons have to do with it. */
final class BackPagesTest {

  private static final String TERMS =
      """
      ---
      id: words
      title: Words
      aim: You can look words up.
      ---

      ```terms
      match
      : A spot that is found again.

      camera station
      station
      : A place for one photograph.

      depth of field
      : What is sharp.
      ```
      """;

  private static String lesson(String id, String more, String body) {
    return "---\nid: " + id + "\ntitle: A\naim: B\n" + more + "---\n" + body;
  }

  private static Composer.Result compose(String terms, List<String> lessons, List<String> named) {
    List<LessonSource> sources = new ArrayList<>(List.of(new LessonSource("words.md", terms)));
    for (int i = 0; i < lessons.size(); i++) {
      sources.add(new LessonSource("l" + (i + 1) + ".md", lessons.get(i)));
    }
    CourseInfo info = new CourseInfo("Pots", "", "", "2026-11-02", "en", "For the pot.");
    CourseFile file =
        new CourseFile(info, Scenes.pot(), Map.of(), refs(named), refs(List.of("words")));
    return Composer.compose(file, sources, List.of(), Set.of(), Lessons.SQUARE, Lessons.FOLDER);
  }

  private static List<CourseFile.LessonRef> refs(List<String> ids) {
    return ids.stream()
        .map(id -> new CourseFile.LessonRef(id, new Position("course.yaml", 1, 1)))
        .toList();
  }

  private static ComposedCourse course(String... bodies) {
    List<String> lessons = new ArrayList<>();
    List<String> ids = new ArrayList<>();
    for (int i = 0; i < bodies.length; i++) {
      ids.add("l" + (i + 1));
      lessons.add(lesson(ids.get(i), "", bodies[i]));
    }
    Composer.Result result = compose(TERMS, lessons, ids);
    assertThat(result.problems()).isEmpty();
    return result.course().orElseThrow();
  }

  private static String markup(ComposedCourse course, int lesson) {
    return ((Markup) course.lessons().get(lesson).blocks().get(0)).xhtml();
  }

  private static String glossary(ComposedCourse course) {
    return ((Markup) course.back().get(0).blocks().get(0)).xhtml();
  }

  private static List<String> problems(String terms, String more, String body) {
    return compose(terms, List.of(lesson("l1", more, body)), List.of("l1")).problems().stream()
        .map(Problem::toString)
        .toList();
  }

  @Test
  void the_first_use_in_each_lesson_leads_to_the_glossary() {
    ComposedCourse course =
        course("Matches, a match. The *depth\nof field*.", "## Match\n\nStations for a match.");
    assertThat(markup(course, 0))
        .isEqualTo(
            """
            <p><a class="term" id="l1--use-term-match" href="course:words#words--term-match">Matches</a>, \
            a match. The <em><a class="term" id="l1--use-term-depth-of-field" \
            href="course:words#words--term-depth-of-field">depth
            of field</a></em>.</p>
            """);
    assertThat(markup(course, 1))
        .contains("<h2 id=\"l2--match\">Match</h2>")
        .contains("<a class=\"term\" id=\"l2--use-term-camera-station\"")
        .contains(">Stations</a> for a <a class=\"term\" id=\"l2--use-term-match\"");
  }

  @Test
  void the_glossary_stands_in_order_and_names_the_lesson_that_explains_a_term() {
    String glossary = glossary(course("A match at a station, depth of field.", "A **match**."));
    assertThat(glossary)
        .containsSubsequence("words--term-camera-station", "depth-of-field", "words--term-match")
        .contains(">camera station <span class=\"also\">also station</span></dt>")
        .contains("From <a href=\"course:l1#l1--use-term-camera-station\">lesson 1</a>")
        .contains("From <a href=\"course:l2#l2--use-term-match\">lesson 2</a>");
  }

  @Test
  void a_term_of_a_lesson_that_is_left_out_is_left_out_too() {
    Composer.Result result =
        compose(
            TERMS,
            List.of(lesson("l1", "", "A match."), lesson("l2", "", "Station. Depth of field.")),
            List.of("l1"));
    assertThat(glossary(result.course().orElseThrow())).contains("match").doesNotContain("station");
  }

  @Test
  void longer_terms_come_before_shorter_ones_and_parts_of_words_are_none() {
    String text = markup(course("A camera station. Rematch, match-box, depth of fields, match"), 0);
    assertThat(text)
        .contains(">camera station</a>")
        .contains("Rematch, match-box")
        .contains(">depth of fields</a>");
  }

  @Test
  void values_links_and_formulas_are_left_alone() {
    String text =
        markup(course("[a match](https://a.example) `match` $`match`$ depth of field, station"), 0);
    assertThat(text).doesNotContain("use-term-match").contains("use-term-camera-station");
  }

  @Test
  void an_everyday_word_is_not_linked_but_by_hand() {
    Composer.Result result =
        compose(
            TERMS,
            List.of(
                lesson(
                    "l1",
                    "everyday: match\n",
                    "Strike a match. Then [matched](term:match). Station, depth of field.")),
            List.of("l1"));
    assertThat(markup(result.course().orElseThrow(), 0))
        .contains("Strike a match.")
        .contains("href=\"course:words#words--term-match\">matched</a>");
  }

  @Test
  void a_word_with_everyday_senses_is_linked_by_hand_only() {
    String terms =
        TERMS.replace("match\n: A", "run (of photographs)\n: One after the other.\n\nmatch\n: A");
    String body =
        "Do not run. One [runs](term:) and [more](term:run). Match, station, depth of field.";
    Composer.Result result = compose(terms, List.of(lesson("l1", "", body)), List.of("l1"));
    assertThat(result.problems()).isEmpty();
    assertThat(markup(result.course().orElseThrow(), 0))
        .contains("Do not run. One <a class=\"term\" id=\"l1--use-term-run-of-photographs\"")
        .contains(
            "<a class=\"term\" href=\"course:words#words--term-run-of-photographs\">more</a>");
    assertThat(glossary(result.course().orElseThrow())).contains(">run (of photographs)</dt>");
  }

  @Test
  void what_another_scene_would_say_keeps_its_terms_but_is_not_linked() {
    ComposedCourse course =
        course("Match, station.\n\n```unless ring.reachable\nDepth of field.\n```\n");
    assertThat(course.lessons().get(0).live().toString()).contains("Depth of field.");
    assertThat(glossary(course)).contains("From <a href=\"course:l1\">lesson 1</a>");
  }

  @Test
  void faults_are_told_with_file_and_line() {
    assertThat(problems(TERMS, "", "Match, station."))
        .containsExactly(
            "words.md:15:1: error: no lesson uses the term 'depth of field'\n"
                + "  mend: use it, write it the way lessons do, or take it out");
    String all = "Match, station, depth of field. ";
    assertThat(problems(TERMS, "everyday: stations, mach\n", all))
        .containsExactly(
            "l1.md:5:1: error: 'mach' is no term of the glossary, so it needs no exception\n"
                + "  mend: did you mean 'match'?");
    assertThat(problems(TERMS, "", all + "[x](term:mach)"))
        .containsExactly(
            "l1.md:6:37: error: the glossary has no term 'mach'\n  mend: did you mean 'match'?");
    assertThat(problems(TERMS + "\n```terms\nmatch\n: Again.\n```\n", "", all))
        .singleElement()
        .asString()
        .startsWith("words.md:20:1: error: 'match' is explained already, under 'match'\n");
    assertThat(problems(TERMS, "", all + "\n\n```terms\nx\n: y\n```\n"))
        .singleElement()
        .asString()
        .startsWith("l1.md:8:4: error: terms are explained on a page at the back\n");
    assertThat(problems(TERMS + "\n```exercise x\n```\n", "", all))
        .singleElement()
        .asString()
        .startsWith("words.md:19:13: error: no exercise is called 'x'");
  }

  @Test
  void plurals_are_regular() {
    assertThat(List.of("match", "axis", "box", "copy", "ray", "station"))
        .extracting(Glossary::plural)
        .containsExactly("matches", "axises", "boxes", "copies", "rays", "stations");
  }
}
