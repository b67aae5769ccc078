package ringbook.course.typeset;

/** Reads a simple formula out: fractions, roots, powers, indices; commands by their names. */
public final class Spoken {

  private final String tex;
  private int at;

  private Spoken(String tex) {
    this.tex = tex;
  }

  /** The words for {@code tex}, whose braces are balanced. */
  public static String of(String tex) {
    return new Spoken(tex).until('\0').trim().replaceAll(" +", " ");
  }

  private String until(char end) {
    StringBuilder words = new StringBuilder();
    while (at < tex.length() && tex.charAt(at) != end) {
      words.append(next());
    }
    at++;
    return words.toString();
  }

  private String next() {
    char c = tex.charAt(at++);
    return switch (c) {
      case '\\' -> command(name());
      case '{' -> until('}');
      case '^' -> power(argument());
      case '_' -> " " + argument();
      case '=' -> " equals ";
      case '+' -> " plus ";
      case '-' -> " minus ";
      case '/' -> " over ";
      default -> String.valueOf(c);
    };
  }

  private String argument() {
    return at < tex.length() ? next().trim() : "";
  }

  private String name() {
    int start = at;
    while (at < tex.length() && Character.isLetter(tex.charAt(at))) {
      at++;
    }
    if (at == start && at < tex.length()) {
      at++;
    }
    return tex.substring(start, at);
  }

  private String command(String name) {
    return switch (name) {
      case "frac" -> " " + argument() + " over " + argument() + " ";
      case "sqrt" -> " the square root of " + argument() + " ";
      case "cdot", "times" -> " times ";
      case "approx" -> " is about ";
      case "circ" -> " degrees ";
      case "mathrm", "text", "left", "right", ",", " ", ";", "quad" -> " ";
      default -> " " + name + " ";
    };
  }

  private static String power(String exponent) {
    return switch (exponent) {
      case "2" -> " squared ";
      case "degrees" -> " degrees ";
      default -> " to the power " + exponent + " ";
    };
  }
}
