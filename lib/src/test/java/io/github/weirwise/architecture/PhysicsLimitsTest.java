package io.github.weirwise.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.report.OutOfRangeException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The limits in the comments of the physics and the device are the limits in the code: what a comment allows is taken, what lies a
 * little outside is refused, and so is what is no number.
 */
class PhysicsLimitsTest {
    private static final List<String> ROOMS = List.of(
            "internal.physics.seawater",
            "internal.physics.hydraulics",
            "internal.physics.bubbles",
            "internal.physics.foam",
            "internal.physics.colour",
            "unit");
    private static final String NUMBER = "(-?\\d[\\d.]*(?:e-?\\d+)?)";
    private static final Pattern LIMITS = Pattern.compile(NUMBER + "(?: [^\\d.,;:]*?)? to (under )?" + NUMBER);
    private static final Pattern NAME = Pattern.compile("\\b(?:double|int) (\\w+)");

    private final List<String> wrong = new ArrayList<>();
    private int looked;

    /** From where to where a number may go, as its comment has it. */
    private record Limits(double low, double high, boolean underHigh) {
        /** A value well inside. */
        double inside() {
            return low > 0 ? Math.sqrt(low * high) : low + 0.3 * (high - low);
        }

        List<Double> outside() {
            double step = 0.01 * (high - low);
            return List.of(low - step, high + step, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);
        }
    }

    @Test
    void whatTheCommentsAllowIsTakenAndWhatTheyForbidIsRefused() {
        for (String room : ROOMS) {
            Library.javaFiles("lib/src/main/java/io/github/weirwise/" + room.replace('.', '/'))
                    .forEach(
                            file -> look(room, file.getFileName().toString().replace(".java", ""), Library.read(file)));
        }
        assertThat(wrong).isEmpty();
        assertThat(looked).as("numbers whose limits were tried").isGreaterThan(80);
    }

    private void look(String room, String name, String source) {
        Class<?> type = type(room, name);
        if (!Modifier.isPublic(type.getModifiers())) {
            return;
        }
        if (type.isRecord()) {
            String comment = source.substring(source.indexOf("/**"), source.indexOf("public record"));
            Constructor<?> constructor = type.getDeclaredConstructors()[0];
            if (source.contains("public " + name + " {")
                    && (source.contains("Require.inRange") || source.contains("Limit.of("))) {
                tryAll(name, constructor, "", comment, names(type));
            }
        }
        Matcher function = Pattern.compile(
                        "(/\\*\\*(?:(?!\\*/).)*\\*/)\\s*public (?:static )?[\\w.<>]+ (\\w+)\\(([^)]*)\\)",
                        Pattern.DOTALL)
                .matcher(source);
        while (function.find()) {
            String comment = function.group(1);
            List<String> names = names(function.group(3));
            if (!names.isEmpty() && comment.contains("@throws") && comment.contains("OutOfRangeException")) {
                method(type, function.group(2), function.group(3)).ifPresent(method -> {
                    Optional<Object> on = Modifier.isStatic(method.getModifiers()) ? Optional.of("") : example(type);
                    on.ifPresent(each -> tryAll(name + "." + method.getName(), method, each, comment, names));
                });
            }
        }
    }

    /** Tries every number of a function whose arguments all have limits. */
    private void tryAll(String what, Executable function, Object on, String comment, List<String> names) {
        Optional<Object[]> inside = inside(function, comment, names);
        if (inside.isEmpty()) {
            return;
        }
        Optional<Throwable> refused = call(function, on, inside.get());
        if (refused.isPresent()) {
            wrong.add(what + " refuses " + Arrays.toString(inside.get()) + ": " + refused.get());
            return;
        }
        Class<?>[] types = function.getParameterTypes();
        for (int i = 0; i < types.length; i++) {
            if (types[i] == double.class) {
                Limits limits = limits(comment, names.get(i)).orElseThrow();
                looked++;
                for (double value : limits.outside()) {
                    Object[] arguments = inside.get().clone();
                    arguments[i] = value;
                    Optional<Throwable> answer = call(function, on, arguments);
                    if (answer.isEmpty() || !(answer.get() instanceof OutOfRangeException)) {
                        wrong.add(what + " takes " + names.get(i) + " = " + value + ", its comment says " + limits.low()
                                + " to " + limits.high());
                    }
                }
            }
        }
    }

