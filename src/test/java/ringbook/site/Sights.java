package ringbook.site;

import java.util.Map;

/**
 * Colours as people see them who lack a kind of cone: by the matrices of Machado, Oliveira and
 * Fernandes (2009, severity 1) and of Viénot, Brettel and Mollon (1999), applied to linear RGB, and
 * in grey by the relative luminance of WCAG 2.2. All matrices are written from memory; that white
 * stays white is tested.
 */
public final class Sights {

  /** Ways to see, by name: what becomes of linear red, green and blue. */
  public static final Map<String, double[][]> ALL =
      Map.of(
          "grey", new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}},
          "protanopia, Machado",
              new double[][] {
                {0.152286, 1.052583, -0.204868},
                {0.114503, 0.786281, 0.099216},
                {-0.003882, -0.048116, 1.051998}
              },
          "deuteranopia, Machado",
              new double[][] {
                {0.367322, 0.860646, -0.227968},
                {0.280085, 0.672501, 0.047413},
                {-0.011820, 0.042940, 0.968881}
              },
          "tritanopia, Machado",
              new double[][] {
                {1.255528, -0.076749, -0.178779},
                {-0.078411, 0.930809, 0.147602},
                {0.004733, 0.691367, 0.303900}
              },
          "protanopia, Viénot",
              new double[][] {{0.11238, 0.88762, 0}, {0.11238, 0.88762, 0}, {0.00401, -0.00401, 1}},
          "deuteranopia, Viénot",
              new double[][] {
                {0.29275, 0.70725, 0}, {0.29275, 0.70725, 0}, {-0.02234, 0.02234, 1}
              });

  private Sights() {}

  /** Contrast of two relative luminances, 1 to 21. */
  public static double ratio(double one, double other) {
    return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
  }

  /** Relative luminance, 0 to 1, of a colour as it is seen. */
  public static double seen(String colour, double[][] sight) {
    double[] weights = {0.2126, 0.7152, 0.0722};
    double luminance = 0;
    for (int row = 0; row < 3; row++) {
      double light = 0;
      for (int part = 0; part < 3; part++) {
        int from = 1 + 2 * part;
        light += sight[row][part] * linear(Integer.parseInt(colour.substring(from, from + 2), 16));
      }
      luminance += weights[row] * Math.max(0, Math.min(1, light));
    }
    return luminance;
  }

  private static double linear(int code) {
    double value = code / 255.0;
    return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
  }
}
