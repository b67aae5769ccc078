package ringbook.meshes;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What one unit of the numbers in a mesh file is; the formats themselves do not say. */
public enum MeshUnit {
  METRE("m", 1),
  CENTIMETRE("cm", 0.01),
  MILLIMETRE("mm", 0.001),
  INCH("in", 0.0254);

  private final String symbol;
  private final double metres;

  MeshUnit(String symbol, double metres) {
    this.symbol = symbol;
    this.metres = metres;
  }

  /** Metres in one unit. */
  public double metres() {
    return metres;
  }

  /** How it is written: m, cm, mm, in. */
  public String symbol() {
    return symbol;
  }

  /** The unit of that symbol. */
  public static Optional<MeshUnit> written(String symbol) {
    return Arrays.stream(values()).filter(unit -> unit.symbol.equals(symbol)).findFirst();
  }

  /** All symbols. */
  public static List<String> names() {
    return Arrays.stream(values()).map(MeshUnit::symbol).toList();
  }
}
