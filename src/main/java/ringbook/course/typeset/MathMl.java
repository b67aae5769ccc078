package ringbook.course.typeset;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Writes formulas as presentation MathML: the few commands of TeX that the ledger's entries are
 * written with, by the same rules as the script of the pages, {@code site/js/math.js}: change both.
 */
public final class MathMl {

  private static final String SPACE = "http://www.w3.org/1998/Math/MathML";

  private static final Map<String, String> LETTERS =
      Map.ofEntries(
          Map.entry("alpha", "α"),
          Map.entry("beta", "β"),
          Map.entry("gamma", "γ"),
          Map.entry("delta", "δ"),
          Map.entry("Delta", "Δ"),
          Map.entry("varepsilon", "ε"),
          Map.entry("theta", "θ"),
          Map.entry("lambda", "λ"),
          Map.entry("mu", "µ"),
          Map.entry("pi", "π"),
          Map.entry("sigma", "σ"),
          Map.entry("tau", "τ"),
          Map.entry("varphi", "φ"),
          Map.entry("Phi", "Φ"),
          Map.entry("omega", "ω"),
          Map.entry("perp", "⊥"));

  private static final Map<String, String> SIGNS =
      Map.ofEntries(
          Map.entry("times", "×"),
          Map.entry("cdot", "·"),
          Map.entry("leq", "≤"),
          Map.entry("geq", "≥"),
          Map.entry("%", "%"),
          Map.entry("lceil", "⌈"),
          Map.entry("rceil", "⌉"),
          Map.entry("lfloor", "⌊"),
          Map.entry("rfloor", "⌋"),
          Map.entry("infty", "∞"),
          Map.entry("circ", "∘"));

  private static final Set<String> NAMES =
      Set.of("min", "max", "sin", "cos", "tan", "arcsin", "arccos", "arctan", "ln", "log");

  private static final Map<String, String> GAPS =
      Map.of(",", "0.17em", " ", "0.33em", "quad", "1em");

  private static final String DEGREE = node("mtext", "°");

  /** A part of a formula: its markup, and what it is if a sign raised behind it must know. */
  private record Part(String xml, String base, String below) {
    static Part of(String xml) {
      return new Part(xml, null, null);
    }
  }

  /** A command or a sign that this writer does not know. */
  private static final class Unknown extends Exception {
    private static final long serialVersionUID = 1L;
  }

  private final List<String> all;
  private int at;

  private MathMl(List<String> all) {
    this.all = all;
  }

  /**
   * The formula as a {@code math} element; empty if it has a command that is not known here.
   *
   * @param tex the formula, its braces balanced
   * @param speech how it is read out, for readers that know no MathML
   * @param display whether it is set large, as on a line of its own
   */
  public static Optional<String> of(String tex, String speech, boolean display) {
    try {
      MathMl reader = new MathMl(TexTokens.of(tex));
      String inside = reader.until(Set.of());
      return Optional.of(
          "<math xmlns=\""
              + SPACE
              + "\""
              + (display ? " displaystyle=\"true\"" : "")
              + " alttext=\""
              + Formulas.escaped(speech)
              + "\">"
              + inside
              + "</math>");
    } catch (Unknown command) {
      return Optional.empty();
    }
  }

  private String peek() {
    return at < all.size() ? all.get(at) : "";
  }

  private String next() throws Unknown {
    if (at >= all.size()) {
      throw new Unknown();
    }
    return all.get(at++);
  }

  private String until(Set<String> ends) throws Unknown {
    List<Part> parts = new ArrayList<>();
    while (at < all.size() && !ends.contains(peek())) {
      part(parts);
    }
    at++;
    return row(parts.stream().map(Part::xml).toList());
  }

  private String group() throws Unknown {
    if (peek().equals("{")) {
      at++;
      return until(Set.of("}"));
    }
    List<Part> parts = new ArrayList<>();
    part(parts);
    return row(parts.stream().map(Part::xml).toList());
  }

