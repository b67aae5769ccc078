package ringbook.browser;

import ringbook.ledger.Outcome;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.ledger.Working;

/** How a quantity is worked out, as JSON. */
final class WorkingJson {

  private WorkingJson() {}

  static String of(Reckoning reckoning, String key) {
    Quantity quantity = reckoning.ledger().get(key);
    Working working = Working.of(reckoning, key);
    JsonText out = new JsonText().object();
    out.member("key", key).member("name", quantity.name());
    out.member("rule", working.rule());
    working.formula().ifPresent(line -> line("formula", line, out));
    working.numbers().ifPresent(line -> line("numbers", line, out));
    line("result", working.result(), out);
    out.member("help", reckoning.of(key) instanceof Outcome.Refused refused ? refused.help() : "");
    out.name("inputs").array();
    for (Working.Input input : working.inputs()) {
      out.object().member("key", input.key()).member("symbol", input.symbol());
      out.member("name", input.name()).member("text", input.text()).endObject();
    }
    return out.endArray().endObject().toString();
  }

  private static void line(String name, Working.Line line, JsonText out) {
    out.name(name).object().member("tex", line.tex()).member("text", line.text());
    out.member("speech", line.speech()).endObject();
  }
}
