package ringbook.ledger;

import java.util.List;

/** Turns the TeX of a symbol into plain text. */
final class Symbols {

  private static final List<String[]> PAIRS =
      List.of(
          new String[] {"\\Phi", "Φ"},
          new String[] {"\\varphi", "φ"},
          new String[] {"\\alpha", "α"},
          new String[] {"\\beta", "β"},
          new String[] {"\\gamma", "γ"},
          new String[] {"\\delta", "δ"},
          new String[] {"\\Delta", "Δ"},
          new String[] {"\\varepsilon", "ε"},
          new String[] {"\\theta", "θ"},
          new String[] {"\\perp", "⊥"},
          new String[] {"\\lambda", "λ"},
          new String[] {"\\mu", "µ"},
          new String[] {"\\sigma", "σ"},
          new String[] {"\\tau", "τ"},
          new String[] {"\\omega", "ω"},
          new String[] {"\\mathrm", ""},
          new String[] {"\\min", "min"},
          new String[] {"\\max", "max"},
          new String[] {"\\,", ""},
          new String[] {"{", ""},
          new String[] {"}", ""});

  private Symbols() {}

  static String plain(String tex) {
    String plain = tex;
    for (String[] pair : PAIRS) {
      plain = plain.replace(pair[0], pair[1]);
    }
    return plain;
  }
}
