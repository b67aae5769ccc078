package ringbook.ledger;

import java.util.List;
import ringbook.optics.DepthOfField;
import ringbook.optics.Diffraction;
import ringbook.optics.FStops;
import ringbook.optics.ThinLens;
import ringbook.units.FNumber;
import ringbook.units.Unit;

/** The window of f-numbers that holds the object sharp, and the one to set. */
final class SharpEntries {

  private static final String OPTICS = "similar triangles at the aperture; textbooks of optics";
  private static final String AIRY = "Airy pattern of a round aperture";

  private SharpEntries() {}

  static List<Quantity> entries() {
    return List.of(
        near(),
        far(),
        focus(),
        magnification(),
        blurSpot(),
        openEdge(),
        darkRing(),
        wavelength(),
        closed(),
        balance(),
        windowFrom(),
        windowTo(),
        window(),
        fNumberToSet(),
        dialMark(),
        effective());
  }

  private static Quantity near() {
    return Entry.of("sharp.near", "nearest distance to hold sharp")
        .meaning("Where the depth to hold sharp begins: the near face of the object.")
        .symbol("n", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula("distance.standoff")
        .source("the near face must be sharp")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> r.si("distance.standoff"));
  }

  private static Quantity far() {
    return Entry.of("sharp.far", "farthest distance to hold sharp")
        .meaning(
            "Where the depth to hold sharp ends; what lies behind it is left to the"
                + " photographs from the other side.")
        .symbol("F", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula("distance.standoff + aim.sharpShare * distance.turningWidth")
        .source("the share of the depth that one photograph must hold")
        .checkedBy("test:DistanceRoutesTest")
        .by(
            r ->
                r.si("distance.standoff") + r.si("aim.sharpShare") * r.si("distance.turningWidth"));
  }

  private static Quantity focus() {
    return Entry.of("sharp.focus", "focus distance")
        .meaning(
            "Where to focus so that the near and the far end are equally blurred: their"
                + " harmonic mean, a little nearer than the middle.")
        .symbol("s", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula("2 * sharp.near * sharp.far / (sharp.near + sharp.far)")
        .source(OPTICS)
        .checkedBy("DOF-12", "DOF-15")
        .by(r -> DepthOfField.focusBetween(r.length("sharp.near"), r.length("sharp.far")).metres());
  }

  private static Quantity magnification() {
    return Entry.of("sharp.magnification", "magnification at the focus distance")
        .meaning("Size of the picture over size of the object, where the lens is focused.")
        .symbol("m_{s}", Unit.ONE)
        .range(Range.above(0))
        .formula("kit.focalLength / (sharp.focus - kit.focalLength)")
        .source("thin lens; textbooks of optics")
        .checkedBy("LEN-02", "LEN-06")
        .by(r -> ThinLens.magnification(r.length("kit.focalLength"), r.length("sharp.focus")));
  }

  private static Quantity blurSpot() {
    return Entry.of("sharp.blurSpot", "widest blur spot")
        .meaning("The widest spot on the sensor that still counts as a sharp point.")
        .symbol("c", Unit.MICROMETRE)
        .range(Range.above(0))
        .formula("aim.blurLimit * kit.pixelPitch")
        .source("a stated number of pixels; common practice, no source")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> r.si("aim.blurLimit") * r.si("kit.pixelPitch"));
  }

  private static Quantity openEdge() {
    return Entry.of("sharp.open", "lower edge of the f-number window")
        .meaning("The smallest f-number that holds the depth sharp; below it the ends blur.")
        .symbol("N_{\\mathrm{open}}", Unit.F_STOP)
        .range(Range.above(0))
        .formula(
            "kit.focalLength ^ 2 * (sharp.far - sharp.near)"
                + " / (sharp.blurSpot * (sharp.far + sharp.near)"
                + " * (sharp.focus - kit.focalLength))")
        .source(OPTICS)
        .checkedBy("DOF-16")
        .by(SharpEntries::open);
  }

  private static Quantity closed() {
    return Entry.of("sharp.closed", "upper edge of the f-number window")
        .meaning(
            "The largest f-number before the small aperture itself spreads every point too"
                + " widely.")
        .symbol("N_{\\mathrm{closed}}", Unit.F_STOP)
        .range(Range.above(0))
        .formula(
            "aim.diffractionLimit * kit.pixelPitch"
                + " / (sharp.darkRing * sharp.wavelength * (1 + sharp.magnification))")
        .source(AIRY)
        .checkedBy("DIF-03", "DIF-08", "DIF-09")
        .by(
            r ->
                Diffraction.fNumberFor(
                        r.length("kit.pixelPitch").times(r.si("aim.diffractionLimit")),
                        r.si("sharp.magnification"))
                    .value());
  }

  private static Quantity darkRing() {
    return Entry.of("sharp.darkRing", "first dark ring of the diffraction disc")
        .meaning(
            "How many times wider than wavelength times f-number the disc is that a round opening"
                + " makes of a point.")
        .symbol("k_{\\mathrm{dark}}", Unit.ONE)
        .range(Range.above(0))
        .formula("2.43934")
        .source("twice the first zero of the Bessel function J1 over π; textbooks of optics")
        .checkedBy("DIF-01")
        .by(r -> Diffraction.FIRST_DARK_RING);
  }

  private static Quantity wavelength() {
    return Entry.of("sharp.wavelength", "wavelength of green light")
        .meaning("The light that stands for all of it: eyes and sensors see best near it.")
        .symbol("\\lambda", Unit.MICROMETRE)
        .range(Range.between(380e-9, 780e-9))
        .formula("0.55um")
        .source("rounded from the 555 nm at which the eye is most sensitive by day")
        .checkedBy("DIF-13")
        .by(r -> Diffraction.GREEN.metres());
  }

  private static Quantity balance() {
    return Entry.of("sharp.balance", "balancing f-number")
        .meaning(
            "The f-number at which blur from depth and spread from the aperture are equal at"
                + " the ends, and their sum least.")
        .symbol("N_{\\mathrm{bal}}", Unit.F_STOP)
        .range(Range.above(0))
        .formula(
            "sqrt(sharp.open * sharp.blurSpot"
                + " / (sharp.darkRing * sharp.wavelength * (1 + sharp.magnification)))")
        .source("least sum of squares of both spots; squares are added by convention")
        .checkedBy("DIF-12")
        .by(
            r ->
                Diffraction.balance(
                        r.fNumber("sharp.open"),
                        r.length("sharp.blurSpot"),
                        r.si("sharp.magnification"))
                    .value());
  }

  private static Quantity windowFrom() {
    return Entry.of("sharp.windowFrom", "smallest f-number that may be set")
        .meaning("The lower edge of the window, or the lens's widest aperture above it.")
        .symbol("N_{1}", Unit.F_STOP)
        .range(Range.above(0))
        .formula("max(sharp.open, kit.widest)")
        .source("the larger of need and possibility")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> Math.max(r.si("sharp.open"), r.si("kit.widest")));
  }

