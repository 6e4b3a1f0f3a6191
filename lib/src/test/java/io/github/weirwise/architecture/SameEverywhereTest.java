package io.github.weirwise.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.text.DateFormatSymbols;
import java.text.DecimalFormatSymbols;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeSet;
import java.util.concurrent.locks.Lock;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The library answers the same on every machine, and leaves nothing behind between calls. */
class SameEverywhereTest {
    /** Who is handed one of these asks the machine for nothing; who leaves it out where he could hand it over takes the machine's. */
    private static final Set<Class<?>> HANDED_OVER = Set.of(
            Locale.class,
            Charset.class,
            ZoneId.class,
            TimeZone.class,
            Clock.class,
            DateFormatSymbols.class,
            DecimalFormatSymbols.class);

    /** UTF-8 by their own contract, whatever the machine's charset is. */
    private static final Set<Class<?>> ALWAYS_THE_SAME = Set.of(Files.class, Properties.class);

    /** Asks the machine, and has no sibling that is handed the answer. */
    private static final Set<String> ASKING = Set.of(
            "java.lang.String.formatted",
            "java.lang.System.currentTimeMillis",
            "java.lang.System.lineSeparator",
            "java.lang.System.getenv",
            "java.nio.charset.Charset.defaultCharset",
            "java.text.MessageFormat.format(java.lang.String, [Ljava.lang.Object;)",
            "java.time.Clock.systemDefaultZone",
            "java.time.Clock.systemUTC",
            "java.time.ZoneId.systemDefault",
            "java.time.format.DateTimeFormatter.ofLocalizedDate",
            "java.time.format.DateTimeFormatter.ofLocalizedDateTime",
            "java.time.format.DateTimeFormatter.ofLocalizedTime",
            "java.util.Date.<init>()",
            "java.util.Locale.getDefault",
            "java.util.TimeZone.getDefault");

    private static final Set<String> SPREADING = Set.of("parallel", "parallelStream", "parallelSort", "parallelSetAll");

    @Test
    void nothingAsksTheMachineForLocaleZoneCharsetOrTime() {
        assertThat(asking(Library.classes())).isEmpty();
    }

    /** Calls, constructors and references to methods alike, or the rule above would hold of anything. */
    @Test
    void whoAsksTheMachineIsFound() {
        assertThat(asking(new ClassFileImporter().importClasses(Asker.class)))
                .extracting(found -> found.substring(found.indexOf(" uses ") + 6))
                .containsExactly(
                        "java.io.InputStreamReader.<init>(java.io.InputStream)",
                        "java.lang.String.format(java.lang.String, [Ljava.lang.Object;)",
                        "java.lang.String.toLowerCase()",
                        "java.time.LocalDate.now()",
                        "java.time.ZoneId.systemDefault()");
    }

    private static Set<String> asking(JavaClasses classes) {
        Set<String> found = new TreeSet<>();
        for (JavaClass type : classes) {
            for (JavaAccess<?> access : type.getAccessesFromSelf()) {
                if (access.getTarget() instanceof CodeUnitAccessTarget target && asks(target)) {
                    found.add(type.getName() + " uses " + target.getFullName());
                }
            }
        }
        return found;
    }

    private static boolean asks(CodeUnitAccessTarget target) {
        if (!target.getOwner().getPackageName().startsWith("java.")) {
            return false;
        }
        Class<?> owner = target.getOwner().reflect();
        if (ASKING.contains(owner.getName() + "." + target.getName()) || ASKING.contains(target.getFullName())) {
            return true;
        }
        List<Class<?>> given = target.getRawParameterTypes().stream()
                .<Class<?>>map(JavaClass::reflect)
                .toList();
        boolean handsOver = given.stream().anyMatch(SameEverywhereTest::isHandedOver);
        Executable[] siblings = target.getName().equals("<init>") ? owner.getConstructors() : owner.getMethods();
        return !handsOver
                && !ALWAYS_THE_SAME.contains(owner)
                && Stream.of(siblings)
                        .filter(each ->
                                each instanceof Constructor || each.getName().equals(target.getName()))
                        .anyMatch(each -> handsOverToo(each, given));
    }

    private static boolean handsOverToo(Executable sibling, List<Class<?>> given) {
        List<Class<?>> rest = Stream.of(sibling.getParameterTypes())
                .<Class<?>>map(each -> each)
                .filter(each -> !isHandedOver(each))
                .toList();
        return sibling.getParameterCount() == given.size() + 1 && rest.equals(given);
    }

    private static boolean isHandedOver(Class<?> type) {
        return HANDED_OVER.stream().anyMatch(each -> each.isAssignableFrom(type));
    }

    /** Does what the library must not. */
    private static final class Asker {
        static Object ask(InputStream in) {
            Function<String, String> small = String::toLowerCase;
            return List.of(
                    String.format("%s", small),
                    new InputStreamReader(in),
                    LocalDate.now(),
                    LocalDate.now(ZoneId.systemDefault()),
                    "A".toLowerCase(Locale.ROOT));
        }
    }

    @Test
    void noWorkIsSpreadOverProcessors() {
        Set<String> found = new TreeSet<>();
        for (JavaClass type : Library.classes()) {
            type.getAccessesFromSelf().stream()
                    .filter(access -> SPREADING.contains(access.getName()))
                    .filter(access -> access.getTargetOwner().getPackageName().startsWith("java.util"))
                    .forEach(access -> found.add(access.getDescription()));
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
