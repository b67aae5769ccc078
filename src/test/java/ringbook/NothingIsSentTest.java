package ringbook;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.net.http.HttpClient;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The statement that nothing is ever sent anywhere: no class of the program can open a line. */
final class NothingIsSentTest {

  /** Names of places, which open nothing. */
  private static final Set<String> NAMES =
      Set.of("java.net.URI", "java.net.URISyntaxException", "java.net.URLDecoder");

  private static final ArchRule RULE =
      noClasses()
          .that()
          .resideOutsideOfPackage("ringbook.build") // makes the scripts of pages; not in the jar
          .should()
          .dependOnClassesThat(
              describe(
                  "reach a network",
                  target ->
                      !NAMES.contains(target.getFullName())
                          && (target.getPackageName().startsWith("java.net")
                              || target.getPackageName().startsWith("javax.net")
                              || target.getPackageName().startsWith("java.rmi")
                              || target.getFullName().equals("java.nio.channels.SocketChannel")
                              || target.getFullName().equals("java.awt.Desktop"))));

  @Test
  void no_class_of_the_program_reaches_a_network() {
    JavaClasses program =
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("ringbook");
    assertThat(program).hasSizeGreaterThan(300);
    RULE.check(program);
  }

  @Test
  void the_rule_finds_one_that_does() {
    JavaClasses breach = new ClassFileImporter().importClasses(Breach.class);
    assertThat(RULE.evaluate(breach).hasViolation()).isTrue();
  }

  interface Breach {
    HttpClient client();
  }
}
