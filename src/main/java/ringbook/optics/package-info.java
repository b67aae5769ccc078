/**
 * Camera and lens: framing, sampling, depth of field, diffraction, exposure, blur, flicker.
 *
 * <p><b>Contract.</b> Thin lens in air, distances from the lens (front principal plane), never from
 * the sensor mark. Impossible values are refused when a record is built; functions state the range
 * they hold for.
 *
 * <p><b>Layer.</b> Above units; pure Java, also compiled for the browser.
 *
 * <p><b>Start at</b> {@link ringbook.optics.Kit} for what a camera is, {@link
 * ringbook.optics.ThinLens} for the law all else follows from, then {@link
 * ringbook.optics.DepthOfField}, {@link ringbook.optics.Diffraction} and {@link
 * ringbook.optics.Exposure}.
 */
package ringbook.optics;
