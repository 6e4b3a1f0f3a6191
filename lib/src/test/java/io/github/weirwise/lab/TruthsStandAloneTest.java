package io.github.weirwise.lab;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import io.github.weirwise.lab.truth.Classic;
import io.github.weirwise.lab.truth.FullColumn;
import io.github.weirwise.lab.truth.Gentle;
import io.github.weirwise.lab.truth.ResponseLaw;
import io.github.weirwise.lab.truth.Slow;
import io.github.weirwise.lab.truth.Steep;
import io.github.weirwise.lab.truth.Top;
import io.github.weirwise.report.Range;
import io.github.weirwise.unit.Column;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Target;
import io.github.weirwise.unit.Weir;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The truths share no code with the library, but for the sheet's measures, and none with each other. */
class TruthsStandAloneTest {
    private static final Set<Class<?>> SHEET =
            Set.of(SkimmerUnit.class, Column.class, Weir.class, Target.class, Part.class, Range.class, Dice.class);
    private static final Set<Class<?>> LAWS =
            Set.of(Classic.class, Steep.class, Gentle.class, Top.class, FullColumn.class, Slow.class);

    private final JavaClasses truths = new ClassFileImporter().importPackages("io.github.weirwise.lab.truth");

    private static DescribedPredicate<JavaClass> anyOf(Set<Class<?>> some, String name) {
        return DescribedPredicate.describe(name, each -> some.stream().anyMatch(each::isEquivalentTo));
    }

    @Test
    void theyKnowTheSheetAndNothingElseOfTheLibrary() {
        classes()
                .that()
                .resideInAPackage("..lab.truth")
                .should()
                .onlyDependOnClassesThat(DescribedPredicate.or(
                        DescribedPredicate.describe(
                                "Java",
                                (JavaClass each) -> each.getPackageName().startsWith("java")
                                        || each.isArray()
                                        || each.isPrimitive()),
                        DescribedPredicate.describe(
                                "the truths",
                                (JavaClass each) -> each.getPackageName().endsWith("lab.truth")),
                        anyOf(SHEET, "the sheet")))
                .check(truths);
    }

    @Test
    void noneKnowsAnother() {
        for (Class<?> law : LAWS) {
            Set<Class<?>> others = new HashSet<>(LAWS);
            others.remove(law);
            noClasses()
                    .that(anyOf(Set.of(law), law.getSimpleName()))
                    .should()
                    .dependOnClassesThat(anyOf(others, "another truth"))
                    .check(truths);
        }
        assertThat(truths.that(DescribedPredicate.describe(
                        "a law", each -> each.isAssignableTo(ResponseLaw.class) && !each.isInterface())))
                .hasSameSizeAs(LAWS);
    }
}
