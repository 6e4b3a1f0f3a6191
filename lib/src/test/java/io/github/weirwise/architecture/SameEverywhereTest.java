package io.github.weirwise.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.locks.Lock;
import org.junit.jupiter.api.Test;

/** The library answers the same on every machine, and leaves nothing behind between calls. */
class SameEverywhereTest {
    /** Calls that ask the machine for its locale, zone or charset, or spread work over its processors. */
    private static final Set<String> FORBIDDEN = Set.of(
            "java.lang.String.format(java.lang.String, [Ljava.lang.Object;)",
            "java.lang.String.formatted([Ljava.lang.Object;)",
            "java.lang.String.toLowerCase()",
            "java.lang.String.toUpperCase()",
            "java.lang.String.getBytes()",
            "java.util.Locale.getDefault()",
            "java.util.TimeZone.getDefault()",
            "java.time.ZoneId.systemDefault()",
            "java.nio.charset.Charset.defaultCharset()",
            "java.time.LocalDate.now()",
            "java.time.LocalDateTime.now()",
            "java.time.Instant.now()",
            "java.lang.System.currentTimeMillis()",
            "java.time.format.DateTimeFormatter.ofPattern(java.lang.String)",
            "java.text.NumberFormat.getInstance()",
            "java.text.NumberFormat.getNumberInstance()");

    private static final Set<String> SPREADING = Set.of("parallel", "parallelStream", "parallelSort", "parallelSetAll");

    @Test
    void nothingAsksTheMachineForLocaleZoneCharsetOrTime() {
        Set<String> found = new TreeSet<>();
        for (JavaClass type : Library.classes()) {
            for (JavaMethodCall call : type.getMethodCallsFromSelf()) {
                String target = call.getTarget().getOwner().getName() + "." + call.getName() + "("
                        + String.join(
                                ", ",
                                call.getTarget().getRawParameterTypes().stream()
                                        .map(JavaClass::getName)
                                        .toList())
                        + ")";
                if (FORBIDDEN.contains(target)) {
                    found.add(type.getName() + " calls " + target);
                }
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void noWorkIsSpreadOverProcessors() {
        Set<String> found = new TreeSet<>();
        for (JavaClass type : Library.classes()) {
            type.getMethodCallsFromSelf().stream()
                    .filter(call -> SPREADING.contains(call.getName()))
                    .filter(call -> call.getTarget().getOwner().getPackageName().startsWith("java.util"))
                    .forEach(call -> found.add(call.getDescription()));
        }
        assertThat(found).isEmpty();
    }

    /** A lock, a counter or an object with fields that are set again; {@code FileGates} alone holds a table, empty between calls. */
    @Test
    void nothingStaticOfOurOwnCanChange() {
        Set<String> found = new TreeSet<>();
        for (JavaClass type : Library.classes()) {
            for (JavaField field : type.getFields()) {
                boolean shared = field.getModifiers().contains(JavaModifier.STATIC);
                if (shared && keepsState(field.getRawType())) {
                    found.add(field.getFullName());
                }
            }
        }
        assertThat(found).isEmpty();
    }

    private static boolean keepsState(JavaClass type) {
        if (type.isAssignableTo(Lock.class) || type.getName().startsWith("java.util.concurrent.atomic")) {
            return true;
        }
        boolean own = type.getPackageName().startsWith(Library.BASE);
        return own
                && type.getFields().stream()
                        .filter(field -> !field.getModifiers().contains(JavaModifier.STATIC))
                        .anyMatch(field -> !field.getModifiers().contains(JavaModifier.FINAL));
    }
}
