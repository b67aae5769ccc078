package ringbook.ledger;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import ringbook.units.Measure;

/**
 * A formula over ledger entries, written once as text.
 *
 * <p><b>Notation.</b> {@code kit.focalLength ^ 2 / (sharp.fNumber * sharp.blur) + kit.focalLength}:
 * keys, numbers, numbers with a unit ({@code 360deg}, {@code 0.55um}), {@code pi}, {@code inf}, the
 * operators + - * / ^, comparisons (1 if true, 0 if not) and the functions sqrt, sin, cos, tan,
 * asin, acos, atan, exp, ln, log2, abs, ceil, floor, round, max, min, {@code both}, {@code either}
 * and {@code if(condition, then, otherwise)}. It is worked out in SI: metres, radians, seconds.
 */
public final class Formula {

  private final String notation;
  private final Expression tree;
  private final List<String> keys;

  private Formula(String notation) {
    this.notation = notation;
    this.tree = new FormulaReader(notation).read();
    Set<String> found = new LinkedHashSet<>();
    collect(tree, found);
    this.keys = List.copyOf(found);
  }

  /**
   * The formula that {@code notation} writes.
   *
   * @throws IllegalArgumentException if it cannot be read
   */
  public static Formula of(String notation) {
    return new Formula(notation);
  }

  /** The text it was written as. */
  public String notation() {
    return notation;
  }

  /** The entries it uses, in order of first appearance. */
  public List<String> keys() {
    return keys;
  }

  /** Its value in SI, with the entries' values in SI. */
  public double value(ToDoubleFunction<String> entries) {
    return tree.show(new FormulaValue(entries));
  }

  /**
   * The formula typeset, in TeX.
   *
   * @param entry how an entry appears, in TeX
   * @param times the sign between factors, in TeX
   */
  public String tex(Function<String, String> entry, String times) {
    return new FormulaPrint(FormulaPrint.TEX, entry, times).print(tree);
  }

  /** The formula in one line of plain text. */
  public String text(Function<String, String> entry) {
    return new FormulaPrint(FormulaPrint.TEXT, entry, " · ").print(tree);
  }

  /** The formula as it is read out. */
  public String speech(Function<String, String> entry) {
    return new FormulaPrint(FormulaPrint.SPEECH, entry, " times ").print(tree);
  }

  private static void collect(Expression node, Set<String> into) {
    for (Expression child : children(node)) {
      collect(child, into);
    }
    if (node instanceof Expression.Key key) {
      into.add(key.key());
    }
  }

  private static List<Expression> children(Expression node) {
    return node.show(
        new Expression.Cases<List<Expression>>() {
          @Override
          public List<Expression> number(String text, double value) {
            return List.of();
          }

          @Override
          public List<Expression> literal(Measure measure) {
            return List.of();
          }

          @Override
          public List<Expression> key(String key) {
            return List.of();
          }

          @Override
          public List<Expression> negative(Expression inner) {
            return List.of(inner);
          }

          @Override
          public List<Expression> binary(char operator, Expression left, Expression right) {
            return List.of(left, right);
          }

          @Override
          public List<Expression> comparison(String operator, Expression left, Expression right) {
            return List.of(left, right);
          }

          @Override
          public List<Expression> call(String function, List<Expression> arguments) {
            return new ArrayList<>(arguments);
          }
        });
  }
}
