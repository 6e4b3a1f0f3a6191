package io.github.weirwise.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import io.github.weirwise.Weirwise;
import java.io.IOException;
import java.lang.module.ModuleDescriptor;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Member;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The promised API, one member a line, stands in {@code src/test/resources/api/weirwise.txt}: nothing that is promised goes
 * away unseen. What is new is promised once it is written down too: {@code mvn -q -pl lib test -Dtest=PublicApiTest
 * -Dapi.rewrite=true}, and a look at docs/versioning.md.
 */
class PublicApiTest {
    private final Path file = Library.module().resolve("src/test/resources/api/weirwise.txt");

    @Test
    void everyPromisedMemberIsStillThere() throws IOException, ReflectiveOperationException {
        List<String> now = signature();
        assertThat(now).hasSizeGreaterThan(300);
        if (Boolean.getBoolean("api.rewrite")) {
            Files.createDirectories(file.getParent());
            Files.write(file, now);
        }
        List<String> written = Files.readAllLines(file);
        Set<String> gone = new TreeSet<>(written);
        now.forEach(gone::remove);
        assertThat(gone)
                .as("promised members are gone or changed; if that is meant, read docs/versioning.md and run"
                        + " mvn -q -pl lib test -Dtest=PublicApiTest -Dapi.rewrite=true")
                .isEmpty();
    }

    /** Whatever is exported has to be kept for years: new types go below a package that is not, unless an embedder needs them. */
    @Test
    void theApiStaysSmall() throws ReflectiveOperationException {
        List<String> now = signature();
        long members = now.stream().filter(line -> line.contains(" # ")).count();
        assertThat(members).isLessThanOrEqualTo(700);
        assertThat(now.size() - members).isLessThanOrEqualTo(150);
    }

    private static List<String> signature() throws ReflectiveOperationException {
        Set<String> exported = Weirwise.class.getModule().getDescriptor().exports().stream()
                .filter(each -> !each.isQualified())
                .map(ModuleDescriptor.Exports::source)
                .collect(Collectors.toSet());
        Set<String> lines = new TreeSet<>();
        for (JavaClass each : Library.classes()) {
            if (exported.contains(each.getPackageName())) {
                Class<?> type = Class.forName(each.getName(), false, Weirwise.class.getClassLoader());
                if (isVisible(type)) {
                    lines.add(brief(head(type)));
                    String name = type.getName();
                    members(type).forEach(member -> lines.add(brief(name + " # " + member.replace(name + ".", ""))));
                }
            }
        }
        return List.copyOf(lines);
    }

    /** Public or protected, and so is everything around it. */
    private static boolean isVisible(Class<?> type) {
        boolean open = isOpen(type.getModifiers()) && !type.isSynthetic() && !type.isAnonymousClass();
        return open && (type.getEnclosingClass() == null || isVisible(type.getEnclosingClass()));
    }

    private static String head(Class<?> type) {
        String parents = Stream.concat(
                        Stream.ofNullable(type.getGenericSuperclass()), Stream.of(type.getGenericInterfaces()))
                .map(parent -> parent.getTypeName())
                .filter(parent -> !parent.equals("java.lang.Object"))
                .collect(Collectors.joining(", "));
        String permits = type.isSealed()
                ? Stream.of(type.getPermittedSubclasses())
                        .map(Class::getName)
                        .sorted()
                        .collect(Collectors.joining(", "))
                : "";
        // Newer JDKs say "sealed", which "permits" says as well.
        String kind = type.toGenericString().replaceAll(" (non-)?sealed ", " ");
        return type.getName() + " : " + kind + (parents.isEmpty() ? "" : " from " + parents)
                + (permits.isEmpty() ? "" : " permits " + permits);
    }

    /** Without the packages that every reader knows. */
    private static String brief(String line) {
        return line.replaceAll("\\b(io\\.github\\.weirwise|java\\.lang|java\\.util|java\\.time)\\.(?=[A-Za-z])", "");
    }

    /** Fields, constructors and methods; of records and enums not what the language gives. */
    private static List<String> members(Class<?> type) {
        List<String> members = new ArrayList<>();
        Arrays.stream(type.getDeclaredFields())
                .filter(PublicApiTest::isOffered)
                .map(Field::toGenericString)
                .forEach(members::add);
        Arrays.stream(type.getDeclaredConstructors())
                .filter(PublicApiTest::isOffered)
                .filter(each -> !type.isRecord() || each.getParameterCount() != type.getRecordComponents().length)
                .map(Constructor::toGenericString)
                .forEach(members::add);
        Arrays.stream(type.getDeclaredMethods())
                .filter(PublicApiTest::isOffered)
                .filter(each -> !isGiven(each, type))
                .map(Method::toGenericString)
                .forEach(members::add);
        if (type.isRecord()) {
            members.add("components "
                    + Arrays.stream(type.getRecordComponents())
                            .map(PublicApiTest::component)
                            .collect(Collectors.joining(", ")));
        }
        return members;
    }

    /** What the language gives: of a record an accessor a component and the three methods of all objects, of an enum its list. */
    private static boolean isGiven(Method method, Class<?> type) {
        if (type.isEnum()) {
            return Modifier.isStatic(method.getModifiers())
                    && Set.of("values", "valueOf").contains(method.getName());
        }
        if (!type.isRecord()) {
            return false;
        }
        boolean accessor = Stream.of(type.getRecordComponents()).anyMatch(each -> method.equals(each.getAccessor()));
        return accessor || Set.of("equals", "hashCode", "toString").contains(method.getName());
    }

    private static String component(RecordComponent component) {
        return component.getGenericType().getTypeName() + " " + component.getName();
    }

    private static boolean isOffered(Member member) {
        return isOpen(member.getModifiers()) && !member.isSynthetic();
    }

    private static boolean isOpen(int modifiers) {
        return Modifier.isPublic(modifiers) || Modifier.isProtected(modifiers);
    }
}
