package ringbook.figures;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The diagrams by the names that lessons call them by. */
public final class Diagrams {

  private Diagrams() {}

  /** All diagrams, in the order of the course. */
  public static Map<String, Drawing> byName() {
    Map<String, Drawing> all = new LinkedHashMap<>();
    all.put("two-rays", TwoRays::draw);
    all.put("job-path", JobPath::draw);
    all.put("surface-match", SurfaceMatch::draw);
    all.put("object-choice", ObjectChoice::draw);
    all.put("thin-parts", ThinParts::draw);
    all.put("view-fan", ViewFan::draw);
    all.put("equivalence", Equivalence::draw);
    all.put("settings-lock", SettingsLock::draw);
    all.put("framing", Framing::draw);
    all.put("depth-of-field", DepthOfField::draw);
    all.put("shutter-line", ShutterLine::draw);
    all.put("ring-plan", RingPlan::draw);
    all.put("ring-side", RingSide::draw);
    all.put("few-or-many", FewOrMany::draw);
    all.put("ring-stack", RingStack::draw);
    all.put("turned-over", TurnedOver::draw);
    all.put("coverage-map", CoverageMap::draw);
    all.put("pose-bands", PoseBands::draw);
    all.put("pose-shares", PoseShares::draw);
    all.put("who-sees", WhoSees::draw);
    all.put("ways-round", WaysRound::draw);
    all.put("walk-or-turn", WalkOrTurn::draw);
    all.put("mask-frames", MaskFrames::draw);
    all.put("bar-places", BarPlaces::draw);
    all.put("scale-lever", ScaleLever::draw);
    all.put("hole-section", HoleSection::draw);
    all.put("strip-row", StripRow::draw);
    all.put("edge-on", EdgeOn::draw);
    all.put("card-strip", CardStrip::draw);
    all.put("day-line", DayLine::draw);
    all.put("missing-stations", MissingStations::draw);
    all.put("folder-tree", FolderTree::draw);
    all.put("file-name", FileName::draw);
    all.put("three-copies", ThreeCopies::draw);
    all.put("hangs-on", HangsOn::draw);
    return all;
  }

  /** The names of the options that a diagram takes. */
  public static List<String> options(String name) {
    return name.equals("few-or-many") ? List.of("many", "few") : List.of();
  }
}
