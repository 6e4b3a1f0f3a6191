package io.github.weirwise.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The house stands: a package knows the floors under its own, and of its siblings only those that the physics needs. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FloorsTest {
    /** A new package gets its floor here, and in DEVELOPERS.md. The front door has the empty name. */
    private static final Map<String, Integer> FLOORS = Map.ofEntries(
            Map.entry("report", 0),
            Map.entry("internal.kept", 0),
            Map.entry("internal.physics.seawater", 1),
            Map.entry("internal.physics.hydraulics", 1),
            Map.entry("internal.physics.bubbles", 1),
            Map.entry("internal.physics.foam", 1),
            Map.entry("internal.physics.colour", 1),
            Map.entry("unit", 2),
            Map.entry("tank", 3),
            Map.entry("setup", 3),
            Map.entry("reading", 4),
            Map.entry("diagnosis", 5),
            Map.entry("care", 5),
            Map.entry("advice", 6),
            Map.entry("practice", 7),
            Map.entry("watch", 7),
            Map.entry("score", 7),
            Map.entry("json", 9),
            Map.entry("sheet", 8),
            Map.entry("table", 8),
            Map.entry("", 10));

    /** Siblings that may know each other, one way only: water's properties carry bubbles and foam. */
    private static final Map<String, Set<String>> KNOWN_SIBLINGS = Map.of(
            "internal.physics.foam", Set.of("internal.physics.seawater", "internal.physics.bubbles"),
            "internal.physics.bubbles", Set.of("internal.physics.seawater"));

    private final JavaClasses classes = Library.classes();

    @Test
    void everyPackageHasItsFloor() {
        Set<String> homeless = new TreeSet<>();
        for (JavaClass type : classes) {
            if (!FLOORS.containsKey(room(type))) {
                homeless.add(type.getPackageName());
            }
        }
        assertThat(classes).hasSizeGreaterThan(50);
        assertThat(homeless).isEmpty();
    }

    /** The physics is no promise to embedders. */
    @Test
    void thePhysicsIsNotExported() {
        assertThat(io.github.weirwise.Weirwise.class.getModule().getDescriptor().exports())
                .allSatisfy(each -> assertThat(each.source()).doesNotContain(".internal"));
    }

    @Test
    void noFloorKnowsAHigherOneAndSiblingsAreUnaware() {
        Set<String> wrong = new TreeSet<>();
        for (JavaClass type : classes) {
            type.getDirectDependenciesFromSelf().stream()
                    .map(dependency -> dependency.getTargetClass().getBaseComponentType())
                    .filter(target -> target.getPackageName().startsWith(Library.BASE))
                    .filter(target -> !allowed(room(type), room(target)))
                    .forEach(target -> wrong.add(type.getName() + " knows " + target.getName()));
        }
        assertThat(wrong).isEmpty();
    }

    private static boolean allowed(String from, String to) {
        if (from.equals(to)) {
            return true;
        }
        int below = FLOORS.getOrDefault(to, Integer.MAX_VALUE);
        int here = FLOORS.getOrDefault(from, -1);
        return below < here || KNOWN_SIBLINGS.getOrDefault(from, Set.of()).contains(to);
    }

    /** The package's name below the base, the empty text for the front door. */
    private static String room(JavaClass type) {
        String name = type.getPackageName();
        if (!name.startsWith(Library.BASE + ".")) {
            return "";
        }
        return name.substring(Library.BASE.length() + 1);
    }
}
