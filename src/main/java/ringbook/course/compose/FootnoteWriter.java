package ringbook.course.compose;

import com.vladsch.flexmark.ext.footnotes.FootnoteBlock;

/** Writes the footnotes of a lesson at its end. */
final class FootnoteWriter {

  private final Page page;

  FootnoteWriter(Page page) {
    this.page = page;
  }

  void write(Sink sink) {
    Footnotes footnotes = page.footnotes();
    if (footnotes.notes().isEmpty()) {
      return;
    }
    StringBuilder out = new StringBuilder("<div class=\"footnotes\"><ol>\n");
    // A note may refer to further notes: the list grows while it is written.
    for (int number = 1; number <= footnotes.notes().size(); number++) {
      FootnoteBlock note = footnotes.notes().get(number - 1);
      String id = page.ids().full("note-" + number);
      out.append("<li id=\"")
          .append(id)
          .append("\">")
          .append(new BlockWriter(footnotes.scope(number)).inside(note).strip())
          .append(" <a class=\"back\" href=\"course:")
          .append(page.lesson())
          .append('#')
          .append(id)
          .append("-ref\">Back</a></li>\n");
    }
    sink.add(out.append("</ol></div>").toString());
  }
}
