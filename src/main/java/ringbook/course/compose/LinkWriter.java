package ringbook.course.compose;

import com.vladsch.flexmark.ast.LinkRef;
import com.vladsch.flexmark.ast.MailLink;
import com.vladsch.flexmark.ast.Reference;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.List;
import java.util.Set;
import ringbook.ledger.Ledger;
import ringbook.problems.Nearest;

/** Writes links and checks where they lead. */
final class LinkWriter {

  private static final List<String> OUTSIDE = List.of("https://", "http://", "mailto:");

  private final Scope scope;

  LinkWriter(Scope scope) {
    this.scope = scope;
  }

  String write(Node link, BasedSequence url, String text) {
    if (text.isBlank()) {
      scope.fault(link, "the link has no text", "write [where it leads](" + url + ")");
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

  private String target(BasedSequence url) {
    String address = url.unescape();
    if (address.startsWith("lesson:")) {
      return lesson(url, address.substring("lesson:".length()));
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
          "write lesson:…, quantity:…, #…, or a full address with https://");
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
    return mark < 0 ? "course:" + lesson : anchor(url, lesson, address.substring(mark + 1));
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
