/**
 * Quantities with a unit: what they are inside (SI doubles behind a type) and what a person writes
 * and reads.
 *
 * <p><b>Contract.</b> Immutable records; NaN, infinity and impossible values are refused when
 * built. Inside the tool lengths are metres, angles radians and times seconds; other units exist
 * only in factories, accessors and text. Everything that could differ between a JVM and a browser
 * (elementary functions, reading and printing decimals) is ours: {@link ringbook.units.Num}, {@link
 * ringbook.units.Decimal}, {@link ringbook.units.Numbers}.
 *
 * <p>What people write is read by {@link ringbook.units.MeasureReader}, what they read is printed
 * by {@link ringbook.units.MeasurePrinter}; both keep the unit beside the number.
 *
 * <p><b>Layer.</b> Lowest but for problems: uses only that, java.lang and java.util. Also compiled
 * for the browser: no {@code Math} beyond sqrt, abs, floor, ceil, min and max; no regex, {@code
 * String.format}, locale or float.
 *
 * <p><b>Start at</b> {@link ringbook.units.Length} and {@link ringbook.units.Unit}.
 */
package ringbook.units;
