package circuitverdict;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import circuitverdict.check.BoardCheck;
import circuitverdict.check.Check;
import circuitverdict.check.CircuitCheck;
import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The plan of the house: what each package may know, and what the engine may never do. */
@AnalyzeClasses(packages = ArchitectureTest.ROOT, importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
  static final String ROOT = "circuitverdict";

  /** The rooms from the ground up: each may import only those before it. */
  private static final List<String> ROOMS =
      List.of(
          "quantity",
          "standard",
          "explain",
          "circuit",
          "device",
          "conductor",
          "fault",
          "check",
          "select",
          "service");

  /**
   * Reading a clock, the default locale or a random source makes an answer depend on the machine.
   */
  private static final Set<String> CLOCKS =
      Set.of(
          "java.lang.System.currentTimeMillis()",
          "java.lang.System.nanoTime()",
          "java.lang.Math.random()",
          "java.util.Locale.getDefault()",
          "java.util.TimeZone.getDefault()",
          "java.util.UUID.randomUUID()",
          "java.lang.String.toLowerCase()",
          "java.lang.String.toUpperCase()");

  private static final Set<String> FORMATTERS =
      Set.of("java.lang.String", "java.io.PrintStream", "java.io.PrintWriter");

  @ArchTest
  static void everyPackageIsARoomOfThePlan(JavaClasses all) {
    Set<String> found =
        all.stream()
            .filter(each -> !each.getSimpleName().equals("package-info"))
            .map(ArchitectureTest::room)
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(new TreeSet<>(ROOMS), found);
  }

  @ArchTest
  static void aRoomKnowsOnlyTheRoomsBelowIt(JavaClasses all) {
    for (int i = 0; i < ROOMS.size(); i++) {
      List<String> allowed = new ArrayList<>();
      ROOMS.subList(0, i + 1).forEach(room -> allowed.add(within(room)));
      classes()
          .that(resideInAPackage(within(ROOMS.get(i))))
          .should()
          .onlyDependOnClassesThat(
              resideInAnyPackage(allowed.toArray(String[]::new))
                  .or(not(resideInAPackage(ROOT + ".."))))
          .because("architecture: a package imports only those before it")
          .check(all);
    }
  }

  @ArchTest
  static void noRoomsFormACycle(JavaClasses all) {
    slices().matching(ROOT + ".(*)..").should().beFreeOfCycles().check(all);
  }

  @ArchTest
  static void theEngineKnowsPlainJavaAlone(JavaClasses all) {
    noClasses()
        .that(resideInAPackage(ROOT + ".."))
        .and(not(resideInAnyPackage(within("service"), within("standard"))))
        .should()
        .dependOnClassesThat(not(resideInAnyPackage("java..", ROOT + "..")))
        .check(all);
  }

  @ArchTest
  static void theTablesAreReadWithOneLibraryAlone(JavaClasses all) {
    noClasses()
        .that(resideInAPackage(within("standard")))
        .should()
        .dependOnClassesThat(
            not(resideInAnyPackage("java..", ROOT + "..", "com.fasterxml.jackson..")))
        .check(all);
  }

  @ArchTest
  static void noCheckCallsAnotherCheck(JavaClasses all) {
    DescribedPredicate<JavaClass> check =
        assignableTo(Check.class)
            .and(not(DescribedPredicate.describe("the interface", JavaClass::isInterface)));
    noClasses()
        .that(check)
        .should(dependOnAnother(check))
        .because("architecture: no check calls another; what two need lives below them")
        .check(all);
  }

  /**
   * Reached through a helper a check would be called all the same: only the runners, of a circuit
   * and of a board, may know them.
   */
  @ArchTest
  static void onlyTheRunnerMakesChecks(JavaClasses all) {
    noClasses()
        .that(resideInAPackage(within("check")))
        .and()
        .doNotBelongToAnyOf(CircuitCheck.class, BoardCheck.class)
        .should()
        .callConstructorWhere(
            DescribedPredicate.describe(
                "it makes a check of another class",
                call ->
                    call.getTargetOwner().isAssignableTo(Check.class)
                        && !call.getOriginOwner().isAssignableTo(Check.class)))
        .check(all);
  }

  @ArchTest
  static void theCoreTakesNoClockLocaleOrChance(JavaClasses all) {
    classes()
        .that(resideInAPackage(ROOT + ".."))
        .and(not(resideInAPackage(within("service.edge"))))
        .should(readNoClockLocaleOrChance())
        .check(all);
  }

  private static ArchCondition<JavaClass> readNoClockLocaleOrChance() {
    return new ArchCondition<>("read no clock, no default locale and no random source") {
      @Override
      public void check(JavaClass item, ConditionEvents events) {
        for (JavaAccess<?> access : item.getAccessesFromSelf()) {
          if (dependsOnTheMachine(access)) {
            events.add(SimpleConditionEvent.violated(item, access.getDescription()));
          }
        }
      }
    };
  }

  private static boolean dependsOnTheMachine(JavaAccess<?> access) {
    String owner = access.getTargetOwner().getName();
    String name = access.getName();
    boolean random =
        owner.equals("java.util.Random")
            || owner.equals("java.util.concurrent.ThreadLocalRandom")
            || owner.equals("java.security.SecureRandom")
            || owner.equals("java.util.SplittableRandom");
    boolean now = owner.startsWith("java.time.") && name.startsWith("now");
    boolean date = owner.equals("java.util.Date") && name.equals("<init>");
    return random || now || date || CLOCKS.contains(signature(access)) || localeLessFormat(access);
  }

  /** {@code String.format} and its kin without a locale write numbers as the machine likes. */
  private static boolean localeLessFormat(JavaAccess<?> access) {
    boolean formats =
        FORMATTERS.contains(access.getTargetOwner().getName())
            && Set.of("format", "formatted", "printf").contains(access.getName());
    return formats && !access.getTarget().getFullName().contains("java.util.Locale");
  }

  private static String signature(JavaAccess<?> access) {
    return access.getTarget().getFullName();
  }

  private static ArchCondition<JavaClass> dependOnAnother(DescribedPredicate<JavaClass> kind) {
    return new ArchCondition<>("depend on another check") {
      @Override
      public void check(JavaClass item, ConditionEvents events) {
        item.getDirectDependenciesFromSelf().stream()
            .filter(each -> kind.test(each.getTargetClass()))
            .filter(each -> !each.getTargetClass().equals(item))
            .forEach(
                each -> events.add(SimpleConditionEvent.satisfied(item, each.getDescription())));
      }
    };
  }

  @ArchTest
  static void theRulesSpeakOfSomething(JavaClasses all) {
    // A rule over no class would hold for ever: every room has classes, and every check is seen.
    for (String room : ROOMS) {
      assertFalse(all.that(resideInAPackage(within(room))).isEmpty(), room);
    }
    long checks =
        all.stream()
            .filter(each -> each.isAssignableTo(Check.class) && !each.isInterface())
            .count();
    assertEquals(CircuitCheck.all().size(), checks);
  }

  private static String within(String room) {
    return ROOT + "." + room + "..";
  }

  private static String room(JavaClass each) {
    String rest =
        each.getPackageName()
            .substring(Math.min(ROOT.length() + 1, each.getPackageName().length()));
    return rest.contains(".") ? rest.substring(0, rest.indexOf('.')) : rest;
  }
}
