package ringbook.checks;

import static ringbook.units.Length.ofMetres;
import static ringbook.units.Length.ofMicrometres;
import static ringbook.units.Length.ofMillimetres;

import ringbook.checks.CheckValues.Row;
import ringbook.optics.Exposure;
import ringbook.optics.Filter;
import ringbook.optics.Flicker;
import ringbook.optics.Lamp;
import ringbook.optics.Movement;
import ringbook.optics.ShutterMarks;
import ringbook.units.Angle;
import ringbook.units.FNumber;
import ringbook.units.Length;
import ringbook.units.Num;
import ringbook.units.Span;

/** Exposure, light, flicker and movement against published values. */
final class ExposureCheckValuesTest extends CheckTable {

  private static final double FOOT_LAMBERT = 3.426259;

  @Override
  protected String file() {
    return "exposure.csv";
  }

  @Override
  protected void table() {
    steps();
    settings();
    lamps();
    filters();
    movement();
    flicker();
  }

  private void steps() {
    check(r -> Exposure.fNumber(r.number("ApertureValue")).value(), "EXP-01", "EXP-03", "EXP-06");
    check(r -> Exposure.apertureValue(fNumber(r, "f_number")), "EXP-02");
    check(r -> Exposure.fNumber(r.number("MaxApertureValue")).value(), "EXP-04");
    check(r -> Exposure.timeOf(r.number("ShutterSpeedValue")).seconds(), "EXP-05");
    check(r -> Exposure.speedValue(r.number("ISO")), "EXP-17");
    check(
        r -> Exposure.brightnessValue(r.number("luminance_footlambert") * FOOT_LAMBERT), "EXP-18");
    check(r -> ShutterMarks.exact(time(r, "nominal")).seconds(), "FNO-10", "FNO-11");
  }

  private void settings() {
    check(
        r -> Exposure.value(fNumber(r, "f_number"), time(r, "time_s")),
        "EXP-07",
        "EXP-08",
        "EXP-16");
    check(r -> Exposure.luminance(r.number("EV100"), r.number("K")), "EXP-09");
    check(r -> Exposure.illuminanceLux(r.number("EV100")), "EXP-10", "EXP-11", "EXP-12");
    check(r -> -Num.log2(Exposure.luminance(0, r.number("K"))), "EXP-13");
    check(
        r ->
            Num.log2(Exposure.luminance(0, r.number("K1")) / Exposure.luminance(0, r.number("K2"))),
        "EXP-14");
    check(
        r -> Exposure.valueAt100(0, r.number("ISO1")) - Exposure.valueAt100(0, r.number("ISO2")),
        "EXP-15");
    check(r -> Exposure.time(fNumber(r, "f_number"), r.number("EV")).seconds(), "EXP-21");
    check(
        r ->
            Exposure.sameExposure(
                    time(r, "time1_s"), fNumber(r, "f_number1"), fNumber(r, "f_number2"))
                .seconds(),
        "EXP-22");
    check(r -> Exposure.valueFor(r.number("illuminance_lx")), "LGT-10");
  }

  private void lamps() {
    check(
        r -> Lamp.illuminanceLux(r.number("E1_lx"), metres(r, "d1_m"), metres(r, "d2_m")),
        "LGT-01",
        "LGT-02");
    check(r -> Lamp.stopsBetween(metres(r, "d1_m"), metres(r, "d2_m")), "LGT-03", "LGT-04");
    check(r -> Lamp.luxOfIntensity(r.number("intensity_cd"), metres(r, "distance_m")), "LGT-05");
    check(r -> Lamp.illuminanceLux(1, ofMetres(1), metres(r, "distance_ratio")), "LGT-06");
    check(r -> Lamp.spread(metres(r, "lamp_dist_m"), metres(r, "object_depth_m")), "LGT-07");
    check(r -> Lamp.luxOfFlux(r.number("flux_lm"), metres(r, "distance_m")), "LGT-08");
    check(r -> Lamp.flash(r.number("guide_number_m"), metres(r, "distance_m")).value(), "LGT-09");
    check(
        r ->
            100
                * r.number("hours")
                / Lamp.doseHours(r.number("budget_lxh"), r.number("illuminance_lx")),
        "LGT-11");
  }

  private void filters() {
    check(r -> Filter.stopsLost(r.number("transmittance")), "POL-01", "POL-04");
    check(
        r ->
            r.number("intensity")
                * Filter.transmittance(1)
                * Filter.malus(Angle.ofDegrees(r.number("angle_deg"))),
        "POL-02");
    check(r -> Filter.malusAngle(r.number("ratio")).degrees(), "POL-03");
    check(r -> Filter.stopsLost(r.number("light_filter") * r.number("lens_filter")), "POL-05");
  }

  private void movement() {
    check(
        r -> {
          Length sampling = ofMillimetres(r.number("field_mm") / r.number("pixels"));
          double speed = r.number("speed_mm_s") / 1000;
          return Movement.passingTime(r.number("blur_px"), sampling, speed).seconds() * 1e6;
        },
        "MOT-02");
    check(
        r ->
            Movement.passingPixels(
                r.number("speed_mm_s") / 1000,
                new Span(r.number("time_us") * 1e-6),
                ofMicrometres(r.number("object_pixel_um"))),
        "MOT-03");
    check(
        r ->
            Movement.passingTime(
                        r.number("blur_px"),
                        ofMicrometres(r.number("object_pixel_um")),
                        r.number("speed_mm_s") / 1000)
                    .seconds()
                * 1e6,
        "MOT-04");
    check(
        r ->
            Movement.turning(
                    ofMillimetres(r.number("focal_mm")),
                    Angle.ofDegrees(r.number("rate_deg_s")).radians(),
                    time(r, "time_s"))
                .over(ofMicrometres(r.number("pixel_um"))),
        "MOT-05");
    check(
        r ->
            Movement.turning(
                    ofMillimetres(r.number("focal_mm")), r.number("rate_rad_s"), time(r, "time_s"))
                .millimetres(),
        "MOT-06");
  }

  private void flicker() {
    check(r -> Flicker.pulses(r.number("mains_Hz"), time(r, "time_s")), "FLK-01", "FLK-02");
    check(
        r -> Flicker.isSafe(Flicker.pulses(r.number("mains_Hz"), time(r, "time_s"))) ? 1 : 0,
        "FLK-03",
        "FLK-04",
        "FLK-05");
    check(
        r -> {
          double left = Flicker.left(Flicker.pulses(r.number("mains_Hz"), time(r, "time_s")));
          return Flicker.swing(r.number("modulation"), left);
        },
        "FLK-06",
        "FLK-07");
  }

  private static FNumber fNumber(Row r, String key) {
    return new FNumber(r.number(key));
  }

  private static Span time(Row r, String key) {
    return new Span(r.number(key));
  }

  private static Length metres(Row r, String key) {
    return ofMetres(r.number(key));
  }
}
