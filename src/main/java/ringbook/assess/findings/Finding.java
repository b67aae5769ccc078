package ringbook.assess.findings;

import java.util.List;
import java.util.Optional;

/** One thing that is wrong with a plan of shots. */
public sealed interface Finding permits LegFinding, SetFinding, PlaceFinding {

  /** How bad it is; weak unless a finding says otherwise. */
  default Gravity gravity() {
    return Gravity.WEAK;
  }

  /** Share of the whole surface that it spoils, 0 to 1; 1 where the whole set is spoilt. */
  default double share() {
    return 1;
  }

  /** What is wrong, with its measure, as a sentence without a full stop. */
  String what();

  /** Where: leg or place, azimuths as in the ring plan. */
  String where();

  /** Ways to mend it that were tried, the cheapest first; empty if none was found. */
  default List<Mend> mends() {
    return List.of();
  }

  /** The cheapest mend. */
  default Optional<Mend> cheapest() {
    return mends().stream().findFirst();
  }

  /** The whole finding in plain words. */
  default String text() {
    StringBuilder text = new StringBuilder();
    text.append(capital(where())).append(": ").append(what()).append('.');
    for (int i = 0; i < mends().size() && i < 2; i++) {
      text.append(i == 0 ? " Mend: " : " Or: ").append(mends().get(i).text()).append('.');
    }
    return text.toString();
  }

  private static String capital(String text) {
    char first = text.charAt(0);
    boolean small = first >= 'a' && first <= 'z';
    return small ? (char) (first - 'a' + 'A') + text.substring(1) : text;
  }
}
