package ringbook.course.markdown;

import com.vladsch.flexmark.ext.definition.DefinitionExtension;
import com.vladsch.flexmark.ext.footnotes.FootnoteExtension;
import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.ext.typographic.TypographicExtension;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Document;
import com.vladsch.flexmark.util.data.DataHolder;
import com.vladsch.flexmark.util.data.MutableDataSet;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.List;

/** The Markdown of lessons and exercises, parsed with the place of every node. */
public final class Markdown {

  private static final DataHolder OPTIONS =
      new MutableDataSet()
          .set(
              Parser.EXTENSIONS,
              List.of(
                  TablesExtension.create(),
                  FootnoteExtension.create(),
                  DefinitionExtension.create(),
                  TypographicExtension.create(),
                  new LessonInlines()))
          .set(TablesExtension.COLUMN_SPANS, false)
          .set(TablesExtension.APPEND_MISSING_COLUMNS, false)
          .set(TablesExtension.DISCARD_EXTRA_COLUMNS, false)
          .toImmutable();

  private static final Parser PARSER = Parser.builder(OPTIONS).build();

  private Markdown() {}

  /** The tree of {@code text}; its nodes keep their offsets in the sequence it was cut from. */
  public static Document parse(BasedSequence text) {
    return PARSER.parse(text);
  }
}