  /** The plain text of a group. */
  private String words() throws Unknown {
    StringBuilder text = new StringBuilder();
    next();
    while (!peek().equals("}")) {
      String token = next();
      String name = token.substring(1);
      text.append(
          !token.startsWith("\\")
              ? token
              : LETTERS.containsKey(name) ? LETTERS.get(name) : SIGNS.getOrDefault(name, " "));
    }
    next();
    return text.toString();
  }

  private void part(List<Part> parts) throws Unknown {
    String token = next();
    char first = token.charAt(0);
    if (first == '^' || first == '_') {
      parts.add(raised(first, parts.isEmpty() ? Part.of("<mrow></mrow>") : last(parts)));
    } else if (first == '{') {
      parts.add(Part.of(until(Set.of("}"))));
    } else if (first == '\\') {
      parts.add(Part.of(command(token.substring(1))));
    } else if (first >= '0' && first <= '9') {
      parts.add(Part.of(node("mn", token)));
    } else if (TexTokens.isLetter(first)) {
      parts.add(Part.of(node("mi", token)));
    } else {
      parts.add(Part.of(node("mo", first == '-' ? "−" : first == '\'' ? "′" : token)));
    }
  }

  private static Part last(List<Part> parts) {
    return parts.remove(parts.size() - 1);
  }

  private Part raised(char sign, Part base) throws Unknown {
    String script = group();
    if (sign == '_') {
      return new Part("<msub>" + base.xml() + script + "</msub>", base.xml(), script);
    }
    if (script.equals(node("mo", "∘"))) {
      return Part.of(row(List.of(base.xml(), DEGREE)));
    }
    return Part.of(
        base.below() == null
            ? "<msup>" + base.xml() + script + "</msup>"
            : "<msubsup>" + base.base() + base.below() + script + "</msubsup>");
  }

  private String command(String name) throws Unknown {
    if (LETTERS.containsKey(name)) {
      return node("mi", LETTERS.get(name));
    }
    if (SIGNS.containsKey(name)) {
      return node("mo", SIGNS.get(name));
    }
    if (NAMES.contains(name)) {
      return node("mi", name);
    }
    if (GAPS.containsKey(name)) {
      return "<mspace width=\"" + GAPS.get(name) + "\"></mspace>";
    }
    return switch (name) {
      case "mathrm" -> upright(words());
      case "frac" -> "<mfrac>" + group() + group() + "</mfrac>";
      case "sqrt" -> "<msqrt>" + group() + "</msqrt>";
      case "left" -> row(List.of(fence(next()), until(Set.of("\\right")), fence(next())));
      case "begin" -> cases();
      default -> throw new Unknown();
    };
  }

  private static String upright(String words) {
    return words.length() == 1
        ? "<mi mathvariant=\"normal\">" + Formulas.escaped(words) + "</mi>"
        : node("mi", words);
  }

  private static String fence(String token) {
    String sign =
        token.startsWith("\\")
            ? SIGNS.getOrDefault(token.substring(1), "")
            : token.equals(".") ? "" : token;
    return "<mo fence=\"true\">" + Formulas.escaped(sign) + "</mo>";
  }

  /** One value of several, each with the condition it holds for. */
  private String cases() throws Unknown {
    words();
    Set<String> ends = Set.of("&", "\\\\", "\\end");
    StringBuilder table = new StringBuilder("<mtable class=\"cases\">");
    String end = "";
    while (!end.equals("\\end")) {
      table.append("<mtr>");
      do {
        table.append("<mtd>").append(until(ends)).append("</mtd>");
        if (at > all.size()) {
          throw new Unknown();
        }
        end = all.get(at - 1);
      } while (end.equals("&"));
      table.append("</mtr>");
    }
    words();
    return row(List.of(fence("{"), table.append("</mtable>").toString()));
  }

  private static String row(List<String> parts) {
    return parts.size() == 1 ? parts.get(0) : "<mrow>" + String.join("", parts) + "</mrow>";
  }

  private static String node(String name, String text) {
    return "<" + name + ">" + Formulas.escaped(text) + "</" + name + ">";
  }
}
