package ringbook;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Keeps the layers in order and the pure ones fit for the browser. */
final class PureLayersTest {

  private static final JavaClasses MAIN =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("ringbook");

  private static Stream<ArchRule> rules(LayerRules rules) {
    return Stream.concat(
        rules.order(),
        Stream.of(
            rules.plainPackages(),
            rules.noScriptBelow(),
            rules.noBannedClasses(),
            rules.noBannedCalls()));
  }

  static Stream<ArchRule> ours() {
    return rules(new LayerRules("ringbook"));
  }

  @ParameterizedTest
  @MethodSource("ours")
  void the_layers_keep(ArchRule rule) {
    rule.check(MAIN);
  }

  @Test
  void every_package_is_a_layer() {
    assertThat(MAIN.stream().map(c -> c.getPackageName()).filter(p -> p.startsWith("ringbook.")))
        .isNotEmpty()
        .filteredOn(p -> !p.equals("ringbook.build"))
        .allSatisfy(p -> assertThat(LayerRules.UPWARDS).contains(p.split("\\.", 3)[1]));
  }

  private static final String BREACHES =
      String.join(
          "\n",
          rules(new LayerRules("ringbook.impure"))
              .flatMap(
                  rule ->
                      rule
                          .evaluate(new ClassFileImporter().importPackages("ringbook.impure"))
                          .getFailureReport()
                          .getDetails()
                          .stream())
              .toList());

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ringbook.impure.figures.Above",
        "java.io.File",
        "java.util.HashMap",
        "java.util.HashSet",
        "java.util.Random",
        "java.util.SplittableRandom",
        "java.util.Scanner",
        "java.util.Formatter",
        "java.util.Locale",
        "java.util.regex.Pattern",
        "java.lang.Math.sin(",
        "java.lang.Math.cbrt(",
        "java.lang.StrictMath",
        "java.lang.Math.random(",
        "java.lang.Double.parseDouble(",
        "java.lang.Double.valueOf(java.lang.String)",
        "java.lang.Integer.parseInt(",
        "java.lang.Long.parseLong(",
        "java.lang.Float.parseFloat(",
        "DoubleStream.sum(",
        "DoubleStream.average(",
        "java.lang.System.nanoTime(",
        "java.lang.String.format(",
        "java.lang.String.formatted(",
        "java.lang.String.split(",
        "java.lang.String.matches(",
        "java.lang.String.replaceAll(",
        "java.lang.String.replaceFirst(",
        "java.lang.String.toLowerCase(",
        "java.lang.Double.toString(",
        "java.lang.StringBuilder.append(double)",
        "java.lang.String.valueOf(double)",
        "java.lang.Class.forName(",
        "java.lang.Thread",
        "Breaches.single> is a float",
        "numbers(float, java.lang.String)> has a float",
      })
  void a_breach_is_reported(String breach) {
    assertThat(BREACHES).contains(breach);
  }
}
