package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.ledger.Outcome;
import ringbook.ledger.Reckoning;
import ringbook.plans.LockList.Setting;
import ringbook.shots.Leg;
import ringbook.shots.Pose;
import ringbook.shots.Scene;
import ringbook.shots.ShotPlan;
import ringbook.shots.Station;

/**
 * A plan as it is walked on the day, in words: what is locked first, then run by run where to stand
 * for each photograph and how to get there.
 *
 * @param scene what it was worked out for
 * @param locks settings to make once
 * @param runs in the order of shooting; empty where the scene allows no plan
 * @param total one sentence on how much there is to take
 * @param lack why there is no plan, and what to change; empty where there is one
 * @param secondsPerPhoto from one photograph to the next, the pace of the scene
 */
public record FieldSheet(
    Scene scene,
    List<Setting> locks,
    List<Run> runs,
    String total,
    List<String> lack,
    double secondsPerPhoto) {

  public FieldSheet {
    locks = List.copyOf(locks);
    runs = List.copyOf(runs);
    lack = List.copyOf(lack);
  }

  /**
   * One run.
   *
   * @param name as on its slate
   * @param why what it is for
   * @param height lens above the floor, or the least and the most
   * @param floor from the middle to the lens along the floor
   * @param away lens to the spot aimed at
   * @param aim where to aim
   * @param setup how object and camera are held, and the focus
   * @param photos how many photographs
   * @param repeats photographs at each stop
   * @param turned whether the object is turned otherwise than in the run before
   * @param before what is done before its slate
   * @param stops in the order of shooting
   */
  public record Run(
      String name,
      String why,
      String height,
      String floor,
      String away,
      String aim,
      String setup,
      int photos,
      int repeats,
      boolean turned,
      List<String> before,
      List<Stop> stops) {

    public Run {
      before = List.copyOf(before);
      stops = List.copyOf(stops);
    }

    /** Its name and how many photographs, as over its table. */
    public String title() {
      return PlanWords.title(name, photos);
    }
  }

  /**
   * One place to photograph from.
   *
   * @param station the place itself
   * @param clock its direction as a time, see {@link Clock}
   * @param angle its direction as in the ring plan
   * @param height lens above the floor
   * @param floor along the floor, from the middle
   * @param away lens to the spot aimed at
   * @param tilt of the lens, down or up
   * @param aim the spot aimed at
   * @param place where it is, for somebody who comes from elsewhere
   * @param way how to get there from the stop before
   * @param inTheWay names of what stands in the way there
   */
  public record Stop(
      Station station,
      String clock,
      String angle,
      String height,
      String floor,
      String away,
      String tilt,
      String aim,
      String place,
      String way,
      List<String> inTheWay) {

    public Stop {
      inTheWay = List.copyOf(inTheWay);
    }
  }

  /** The sheet for the plan that the ledger's numbers describe. */
  public static FieldSheet of(Reckoning reckoning) {
    Optional<ShotPlan> plan = StandardPlan.of(reckoning);
    List<String> lack = StandardPlan.refusal(reckoning).map(FieldSheet::lack).orElseGet(List::of);
    Scene scene = reckoning.scene();
    return new FieldSheet(
        scene,
        LockList.of(reckoning),
        plan.map(found -> runs(scene, found)).orElseGet(List::of),
        LockList.total(plan, reckoning),
        lack,
        reckoning.si("aim.secondsPerPhoto"));
  }

  private static List<String> lack(Outcome.Refused refused) {
    return List.of(refused.reason(), refused.help());
  }

  private static List<Run> runs(Scene scene, ShotPlan plan) {
    LegWords words = new LegWords(plan, scene.aim().lengths());
    Ways ways = new Ways(words);
    List<Run> runs = new ArrayList<>();
    Leg before = null;
    for (Leg leg : plan.legs()) {
      Pose pose = before == null ? leg.setup().pose() : before.setup().pose();
      runs.add(
          new Run(
              LegWords.name(leg),
              leg.why(),
              words.height(leg),
              words.floor(leg),
              words.away(leg),
              words.aim(leg),
              Sentences.capital(words.words().setup(leg)) + ".",
              leg.photos(),
              leg.setup().repeats(),
              pose != leg.setup().pose(),
              ways.into(before, leg),
              stops(scene, leg, words, ways)));
      before = leg;
    }
    return runs;
  }

  private static List<Stop> stops(Scene scene, Leg leg, LegWords words, Ways ways) {
    List<Stop> stops = new ArrayList<>();
    Station before = null;
    for (Station station : leg.stations()) {
      double away = station.target().minus(station.position()).norm();
      stops.add(
          new Stop(
              station,
              Clock.of(station.azimuth()),
              PlanWords.azimuth(station),
              words.height(station),
              words.floor(station),
              words.words().length(away),
              LegWords.tilt(station),
              words.words().aim(station),
              ways.to(station),
              before == null ? ways.to(station) : ways.between(before, station),
              LegWords.inTheWay(scene, station)));
      before = station;
    }
    return stops;
  }
}
