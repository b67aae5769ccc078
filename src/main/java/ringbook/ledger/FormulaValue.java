package ringbook.ledger;

import java.util.List;
import java.util.function.ToDoubleFunction;
import ringbook.units.Measure;
import ringbook.units.Num;
import ringbook.units.Whole;

/** Works a formula out in SI. */
final class FormulaValue implements Expression.Cases<Double> {

  private final ToDoubleFunction<String> entries;

  FormulaValue(ToDoubleFunction<String> entries) {
    this.entries = entries;
  }

  @Override
  public Double number(String text, double value) {
    return value;
  }

  @Override
  public Double literal(Measure measure) {
    return measure.si();
  }

  @Override
  public Double key(String key) {
    return entries.applyAsDouble(key);
  }

  @Override
  public Double negative(Expression inner) {
    return -inner.show(this);
  }

  @Override
  public Double binary(char operator, Expression left, Expression right) {
    double a = left.show(this);
    double b = right.show(this);
    return switch (operator) {
      case '+' -> a + b;
      case '-' -> a - b;
      case '*' -> a * b;
      case '/' -> a / b;
      default -> b == 2 ? a * a : Num.pow(a, b);
    };
  }

  @Override
  public Double comparison(String operator, Expression left, Expression right) {
    double a = left.show(this);
    double b = right.show(this);
    boolean holds =
        switch (operator) {
          case "<=" -> Whole.atMost(a, b);
          case ">=" -> Whole.atMost(b, a);
          case "<" -> !Whole.atMost(b, a);
          default -> !Whole.atMost(a, b);
        };
    return holds ? 1.0 : 0.0;
  }

  @Override
  public Double call(String function, List<Expression> arguments) {
    double[] values = new double[arguments.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = arguments.get(i).show(this);
    }
    return Functions.form(function).value().of(values);
  }
}
