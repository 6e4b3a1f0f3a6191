package io.github.weirwise.evidence;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Command {@code size}: physical lines of both modules, the promised types and members, and the files of the jar that no use
 * case reaches, by name. A use case reaches what the front door, the filter or the demo reaches, by the class files' dependencies; of the
 * demo, what its sources name.
 */
final class Size {
    private static final String BASE = "io.github.weirwise";
    private static final String FILTER = BASE + ".json.LineFilter";
    private static final Pattern NAMED = Pattern.compile("\\b" + BASE.replace(".", "\\.") + "\\.[a-z.]+\\.([A-Z]\\w*)");

    private Size() {}

    static void run() throws IOException {
        Path root = Path.of("").toAbsolutePath();
        Path lib = root.resolve("lib/src/main/java");
        Path demo = root.resolve("demo-ui/src/main/java");
        List<String> api = Files.readAllLines(root.resolve("lib/src/test/resources/api/weirwise.txt"));
        long members = api.stream().filter(line -> line.contains(" # ")).count();
        Set<String> unreached = unreached(root, demo);
        unreached.forEach(name -> System.out.println("not reached: " + name));
        System.out.printf(
                "result: libLines=%d demoLines=%d publicTypes=%d publicMembers=%d unreachedFiles=%d%n",
                lines(lib), lines(demo), api.size() - members, members, unreached.size());
    }

    private static long lines(Path folder) throws IOException {
        long sum = 0;
        for (Path file : sources(folder)) {
            sum += Files.readAllLines(file).size();
        }
        return sum;
    }

    private static List<Path> sources(Path folder) throws IOException {
        try (Stream<Path> found = Files.walk(folder)) {
            return found.filter(file -> file.toString().endsWith(".java")).toList();
        }
    }

    private static Set<String> unreached(Path root, Path demo) throws IOException {
        JavaClasses classes = new ClassFileImporter().importPath(root.resolve("lib/target/classes"));
        Set<String> named = namedIn(demo);
        Deque<JavaClass> open = new ArrayDeque<>();
        for (JavaClass type : classes) {
            String name = type.getName();
            if (type.getPackageName().equals(BASE) || name.equals(FILTER) || named.contains(top(name))) {
                open.add(type);
            }
        }
        Set<String> reached =
                open.stream().map(type -> top(type.getName())).collect(Collectors.toCollection(TreeSet::new));
        while (!open.isEmpty()) {
            String file = top(open.remove().getName());
            for (JavaClass type : classes) {
                if (top(type.getName()).equals(file)) {
                    type.getDirectDependenciesFromSelf().forEach(dependency -> {
                        String target = top(dependency
                                .getTargetClass()
                                .getBaseComponentType()
                                .getName());
                        if (classes.contain(target) && reached.add(target)) {
                            open.add(classes.get(target));
                        }
                    });
                }
            }
        }
        Set<String> left = new TreeSet<>();
        for (JavaClass type : classes) {
            String name = type.getName();
            if (name.equals(top(name))
                    && !reached.contains(name)
                    && !name.endsWith("package-info")
                    && !name.equals("module-info")) {
                left.add(name.substring(BASE.length() + 1));
            }
        }
        return left;
    }

    /** All types of the library that a source of the demo names, in an import or a link, or by their simple name beside a star import. */
    private static Set<String> namedIn(Path demo) throws IOException {
        Set<String> named = new TreeSet<>();
        for (Path file : sources(demo)) {
            Matcher matcher = NAMED.matcher(Files.readString(file));
            while (matcher.find()) {
                named.add(matcher.group());
            }
        }
        return named;
    }

    private static String top(String name) {
        int nested = name.indexOf('$');
        return nested < 0 ? name : name.substring(0, nested);
    }
}