    private Optional<Object[]> inside(Executable function, String comment, List<String> names) {
        Class<?>[] types = function.getParameterTypes();
        Object[] inside = new Object[types.length];
        for (int i = 0; i < types.length; i++) {
            if (types[i] == double.class) {
                Optional<Limits> limits = limits(comment, names.get(i));
                if (limits.isEmpty()) {
                    return Optional.empty();
                }
                inside[i] = limits.get().inside();
            } else {
                Optional<Object> other = example(types[i]);
                if (other.isEmpty()) {
                    return Optional.empty();
                }
                inside[i] = other.get();
            }
        }
        return Optional.of(inside);
    }

    /** Some value of a type of the physics: a constant of an enum, or a record made of values inside their limits. */
    private Optional<Object> example(Class<?> type) {
        if (type.isEnum()) {
            return Optional.of(type.getEnumConstants()[0]);
        }
        if (!type.isRecord() || !type.getName().startsWith(Library.BASE)) {
            return Optional.empty();
        }
        String room = type.getPackageName().substring(Library.BASE.length() + 1);
        String source = Library.javaFiles("lib/src/main/java/io/github/weirwise/" + room.replace('.', '/')).stream()
                .filter(file -> file.getFileName().toString().equals(type.getSimpleName() + ".java"))
                .map(Library::read)
                .findFirst()
                .orElse("");
        if (!source.contains("public record")) {
            return Optional.empty();
        }
        String comment = source.substring(source.indexOf("/**"), source.indexOf("public record"));
        Constructor<?> constructor = type.getDeclaredConstructors()[0];
        return inside(constructor, comment, names(type)).map(arguments -> {
            try {
                return constructor.newInstance(arguments);
            } catch (ReflectiveOperationException e) {
                return null;
            }
        });
    }

    private static Optional<Throwable> call(Executable function, Object on, Object[] arguments) {
        try {
            if (function instanceof Method method) {
                method.invoke(on, arguments);
            } else {
                ((Constructor<?>) function).newInstance(arguments);
            }
            return Optional.empty();
        } catch (InvocationTargetException e) {
            return Optional.of(e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Optional<Limits> limits(String comment, String name) {
        Matcher told = Pattern.compile("@param " + name + " ((?:(?!\\* @|\\*/).)*)", Pattern.DOTALL)
                .matcher(comment);
        if (!told.find()) {
            return Optional.empty();
        }
        Matcher limits = LIMITS.matcher(told.group(1).replaceAll("\\s*\\n\\s*\\*\\s*", " "));
        return limits.find()
                ? Optional.of(new Limits(
                        Double.parseDouble(limits.group(1)),
                        Double.parseDouble(limits.group(3)),
                        limits.group(2) != null))
                : Optional.empty();
    }

    private static Optional<Method> method(Class<?> type, String name, String arguments) {
        long count = arguments.isBlank()
                ? 0
                : arguments.chars().filter(c -> c == ',').count() + 1;
        return Stream.of(type.getDeclaredMethods())
                .filter(method -> method.getName().equals(name) && method.getParameterCount() == count)
                .filter(method -> Modifier.isPublic(method.getModifiers()))
                .findFirst();
    }

    private static List<String> names(Class<?> recordType) {
        return Stream.of(recordType.getRecordComponents())
                .map(component -> component.getName())
                .toList();
    }

    /** Names of all arguments, in order; none unless one is a number. */
    private static List<String> names(String arguments) {
        if (!NAME.matcher(arguments).find()) {
            return List.of();
        }
        return Stream.of(arguments.trim().split("\\s*,\\s*"))
                .map(argument -> argument.substring(argument.lastIndexOf(' ') + 1))
                .toList();
    }

    private static Class<?> type(String room, String name) {
        try {
            return name.equals("package-info") ? Object[].class : Class.forName(Library.BASE + "." + room + "." + name);
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }
}
