package ringbook.ledger;

import java.util.List;
import ringbook.optics.DepthOfField;
import ringbook.optics.Kit;
import ringbook.optics.SharpWindow;
import ringbook.units.FNumber;
import ringbook.units.Length;
import ringbook.units.Unit;
import ringbook.units.Whole;

/** What helps when no f-number holds the object sharp. */
final class WaysOutEntries {

  private static final double REACH = 100;

  private WaysOutEntries() {}

  static List<Quantity> entries() {
    return List.of(standBackTo(), depthHad(), coarser(), sliceBlur(), slicesNeeded());
  }

  private static Quantity standBackTo() {
    return Entry.of("sharp.standBack", "standoff at which the window opens")
        .meaning(
            "The smallest standoff, not below the present one, at which an f-number of this"
                + " lens holds the object sharp.")
        .symbol("u_{\\mathrm{back}}", Unit.CENTIMETRE)
        .range(Range.above(0))
        .rule(
            "farther away the needed f-number falls and the allowed one rises; this is where"
                + " they meet within what the lens can be set to",
            "sharp.near",
            "sharp.far",
            "sharp.blurSpot",
            "kit.pixelPitch",
            "aim.diffractionLimit",
            "kit.focalLength",
            "kit.widest",
            "kit.narrowest")
        .source("both edges of the window, solved for the standoff by halving the interval")
        .checkedBy("DOF-16", "DIF-09")
        .by(WaysOutEntries::standBack);
  }

  private static Quantity depthHad() {
    return Entry.of("sharp.depthHad", "depth one photograph holds")
        .meaning(
            "How much depth, counted from the near face, one photograph holds sharp at the"
                + " f-number to set.")
        .symbol("\\Delta_{\\mathrm{had}}", Unit.CENTIMETRE)
        .range(Range.above(0).orEndless())
        .formula(
            "if(2 * sharp.near < sharp.hyperfocal, sharp.near"
                + " * (sharp.hyperfocal - 2 * kit.focalLength)"
                + " / (sharp.hyperfocal - 2 * sharp.near) - sharp.near, inf)")
        .source("depth of field with its near limit on the near face, solved for the far one")
        .checkedBy("DOF-16")
        .by(
            r ->
                DepthEntries.orInfinity(
                    DepthOfField.depthFrom(
                        r.length("kit.focalLength"),
                        r.length("sharp.hyperfocal"),
                        r.length("sharp.near"))));
  }

  private static Quantity coarser() {
    return Entry.of("sharp.coarser", "blur limit that would do")
        .meaning(
            "The blur, in pixels, that would have to be accepted for a window at this"
                + " standoff; the present limit where there is a window.")
        .symbol("b_{\\mathrm{do}}", Unit.PIXEL)
        .range(Range.above(0))
        .formula("aim.blurLimit * max(1, sharp.open / sharp.windowTo)")
        .source("the needed f-number is inversely proportional to the blur accepted")
        .checkedBy("DOF-16")
        .by(
            r -> {
              refuseBelowWidest(r);
              return r.si("aim.blurLimit")
                  * Math.max(1, r.si("sharp.open") / r.si("sharp.windowTo"));
            });
  }

  private static Quantity sliceBlur() {
    return Entry.of("sharp.sliceBlur", "blur limit times f-number of the slices")
        .meaning(
            "The widest blur spot times the largest f-number that may be set: how wide the"
                + " whole aperture would blur a point at the ends of a slice.")
        .symbol("c_{N}", Unit.MICROMETRE)
        .range(Range.above(0))
        .formula("sharp.windowTo * sharp.blurSpot")
        .source("similar triangles at the aperture; textbooks of optics")
        .checkedBy("test:DistanceRoutesTest")
        .by(
            r -> {
              refuseBelowWidest(r);
              return r.si("sharp.windowTo") * r.si("sharp.blurSpot");
            });
  }

  private static Quantity slicesNeeded() {
    return Entry.of("sharp.slices", "photographs focused one behind the other")
        .meaning(
            "How many photographs from one place, each focused a little farther, hold the"
                + " depth between them at the largest f-number that may be set.")
        .symbol("n_{\\mathrm{sl}}", Unit.PIECE)
        .range(Range.wholeFrom(1))
        .rounded(Rounding.decimals(0))
        .formula(
            "if(sharp.sliceBlur < kit.focalLength, max(1,"
                + " ceil(ln((1 - kit.focalLength / sharp.far)"
                + " / (1 - kit.focalLength / sharp.near))"
                + " / ln((kit.focalLength + sharp.sliceBlur)"
                + " / (kit.focalLength - sharp.sliceBlur)))), 1)")
        .source("depth of field laid end to end; similar triangles at the aperture")
        .checkedBy("DOF-16")
        .by(WaysOutEntries::slices);
  }

  private static double standBack(Reckoning r) {
    Length near = r.length("sharp.near");
    Kit kit = r.scene().kit();
    SharpWindow window =
        new SharpWindow(
            kit.lens(),
            r.length("sharp.far").minus(near),
            r.length("sharp.blurSpot"),
            r.length("kit.pixelPitch").times(r.si("aim.diffractionLimit")));
    return window
        .nearestOpen(near, near.times(REACH))
        .map(Length::metres)
        .orElseThrow(() -> noStandBack(r, window));
  }

  private static RefusedException noStandBack(Reckoning r, SharpWindow window) {
    FNumber closed = window.closed(r.length("sharp.near").times(REACH));
    String reason =
        "Even from a hundred times as far, no f-number of this lens holds the object sharp.";
    return closed.compareTo(window.lens().widest()) < 0
        ? new RefusedException(reason, acceptDisc(r, closed))
        : new RefusedException(
            reason, "Accept a wider blur spot, or hold less of the depth sharp.");
  }

  private static double slices(Reckoning r) {
    double slices =
        DepthOfField.slices(
            r.length("kit.focalLength"),
            r.length("sharp.near"),
            r.length("sharp.far"),
            r.length("sharp.sliceBlur"));
    return Math.max(1, Whole.up(slices));
  }

  /** Refuses where the disc is too wide even with the aperture wide open. */
  private static void refuseBelowWidest(Reckoning r) {
    FNumber to = r.fNumber("sharp.windowTo");
    if (to.compareTo(r.scene().kit().lens().widest()) < 0) {
      throw new RefusedException(
          "Even at its widest aperture, "
              + r.text("kit.widest")
              + ", this lens spreads every point over more than "
              + r.text("aim.diffractionLimit")
              + ".",
          acceptDisc(r, to));
    }
  }

  private static String acceptDisc(Reckoning r, FNumber closed) {
    double over = r.scene().kit().lens().widest().value() / closed.value();
    double disc = over * r.scene().aim().diffractionLimit();
    return "Accept a diffraction disc of " + Enough.text(r, "aim.diffractionLimit", disc) + ".";
  }
}
