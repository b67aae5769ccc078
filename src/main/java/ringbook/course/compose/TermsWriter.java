package ringbook.course.compose;

import com.vladsch.flexmark.util.ast.Node;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Writes the glossary: its terms in the order of the alphabet, with the lesson that brings them.
 */
final class TermsWriter {

  private final Scope scope;

  TermsWriter(Scope scope) {
    this.scope = scope;
  }

  void write(FenceWriter.Fence fence, Sink sink) {
    if (!scope.page().isBack()) {
      scope.fault(
          fence.wordOffset(),
          "terms are explained on a page at the back",
          "move them to a page that the course file names under 'back:'");
      return;
    }
    List<TermList.Entry> entries = new ArrayList<>(TermList.read(fence, scope));
    entries.sort(Comparator.comparing(entry -> letters(entry.name())));
    StringBuilder out = new StringBuilder("<dl class=\"terms\">\n");
    for (TermList.Entry entry : entries) {
      out.append(entry(entry));
    }
    sink.add(out.append("</dl>").toString());
  }

  /** What counts in the order of the alphabet. */
  private static String letters(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
  }

  private String entry(TermList.Entry entry) {
    CourseScope course = scope.page().course();
    Optional<Glossary.Term> term = course.glossary().named(entry.name());
    String anchor = term.map(Glossary.Term::anchor).orElse("");
    String meaning = new BlockWriter(scope).inside(entry.meaning()).strip();
    Optional<String> met =
        term.flatMap(t -> course.uses().first(t, course.inOrder())).map(this::met);
    if (met.isEmpty()) {
      return ""; // of a lesson that this course leaves out
    }
    return "<dt id=\""
        + scope.page().ids().full(anchor)
        + "\">"
        + Xhtml.text(entry.name())
        + also(entry)
        + "</dt>\n<dd>"
        + (isBare(entry.meaning()) ? "<p>" + meaning + "</p>" : meaning)
        + met.get()
        + "</dd>\n";
  }

  private static String also(TermList.Entry entry) {
    return entry.also().isEmpty()
        ? ""
        : " <span class=\"also\">also " + Xhtml.text(String.join(", ", entry.also())) + "</span>";
  }

  private static boolean isBare(Node meaning) {
    return meaning.getFirstChild() == meaning.getLastChild();
  }

  private String met(TermUses.Use use) {
    return "\n<p class=\"met\">From <a href=\"course:"
        + use.lesson()
        + (use.anchor().isEmpty() ? "" : "#" + Xhtml.attribute(use.anchor()))
        + "\">lesson "
        + scope.page().course().number(use.lesson())
        + "</a></p>";
  }
}
