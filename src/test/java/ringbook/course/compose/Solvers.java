package ringbook.course.compose;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/**
 * One way to the answer of each number exercise, from the numbers in its question: {@code
 * q.number(1)} is the first one, lengths in metres, angles in radians, shares as parts of one. The
 * formulas are those a textbook has: thin lens in air with magnification f/(u−f), similar
 * triangles, circles, sines.
 */
final class Solvers {

  static final Map<String, ToDoubleFunction<QuestionText>> BY_ID = new TreeMap<>();

  private Solvers() {}

  private static void solve(String id, ToDoubleFunction<QuestionText> way) {
    BY_ID.put(id, way);
  }

  /** The distance at which {@code size} fills {@code part} of {@code side}: u = f (1 + 1/m). */
  private static double distance(double f, double size, double side, double part) {
    return f * (1 + size / (part * side));
  }

  static {
    RoundSolvers.add(Solvers::solve);
    // rings, photographs a ring, top views, spare
    solve(
        "round-photos",
        q -> Math.ceil((q.number(1) * q.number(2) + q.number(3)) * (1 + q.number(4)) - 1e-9));
    solve("round-time", q -> q.number(1) * q.number(2));
    solve("round-storage", q -> q.number(1) * q.number(2) * 1e6); // in MB
    solve("round-charges", q -> Math.ceil(q.number(2) / q.number(1) - 1e-9));
    solve("round-depth", q -> q.number(2) / (Math.sqrt(2) * Math.sin(q.number(1) / 2)));
    solve(
        "distance-owl", // height, width, f, sensor w and h, fill
        q ->
            Math.max(
                distance(q.number(3), q.number(1), q.number(4), q.number(6)),
                distance(q.number(3), q.number(2), q.number(5), q.number(6))));
    solve(
        "distance-boot", // length, width, height, f, sensor w and h, fill
        q ->
            Math.max(
                distance(
                    q.number(4), Math.hypot(q.number(1), q.number(2)), q.number(5), q.number(7)),
                distance(q.number(4), q.number(3), q.number(6), q.number(7))));
    solve(
        "distance-far-face", // width, height, f, standoff, width, pixel
        q -> q.number(6) * (q.number(4) + q.number(5) - q.number(3)) / q.number(3));
    solve(
        "distance-lens-camera", // f, sensor w and h, height, width, fill, closest
        q ->
            Math.max(
                q.number(7),
                Math.max(
                    distance(q.number(1), q.number(4), q.number(2), q.number(6)),
                    distance(q.number(1), q.number(5), q.number(3), q.number(6)))));
    solve("focus-pot", q -> harmonic(q.number(1), q.number(2)));
    solve(
        "window-lens-camera", // f, near, far, focus, blur spot
        q ->
            q.number(1)
                * q.number(1)
                * (q.number(3) - q.number(2))
                / (q.number(5)
                    * (q.number(3) * (q.number(2) - q.number(1))
                        + q.number(2) * (q.number(3) - q.number(1)))));
    solve("focus-mask", q -> harmonic(q.number(4), q.number(5)));
    solve("blur-spot", q -> q.number(1) * q.number(3) / q.number(2));
    solve("ring-count", q -> Math.ceil(2 * Math.PI / q.number(1) - 1e-9));
    solve("ring-owl-step", q -> 2 * Math.PI / q.number(3));
    solve(
        "ring-chord", // distance, elevation, turn
        q -> 2 * q.number(1) * Math.cos(q.number(2)) * Math.sin(q.number(3) / 2));
    solve(
        "ring-height", // height, middle, distance, elevation
        q -> q.number(2) + q.number(3) * Math.sin(q.number(4)));
    solve("choose-thin-chair", q -> q.number(1) / q.number(2));
    solve("choose-thin-strap", q -> q.number(1) * q.number(2));
    solve(
        "choose-coin", // f, closest focus, side, fill
        q -> q.number(4) * q.number(3) * (q.number(2) - q.number(1)) / q.number(1));
    solve("camera-diagonal", q -> Math.hypot(q.number(1), q.number(2)));
    solve("camera-crop", q -> Math.hypot(q.number(2), q.number(3)) / q.number(1));
    solve("camera-equivalent", q -> q.number(1) * q.number(2));
    solve("camera-pixel", q -> q.number(1) / q.number(2));
    solve("camera-megapixels", q -> q.number(1) * q.number(2) / 1e6);
    solve(
        "camera-refocus", // near, far, f: lengths behind the lens by the lens equation
        q -> (1 / q.number(3) - 1 / q.number(2)) / (1 / q.number(3) - 1 / q.number(1)) - 1);
    solve(
        "light-hands", // pixels, pixel, lens to sensor, tremor
        q -> q.number(1) * q.number(2) / (q.number(3) * q.number(4)));
    solve(
        "light-lux", // light, time asked for, time of the hands
        q -> q.number(1) * q.number(2) / q.number(3));
    solve(
        "light-lamp", // across, lamp
        q ->
            2
                * Math.log((q.number(2) + q.number(1) / 2) / (q.number(2) - q.number(1) / 2))
                / Math.log(2));
    solve("light-pulses", q -> 2 * q.number(1) * q.number(2)); // mains, time
    solve("light-walk", q -> q.number(3) * q.number(2) / q.number(1)); // speed, pixel, pixels
    solve("light-polariser", q -> q.number(1) * Math.pow(2, q.number(2))); // time, stops
    underside();
    ownObject();
    later();
  }

