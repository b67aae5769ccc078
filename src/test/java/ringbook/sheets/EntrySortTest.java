package ringbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class EntrySortTest {

  /** Up to more working files than are open at a time. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 99, 100, 101, 1_300, 8_500})
  void gives_back_every_entry_in_order(int count) throws IOException {
    SplittableRandom random = new SplittableRandom(count);
    List<String> names = List.of("Zoë", "zoe", "Ida", "émile", "Emil", "Ωmega", "ida", "Ida B");
    try (EntrySort sort = new EntrySort(100)) {
      for (int i = 0; i < count; i++) {
        Entry.Place place = new Entry.Place(i % 3, i + 1, i);
        sort.add(new Entry(names.get(random.nextInt(8)), random.nextInt(20), "" + i, true, place));
      }
      var order = sort.inOrder();
      long found = 0;
      long sum = 0;
      Entry before = null;
      while (order.hasNext()) {
        Entry entry = order.next();
        if (before != null && LearnerOrder.OF_ENTRIES.compare(before, entry) >= 0) {
          throw new AssertionError(before + " came before " + entry);
        }
        found++;
        sum += Long.parseLong(entry.text());
        before = entry;
      }
      assertThat(found).isEqualTo(count);
      assertThat(sum).isEqualTo((long) count * (count - 1) / 2);
    }
  }

  @Test
  void names_stand_as_in_a_list_for_people() {
    List<String> names =
        new ArrayList<>(List.of("zoe", "Émile", "Ida B", "Emil", "ida", "Zoë", "Ida"));
    names.sort(LearnerOrder.BY_NAME);
    assertThat(names).containsExactly("Emil", "Émile", "Ida", "ida", "Ida B", "Zoë", "zoe");
  }
}
