package ringbook;

import org.junit.jupiter.api.Test;

final class TmpTest {
  @Test
  void runs() {}
}
