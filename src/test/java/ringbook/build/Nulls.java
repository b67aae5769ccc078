package ringbook.build;

import java.util.List;
import org.teavm.jso.JSExport;

/**
 * All the ways to use null that a program has, but one: a method that asks nothing of its object
 * runs in a script on null, too.
 */
public final class Nulls {

  private static final int WAYS = 13;

  private Nulls() {}

  /** How many there are. */
  @JSExport
  public static int ways() {
    return WAYS;
  }

  /** Uses null in one of the ways. */
  @JSExport
  public static String of(int way) {
    boolean not = way < 0;
    Pair pair = not ? new Pair("a", 1) : null;
    String text = not ? "a" : null;
    List<String> list = not ? List.of("a") : null;
    int[] numbers = not ? new int[1] : null;
    Integer boxed = not ? Integer.valueOf(1) : null;
    Named named = not ? text::trim : null;
    Side side = not ? Side.LEFT : null;
    String[] texts = not ? new String[1] : null;
    return switch (way) {
      case 0 -> pair.name();
      case 1 -> "" + pair.length();
      case 2 -> "" + text.length();
      case 3 -> text.substring(1);
      case 4 -> list.get(0);
      case 5 -> String.join(",", list);
      case 6 -> "" + numbers.length;
      case 7 -> "" + numbers[0];
      case 8 -> "" + (boxed + 1);
      case 9 -> named.name();
      case 10 -> "" + written(numbers);
      case 11 -> of(side);
      case 12 -> texts[0];
      default -> "none";
    };
  }

  private static int written(int[] numbers) {
    numbers[0] = 1;
    return 1;
  }

  private static String of(Side side) {
    return switch (side) {
      case LEFT -> "left";
      case RIGHT -> "right";
    };
  }

  private enum Side {
    LEFT,
    RIGHT
  }

  /** Something with a name. */
  private interface Named {
    String name();
  }

  private record Pair(String name, int length) {}
}
