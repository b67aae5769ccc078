package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import ringbook.plans.PlanTokens.Sort;
import ringbook.plans.PlanTokens.Token;
import ringbook.plans.WrittenRun.Directions;
import ringbook.plans.WrittenRun.Kind;
import ringbook.problems.Nearest;
import ringbook.shots.Pose;
import ringbook.units.Lengths;
import ringbook.units.Numbers;
import ringbook.units.Words;

/**
 * Reads a written plan. Runs follow each other; a word such as {@code top} says what the runs after
 * it are, up to the end of the clause; how the object lies holds until it is turned again. One use
 * only.
 */
final class PlanReader {

  private static final int MOST_RUNS = 24;
  private static final double FARTHEST = 100;

  private static final Set<String> SILENT =
      Set.of(
          "at",
          "of",
          "with",
          "each",
          "the",
          "a",
          "and",
          "then",
          "plus",
          "x",
          "photo",
          "photos",
          "photograph",
          "photographs",
          "picture",
          "pictures",
          "shot",
          "shots",
          "image",
          "images",
          "frame",
          "frames",
          "over",
          "up",
          "above",
          "level",
          "elevation",
          "height",
          "distance",
          "away",
          "round",
          "around",
          "all",
          "in",
          "is",
          "for",
          "on",
          "side");
  private static final Set<String> LABELS =
      Set.of(
          "ring",
          "rings",
          "low",
          "lowest",
          "top",
          "strip",
          "strips",
          "row",
          "rows",
          "turned",
          "flipped",
          "upside",
          "standing",
          "upright",
          "from",
          "to",
          "without",
          "except",
          "facing",
          "front",
          "back",
          "left",
          "right",
          "below");

  private final Lengths lengths;
  private final List<Token> tokens;
  private final List<WrittenRun> runs = new ArrayList<>();
  private int at;
  private Kind kind = Kind.RING;
  private Pose pose = Pose.STANDING;
  private WrittenRun open;
  private int rings;
  private int ringsFrom;
  private PlanReading fault;

  /** Reads {@code text}; examples in messages are in {@code lengths}. */
  PlanReader(String text, Lengths lengths) {
    this.lengths = lengths;
    tokens = PlanTokens.of(text);
  }

  PlanReading read() {
    while (at < tokens.size() && fault == null) {
      Token token = tokens.get(at++);
      switch (token.sort()) {
        case WORD -> word(token.text());
        case BARE -> bare(token);
        case DEGREES -> degrees(token);
        case LENGTH -> length(token);
        case END -> {
          close();
          kind = Kind.RING;
        }
        default -> fail("'" + token.text() + "' has no meaning in a plan", example());
      }
    }
    close();
    if (fault == null && runs.isEmpty()) {
      fail("no number of photographs stands in it", example());
    }
    return fault == null ? PlanReading.of(new WrittenPlan(runs)) : fault;
  }

  private void fail(String message, String help) {
    fault = fault == null ? PlanReading.fault(message, help) : fault;
  }

  private static String example() {
    return "write how many at which elevation, such as rings: 24 at 15°, 20 at 40°; top: 3";
  }

  private void word(String word) {
    switch (word) {
      case "ring", "rings", "circle", "circles" -> ring();
      case "low", "lowest" -> label(Kind.LOW_RING);
      case "top" -> label(Kind.TOP);
      case "strip", "strips", "row", "rows" -> label(Kind.STRIP);
      case "turned", "flipped", "upside" -> lie(Pose.TURNED_OVER);
      case "standing", "upright" -> lie(Pose.STANDING);
      case "from" -> arc(WrittenRun.Sort.OVER);
      case "without", "except", "but" -> arc(WrittenRun.Sort.WITHOUT);
      case "facing", "front", "right", "back", "left" -> facing(word);
      case "below", "down" -> below();
      default -> silent(word);
    }
  }

  private void silent(String word) {
    if (word.length() > 1 && !SILENT.contains(word)) {
      Set<String> known = new TreeSet<>(LABELS);
      fail(
          "'" + word + "' is no word of a plan",
          Nearest.to(word, known).map(near -> "did you mean '" + near + "'?").orElse(example()));
    }
  }

  /** After a number and before another one, it says how many rings: 3 rings of 24. */
  private void ring() {
    boolean counted = open != null && open.where().equals(WrittenRun.Where.USUAL);
    boolean after = tokens.get(Math.max(0, at - 2)).sort() == Sort.BARE;
    int next = at;
    while (next < tokens.size()
        && tokens.get(next).sort() == Sort.WORD
        && SILENT.contains(tokens.get(next).text())
        && !tokens.get(next).text().equals("at")) {
      next++;
    }
    boolean of = next < tokens.size() && tokens.get(next).sort() == Sort.BARE;
    if (counted && after && of) {
      rings = open.photos();
      ringsFrom = runs.size();
      open = null;
      kind = Kind.RING;
    } else if (!(counted && after) && kind != Kind.LOW_RING) {
      label(Kind.RING);
    }
  }

