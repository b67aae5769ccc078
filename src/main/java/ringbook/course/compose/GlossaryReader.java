package ringbook.course.compose;

import com.vladsch.flexmark.ast.FencedCodeBlock;
import com.vladsch.flexmark.util.ast.Node;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import ringbook.problems.Nearest;
import ringbook.problems.Position;
import ringbook.problems.Problems;
import ringbook.values.Expressions;

/** Gathers the trade words before lessons are written, and holds lessons and glossary together. */
final class GlossaryReader {

  private static final Pattern LINK = Pattern.compile("\\[([^\\]]*)\\]\\(term:([^)]*)\\)");

  private static final Pattern NO_WORDS =
      Pattern.compile("\\$\\{[^}]*+\\}|^`{3,}.*+$", Pattern.MULTILINE);

  private final CourseScope course;
  private final Map<Glossary.Term, Position> places = new LinkedHashMap<>();

  GlossaryReader(CourseScope course) {
    this.course = course;
  }

  /**
   * Takes up the terms of a page at the back; faults inside the list are told when it is written.
   */
  void read(Lesson back, Expressions values) {
    CourseScope quiet = new CourseScope(course.parts(), course.lessons(), new Problems());
    Scope scope = new Scope(Page.back(back.id(), quiet), back.lines(), values, true);
    for (Node node : back.body().getChildren()) {
      if (node instanceof FencedCodeBlock block) {
        FenceWriter.Fence fence = FenceWriter.Fence.of(block);
        if (fence.word().equals(TermList.FENCE)) {
          TermList.read(fence, scope).forEach(entry -> add(entry, back));
        }
      }
    }
  }

  private void add(TermList.Entry entry, Lesson back) {
    Position position = back.lines().apply(entry.offset());
    course
        .glossary()
        .add(entry, back.id())
        .ifPresent(
            other ->
                course
                    .problems()
                    .add(
                        position,
                        "'" + entry.name() + "' is explained already, under '" + other.name() + "'",
                        "keep one of them"));
    course.glossary().named(entry.name()).ifPresent(term -> places.putIfAbsent(term, position));
  }

  /** Tells terms that no lesson of the folder uses, and everyday words that are no terms. */
  void check(Collection<Lesson> lessons) {
    List<Lesson> texts = new ArrayList<>(lessons);
    texts.removeIf(lesson -> course.glossary().isOn(lesson.id()));
    for (Lesson lesson : texts) {
      terms(lesson).forEach(term -> course.uses().mention(term, lesson.id()));
      lesson.everyday().forEach(this::checkEveryday);
    }
    places.forEach(
        (term, position) -> {
          if (!course.uses().isMentioned(term)) {
            course
                .problems()
                .add(
                    position,
                    "no lesson uses the term '" + term.name() + "'",
                    "use it, write it the way lessons do, or take it out");
          }
        });
  }

  /** What the words of the lesson hold, whatever the scene; keys of values are no words. */
  private Set<Glossary.Term> terms(Lesson lesson) {
    String words = NO_WORDS.matcher(lesson.body().getChars()).replaceAll(" ");
    Set<Glossary.Term> terms = new LinkedHashSet<>();
    course.glossary().in(words).forEach(hit -> terms.add(hit.term()));
    LINK.matcher(words)
        .results()
        .forEach(l -> course.glossary().linked(l.group(2), l.group(1)).ifPresent(terms::add));
    return terms;
  }

  private void checkEveryday(Lesson.Word word) {
    Glossary glossary = course.glossary();
    if (glossary.find(word.text()).isEmpty() && !glossary.terms().isEmpty()) {
      course
          .problems()
          .add(
              word.position(),
              "'" + word.text() + "' is no term of the glossary, so it needs no exception",
              Nearest.help(word.text(), glossary.forms()));
    }
  }
}
