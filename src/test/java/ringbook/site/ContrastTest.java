package ringbook.site;

import ringbook.checks.CheckTable;

final class ContrastTest extends CheckTable {

  @Override
  protected String file() {
    return "contrast.csv";
  }

  @Override
  protected void table() {
    check(
        row -> Contrast.ratio(row.word("colour1"), row.word("colour2")),
        "WCG-01",
        "WCG-02",
        "WCG-03",
        "WCG-04",
        "WCG-05",
        "WCG-06",
        "WCG-07",
        "WCG-08",
        "WCG-09",
        "WCG-11",
        "WCG-12");
    check(row -> codesBetweenTheThresholds(), "WCG-10");
  }

  /** Codes of 8 bits for which the older threshold would take the other branch. */
  private static int codesBetweenTheThresholds() {
    int codes = 0;
    for (int code = 0; code < 256; code++) {
      double value = code / 255.0;
      codes += (value <= Contrast.THRESHOLD) != (value <= 0.03928) ? 1 : 0;
    }
    return codes;
  }
}
