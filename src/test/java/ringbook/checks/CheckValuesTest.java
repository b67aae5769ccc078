package ringbook.checks;

import static ringbook.units.Length.ofMicrometres;
import static ringbook.units.Length.ofMillimetres;

import ringbook.checks.CheckValues.Row;
import ringbook.optics.AngleOfView;
import ringbook.optics.CircleOfConfusion;
import ringbook.optics.CloseUp;
import ringbook.optics.DepthOfField;
import ringbook.optics.Diffraction;
import ringbook.optics.Distant;
import ringbook.optics.FStops;
import ringbook.optics.Framing;
import ringbook.optics.Sampling;
import ringbook.optics.Sensor;
import ringbook.optics.ThinLens;
import ringbook.units.Angle;
import ringbook.units.FNumber;
import ringbook.units.Length;
import ringbook.units.Num;

/** Optics against published values. */
final class CheckValuesTest extends CheckTable {

  @Override
  protected String file() {
    return "check-values.csv";
  }

  @Override
  protected void table() {
    angles();
    sensors();
    thinLens();
    closeUp();
    hyperfocal();
    depth();
    confusionAndDiffraction();
    samplingAndStops();
    distant();
  }

  private void angles() {
    check(
        r -> angle(ofMillimetres(side(r)), mm(r, "focal_mm")),
        "FOV-01",
        "FOV-02",
        "FOV-04",
        "FOV-05",
        "FOV-07",
        "FOV-08",
        "FOV-09",
        "FOV-10",
        "FOV-15");
    check(r -> angle(sensor(r).diagonal(), mm(r, "focal_mm")), "FOV-03", "FOV-06");
    check(
        r ->
            AngleOfView.focalLength(mm(r, "sensor_w_mm"), Angle.ofDegrees(r.number("hfov_deg")))
                .millimetres(),
        "FOV-11",
        "FOV-12",
        "FOV-13");
    check(
        r -> {
          Length focal = mm(r, "focal_mm");
          Length distance = ThinLens.distance(focal, r.number("magnification"));
          return angle(mm(r, "sensor_w_mm"), ThinLens.imageDistance(focal, distance));
        },
        "FOV-14");
  }

  private void sensors() {
    check(r -> sensor(r).diagonal().millimetres(), "CRP-01", "CRP-04", "CRP-05", "CRP-06");
    check(r -> Num.hypot(mm(r, "w_mm").metres(), mm(r, "h_mm").metres()) * 1000, "CRP-02");
    check(
        r -> CircleOfConfusion.enlargement(mm(r, "print_diag_mm"), mm(r, "frame_diag_mm")),
        "CRP-03");
    check(
        r -> {
          Length side = ofMillimetres(Math.sqrt(r.number("sensor_area_mm2")));
          return new Sensor(side, side, 1, 1).areaRatio();
        },
        "CRP-07");
    checkAll(
        r -> {
          double crop = r.number("focal35_mm") / r.number("focal_mm");
          double share = Sensor.equivalentError(mm(r, "focal35_mm"));
          return new double[] {crop * (1 - share), crop * (1 + share)};
        },
        "EXF-14");
    check(r -> sensor(r).cropFactor(), "CRP-08", "CRP-13");
    check(r -> mm(r, "focal_mm").times(r.number("crop_factor")).millimetres(), "CRP-10");
    check(r -> trueFocal(r).millimetres(), "CRP-11");
    check(r -> angle(sensor(r).diagonal(), trueFocal(r)), "CRP-12");
    check(
        r ->
            new Sensor(mm(r, "field_mm"), mm(r, "field_mm"), (int) r.number("pixels"), 1)
                .pixelPitch()
                .micrometres(),
        "MOT-01");
  }

  private void thinLens() {
    check(
        r -> ThinLens.imageDistance(mm(r, "focal_mm"), mm(r, "object_dist_mm")).millimetres(),
        "LEN-01");
    check(
        r ->
            mm(r, "object_mm")
                .times(ThinLens.magnification(mm(r, "focal_mm"), mm(r, "object_dist_mm")))
                .millimetres(),
        "LEN-02");
    check(
        r -> Framing.standoff(mm(r, "focal_mm"), mm(r, "object_mm"), mm(r, "image_mm"), 1).metres(),
        "LEN-03",
        "LEN-05");
    check(
        r -> ThinLens.imageDistance(mm(r, "focal_mm"), mm(r, "object_dist_mm")).centimetres(),
        "LEN-04");
    check(
        r -> ThinLens.distance(mm(r, "focal_mm"), r.number("magnification")).millimetres(),
        "LEN-06");
    check(r -> CloseUp.dioptres(mm(r, "focal_mm")), "LEN-07");
    check(
        r -> {
          Length focal = mm(r, "focal_mm");
          Length distance = ThinLens.distance(focal, r.number("magnification"));
          return distance.plus(ThinLens.imageDistance(focal, distance)).millimetres();
        },
        "LEN-08");
    check(
        r ->
            ThinLens.focalLength(mm(r, "object_dist_mm"), mm(r, "field_mm"), mm(r, "sensor_mm"))
                .millimetres(),
        "LEN-10");
    check(
        r ->
            Framing.field(mm(r, "focal_mm"), mm(r, "sensor_w_mm"), mm(r, "object_dist_mm"))
                .millimetres(),
        "LEN-13");
    check(
        r ->
            Framing.standoff(
                    mm(r, "focal_mm"),
                    mm(r, "object_mm"),
                    mm(r, "sensor_mm"),
                    r.number("fill_fraction"))
                .millimetres(),
        "LEN-14");
  }

