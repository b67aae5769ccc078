package ringbook.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boofcv.abst.geo.TriangulateNViewsMetric;
import boofcv.alg.geo.PerspectiveOps;
import boofcv.factory.geo.ConfigTriangulation;
import boofcv.factory.geo.FactoryMultiView;
import boofcv.struct.calib.CameraPinhole;
import georegression.geometry.ConvertRotation3D_F64;
import georegression.struct.point.Point2D_F64;
import georegression.struct.point.Point3D_F64;
import georegression.struct.se.Se3_F64;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.Scenes;
import ringbook.assess.PointPrecision;
import ringbook.geometry.Vec3;
import ringbook.ledger.Reckoning;
import ringbook.shots.Ring;
import ringbook.shots.Station;
import ringbook.units.Angle;
import ringbook.units.Length;

/** Rings, pictures and precision against a computer vision library: BoofCV 1.2. */
final class CameraLibraryTest {

  private static Ring ring(Reckoning r) {
    return new Ring(
        r.length("ring.middleHeight"),
        r.length("ring.radius"),
        r.angle("aim.elevation"),
        (int) r.si("ring.photos"));
  }

  /** The camera of the scene, focused at a distance. */
  private static CameraPinhole camera(Reckoning r, double distance) {
    double f = r.si("kit.focalLength");
    double image = f * distance / (distance - f);
    double pixels = image / r.si("kit.pixelPitch");
    int across = (int) r.si("kit.pixelsAcross");
    int down = (int) r.si("kit.pixelsDown");
    return new CameraPinhole(pixels, pixels, 0, across / 2.0, down / 2.0, across, down);
  }

  private static double pixelsBetween(CameraPinhole camera, Point3D_F64 one, Point3D_F64 other) {
    Point2D_F64 a = PerspectiveOps.renderPixel(camera, one, null);
    Point2D_F64 b = PerspectiveOps.renderPixel(camera, other, null);
    return a.distance(b);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void pictures_of_the_object_are_as_many_pixels_wide(long seed) {
    Reckoning r = Reckoning.of(Scenes.random(seed));
    double near = r.si("distance.standoff");
    double half = r.si("distance.turningWidth") / 2;
    double pixels =
        pixelsBetween(
            camera(r, near), new Point3D_F64(-half, 0, near), new Point3D_F64(half, 0, near));
    assertThat(r.si("distance.pixelsAcross")).isCloseTo(pixels, within(1e-6 * pixels));
    double far = r.si("distance.far");
    double detail = r.si("aim.detail");
    double fine =
        pixelsBetween(camera(r, far), new Point3D_F64(0, 0, far), new Point3D_F64(detail, 0, far));
    assertThat(r.si("distance.pixelsOnDetail")).isCloseTo(fine, within(1e-5 * fine + 1e-9));
  }

  /** Between the lines of sight of the outer edges of the outermost pixels. */
  private static double angleAcross(CameraPinhole camera) {
    Point2D_F64 left = PerspectiveOps.convertPixelToNorm(camera, 0, camera.cy, null);
    Point2D_F64 right = PerspectiveOps.convertPixelToNorm(camera, camera.width, camera.cy, null);
    return Math.atan(right.x) - Math.atan(left.x);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void angles_of_view_agree(long seed) {
    Reckoning r = Reckoning.of(Scenes.random(seed));
    CameraPinhole endless = camera(r, 1e15);
    assertThat(r.si("kit.angleLong")).isCloseTo(angleAcross(endless), within(1e-9));
    CameraPinhole focused = camera(r, r.si("sharp.focus"));
    assertThat(r.si("sharp.angleLong")).isCloseTo(angleAcross(focused), within(1e-9));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void stations_stand_turned_and_apart_as_the_ledger_says(long seed) {
    Reckoning r = Reckoning.of(Scenes.random(seed));
    List<Station> stations = ring(r).stations();
    Station first = stations.get(0);
    Station second = stations.get(1);
    Se3_F64 one = Cameras.worldToCamera(first);
    Se3_F64 next = Cameras.worldToCamera(second);
    DMatrixRMaj relative = new DMatrixRMaj(3, 3);
    CommonOps_DDRM.multTransB(next.R, one.R, relative);
    assertThat(r.si("ring.realStep"))
        .isCloseTo(ConvertRotation3D_F64.matrixToRodrigues(relative, null).theta, within(1e-7));
    double chord = Cameras.point(first.position()).distance(Cameras.point(second.position()));
    assertThat(r.si("ring.chord")).isCloseTo(chord, within(1e-9 * r.si("ring.radius")));
    assertThat(r.si("ring.lensHeight"))
        .isCloseTo(one.invert(null).T.z, within(1e-9 * (1 + Math.abs(one.T.z))));
    Point2D_F64 aimedAt = PerspectiveOps.renderPixel(one, Cameras.point(first.target()), null);
    assertThat(aimedAt.norm()).as("the middle of the object in the picture").isLessThan(1e-9);
  }

  /** The same point, measured 4000 times with random errors and triangulated by the library. */
  @ParameterizedTest(name = "{1} stations at {0}°")
  @CsvSource({"15, 12, 11", "30, 8, 12", "0, 4, 13", "50, 6, 14"})
  void triangulated_points_scatter_as_precision_says(double elevation, int photos, long seed) {
    Ring ring = new Ring(new Length(0.9), new Length(0.6), Angle.ofDegrees(elevation), photos);
    double sigma = 1e-4; // of a coordinate in the picture, focal length 1
    double[] sum = new double[2];
    int rounds = 4000;
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < rounds; i++) {
      Vec3 error = triangulated(ring, sigma, random).minus(ring.target());
      sum[0] += (error.x() * error.x() + error.y() * error.y()) / 2;
      sum[1] += error.z() * error.z();
    }
    Length spot = ring.distance().times(sigma);
    // A standard deviation from 4000 rounds is good to about 1 %; four times that is allowed.
    double across = PointPrecision.ringAcross(spot, photos, ring.elevation()).metres();
    double up = PointPrecision.ringUp(spot, photos, ring.elevation()).metres();
    assertThat(Math.sqrt(sum[0] / rounds)).isCloseTo(across, within(0.045 * across));
    assertThat(Math.sqrt(sum[1] / rounds)).isCloseTo(up, within(0.045 * up));
  }

  private static Vec3 triangulated(Ring ring, double sigma, SplittableRandom random) {
    TriangulateNViewsMetric library =
        FactoryMultiView.triangulateNViewMetric(ConfigTriangulation.GEOMETRIC());
    List<Point2D_F64> pixels = new ArrayList<>();
    List<Se3_F64> cameras = new ArrayList<>();
    for (Station station : ring.stations()) {
      Se3_F64 camera = Cameras.worldToCamera(station);
      Point2D_F64 pixel = PerspectiveOps.renderPixel(camera, Cameras.point(station.target()), null);
      pixel.x += sigma * random.nextGaussian();
      pixel.y += sigma * random.nextGaussian();
      pixels.add(pixel);
      cameras.add(camera);
    }
    Point3D_F64 found = new Point3D_F64();
    assertThat(library.triangulate(pixels, cameras, found)).isTrue();
    return new Vec3(found.x, found.y, found.z);
  }
}