  private static Quantity windowTo() {
    return Entry.of("sharp.windowTo", "largest f-number that may be set")
        .meaning("The upper edge of the window, or the lens's narrowest aperture below it.")
        .symbol("N_{2}", Unit.F_STOP)
        .range(Range.above(0))
        .formula("min(sharp.closed, kit.narrowest)")
        .source("the smaller of need and possibility")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> Math.min(r.si("sharp.closed"), r.si("kit.narrowest")));
  }

  private static Quantity window() {
    return Entry.of("sharp.window", "an f-number holds the object sharp")
        .meaning("Whether the lens can be set to an f-number between both edges.")
        .symbol("\\mathrm{window}", Unit.ANSWER)
        .formula("sharp.windowFrom <= sharp.windowTo")
        .source("the edges in the right order")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> Quantity.atMost(r.si("sharp.windowFrom"), r.si("sharp.windowTo")));
  }

  private static Quantity fNumberToSet() {
    return Entry.of("sharp.fNumber", "f-number to set")
        .meaning("The f-number the group works with.")
        .symbol("N", Unit.F_STOP)
        .range(Range.above(0))
        .rounded(Rounding.mark(2))
        .rule(
            "within the window: its middle in stops, moved to the nearest third-stop mark if"
                + " one lies inside; without a window: the balancing f-number, kept to what"
                + " the lens can be set to",
            "sharp.window",
            "sharp.windowFrom",
            "sharp.windowTo",
            "sharp.balance",
            "kit.widest",
            "kit.narrowest")
        .source("middle between two limits; common practice, no source")
        .checkedBy("FNO-08", "FNO-09")
        .by(SharpEntries::fNumber);
  }

  private static Quantity dialMark() {
    return Entry.of("sharp.dial", "mark on the lens")
        .meaning("What is engraved nearest to the f-number to set.")
        .symbol("N_{\\mathrm{dial}}", Unit.F_STOP)
        .range(Range.above(0))
        .rule(
            "the name of the third stop nearest to the f-number to set; on a lens with one"
                + " aperture, that one",
            "sharp.fNumber",
            "kit.widest",
            "kit.narrowest")
        .source("powers of the root of two; the engraved names are common practice")
        .checkedBy("FNO-03", "FNO-04", "FNO-08", "FNO-09")
        .by(SharpEntries::dial);
  }

  private static Quantity effective() {
    return Entry.of("sharp.effective", "effective f-number")
        .meaning(
            "The f-number that counts at the sensor: focused close, the lens stands farther"
                + " from the sensor and works with a narrower cone of light.")
        .symbol("N'", Unit.F_STOP)
        .range(Range.above(0))
        .formula("sharp.fNumber * (1 + sharp.magnification)")
        .source("similar triangles; symmetric lens")
        .checkedBy("CLO-01", "CLO-02", "CLO-03", "CLO-04")
        .by(
            r ->
                Diffraction.effective(r.fNumber("sharp.fNumber"), r.si("sharp.magnification"))
                    .value());
  }

  private static double open(Reckoning r) {
    return DepthOfField.fNumberFor(
            r.length("kit.focalLength"),
            r.length("sharp.near"),
            r.length("sharp.far"),
            r.length("sharp.blurSpot"))
        .value();
  }

  private static double fNumber(Reckoning r) {
    if (!r.yes("sharp.window")) {
      double balance = r.si("sharp.balance");
      return Math.min(Math.max(balance, r.si("kit.widest")), r.si("kit.narrowest"));
    }
    FNumber from = r.fNumber("sharp.windowFrom");
    FNumber to = r.fNumber("sharp.windowTo");
    if (from.equals(to)) {
      return from.value();
    }
    double middle = Math.sqrt(from.value() * to.value());
    return FStops.markBetween(from, to).map(FNumber::value).orElse(middle);
  }

  private static double dial(Reckoning r) {
    double widest = r.si("kit.widest");
    double narrowest = r.si("kit.narrowest");
    double name = FStops.name(r.fNumber("sharp.fNumber"));
    return Math.min(Math.max(name, widest), narrowest);
  }
}
