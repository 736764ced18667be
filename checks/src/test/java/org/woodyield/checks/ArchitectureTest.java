package org.woodyield.checks;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What holds for the code of core as a whole. */
class ArchitectureTest {

    /** The way a job flows: each package reads only itself and those before it. */
    private static final List<String> ORDER = List.of(
            "source", "measure", "working", "wood", "log", "scaling", "lumber", "sawing", "work", "plan", "show",
            "job");

    private static final String ROOT = "org.woodyield.";

    /** Public types whose purpose is to change: what builds, and what draws. */
    private static final Set<String> MUTABLE = Set.of("Builder", "Draws");

    private static final JavaClasses CORE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .withImportOption(location -> !location.contains("/org/woodyield/checks/"))
            .importPackages("org.woodyield");

    private static final DescribedPredicate<JavaClass> LIBRARY = not(resideInAPackage(ROOT + "job.."));

    @Test
    void theOrderNamesEveryPackage() {
        Set<String> packages = CORE.stream().map(JavaClass::getPackageName).collect(Collectors.toSet());
        assertThat(packages)
                .containsExactlyInAnyOrderElementsOf(
                        ORDER.stream().map(name -> ROOT + name).toList());
    }

    /** So no third library is needed outside the command line either. */
    @TestFactory
    List<DynamicTest> eachPackageReadsOnlyThoseBeforeIt() {
        List<DynamicTest> tests = new ArrayList<>();
        List<String> known = new ArrayList<>(List.of("java..", "org.jspecify.annotations"));
        for (String name : ORDER) {
            known.add(ROOT + name);
            if (name.equals("job")) {
                known.addAll(List.of("picocli..", "de.siegmar.fastcsv.."));
            }
            String[] allowed = known.toArray(String[]::new);
            tests.add(DynamicTest.dynamicTest(
                    name,
                    () -> classes()
                            .that()
                            .resideInAPackage(ROOT + name)
                            .should()
                            .onlyDependOnClassesThat()
                            .resideInAnyPackage(allowed)
                            .check(CORE)));
        }
        return tests;
    }

    @Test
    void onlyTheCommandLineTouchesFilesAndTheNetwork() {
        Set<String> harmless = Set.of(
                "java.io.Serializable",
                "java.io.InputStream",
                "java.io.IOException",
                "java.io.UncheckedIOException",
                "java.lang.invoke.SerializedLambda");
        noClasses()
                .that(LIBRARY)
                .should()
                .dependOnClassesThat(describe(
                        "read or write",
                        type -> (type.getPackageName().equals("java.io") && !harmless.contains(type.getName()))
                                || type.getPackageName().startsWith("java.nio.file")
                                || type.getPackageName().startsWith("java.nio.channels")
                                || type.getPackageName().startsWith("java.net")))
                .check(CORE);
    }

    @Test
    void onlyTheRegisterAndTheTablesReadStreams() {
        noClasses()
                .that(LIBRARY)
                .and()
                .resideOutsideOfPackage(ROOT + "source")
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.io.InputStream")
                .check(CORE);
    }

    @Test
    void onlyTheCommandLinePrintsOrEndsTheProcess() {
        noClasses()
                .that(LIBRARY)
                .should()
                .accessTargetWhere(describe(
                        "print, or end the process",
                        access -> access.getTargetOwner().isEquivalentTo(System.class)
                                && Set.of("out", "err", "in", "exit")
                                        .contains(access.getTarget().getName())))
                .check(CORE);
    }

    /** The same bits on every JDK: StrictMath where Math may differ by an ulp. */
    @Test
    void noResultDependsOnTheMachinesMathematics() {
        Set<String> free = Set.of(
                "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh", "exp", "expm1", "log",
                "log10", "log1p", "pow", "cbrt", "hypot", "random");
        noClasses()
                .should()
                .accessTargetWhere(describe(
                        "call a function of Math whose last bit is free",
                        access -> access.getTargetOwner().isEquivalentTo(Math.class)
                                && free.contains(access.getTarget().getName())))
                .check(CORE);
    }

    @Test
    void noResultDependsOnThePlace() {
        noClasses()
                .should()
                .accessTargetWhere(describe("use the default locale or time zone", ArchitectureTest::readsThePlace))
                .check(CORE);
    }

    private static boolean readsThePlace(JavaAccess<?> access) {
        JavaClass owner = access.getTargetOwner();
        String name = access.getTarget().getName();
        if (owner.isEquivalentTo(String.class)) {
            boolean caseWithoutLocale = Set.of("toLowerCase", "toUpperCase").contains(name)
                    && access.getTarget().getFullName().endsWith("()");
            boolean format = name.equals("formatted")
                    || (name.equals("format")
                            && access.getTarget().getFullName().contains("(java.lang.String,"));
            return caseWithoutLocale || format;
        }
        return (owner.getName().equals("java.util.Locale") && name.equals("getDefault"))
                || (owner.getName().equals("java.util.TimeZone") && name.equals("getDefault"))
                || (owner.getName().equals("java.time.ZoneId") && name.equals("systemDefault"));
    }

    @Test
    void nothingIsSummedInAnOrderLeftToChance() {
        noClasses()
                .should()
                .accessTargetWhere(describe(
                        "open a parallel stream",
                        access -> Set.of("parallel", "parallelStream")
                                .contains(access.getTarget().getName())))
                .check(CORE);
    }

    @Test
    void nothingStaticChanges() {
        fields().that().areStatic().should().beFinal().check(CORE);
        fields().that()
                .areStatic()
                .and()
                .areNotPrivate()
                .and(describe(
                        "are of the code as written",
                        field -> !field.getModifiers().contains(JavaModifier.SYNTHETIC)))
                .should()
                .notHaveRawType(describe("an array", JavaClass::isArray))
                .allowEmptyShould(true)
                .check(CORE);
    }

    @Test
    void whatIsPublicIsImmutableUnlessListed() {
        fields().that(describe("belong to a public type that is to be immutable", ArchitectureTest::ofAValue))
                .should()
                .beFinal()
                .check(CORE);
        fields().that(describe(
                        "belong to a public type",
                        field -> field.getOwner().getModifiers().contains(JavaModifier.PUBLIC)))
                .and()
                .areNotStatic()
                .should()
                .notBePublic()
                .check(CORE);
    }

    private static boolean ofAValue(JavaField field) {
        JavaClass owner = field.getOwner();
        return owner.getModifiers().contains(JavaModifier.PUBLIC)
                && !MUTABLE.contains(owner.getSimpleName())
                && LIBRARY.test(owner);
    }

    @Test
    void publicClassesAreNotExtendedByChance() {
        classes()
                .that()
                .arePublic()
                .and()
                .areNotInterfaces()
                .and(LIBRARY)
                .and(describe(
                        "are not abstract or sealed",
                        type -> !type.getModifiers().contains(JavaModifier.ABSTRACT) && !type.isEnum()))
                .should()
                .haveModifier(JavaModifier.FINAL)
                .check(CORE);
    }

    @Test
    void namesSayWhatAThingIs() {
        noClasses()
                .should()
                .haveNameMatching(".*(Util|Utils|Helper|Manager|Constants|Impl)")
                .check(CORE);
    }

    @Test
    void everyPackageIsNullMarked() throws ClassNotFoundException {
        for (String name : ORDER) {
            assertThat(Class.forName(ROOT + name + ".package-info").isAnnotationPresent(NullMarked.class))
                    .as(name)
                    .isTrue();
        }
    }
}
