package ringbook;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The order of the layers and what the pure ones may use.
 *
 * @param base the package the layers are in
 */
record LayerRules(String base) {

  /** Each layer knows only those before it. */
  static final List<String> UPWARDS =
      List.of(
          "problems",
          "units",
          "optics",
          "geometry",
          "shots",
          "assess",
          "ledger",
          "values",
          "plans",
          "exercises",
          "figures",
          "browser",
          "charts",
          "meshes",
          "course",
          "sheets",
          "output",
          "photos",
          "cli");

  /** Layers that are compiled for the browser too. */
  static final List<String> PURE = UPWARDS.subList(0, UPWARDS.indexOf("browser") + 1);

  private static final Set<String> MATH = Set.of("sqrt", "abs", "floor", "ceil", "max", "min");

  /** Calls within java.lang and java.util that a browser answers otherwise or not at all. */
  private static final Map<String, Set<String>> CALLS =
      Map.of(
          "java.lang.String",
          Set.of(
              "format",
              "formatted",
              "split",
              "matches",
              "replaceAll",
              "replaceFirst",
              "lines",
              "indent",
              "strip",
              "isBlank",
              "trim",
              "toLowerCase",
              "toUpperCase"),
          "java.lang.Character",
          Set.of("isLetter", "isDigit", "isLetterOrDigit", "isWhitespace", "getType"),
          "java.lang.Class",
          Set.of("forName"),
          "java.util.Collections",
          Set.of("shuffle"),
          "java.util.stream.DoubleStream",
          Set.of("sum", "average", "summaryStatistics"),
          "java.util.stream.Collectors",
          Set.of("summingDouble", "averagingDouble", "summarizingDouble"));

  private static final Set<String> CLASSES =
      Set.of(
          "java.lang.Thread",
          "java.lang.StrictMath",
          "java.util.HashMap",
          "java.util.HashSet",
          "java.util.Random",
          "java.util.SplittableRandom",
          "java.util.Scanner",
          "java.util.Locale",
          "java.util.Formatter");

  private static final Set<String> BOXES =
      Set.of("java.lang.Double", "java.lang.Float", "java.lang.Integer", "java.lang.Long");

  private String in(String layer) {
    return base + "." + layer + "..";
  }

  private String[] pure() {
    return PURE.stream().map(this::in).toArray(String[]::new);
  }

  /** One rule a layer: it does not know those after it. */
  Stream<ArchRule> order() {
    return Stream.iterate(0, i -> i < UPWARDS.size() - 1, i -> i + 1)
        .map(
            i ->
                noClasses()
                    .that()
                    .resideInAPackage(in(UPWARDS.get(i)))
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(
                        UPWARDS.stream().skip(i + 1L).map(this::in).toArray(String[]::new))
                    .allowEmptyShould(true));
  }

  /** The pure layers know each other and four packages of the platform. */
  ArchRule plainPackages() {
    String[] known =
        Stream.concat(
                Stream.of(pure()),
                Stream.of(
                    "java.lang",
                    "java.util",
                    "java.util.function",
                    "java.util.stream",
                    "org.teavm.jso"))
            .toArray(String[]::new);
    return classes()
        .that()
        .resideInAnyPackage(pure())
        .should()
        .onlyDependOnClassesThat(
            JavaClass.Predicates.resideInAnyPackage(known)
                .or(describe("primitive", c -> c.getBaseComponentType().isPrimitive())));
  }

  /** Only the layer the pages call knows that it is compiled for them. */
  ArchRule noScriptBelow() {
    return noClasses()
        .that()
        .resideOutsideOfPackages(in("browser"), in("build"))
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.teavm..")
        .allowEmptyShould(true);
  }

  /** Classes of java.lang and java.util that the pure layers leave alone. */
  ArchRule noBannedClasses() {
    return noClasses()
        .that()
        .resideInAnyPackage(pure())
        .should()
        .dependOnClassesThat(
            describe("are banned", c -> CLASSES.contains(c.getBaseComponentType().getName())));
  }

  /** Calls the pure layers do not make, and no float. */
  ArchRule noBannedCalls() {
    return classes().that().resideInAnyPackage(pure()).should(new PlainCalls());
  }

  private static final class PlainCalls extends ArchCondition<JavaClass> {

    PlainCalls() {
      super("call only what a browser answers alike, and hold no float");
    }

    @Override
    public void check(JavaClass user, ConditionEvents events) {
      user.getCodeUnitAccessesFromSelf().stream()
          .filter(access -> isBanned(access.getTarget()))
          .forEach(
              access -> events.add(SimpleConditionEvent.violated(access, access.getDescription())));
      for (JavaField field : user.getFields()) {
        if (isFloat(field.getRawType())) {
          events.add(SimpleConditionEvent.violated(field, field.getDescription() + " is a float"));
        }
      }
      for (JavaCodeUnit unit : user.getCodeUnits()) {
        if (isFloat(unit.getRawReturnType())
            || unit.getRawParameterTypes().stream().anyMatch(PlainCalls::isFloat)) {
          events.add(SimpleConditionEvent.violated(unit, unit.getDescription() + " has a float"));
        }
      }
    }

    private static boolean isBanned(CodeUnitAccessTarget target) {
      String owner = target.getOwner().getName();
      String name = target.getName();
      if (owner.equals("java.lang.Math")) {
        return !MATH.contains(name);
      }
      if (owner.equals("java.lang.System")) {
        return !name.equals("arraycopy");
      }
      if (BOXES.contains(owner)
          && target.getRawParameterTypes().stream().anyMatch(p -> p.isEquivalentTo(String.class))) {
        return true;
      }
      return CALLS.getOrDefault(owner, Set.of()).contains(name)
          || printsDouble(owner, name, target);
    }

    private static boolean printsDouble(String owner, String name, CodeUnitAccessTarget target) {
      boolean prints =
          (owner.equals("java.lang.StringBuilder")
                  && (name.equals("append") || name.equals("insert")))
              || (owner.equals("java.lang.String") && name.equals("valueOf"))
              || (owner.equals("java.lang.Double") && name.equals("toString"));
      return prints
          && (target.getRawParameterTypes().stream().anyMatch(p -> p.isEquivalentTo(double.class))
              || owner.equals("java.lang.Double"));
    }

    private static boolean isFloat(JavaClass type) {
      return type.isEquivalentTo(float.class)
          || type.isEquivalentTo(Float.class)
          || type.isEquivalentTo(float[].class);
    }
  }
}