  /** True size, the day, the check, the hand-over. */
  private static void later() {
    solve("size-allowed", q -> q.number(2) / q.number(1));
    solve("size-one-bar", q -> Math.hypot(q.number(2), q.number(3)) / q.number(1));
    solve("size-carried", q -> q.number(1) * q.number(2));
    solve("size-four", q -> q.number(1) / Math.sqrt(q.number(2)));
    solve(
        "size-needed", // error of one bar, length, tolerance
        q -> Math.ceil(Math.pow(q.number(1) * q.number(2) / q.number(3), 2) - 1e-9));
    solve("size-spare", q -> 3 * q.number(2));
    solve("day-ring-time", q -> q.number(1) * q.number(2));
    solve("day-storage", q -> q.number(1) * q.number(2) * 1e6); // in MB
    solve("day-holds", q -> Math.floor(q.number(1) * 1000 / q.number(2) + 1e-9)); // GB, MB
    solve("day-charges", q -> Math.ceil(q.number(1) / q.number(2) - 1e-9));
    solve("day-smaller", q -> q.number(1) * q.number(3) + q.number(2));
    solve("day-session", q -> 3 * q.number(1) * q.number(2));
    solve("leave-gap", q -> 2 * 2 * Math.PI / q.number(1));
    solve("leave-bearable", q -> Math.floor(q.number(2) / q.number(1) + 1e-9) - 1);
    solve("leave-blur", q -> q.number(1) * q.number(2));
    solve("leave-sample", q -> Math.ceil(Math.log(20) / Math.log(1 + q.number(2))));
    solve(
        "leave-time", // photographs, glance, sample, look
        q -> q.number(1) * q.number(2) + q.number(3) * q.number(4));
    solve("over-files", q -> q.number(1) + q.number(2) + 1);
    solve("over-digits", q -> 1 + Math.floor(Math.log10(q.number(1)) + 1e-9));
    solve("over-storage", q -> 3 * q.number(1) * 1e9); // in GB
    solve("over-runs", q -> q.number(1) + 1 + q.number(2) + 1);
  }

  /** The underside. Numbers in a question are read without their sign. */
  private static void underside() {
    solve("under-band", q -> 2 * Math.min(q.number(1), q.number(2)));
    solve("under-apart", q -> 2 * q.number(1));
    solve(
        "under-rings", // lowest (below zero), highest, highest, step
        q -> 1 + Math.ceil((q.number(2) - q.number(1)) / q.number(4) - 1e-9));
    solve("under-photos", q -> q.number(1) * q.number(2) + q.number(3));
    solve(
        "under-total", // rings, top, second pose, spare
        q -> Math.ceil((q.number(1) + q.number(2) + q.number(3)) * (1 + q.number(4)) - 1e-9));
  }

  /** Your own object. */
  private static void ownObject() {
    solve(
        "own-distance", // height, f, sensor w and h, fill
        q -> distance(q.number(2), q.number(1), q.number(3), q.number(5)));
    solve("own-rings", q -> q.number(1) * Math.ceil(2 * Math.PI / q.number(2) - 1e-9));
    solve(
        "own-job", // rings, top, spare
        q -> Math.ceil((q.number(1) + q.number(2)) * (1 + q.number(3)) - 1e-9));
    solve("own-day", q -> 3 * q.number(1) * q.number(2));
    solve("own-room", q -> q.number(1) + q.number(2));
  }

  /** Where to focus so that both ends are equally unsharp: 2 n F / (n + F). */
  private static double harmonic(double near, double far) {
    return 2 * near * far / (near + far);
  }
}
