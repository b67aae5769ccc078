package ringbook.impure.units;

import java.io.File;
import java.util.Formatter;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Random;
import java.util.Scanner;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import ringbook.impure.figures.Above;

/** One breach of each rule; never run. */
final class Breaches {

  private final float single = 1;
  private final DoubleUnaryOperator byReference = Math::cbrt;

  Object[] classes() {
    return new Object[] {
      new Above(),
      new File("x"),
      new HashMap<String, String>(),
      new HashSet<String>(),
      new Random(1),
      new SplittableRandom(1),
      new Scanner("x"),
      new Formatter(Locale.ROOT),
      Pattern.compile("x"),
    };
  }

  double numbers(float parameter, String text) {
    return Math.sin(1)
        + StrictMath.sin(1)
        + Math.random()
        + single
        + parameter
        + byReference.applyAsDouble(
            Double.parseDouble(text) + Integer.parseInt(text) + Long.parseLong(text))
        + Double.valueOf(text)
        + Float.parseFloat(text)
        + DoubleStream.of(1).sum()
        + DoubleStream.of(1).average().orElse(0)
        + System.nanoTime();
  }

  String texts(String text, double number, StringBuilder out) throws ClassNotFoundException {
    return String.format(Locale.ROOT, "%s", text)
        + "%s".formatted(text)
        + text.split("x", 2)[0]
        + text.matches("x")
        + text.replaceAll("x", "y")
        + text.replaceFirst("x", "y")
        + text.toLowerCase(Locale.ROOT)
        + Double.toString(number)
        + out.append(number)
        + String.valueOf(number)
        + Class.forName(text)
        + Thread.currentThread();
  }
}
