package io.github.weirwise.architecture;

import static com.tngtech.archunit.core.domain.JavaModifier.FINAL;
import static com.tngtech.archunit.core.domain.JavaModifier.STATIC;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.domain.properties.HasName;
import com.tngtech.archunit.core.domain.properties.HasOwner;
import io.github.weirwise.report.Work;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** Rules that keep the library safe to embed and easy to read. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HouseRulesTest {
    private static final int LONGEST_FILE_LINES = 500;

    private final JavaClasses classes = Library.classes();

    @Test
    void jacksonStaysInTheJsonRoom() {
        noClasses()
                .that()
                .resideOutsideOfPackage("io.github.weirwise.json..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("tools.jackson..", "com.fasterxml.jackson..")
                .check(classes);
    }

    @Test
    void noPublicSignatureShowsATypeOfAnotherLibrary() {
        Set<String> shown = new TreeSet<>();
        for (JavaClass type : classes) {
            if (isPublic(type)) {
                exposed(type)
                        .filter(name -> !name.startsWith("java.") && !name.startsWith(Library.BASE))
                        .forEach(name -> shown.add(type.getName() + " shows " + name));
            }
        }
        assertThat(shown).isEmpty();
    }

    @Test
    void theLibraryHasNoDesktopInIt() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "java.awt..",
                        "javax.swing..",
                        "javax.accessibility..",
                        "javax.imageio..",
                        "javax.print..",
                        "javax.sound..",
                        "java.beans..")
                .check(classes);
        assertThat(Library.read(Library.module().resolve("src/main/java/module-info.java")))
                .doesNotContain("java.desktop");
    }

    @Test
    void theLibraryNeverKnowsTheDemo() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAPackage("io.github.weirwise.demo..")
                .check(classes);
        assertThat(Library.read(Library.module().resolve("pom.xml"))).doesNotContain("weirwise-demo");
    }

    @Test
    void onlyAProgramOfTheJsonRoomTalksToTheStandardStreams() {
        Set<String> talkers = new TreeSet<>();
        for (JavaClass type : classes) {
            boolean streams = type.getFieldAccessesFromSelf().stream()
                    .anyMatch(access -> access.getTargetOwner().isEquivalentTo(System.class));
            if (streams && !isProgramOfJson(type)) {
                talkers.add(type.getName());
            }
        }
        assertThat(talkers).isEmpty();
    }

    @Test
    void nothingIsStartedLookedUpOrFetchedBehindTheCallersBack() {
        noClasses()
                .that()
                // Asks whether the caller's thread was interrupted, and no more.
                .doNotHaveFullyQualifiedName(Work.class.getName())
                .should()
                .dependOnClassesThat()
                .haveNameMatching("java\\.util\\.concurrent\\.(Executor.*|ForkJoin.*|CompletableFuture|.*ThreadPool.*)"
                        + "|java\\.lang\\.Thread|java\\.util\\.Timer|java\\.util\\.ServiceLoader"
                        + "|java\\.io\\.Object(In|Out)putStream|java\\.lang\\.ProcessBuilder|java\\.lang\\.Runtime")
                .orShould()
                .dependOnClassesThat()
                .resideInAnyPackage("java.net..", "java.rmi..", "java.util.logging..", "org.slf4j..")
                .orShould()
                .callMethod(Class.class, "forName", String.class)
                .because("an embedder's process is the embedder's own")
                .check(classes);
    }

    /** What writes records as JSON or bytes walks over their components; nothing is ever found by a name that comes from outside. */
    @Test
    void onlyWritersOfRecordsLookIntoThemAndNobodyFindsMembersByName() {
        noClasses()
                .that()
                .resideOutsideOfPackages(Library.BASE + ".json", Library.BASE + ".internal.kept")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("java.lang.reflect..")
                .check(classes);
        noClasses()
                .should()
                .callMethodWhere(JavaCall.Predicates.target(HasOwner.Predicates.With.<JavaClass>owner(
                                JavaClass.Predicates.equivalentTo(Class.class)))
                        .and(JavaCall.Predicates.target(
                                HasName.Predicates.nameMatching("get(Declared)?(Method|Field)s?"))))
                .check(classes);
    }

    @Test
    void noStaticFieldCanChange() throws ReflectiveOperationException {
        Set<String> changing = new TreeSet<>();
        for (JavaClass type : classes) {
            for (JavaField field : type.getFields()) {
                if (field.getModifiers().contains(STATIC)
                        && !field.getModifiers().contains(JavaModifier.SYNTHETIC)
                        && canChange(field)) {
                    changing.add(field.getFullName());
                }
            }
        }
        assertThat(changing).isEmpty();
    }

    @Test
    void noClassHidesItsIdeaBehindAnEmptyName() {
        noClasses()
                .should()
                .haveSimpleNameEndingWith("Utils")
                .orShould()
                .haveSimpleNameEndingWith("Util")
                .orShould()
                .haveSimpleNameEndingWith("Manager")
                .orShould()
                .haveSimpleNameEndingWith("Helper")
                .orShould()
                .haveSimpleNameEndingWith("Impl")
                .check(classes);
    }

    @Test
    void noSourceFileIsTooLongToReadAtOneSitting() {
        List<String> tooLong = new ArrayList<>();
        List<Path> sources = Library.javaFiles("lib/src", "demo-ui/src");
        for (Path file : sources) {
            long lines = Library.read(file).lines().count();
            if (lines > LONGEST_FILE_LINES) {
                tooLong.add(Library.root().relativize(file) + ": " + lines + " lines");
            }
        }
        assertThat(sources).hasSizeGreaterThan(50);
        assertThat(tooLong).isEmpty();
    }

    @Test
    void everyPackageTellsHowDataFlowsThroughIt() {
        Set<String> silent = new TreeSet<>();
        for (Path file : Library.javaFiles("lib/src/main/java")) {
            Path folder = file.getParent();
            boolean isModuleFile = file.endsWith("module-info.java");
            if (!isModuleFile && !Files.exists(folder.resolve("package-info.java"))) {
                silent.add(Library.root().relativize(folder).toString());
            }
        }
        assertThat(silent).isEmpty();
    }

    private static boolean isPublic(JavaClass type) {
        boolean open = type.getModifiers().contains(JavaModifier.PUBLIC);
        return open && type.getEnclosingClass().map(HouseRulesTest::isPublic).orElse(true);
    }

    /** Names of all types that a user of a public class meets: parents, fields, parameters, results, errors. */
    private static Stream<String> exposed(JavaClass type) {
        Stream<JavaType> parents = Stream.concat(type.getSuperclass().stream(), type.getInterfaces().stream());
        Stream<JavaType> fields =
                type.getFields().stream().filter(f -> isOpen(f.getModifiers())).map(JavaField::getType);
        Stream<JavaType> calls = type.getCodeUnits().stream()
                .filter(unit -> isOpen(unit.getModifiers()))
                .flatMap(HouseRulesTest::typesOf);
        return Stream.of(parents, fields, calls)
                .flatMap(each -> each)
                .flatMap(each -> each.getAllInvolvedRawTypes().stream())
                .map(JavaClass::getBaseComponentType)
                .filter(each -> !each.isPrimitive())
                .map(JavaClass::getName);
    }

    private static Stream<JavaType> typesOf(JavaCodeUnit unit) {
        Stream<JavaType> errors = unit.getThrowsClause().getTypes().stream().map(each -> (JavaType) each);
        return Stream.of(unit.getParameterTypes().stream(), Stream.of(unit.getReturnType()), errors)
                .flatMap(each -> each);
    }

    private static boolean isOpen(Set<JavaModifier> modifiers) {
        return modifiers.contains(JavaModifier.PUBLIC) || modifiers.contains(JavaModifier.PROTECTED);
    }

    private static boolean isProgramOfJson(JavaClass type) {
        return type.getPackageName().equals(Library.BASE + ".json")
                && type.tryGetMethod("main", String[].class).isPresent();
    }

    /** A table of coefficients may be a private array; a shared collection must be one of the JDK's that refuse changes. */
    private static boolean canChange(JavaField field) throws ReflectiveOperationException {
        if (!field.getModifiers().contains(FINAL)) {
            return true;
        }
        if (field.getRawType().isArray()) {
            return !field.getModifiers().contains(JavaModifier.PRIVATE);
        }
        var reflected = field.reflect();
        reflected.setAccessible(true);
        Object held = reflected.get(null);
        String kind = held == null ? "" : held.getClass().getName();
        if (held instanceof Collection || held instanceof Map) {
            return !kind.contains("Immutable") && !kind.contains("Unmodifiable");
        }
        return kind.startsWith("java.util.concurrent.atomic")
                || held instanceof java.util.Random
                || held instanceof StringBuilder
                || held instanceof ThreadLocal;
    }
}
