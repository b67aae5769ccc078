package ringbook.exercises;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringbook.units.Dimension;
import ringbook.units.Unit;

/** What the marker found in an answer. */
public sealed interface Verdict {

  /** What to do with each verdict; a new one does not compile until every use handles it. */
  interface Cases<T> {
    T right();

    T blank();

    T unreadable(Unreadable verdict);

    T unitMissing(UnitMissing verdict);

    T wrongKind(WrongKind verdict);

    T slip(SlipMade verdict);

    T unitSwapped(UnitSwapped verdict);

    T tenfold(Tenfold verdict);

    T signTurned();

    T roundedEarly();

    T notWhole();

    T oneOff(OneOff verdict);

    T off(Off verdict);

    T otherOption(OtherOption verdict);

    T noSuchOption(NoSuchOption verdict);

    T severalOff(SeveralOff verdict);

    T orderOff(OrderOff verdict);

    T pairsOff(PairsOff verdict);

    T otherItem(OtherItem verdict);

    T valueOpen(ValueOpen verdict);

    T planOff(PlanOff verdict);
  }

  /** Hands this verdict to the case it belongs to. */
  <T> T show(Cases<T> cases);

  /** The name it goes by in lists of marks: {@code unit missing}. */
  default String label() {
    return show(VerdictLabel.LABEL);
  }

  /** Right. */
  record Right() implements Verdict {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.right();
    }
  }

  /** Nothing was written. */
  record Blank() implements Verdict {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.blank();
    }
  }

  /**
   * No number can be read.
   *
   * @param message what stands in the way
   * @param help what to write instead
   */
  record Unreadable(String message, String help) implements Verdict {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.unreadable(this);
    }
  }

  /**
   * A bare number where a unit is needed.
   *
   * @param fits the unit that makes it right, where there is one
   */
  record UnitMissing(Optional<Unit> fits) implements Verdict {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.unitMissing(this);
    }
  }

  /**
   * Another kind of quantity than was asked for.
   *
   * @param asked what was asked for
   * @param given what the unit written stands for
   */
  record WrongKind(Dimension asked, Dimension given) implements Verdict {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.wrongKind(this);
    }
  }

  /**
   * A typical wrong way that the author foresaw.
   *
   * @param index its place among the slips of the exercise, from 0
   */
  record SlipMade(int index) implements Verdict {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.slip(this);
    }
  }

  /**
   * The number is right in another unit than the one written.
   *
   * @param given the unit that was written
   * @param meant the unit that makes it right
   */
  record UnitSwapped(Unit given, Unit meant) implements Verdict {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.unitSwapped(this);
    }
  }

  /**
   * The digits are right, the decimal point is not.
   *
   * @param factor 10, 100 or 1000
   * @param tooLarge whether the answer is that many times too large, or else too small
   */
  record Tenfold(int factor, boolean tooLarge) implements Verdict {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.tenfold(this);
    }
  }

  /** Right but for the sign. */
  record SignTurned() implements Verdict {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.signTurned();
    }
  }

  /** So near that the way must be right and the rounding is not. */
  record RoundedEarly() implements Verdict {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.roundedEarly();
    }
  }

  /** A part of a thing where things are counted. */
  record NotWhole() implements Verdict {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.notWhole();
    }
  }

  /**
   * A count that is one off.
   *
   * @param tooMany whether it is one too many, or else one too few
   */
  record OneOff(boolean tooMany) implements Verdict {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.oneOff(this);
    }
  }

  /**
   * A wrong number.
   *
   * @param ratio answer over true value, where that says something: above 0 and finite
   */
  record Off(OptionalDouble ratio) implements Verdict {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.off(this);
    }
  }

  /**
   * An option that is not the right one.
   *
   * @param index its place, from 0
   */
  record OtherOption(int index) implements Verdict {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.otherOption(this);
    }
  }

  /**
   * Neither the letter nor the text of an option.
   *
   * @param options how many there are
   */
  record NoSuchOption(int options) implements Verdict {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.noSuchOption(this);
    }
  }

  /**
   * Not just the options that are right.
   *
   * @param missed places of right options not named
   * @param wrong places of wrong options named
   * @param credit what it is worth
   */
  record SeveralOff(List<Integer> missed, List<Integer> wrong, Credit credit) implements Verdict {
    public SeveralOff {
      missed = List.copyOf(missed);
      wrong = List.copyOf(wrong);
    }

    @Override
    public <T> T show(Cases<T> cases) {
      return cases.severalOff(this);
    }
  }

  /**
   * Another order of steps.
   *
   * @param swaps how many times two neighbours must change places until it is right: Kendall's
   *     distance
   * @param sooner place of the letter that comes sooner than {@code later}
   * @param later place of the letter that stands before {@code sooner} in the answer
   * @param credit what it is worth
   */
  record OrderOff(int swaps, int sooner, int later, Credit credit) implements Verdict {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.orderOff(this);
    }
  }

  /**
   * Not all pairs are right.
   *
   * @param wrong numbers with a wrong letter, from 0
   * @param open numbers without a letter, from 0
   * @param credit what it is worth
   */
  record PairsOff(List<Integer> wrong, List<Integer> open, Credit credit) implements Verdict {
    public PairsOff {
      wrong = List.copyOf(wrong);
      open = List.copyOf(open);
    }

    @Override
    public <T> T show(Cases<T> cases) {
      return cases.pairsOff(this);
    }
  }

  /**
   * An item that is right was called wrong.
   *
   * @param index its place, from 0
   */
  record OtherItem(int index) implements Verdict {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.otherItem(this);
    }
  }

  /**
   * The wrong item was found, its right value was not.
   *
   * @param given whether a value was given
   */
  record ValueOpen(boolean given) implements Verdict {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.valueOpen(this);
    }
  }

  /**
   * A plan that does not pass, or passes with more photographs than it takes.
   *
   * @param lack what it lacks first
   * @param words what was found and how to mend it, to the learner
   * @param credit what it is worth
   */
  record PlanOff(PlanLack lack, String words, Credit credit) implements Verdict {
    @Override
    public <T> T show(Cases<T> cases) {
      return cases.planOff(this);
    }
  }
}
