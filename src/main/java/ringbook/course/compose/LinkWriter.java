package ringbook.course.compose;

import com.vladsch.flexmark.ast.LinkRef;
import com.vladsch.flexmark.ast.MailLink;
import com.vladsch.flexmark.ast.Reference;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringbook.course.ComposedCourse;
import ringbook.ledger.Ledger;
import ringbook.problems.Nearest;

/** Writes links and checks where they lead. */
final class LinkWriter {

  private static final List<String> OUTSIDE = List.of("https://", "http://", "mailto:");

  private static final String TERM = "term:";

  private static final String LESSON = "lesson:";

  /** The page of the site for the shoot itself; in print its words stand without a link. */
  private static final String FIELD_VIEW = ComposedCourse.FIELD_VIEW + ":";

  private final Scope scope;

  LinkWriter(Scope scope) {
    this.scope = scope;
  }

  String write(Node link, BasedSequence url, String text) {
    if (text.isBlank()) {
      scope.fault(link, "the link has no text", "write [where it leads](" + url + ")");
    }
    if (url.unescape().startsWith(TERM)) {
      return term(url, text);
    }
    if (url.unescape().equals(FIELD_VIEW)) {
      return "<a href=\"course:" + ComposedCourse.FIELD_VIEW + "\">" + text + "</a>";
    }
    if (leadsOutOfTheCourse(url.unescape())) {
      return text;
    }
    return "<a href=\"" + Xhtml.attribute(target(url)) + "\">" + text + "</a>";
  }

  String bare(Node link, BasedSequence url) {
    return write(link, url, Xhtml.text(url.toString()));
  }

  String mail(MailLink link) {
    String address = Xhtml.attribute(link.getText().toString());
    return "<a href=\"mailto:" + address + "\">" + address + "</a>";
  }

  /** A link by reference; brackets that refer to nothing are plain text. */
  String reference(LinkRef link, String text) {
    Reference reference = link.getReferenceNode(link.getDocument());
    if (reference != null) {
      return write(link, reference.getUrl(), text);
    }
    if (!link.isReferenceTextCombined()) {
      scope.fault(
          link,
          "no link is called '" + link.getReference() + "'",
          "write its address on a line of its own: [" + link.getReference() + "]: …");
    }
    return "[" + text + "]";
  }

  private boolean leadsOutOfTheCourse(String address) {
    if (!address.startsWith(LESSON)) {
      return false;
    }
    String lesson = address.substring(LESSON.length()).split("#", 2)[0];
    return scope.page().course().isLeftOut(lesson);
  }

  private String target(BasedSequence url) {
    String address = url.unescape();
    if (address.startsWith(LESSON)) {
      return lesson(url, address.substring(LESSON.length()));
    }
    if (address.startsWith("quantity:")) {
      return quantity(url, address.substring("quantity:".length()));
    }
    if (address.startsWith("#")) {
      return anchor(url, scope.page().lesson(), address.substring(1));
    }
    if (OUTSIDE.stream().noneMatch(address::startsWith)) {
      scope.fault(
          url.getStartOffset(),
          "a link cannot lead to '" + address + "'",
          "write lesson:…, quantity:…, term:…, field-view:, #…, or a full address with https://");
    }
    return address;
  }

  private String lesson(BasedSequence url, String address) {
    int mark = address.indexOf('#');
    String lesson = mark < 0 ? address : address.substring(0, mark);
    Set<String> lessons = scope.page().course().lessons();
    if (!lessons.contains(lesson)) {
      scope.fault(
          url.getStartOffset(),
          "the course has no lesson '" + lesson + "'",
          Nearest.help(lesson, lessons));
      return address;
    }
    return mark < 0 ? page(url, lesson) : anchor(url, lesson, address.substring(mark + 1));
  }

  private String page(BasedSequence url, String lesson) {
    scope.page().course().link(new LinkUse(lesson, "", scope.places().apply(url.getStartOffset())));
    return "course:" + lesson;
  }

  private String term(BasedSequence url, String text) {
    Glossary glossary = scope.page().course().glossary();
    String name = url.unescape().substring(TERM.length());
    String word = name.isEmpty() ? PlainText.of(text) : name;
    Optional<Glossary.Term> term = glossary.linked(name, PlainText.of(text));
    if (term.isEmpty()) {
      scope.fault(
          url.getStartOffset(),
          "the glossary has no term '" + word + "'",
          Nearest.to(word, glossary.forms())
              .map(near -> "did you mean '" + near + "'?")
              .orElse("explain it in the glossary, or leave the link out"));
      return text;
    }
    return "<a class=\"term\" href=\""
        + Xhtml.attribute(term.get().address())
        + "\">"
        + text
        + "</a>";
  }

  private String anchor(BasedSequence url, String lesson, String anchor) {
    scope
        .page()
        .course()
        .link(new LinkUse(lesson, anchor, scope.places().apply(url.getStartOffset())));
    return "course:" + lesson + "#" + PageIds.full(lesson, anchor);
  }

  private String quantity(BasedSequence url, String key) {
    Ledger ledger = scope.values().reckoning().ledger();
    if (ledger.find(key).isEmpty()) {
      scope.fault(
          url.getStartOffset(),
          "no quantity is called '" + key + "'",
          Nearest.to(key, ledger.keys())
              .map(near -> "did you mean '" + near + "'?")
              .orElse("the command 'quantities' lists them all"));
    }
    return "course:quantities#" + key;
  }
}
