package io.github.weirwise.evidence;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Builds the release twice from copies of the sources, in two folders, the second time with another zone, language and user, and compares every jar and the list of parts byte by
 * byte. Tests are left out here; the build has run them.
 */
final class Release implements Evidence.Command {
    private static final Path ROOT = Path.of("").toAbsolutePath();
    /** Another zone, language and user: none of it may be seen in what is built. */
    private static final String ELSEWHERE =
            "-Duser.timezone=Pacific/Auckland -Duser.language=tr -Duser.country=TR -Duser.name=somebody";

    private static final Pattern COMPONENT = Pattern.compile("<component type=");

    @Override
    public void run(String[] options) throws IOException, InterruptedException {
        Path work = Files.createTempDirectory("weirwise-release");
        try {
            Map<String, byte[]> first = build(work.resolve("first"), "-Duser.timezone=UTC -Duser.language=en");
            Map<String, byte[]> second = build(work.resolve("second-time"), ELSEWHERE);
            int different = 0;
            for (String name : first.keySet()) {
                boolean same = Arrays.equals(first.get(name), second.get(name));
                different += same ? 0 : 1;
                System.out.println(
                        (same ? "same      " : "DIFFERENT ") + name + ", " + first.get(name).length + " bytes");
            }
            different += Math.abs(first.size() - second.size());
            System.out.println("result: artifacts=" + first.size() + " different=" + different + " parts="
                    + parts(new String(first.get("bom.xml"), StandardCharsets.UTF_8)));
            if (different > 0) {
                throw new IllegalStateException("two builds of the same sources differ");
            }
        } finally {
            delete(work);
        }
    }

    private static Map<String, byte[]> build(Path folder, String javaOptions) throws IOException, InterruptedException {
        copySources(folder);
        new MavenRun(folder, folder.resolve("target/release.log"), javaOptions)
                .run("-Prelease-check", "package", "-Dmaven.test.skip=true");
        Map<String, byte[]> built = new TreeMap<>();
        for (Path file :
                List.of(folder.resolve("target"), folder.resolve("lib/target"), folder.resolve("demo-ui/target"))) {
            try (Stream<Path> files = Files.list(file)) {
                for (Path each : files.filter(Release::isReleased).toList()) {
                    built.put(each.getFileName().toString(), Files.readAllBytes(each));
                }
            }
        }
        return built;
    }

    private static boolean isReleased(Path file) {
        String name = file.getFileName().toString();
        return name.endsWith(".jar") || name.equals("bom.xml") || name.equals("bom.json");
    }

    static void copySources(Path folder) throws IOException {
        for (String each : List.of(
                "pom.xml",
                "lib/pom.xml",
                "lib/LICENSE",
                "lib/NOTICE",
                "lib/src",
                "demo-ui/pom.xml",
                "demo-ui/LICENSE",
                "demo-ui/NOTICE",
                "demo-ui/src")) {
            try (Stream<Path> files = Files.walk(ROOT.resolve(each))) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    Path copy = folder.resolve(ROOT.relativize(file));
                    Files.createDirectories(copy.getParent());
                    Files.copy(file, copy);
                }
            }
        }
    }

    private static int parts(String bom) {
        Matcher matcher = COMPONENT.matcher(bom);
        int count = 0;
        while (matcher.find()) {
            count++;
        }
        return count;
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
