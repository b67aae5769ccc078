package ringbook.course.markdown;

import com.vladsch.flexmark.parser.InlineParser;
import com.vladsch.flexmark.parser.InlineParserExtension;
import com.vladsch.flexmark.parser.InlineParserExtensionFactory;
import com.vladsch.flexmark.parser.LightInlineParser;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.data.MutableDataHolder;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ringbook.values.Template;

/** What lessons add to Markdown inside a line: values, formulas and marks. */
final class LessonInlines implements Parser.ParserExtension {

  // It begins at the place reached: without ^ the search would swallow text up to a later match.
  private static final Pattern FORMULA = Pattern.compile("^\\$`([^`]+)`\\$");
  private static final Pattern MARK =
      Pattern.compile("^\\{ *[#.][A-Za-z][\\w-]*(?: +[#.][A-Za-z][\\w-]*)* *\\}");

  @Override
  public void parserOptions(MutableDataHolder options) {}

  @Override
  public void extend(Parser.Builder builder) {
    builder.customInlineParserExtensionFactory(new Factory("$", LessonInlines::valueOrFormula));
    builder.customInlineParserExtensionFactory(new Factory("{", LessonInlines::mark));
  }

  private static Optional<Node> valueOrFormula(BasedSequence rest) {
    if (rest.startsWith("${")) {
      int end = Template.closingBrace(rest, 2);
      return Optional.of(
          end < 0
              ? new ValueSpan(rest.subSequence(0, 2), rest.subSequence(2, 2), false)
              : new ValueSpan(rest.subSequence(0, end + 1), rest.subSequence(2, end), true));
    }
    Matcher matcher = FORMULA.matcher(rest);
    return matcher.find()
        ? Optional.of(
            new FormulaSpan(
                rest.subSequence(0, matcher.end()),
                rest.subSequence(matcher.start(1), matcher.end(1))))
        : Optional.empty();
  }

  private static Optional<Node> mark(BasedSequence rest) {
    Matcher matcher = MARK.matcher(rest);
    return matcher.find()
        ? Optional.of(new MarkSpan(rest.subSequence(0, matcher.end())))
        : Optional.empty();
  }

  /** Tries a reader wherever its character turns up. */
  private record Factory(String characters, Function<BasedSequence, Optional<Node>> reader)
      implements InlineParserExtensionFactory {

    @Override
    public CharSequence getCharacters() {
      return characters;
    }

    @Override
    public InlineParserExtension apply(LightInlineParser parser) {
      return new Extension(reader);
    }

    @Override
    public Set<Class<?>> getAfterDependents() {
      return null;
    }

    @Override
    public Set<Class<?>> getBeforeDependents() {
      return null;
    }

    @Override
    public boolean affectsGlobalScope() {
      return false;
    }
  }

  private record Extension(Function<BasedSequence, Optional<Node>> reader)
      implements InlineParserExtension {

    @Override
    public void finalizeDocument(InlineParser parser) {}

    @Override
    public void finalizeBlock(InlineParser parser) {}

    @Override
    public boolean parse(LightInlineParser parser) {
      BasedSequence input = parser.getInput();
      Optional<Node> node = reader.apply(input.subSequence(parser.getIndex(), input.length()));
      if (node.isEmpty()) {
        return false;
      }
      parser.flushTextNode();
      parser.appendNode(node.get());
      parser.setIndex(parser.getIndex() + node.get().getChars().length());
      return true;
    }
  }
}
