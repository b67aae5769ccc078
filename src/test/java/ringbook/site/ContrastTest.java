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
        "WCG-02",
        "WCG-03",
        "WCG-04",
        "WCG-09",
        "WCG-11",
        "WCG-12");
  }
}
