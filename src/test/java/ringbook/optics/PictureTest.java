package ringbook.optics;

import org.junit.jupiter.api.Test;
import ringbook.checks.CheckRow;
import ringbook.units.Angle;
import ringbook.units.Length;

/** What a picture covers and how it is counted in pixels, against published values. */
final class PictureTest {

  @Test
  void angles_of_an_off_centre_picture() {
    CheckRow row = CheckRow.of("OCV-01");
    double[] camera = row.list("K");
    double[] pixels = row.list("image_px");
    row.agrees(
        AngleOfView.offCentre(camera[0], camera[2], pixels[0]).degrees(),
        AngleOfView.offCentre(camera[1], camera[3], pixels[1]).degrees());
  }

  @Test
  void focal_length_from_pixels() {
    CheckRow row = CheckRow.of("OCV-02");
    double[] pixels = row.list("image_px");
    double[] size = row.list("aperture_mm");
    Sensor sensor =
        new Sensor(
            Length.ofMillimetres(size[0]),
            Length.ofMillimetres(size[1]),
            (int) pixels[0],
            (int) pixels[1]);
    row.agrees(sensor.pixelPitch().times(row.list("K")[0]).millimetres());
  }

  @Test
  void image_scale_of_a_thin_lens() {
    CheckRow row = CheckRow.of("PHO-13");
    Length focal = Length.ofMillimetres(row.in("focal_mm"));
    Length distance = Length.ofMillimetres(row.in("distance_mm"));
    row.agrees(1 / ThinLens.magnification(focal, distance));
  }

  @Test
  void frames_that_cover_a_length() {
    CheckRow row = CheckRow.of("STE-08");
    double field = row.in("field_mm");
    double overlap = row.in("overlap");
    double frames =
        Framing.frames(
            Length.ofMillimetres(row.in("length_mm")), Length.ofMillimetres(field), overlap);
    row.agrees((1 - overlap) * field, frames);
  }

  @Test
  void sampling_along_a_slope() {
    CheckRow row = CheckRow.of("VIS-02");
    Length slope =
        Sampling.onSlope(
            Length.ofMillimetres(row.in("gsd_mm")), Angle.ofDegrees(row.in("incidence_deg")));
    row.agrees(slope.millimetres());
  }
}
