package ringbook.course.compose;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Where the lessons use trade words. */
final class TermUses {

  /**
   * The lesson that introduces a term.
   *
   * @param lesson its id
   * @param anchor where on its page, as it stands there; empty where this scene does not show it
   */
  record Use(String lesson, String anchor) {}

  private final Map<Glossary.Term, Map<String, String>> anchors = new LinkedHashMap<>();
  private final Map<Glossary.Term, String> introduced = new LinkedHashMap<>();

  private final Map<Glossary.Term, Set<String>> mentioned = new LinkedHashMap<>();

  /** Notes that the text of a lesson holds the term, for whatever scene. */
  void mention(Glossary.Term term, String lesson) {
    mentioned.computeIfAbsent(term, t -> new LinkedHashSet<>()).add(lesson);
  }

  /** Whether any lesson of the folder holds the term. */
  boolean isMentioned(Glossary.Term term) {
    return mentioned.containsKey(term);
  }

  /** Notes the first use in a lesson. */
  void use(Glossary.Term term, String lesson, String anchor) {
    anchors.computeIfAbsent(term, t -> new LinkedHashMap<>()).putIfAbsent(lesson, anchor);
  }

  /** Notes that a lesson prints the term in strong type, as it does when it explains it. */
  void introduce(Glossary.Term term, String lesson) {
    introduced.putIfAbsent(term, lesson);
  }

  /**
   * The first lesson that prints it in strong type, or else the first that uses it.
   *
   * @param lessons the lessons of the course in order
   */
  Optional<Use> first(Glossary.Term term, List<String> lessons) {
    Map<String, String> where = anchors.getOrDefault(term, Map.of());
    Set<String> anywhere = mentioned.getOrDefault(term, Set.of());
    String strong = introduced.getOrDefault(term, "");
    return Stream.of(
            Stream.of(strong).filter(where::containsKey),
            lessons.stream().filter(where::containsKey),
            lessons.stream().filter(anywhere::contains))
        .flatMap(found -> found)
        .findFirst()
        .map(lesson -> new Use(lesson, where.getOrDefault(lesson, "")));
  }
}
