package ringbook.checks;

import static ringbook.units.Length.ofMillimetres;

import org.junit.jupiter.api.Test;
import ringbook.checks.CheckValues.Row;
import ringbook.optics.Diffraction;
import ringbook.optics.Framing;
import ringbook.optics.Sampling;
import ringbook.optics.Sensor;
import ringbook.optics.ThinLens;
import ringbook.units.Angle;
import ringbook.units.Length;

/** What a picture covers and how it is counted in pixels, against published values. */
final class PictureValuesTest extends CheckTable {

  @Override
  protected String file() {
    return "pictures.csv";
  }

  @Override
  protected void table() {
    check(PictureValuesTest::focalMillimetres, "OCV-02");
    check(
        row ->
            1
                / ThinLens.magnification(
                    ofMillimetres(row.number("focal_mm")),
                    ofMillimetres(row.number("distance_mm"))),
        "PHO-13");
    // From the air the lens equation adds one focal length, far below the printed digits.
    check(row -> distance(row).metres(), "PHO-02");
    check(row -> distance(row).metres() + row.number("terrain_m"), "PHO-06");
    check(row -> Diffraction.FIRST_DARK_RING / 2, "DIF-01");
    check(row -> Diffraction.GREEN.micrometres(), "DIF-13");
  }

  private static Length distance(Row row) {
    return ThinLens.distance(ofMillimetres(row.number("focal_mm")), 1 / row.number("scale_number"));
  }

  private static double focalMillimetres(Row row) {
    double[] pixels = row.numbers("image_px");
    double[] size = row.numbers("aperture_mm");
    Sensor sensor =
        new Sensor(
            ofMillimetres(size[0]), ofMillimetres(size[1]), (int) pixels[0], (int) pixels[1]);
    return sensor.pixelPitch().times(row.numbers("K")[0]).millimetres();
  }

  @Test
  void frames_that_cover_a_length() {
    Row row = CheckValues.row("STE-08");
    double field = row.number("field_mm");
    double overlap = row.number("overlap");
    double frames =
        Framing.frames(ofMillimetres(row.number("length_mm")), ofMillimetres(field), overlap);
    agrees(row, (1 - overlap) * field, frames);
  }

  @Test
  void sampling_along_a_slope() {
    Row row = CheckValues.row("VIS-02");
    Length slope =
        Sampling.onSlope(
            ofMillimetres(row.number("gsd_mm")), Angle.ofDegrees(row.number("incidence_deg")));
    agrees(row, slope.millimetres());
  }
}
