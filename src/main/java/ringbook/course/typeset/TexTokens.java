package ringbook.course.typeset;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Cuts a formula written in TeX into commands, numbers and single signs. */
final class TexTokens {

  private static final Pattern TOKEN =
      Pattern.compile(
          "\\\\[A-Za-z]+|\\\\.|[0-9](?:[0-9.\\u00a0\\u202f]*[0-9])?|\\s+|[\\s\\S]", Pattern.DOTALL);

  private TexTokens() {}

  /** All but white space, in order. */
  static List<String> of(String tex) {
    return TOKEN.matcher(tex).results().map(MatchResult::group).filter(t -> !gap(t)).toList();
  }

  /** A command for a gap is none: it begins with a backslash. */
  private static boolean gap(String token) {
    return token.codePoints().allMatch(c -> Character.isWhitespace(c) || c == 0xa0 || c == 0x202f);
  }

  static boolean isLetter(char sign) {
    return (sign >= 'a' && sign <= 'z') || (sign >= 'A' && sign <= 'Z');
  }
}
