package ringbook.checks;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Numbers of the later lessons a second time: by counting, trying and adding variances. */
final class LaterRoutesTest extends RouteTable {

  @Override
  protected void routes() {
    scale();
    day();
    check();
    handover();
  }

  private void scale() {
    route("scale.allowed", 1e-6, LaterRoutesTest::allowed);
    route("scale.carriedOne", s -> longest(s) / s.given("kit.barLength") * Math.sqrt(ownBar(s)));
    route("scale.checkSpread", LaterRoutesTest::spread);
    route("scale.checkLimit", s -> spread(s) * 3);
  }

  private static double longest(Seen s) {
    return Math.max(s.given("subject.height"), s.given("subject.width"));
  }

  /** The error of scale that stretches the longest side by just the tolerance. */
  private static double allowed(Seen s) {
    double side = longest(s);
    return firstWhere(0, 1e9, e -> side * e >= s.given("aim.tolerance"));
  }

  /** Variance of one bar in the model: how well it is known, and its two targets. */
  private static double ownBar(Seen s) {
    return Math.pow(s.given("kit.barError"), 2) + 2 * Math.pow(s.entry("precision.mean"), 2);
  }

  /** The spare bar's own variance, and that of the mean of the others. */
  private static double spread(Seen s) {
    double sum = 0;
    for (int i = 0; i < count(s); i++) {
      sum += ownBar(s) / Math.pow((double) count(s), 2);
    }
    return Math.sqrt(ownBar(s) + sum);
  }

  private static long count(Seen s) {
    return Math.round(s.given("kit.barCount"));
  }

  private void day() {
    route("job.ringTime", s -> s.entry("ring.photos") * repeats(s) * pace(s));
    route("job.runs", LaterRoutesTest::runs);
    route("job.slates", s -> runs(s) + 1);
    route("job.files", s -> s.entry("job.photos") + runs(s) + 1);
    route("job.day", s -> (1 + 1 + 1) * s.entry("job.photos") * pace(s));
    route("job.holds", LaterRoutesTest::holds);
    route("job.fewest", s -> taken(s, (int) s.entry("ring.fewest"), 1));
    route("job.fewestTime", s -> taken(s, (int) s.entry("ring.fewest"), 1) * pace(s));
    route("job.fewestDay", s -> taken(s, (int) s.entry("ring.fewest"), 1) * pace(s) * 3);
  }

  private static double pace(Seen s) {
    return s.given("aim.secondsPerPhoto");
  }

  private static double repeats(Seen s) {
    return s.given("aim.repeats");
  }

  private static int rings(Seen s, int pose) {
    return (int) s.entry(pose == 0 ? "rings.count" : "pose.rings");
  }

  private static double runs(Seen s) {
    int runs = 0;
    for (int pose = 0; pose < s.given("aim.poses"); pose++) {
      runs += rings(s, pose);
      runs++; // over the top
    }
    return runs;
  }

  /** All photographs one by one. */
  private static double taken(Seen s, int round, int each) {
    int taken = 0;
    for (int pose = 0; pose < s.given("aim.poses"); pose++) {
      for (int ring = 0; ring < rings(s, pose); ring++) {
        taken += round * each;
      }
      taken += (int) s.entry("rings.topViews");
    }
    return taken;
  }

  /** How often a file can be taken from the free storage, in whole bytes' thousandths. */
  private static double holds(Seen s) {
    double most = s.given("kit.freeStorage") / s.given("kit.fileSize");
    long files = (long) most;
    return most - files > 1 - 1e-9 ? files + 1 : files;
  }

  private void check() {
    route("check.gapOne", s -> 2 * Math.toRadians(360 / s.entry("ring.photos")));
    route("check.bearable", LaterRoutesTest::bearable);
    route("check.blur", 1e-6, LaterRoutesTest::blur);
    route("check.sample", LaterRoutesTest::sample);
    route("check.chance", s -> 1 - Math.pow(1 + s.given("aim.spare"), -sample(s)));
    route("check.time", s -> s.entry("job.photos") + 10 * sample(s));
  }

  /** Photographs are taken out one after the other until the gap is too wide. */
  private static double bearable(Seen s) {
    double step = 2 * Math.PI / s.entry("ring.photos");
    int out = 0;
    while ((out + 2) * step <= s.given("aim.stepLimit") * (1 + 1e-9)) {
      out++;
    }
    return out;
  }

  /** The blur in the picture, and what is as large there in the middle of the object. */
  private static double blur(Seen s) {
    double inPicture = s.given("aim.blurLimit") * pixel(s);
    return inPicture / picture(s, s.entry("distance.middle"));
  }

  /** Drawn one by one until only good ones are seen less than once in twenty. */
  private static double sample(Seen s) {
    double good = 1 / (1 + s.given("aim.spare"));
    double onlyGood = 1;
    int drawn = 0;
    while (onlyGood > 0.05 * (1 + 1e-9) && drawn < s.entry("job.photos")) {
      onlyGood *= good;
      drawn++;
    }
    return drawn;
  }

  private void handover() {
    route("handover.digits", s -> String.valueOf((long) s.entry("job.files")).length());
    route("handover.hashDigits", s -> hash("abc").length());
    route(
        "handover.storage",
        s -> {
          double one = s.entry("job.photos") * s.given("kit.fileSize");
          return one + one + one;
        });
  }

  private static String hash(String text) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException gone) {
      throw new IllegalStateException(gone);
    }
  }
}
