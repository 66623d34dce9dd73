package putback.app;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaModifier.FINAL;
import static com.tngtech.archunit.core.domain.JavaModifier.STATIC;
import static com.tngtech.archunit.lang.conditions.ArchConditions.callMethodWhere;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The arrows between the rooms, and what the core may never touch. */
class RoomsTest {
    /** The rooms of the core; a room may use those of the lines above its own. */
    private static final List<Set<String>> CORE = List.of(
            Set.of("quantity"),
            Set.of("angles", "tightening"),
            Set.of("sheet"),
            Set.of("plan"),
            Set.of("labour", "ledger", "job"));

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .withImportOption(location -> !location.contains("-tests.jar"))
            .importPackages("putback");

    @TestFactory
    Stream<DynamicTest> coreRooms_useOnlyThoseBeforeThem() {
        List<DynamicTest> tests = new ArrayList<>();
        for (int line = 0; line < CORE.size(); line++) {
            for (String room : CORE.get(line)) {
                String[] closed = Stream.concat(
                                CORE.subList(line, CORE.size()).stream()
                                        .flatMap(Set::stream)
                                        .filter(other -> !other.equals(room)),
                                Stream.of("store", "proof", "app"))
                        .sorted()
                        .map(RoomsTest::inside)
                        .toArray(String[]::new);
                tests.add(DynamicTest.dynamicTest(
                        room,
                        () -> hold(noClasses()
                                .that()
                                .resideInAPackage(inside(room))
                                .should()
                                .dependOnClassesThat()
                                .resideInAnyPackage(closed))));
            }
        }
        return tests.stream();
    }

    @Test
    void store_knowsOnlyTheCore() {
        hold(noClasses()
                .that()
                .resideInAPackage(inside("store"))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(inside("app"), inside("proof")));
    }

    @Test
    void proof_knowsOnlyTheCore() {
        hold(noClasses()
                .that()
                .resideInAPackage(inside("proof"))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(inside("app"), inside("store")));
    }

    @Test
    void everyClass_isInARoomThatIsNamed() {
        hold(classes()
                .should()
                .resideInAnyPackage(
                        Stream.concat(CORE.stream().flatMap(Set::stream), Stream.of("store", "proof", "app"))
                                .map(RoomsTest::inside)
                                .toArray(String[]::new)));
    }

    @Test
    void papersAlone_knowHowAPdfIsMade() {
        hold(noClasses()
                .that()
                .resideOutsideOfPackage(inside("app.papers"))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("com.openhtmltopdf..", "org.apache.pdfbox..", "com.google.zxing.."));
    }

    @Test
    void packages_haveNoCycles() {
        hold(slices().matching("putback.(**)").should().beFreeOfCycles());
    }

    @Test
    void core_usesTheJdkAndUnitsAndNumericsOnly() {
        hold(noClasses()
                .that()
                .resideInAnyPackage(core())
                .should()
                .dependOnClassesThat()
                .resideOutsideOfPackages(
                        "putback..",
                        "java.lang..",
                        "java.math..",
                        "java.text..",
                        "java.time..",
                        "java.util..",
                        "java.security..",
                        "java.nio.charset..",
                        "javax.measure..",
                        "tech.units..",
                        "systems.uom..",
                        "si.uom..",
                        "org.ojalgo..",
                        "org.jspecify.annotations.."));
    }

    @Test
    void core_hasNoThreadsReflectionLogsOrPreferences() {
        hold(noClasses()
                .that()
                .resideInAnyPackage(core())
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "java.lang.reflect..", "java.util.logging..", "java.util.prefs..", "java.util.zip.."));
    }

    @Test
    void core_readsNoClockAndNoEnvironment() {
        hold(noClasses()
                .that()
                .resideInAnyPackage(core())
                .should(callMethodWhere(describe("it reads the clock or the environment", call -> {
                    String owner = call.getTargetOwner().getName();
                    String name = call.getName();
                    return (owner.startsWith("java.time.") && name.equals("now"))
                            || (owner.equals("java.time.Clock") && name.startsWith("system"))
                            || (owner.equals("java.lang.System") && CLOCK_OR_ENVIRONMENT.contains(name));
                }))));
    }

    private static final Set<String> CLOCK_OR_ENVIRONMENT =
            Set.of("currentTimeMillis", "nanoTime", "getenv", "getProperty", "getProperties", "lineSeparator", "exit");

    @Test
    void core_printsNothing() {
        hold(noClasses().that().resideInAnyPackage(core()).should().accessField(System.class, "out"));
        hold(noClasses().that().resideInAnyPackage(core()).should().accessField(System.class, "err"));
    }

    @Test
    void core_drawsRandomNumbersFromAGivenSeedOnly() {
        hold(noClasses().that().resideInAnyPackage(core()).should().accessTargetWhere(unseeded()));
    }

    private static DescribedPredicate<JavaAccess<?>> unseeded() {
        return describe("the random numbers have no seed", access -> {
            String owner = access.getTargetOwner().getName();
            String name = access.getName();
            boolean bare = access.getTarget()
                            instanceof com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget target
                    && target.getRawParameterTypes().isEmpty();
            return (Set.of("java.util.Random", "java.util.SplittableRandom").contains(owner)
                            && name.equals("<init>")
                            && bare)
                    || (owner.equals("java.lang.Math") && name.equals("random"))
                    || (owner.equals("java.util.UUID") && name.equals("randomUUID"))
                    || (owner.equals("java.util.Collections")
                            && name.equals("shuffle")
                            && access.getTarget().getFullName().endsWith("(java.util.List)"))
                    || owner.equals("java.util.concurrent.ThreadLocalRandom")
                    || owner.equals("java.security.SecureRandom")
                    || owner.startsWith("java.util.random.");
        });
    }

    @Test
    void core_neverAsksForTheLocaleOfTheMachine() {
        hold(noClasses().that().resideInAnyPackage(core()).should(callMethodWhere(usesDefaultLocale())));
    }

    private static DescribedPredicate<JavaMethodCall> usesDefaultLocale() {
        return describe("it depends on the locale of the machine", call -> {
            String owner = call.getTargetOwner().getName();
            String name = call.getName();
            boolean given = call.getTarget().getRawParameterTypes().stream()
                    .anyMatch(type -> type.getName().equals("java.util.Locale"));
            return (owner.equals("java.util.Locale") && name.endsWith("Default"))
                    || (owner.equals("java.lang.String")
                            && Set.of("format", "formatted", "toLowerCase", "toUpperCase")
                                    .contains(name)
                            && !given)
                    || (owner.equals("java.text.NumberFormat") && name.endsWith("Instance") && !given)
                    || (owner.equals("java.time.format.DateTimeFormatter") && name.equals("ofPattern") && !given);
        });
    }

    @Test
    void core_hasNoStaticThatCanBeReplaced() {
        hold(fields().that()
                .areDeclaredInClassesThat()
                .resideInAnyPackage(core())
                .and()
                .haveModifier(STATIC)
                .and()
                .doNotHaveModifier(com.tngtech.archunit.core.domain.JavaModifier.SYNTHETIC)
                .should()
                .haveModifier(FINAL));
    }

    private static void hold(ArchRule rule) {
        rule.allowEmptyShould(true).check(CLASSES);
    }

    private static String[] core() {
        return CORE.stream().flatMap(Set::stream).map(RoomsTest::inside).toArray(String[]::new);
    }

    private static String inside(String room) {
        return "putback." + room + "..";
    }
}