  private void closeUp() {
    check(
        r ->
            Diffraction.effective(fNumber(r), r.number("magnification"), r.number("pupil_ratio"))
                .value(),
        "CLO-01",
        "CLO-02",
        "CLO-03",
        "CLO-04",
        "CLO-12");
    check(r -> Num.round(3 * CloseUp.stopsLost(r.number("magnification"))) / 3, "CLO-05");
    check(r -> Num.round(2 * CloseUp.stopsLost(r.number("magnification"))) / 2, "CLO-06", "CLO-07");
    check(r -> CloseUp.exposureFactor(r.number("magnification")), "CLO-08", "CLO-09");
    check(
        r -> {
          double m = CloseUp.magnification(mm(r, "focal_mm"), mm(r, "extension_mm"));
          return Diffraction.effective(fNumber(r), m).value();
        },
        "CLO-10");
    check(r -> CloseUp.stopsLost(r.number("magnification")), "CLO-11");
  }

  private void hyperfocal() {
    check(r -> hyperfocal(r).millimetres(), "HYP-01");
    check(r -> hyperfocal(r).minus(mm(r, "focal_mm")).millimetres(), "HYP-02", "HYP-05");
    check(r -> hyperfocal(r).minus(mm(r, "focal_mm")).metres(), "HYP-04");
    check(r -> near(r, mm(r, "focus_mm")).millimetres(), "HYP-03");
    check(r -> hyperfocal(r).metres(), "HYP-06");
  }

  private void depth() {
    check(r -> near(r, mm(r, "focus_mm")).metres(), "DOF-01", "DOF-03", "DOF-05", "DOF-10");
    check(r -> far(r, mm(r, "focus_mm")), "DOF-02", "DOF-04", "DOF-06", "DOF-11");
    check(r -> near(r, feet(r, "focus_ft")).metres() / 0.3048, "DOF-07", "DOF-09");
    check(r -> far(r, feet(r, "focus_ft")) / 0.3048, "DOF-08");
    check(
        r -> DepthOfField.focusBetween(feet(r, "near_ft"), feet(r, "far_ft")).metres() / 0.3048,
        "DOF-12");
    check(
        r ->
            DepthOfField.depth(
                    mm(r, "focal_mm"), r.number("magnification"), fNumber(r), mm(r, "coc_mm"))
                .orElseThrow()
                .millimetres(),
        "DOF-13");
    checkAll(
        r ->
            new double[] {
              near(r, mm(r, "focus_mm")).millimetres(), far(r, mm(r, "focus_mm")) * 1000
            },
        "DOF-14");
    check(
        r -> DepthOfField.focusBetween(mm(r, "near_mm"), mm(r, "far_mm")).millimetres(), "DOF-15");
    check(
        r ->
            DepthOfField.fNumberFor(
                    mm(r, "focal_mm"), mm(r, "near_mm"), mm(r, "far_mm"), mm(r, "coc_mm"))
                .value(),
        "DOF-16");
    check(
        r ->
            DepthOfField.blur(
                    mm(r, "focal_mm"), fNumber(r), mm(r, "focus_mm"), mm(r, "object_dist_mm"))
                .millimetres(),
        "DOF-17");
  }

  private void confusionAndDiffraction() {
    check(
        r ->
            CircleOfConfusion.fromPrint(mm(r, "print_coc_mm"), r.number("enlargement"))
                .millimetres(),
        "COC-01");
    check(r -> CircleOfConfusion.fromDiagonal(sensor(r).diagonal()).millimetres(), "COC-02");
    check(
        r ->
            CircleOfConfusion.fromPrint(
                    CircleOfConfusion.onPrint(
                        Length.ofCentimetres(r.number("view_dist_cm")),
                        r.number("resolution_lpmm_at_25cm")),
                    r.number("enlargement"))
                .millimetres(),
        "COC-03");
    check(
        r -> {
          double enlargement =
              CircleOfConfusion.enlargement(mm(r, "print_diag_mm"), sensor(r).diagonal());
          return CircleOfConfusion.fromPrint(mm(r, "print_coc_mm"), enlargement).millimetres();
        },
        "COC-04");
    check(r -> Diffraction.disc(wavelength(r), fNumber(r)).micrometres(), "DIF-03", "DIF-04");
    check(
        r ->
            Diffraction.disc(wavelength(r).times(1 / r.number("refractive_index")), fNumber(r))
                .micrometres(),
        "DIF-05");
    check(
        r -> {
          Length focal = Length.ofMetres(1);
          FNumber n = new FNumber(focal.over(mm(r, "aperture_mm")));
          return new Angle(Diffraction.disc(wavelength(r), n).over(focal)).degrees() * 3600;
        },
        "DIF-06");
    check(
        r -> Diffraction.fNumberFor(ofMicrometres(2 * r.number("pixel_um")), 0).value(), "DIF-08");
    check(
        r ->
            Diffraction.disc(
                    wavelength(r), Diffraction.effective(fNumber(r), r.number("magnification")))
                .micrometres(),
        "DIF-09");
    check(r -> 1 / Diffraction.finestPeriod(wavelength(r), fNumber(r)).millimetres(), "DIF-07");
    check(
        r ->
            Diffraction.together(
                    ofMicrometres(r.number("defocus_um")),
                    ofMicrometres(r.number("airy_um")),
                    ofMicrometres(r.number("pixel_um")))
                .micrometres(),
        "DIF-10");
    check(CheckValuesTest::balance, "DIF-12");
  }

