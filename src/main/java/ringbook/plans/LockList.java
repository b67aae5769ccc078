package ringbook.plans;

import java.util.List;
import java.util.Optional;
import ringbook.ledger.Outcome;
import ringbook.ledger.Reckoning;
import ringbook.shots.ShotPlan;
import ringbook.units.Words;

/** What is set on the camera once and then locked for the whole shoot, in words. */
public final class LockList {

  private static final String NONE = "–";

  private LockList() {}

  /**
   * One setting.
   *
   * @param name what is set
   * @param value with its unit; a dash where the scene allows none
   */
  public record Setting(String name, String value) {}

  /** The settings in the order in which they are made. */
  public static List<Setting> of(Reckoning reckoning) {
    return List.of(
        new Setting("Lens, no zoom", value(reckoning, "kit.focalLength")),
        new Setting("Picture, full size", value(reckoning, "kit.megapixels") + " million"),
        new Setting("Focus, lens to what is sharp", value(reckoning, "sharp.focus")),
        new Setting("f-number", value(reckoning, "sharp.dial")),
        new Setting("Exposure time, at most", value(reckoning, "motion.dialTime")),
        new Setting("ISO", value(reckoning, "motion.dialIso")),
        new Setting("White balance", "one, fixed"));
  }

  private static String value(Reckoning reckoning, String key) {
    return reckoning.of(key) instanceof Outcome.Known ? reckoning.text(key) : NONE;
  }

  /** One sentence on how much there is to take. */
  public static String total(Optional<ShotPlan> planned, Reckoning reckoning) {
    if (planned.isEmpty()) {
      return "In this room and within this reach no plan is possible: change the place first.";
    }
    ShotPlan plan = planned.get();
    return Sentences.photographs(plan.photos())
        + " in "
        + Words.count(plan.legs().size(), "run")
        + ", and "
        + value(reckoning, "aim.spare")
        + " more to spare.";
  }
}
