package ringbook.ledger;

import java.util.List;
import ringbook.units.Num;
import ringbook.units.Unit;
import ringbook.units.Whole;

/** The hand-over: numbers in file names, checksums, copies. */
final class HandoverEntries {

  private static final String PROOF = "test:LaterRoutesTest";
  private static final int HASH_BITS = 256;
  private static final int BITS_OF_A_DIGIT = 4;
  private static final int COPIES = 3;

  private HandoverEntries() {}

  static List<Quantity> entries() {
    return List.of(digits(), hashDigits(), copies(), storage());
  }

  private static Quantity digits() {
    return count("handover.digits", "digits of the numbers", "k_{10}")
        .meaning("Digits that the numbers in the file names need, so that all are equally long.")
        .formula("ceil(ln(job.files + 1) / ln(10))")
        .source("decimal numbers")
        .checkedBy(PROOF)
        .by(r -> Whole.up(Num.log(r.si("job.files") + 1) / Num.log(10)));
  }

  private static Quantity hashDigits() {
    return count("handover.hashDigits", "signs of a checksum", "k_{16}")
        .meaning("Length of a SHA-256 checksum when each sign (0 to 9, a to f) stands for 4 bits.")
        .formula("256 / 4")
        .source("FIPS 180-4, Secure Hash Standard: 256 bits")
        .checkedBy(PROOF)
        .by(r -> HASH_BITS / BITS_OF_A_DIGIT);
  }

  private static Quantity copies() {
    return count("handover.copies", "copies", "n_{3}")
        .meaning("Copies of the set, on two kinds of storage, one of them in another building.")
        .formula("3")
        .source("the 3-2-1 rule, common practice")
        .by(r -> COPIES);
  }

  private static Quantity storage() {
    return Entry.of("handover.storage", "storage for all copies")
        .meaning("Space that all copies of the set take together.")
        .symbol("M_{3}", Unit.GIGABYTE)
        .range(Range.above(0))
        .rounded(Rounding.significant(2))
        .formula("handover.copies * job.storage")
        .source("count times size")
        .checkedBy(PROOF)
        .by(r -> r.si("handover.copies") * r.si("job.storage"));
  }

  private static Entry count(String key, String name, String symbol) {
    return Entry.of(key, name)
        .symbol(symbol, Unit.PIECE)
        .range(Range.wholeFrom(1))
        .rounded(Rounding.decimals(0));
  }
}