  private void samplingAndStops() {
    check(
        r -> sampling(r, mm(r, "sensor_w_mm").times(1 / r.number("pixels"))).centimetres(),
        "GSD-01");
    check(r -> sampling(r, mm(r, "sensor_w_mm").times(1 / r.number("pixels"))).metres(), "GSD-03");
    check(
        r ->
            Sampling.onObject(
                    ofMicrometres(r.number("pixel_um")), mm(r, "focal_mm"), mm(r, "object_dist_mm"))
                .micrometres(),
        "GSD-04");
    check(
        r -> FStops.third((int) (3 * r.number("Av"))).value(),
        "FNO-01",
        "FNO-02",
        "FNO-03",
        "FNO-04",
        "FNO-05",
        "FNO-06",
        "FNO-07");
    check(r -> FStops.name(FStops.third((int) r.number("steps_from_f1"))), "FNO-08", "FNO-09");
  }

  private void distant() {
    check(
        r ->
            Distant.focalLength(mm(r, "working_dist_mm"), mm(r, "field_mm"), mm(r, "sensor_mm"))
                .millimetres(),
        "LEN-09",
        "LEN-11");
    check(
        r ->
            Distant.field(mm(r, "focal_mm"), mm(r, "sensor_w_mm"), mm(r, "working_dist_mm"))
                .millimetres(),
        "LEN-12");
    checkAll(
        r -> {
          Length pitch = mm(r, "sensor_w_mm").times(1 / r.number("pixels_w"));
          Length distance = Length.ofMetres(r.number("distance_m"));
          Length sampling = Distant.sampling(pitch, mm(r, "focal_mm"), distance);
          return new double[] {
            sampling.times(r.number("pixels_w")).metres(),
            sampling.times(r.number("pixels_h")).metres()
          };
        },
        "GSD-02");
    check(
        r ->
            Distant.sampling(
                    ofMicrometres(r.number("pixel_um")), mm(r, "focal_mm"), mm(r, "object_dist_mm"))
                .micrometres(),
        "GSD-05");
  }

  private static double balance(Row r) {
    Length focal = mm(r, "focal_mm");
    Length near = mm(r, "near_mm");
    Length focus = DepthOfField.focusBetween(near, mm(r, "far_mm"));
    FNumber any = new FNumber(4);
    Length blur = DepthOfField.blur(focal, any, focus, near);
    return Diffraction.balance(any, blur, ThinLens.magnification(focal, focus)).value();
  }

  private static Length sampling(Row r, Length pitch) {
    return Sampling.onObject(pitch, mm(r, "focal_mm"), Length.ofMetres(r.number("distance_m")));
  }

  private static Length hyperfocal(Row r) {
    return DepthOfField.hyperfocal(mm(r, "focal_mm"), fNumber(r), mm(r, "coc_mm"));
  }

  private static Length near(Row r, Length focus) {
    return DepthOfField.nearLimit(mm(r, "focal_mm"), hyperfocal(r), focus);
  }

  private static double far(Row r, Length focus) {
    return DepthOfField.farLimit(mm(r, "focal_mm"), hyperfocal(r), focus)
        .map(Length::metres)
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static Length trueFocal(Row r) {
    return mm(r, "focal35_mm").times(1 / sensor(r).cropFactor());
  }

  private static double angle(Length side, Length imageDistance) {
    return AngleOfView.of(side, imageDistance).degrees();
  }

  private static Sensor sensor(Row r) {
    return new Sensor(mm(r, "sensor_w_mm"), mm(r, "sensor_h_mm"), 1, 1);
  }

  private static double side(Row r) {
    return r.number(r.inputs().containsKey("sensor_w_mm") ? "sensor_w_mm" : "sensor_h_mm");
  }

  private static FNumber fNumber(Row r) {
    return new FNumber(r.number("f_number"));
  }

  private static Length wavelength(Row r) {
    return ofMicrometres(r.number("wavelength_nm") / 1000);
  }

  private static Length mm(Row r, String key) {
    return ofMillimetres(r.number(key));
  }

  private static Length feet(Row r, String key) {
    return Length.ofMetres(r.number(key) * 0.3048);
  }
}
