package ringbook.units;

/**
 * An f-number: focal length over entrance pupil (marked), or image distance over exit pupil
 * (effective).
 *
 * @param value N in f/N, finite and above 0
 */
public record FNumber(double value) implements Comparable<FNumber> {

  public FNumber {
    Require.positive("f-number", "", value);
  }

  @Override
  public int compareTo(FNumber other) {
    return Double.compare(value, other.value);
  }
}
