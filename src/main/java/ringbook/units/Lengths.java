package ringbook.units;

/**
 * In which measures lengths of objects and rooms are told. Fine ones, such as what a pixel covers,
 * and those of a camera are told in millimetres and below everywhere, as is usual in the trade.
 */
public enum Lengths {
  /** In centimetres and metres. */
  METRIC,
  /** In inches; from three feet on in feet and inches. */
  IMPERIAL
}
