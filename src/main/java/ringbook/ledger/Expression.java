package ringbook.ledger;

import java.util.List;
import ringbook.units.Measure;

/** A formula as a tree. */
sealed interface Expression {

  /** What to do with each kind of node; a new kind does not compile until every use handles it. */
  interface Cases<T> {
    T number(String text, double value);

    T literal(Measure measure);

    T key(String key);

    T negative(Expression inner);

    T binary(char operator, Expression left, Expression right);

    T comparison(String operator, Expression left, Expression right);

    T call(String function, List<Expression> arguments);
  }

  /** Hands this node to the case it belongs to. */
  <T> T show(Cases<T> cases);

  /** A plain number, or one of the names pi and inf. */
  record Constant(String text, double value) implements Expression {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.number(text, value);
    }
  }

  /** A number with a unit. */
  record Literal(Measure measure) implements Expression {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.literal(measure);
    }
  }

  /** Another entry of the ledger. */
  record Key(String key) implements Expression {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.key(key);
    }
  }

  /** A minus sign in front. */
  record Negative(Expression inner) implements Expression {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.negative(inner);
    }
  }

  /** One of + - * / ^. */
  record Binary(char operator, Expression left, Expression right) implements Expression {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.binary(operator, left, right);
    }
  }

  /** One of the comparisons, 1 where true and 0 where not. */
  record Comparison(String operator, Expression left, Expression right) implements Expression {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.comparison(operator, left, right);
    }
  }

  /** A function of {@link Functions}. */
  record Call(String function, List<Expression> arguments) implements Expression {
    public Call {
      arguments = List.copyOf(arguments);
    }

    @Override
    public <T> T show(Cases<T> cases) {
      return cases.call(function, arguments);
    }
  }
}
