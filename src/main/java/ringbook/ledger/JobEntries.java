package ringbook.ledger;

import java.util.List;
import ringbook.units.Unit;
import ringbook.units.Whole;

/** What the whole set of photographs takes: pictures, time, storage, battery. */
final class JobEntries {

  private JobEntries() {}

  static List<Quantity> entries() {
    return List.of(
        Entry.of("job.photos", "photographs in all")
            .meaning("All rings, the views over the top and the second pose, with some to spare.")
            .symbol("n_{\\mathrm{all}}", Unit.PIECE)
            .range(Range.wholeFrom(4))
            .rounded(Rounding.decimals(0))
            .formula(
                "ceil((rings.photos + rings.topViews + (aim.poses - 1) * pose.photos) * (1 +"
                    + " aim.spare))")
            .source("count; the share to spare is common practice, no source")
            .checkedBy("test:RingRoutesTest")
            .by(JobEntries::photos),
        Entry.of("job.time", "time to take them")
            .meaning("Time at the camera, without setting up and without the check at the end.")
            .symbol("t_{\\mathrm{all}}", Unit.MINUTE)
            .range(Range.above(0))
            .rounded(Rounding.decimals(0))
            .formula("job.photos * aim.secondsPerPhoto")
            .source("count times time")
            .checkedBy("test:RingRoutesTest")
            .by(r -> r.si("job.photos") * r.si("aim.secondsPerPhoto")),
        Entry.of("job.storage", "storage they take")
            .meaning("Space the files take on the card or the telephone.")
            .symbol("M_{\\mathrm{all}}", Unit.GIGABYTE)
            .range(Range.above(0))
            .rounded(Rounding.significant(2))
            .formula("job.photos * kit.fileSize")
            .source("count times size")
            .checkedBy("test:RingRoutesTest")
            .by(r -> r.si("job.photos") * r.si("kit.fileSize")),
        Entry.of("job.fits", "enough storage?")
            .meaning("Whether the files fit into the free storage.")
            .symbol("\\mathrm{stored}", Unit.ANSWER)
            .formula("job.storage <= kit.freeStorage")
            .source("comparison")
            .checkedBy("test:RingRoutesTest")
            .by(r -> Quantity.atMost(r.si("job.storage"), r.si("kit.freeStorage"))),
        Entry.of("job.charges", "battery charges")
            .meaning("Full battery charges the photographs take.")
            .symbol("n_{\\mathrm{c}}", Unit.PIECE)
            .range(Range.wholeFrom(1))
            .rounded(Rounding.decimals(0))
            .formula("ceil(job.photos / kit.photosPerCharge)")
            .source("count")
            .checkedBy("test:RingRoutesTest")
            .by(r -> Whole.up(r.si("job.photos") / r.si("kit.photosPerCharge"))));
  }

  private static double photos(Reckoning r) {
    double second = (r.si("aim.poses") - 1) * r.si("pose.photos");
    double all = r.si("rings.photos") + r.si("rings.topViews") + second;
    return Whole.up(all * (1 + r.si("aim.spare")));
  }
}