  private void label(Kind next) {
    close();
    kind = next;
  }

  private void lie(Pose next) {
    close();
    pose = next;
    kind = Kind.RING;
  }

  /** A number alone: how many photographs; behind "at" it is the height in degrees. */
  private void bare(Token token) {
    boolean behindAt = at >= 2 && tokens.get(at - 2).text().equals("at");
    if (open != null && behindAt && open.where().elevation().isEmpty()) {
      degrees(token);
      return;
    }
    close();
    double number = token.number();
    if (!(number >= 1 && number <= WrittenRun.MOST && Math.floor(number) == number)) {
      fail(
          "'" + token.text() + "' cannot be a number of photographs",
          "write a whole number from 1 to " + WrittenRun.MOST + ", and the unit behind all others");
      return;
    }
    open = new WrittenRun(kind, (int) number, pose, WrittenRun.Where.USUAL);
  }

  private void degrees(Token token) {
    if (open == null) {
      fail(
          "before '" + token.text() + "' there is no number of photographs",
          "write it first, such as 24 at " + token.text());
    } else if (!(Math.abs(token.number()) <= 90)) {
      fail(
          "'" + token.text() + "' cannot be a height",
          "heights go from -90° below to 90° straight above");
    } else if (open.where().elevation().isPresent()) {
      WrittenRun first = open;
      finish();
      open = first.elevated(token.number());
    } else {
      open = open.elevated(token.number());
    }
  }

  private void below() {
    if (open != null && open.where().elevation().isPresent()) {
      open = open.elevated(-Math.abs(open.where().elevation().getAsDouble()));
    }
  }

  private void length(Token token) {
    if (open == null) {
      fail(
          "before '" + token.text() + "' there is no number of photographs",
          "write it first, such as 24 at 15° at " + token.text());
    } else if (!(token.number() > 0 && token.number() <= FARTHEST)) {
      fail(
          "'" + token.text() + "' cannot be a distance",
          "write how far the lens is from the middle of the object, such as "
              + WrittenPlan.example(lengths));
    } else {
      open = open.away(token.number());
    }
  }

  private void arc(WrittenRun.Sort sort) {
    skipFrom();
    OptionalDouble from = angle();
    OptionalDouble to = OptionalDouble.empty();
    if (at < tokens.size() && tokens.get(at).text().equals("to")) {
      at++;
      to = angle();
    }
    if (open == null || from.isEmpty() || to.isEmpty()) {
      fail(
          "'" + word(sort) + "' stands without its directions",
          "write them behind the run, such as 24 at 15° " + word(sort) + " 30° to 90°");
    } else {
      open = open.towards(new Directions(sort, from.getAsDouble(), to.getAsDouble()));
    }
  }

  private static String word(WrittenRun.Sort sort) {
    return sort.word();
  }

  private void skipFrom() {
    while (at < tokens.size() && tokens.get(at).text().equals("from")) {
      at++;
    }
  }

  private OptionalDouble angle() {
    if (at < tokens.size()) {
      Token token = tokens.get(at);
      if (token.sort() == Sort.DEGREES || token.sort() == Sort.BARE) {
        at++;
        return OptionalDouble.of(token.number());
      }
    }
    return OptionalDouble.empty();
  }

  private void facing(String side) {
    double degrees =
        switch (side) {
          case "right" -> 0;
          case "back" -> 90;
          case "left" -> 180;
          case "front" -> -90;
          default -> angle().orElse(-90);
        };
    if (open != null) {
      open = open.towards(new Directions(WrittenRun.Sort.FACING, degrees, degrees));
    }
  }

  /** Ends the run before. */
  private void close() {
    if (open == null) {
      return;
    }
    finish();
    open = null;
    if (rings > 0 && fault == null) {
      countRings();
    }
  }

  private void countRings() {
    int found = runs.size() - ringsFrom;
    if (found < rings) {
      fail(
          "it says " + Words.count(rings, "ring") + ", but tells the height of " + found,
          "write the height of each ring, such as 3 rings of 24 at 10°, 25° and 40°");
    }
    rings = 0;
  }

  private void finish() {
    if (open.kind() == Kind.RING && open.where().elevation().isEmpty()) {
      fail(
          "the ring of " + Sentences.photographs(open.photos()) + " has no height",
          "write it as an angle above level, such as " + open.photos() + " at 30°");
    } else if (open.where().directions().sort() == WrittenRun.Sort.FACING
        && open.kind() != Kind.STRIP) {
      fail("only a strip faces one side", "write strip: before it");
    } else if (runs.size() >= MOST_RUNS) {
      fail(
          "it has more than " + Numbers.fixed(MOST_RUNS, 0) + " runs",
          "a plan that long cannot be kept in the head; leave some out");
    } else {
      runs.add(open);
    }
  }
}
