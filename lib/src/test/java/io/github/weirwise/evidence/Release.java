package io.github.weirwise.evidence;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * Builds the release twice from copies of the sources, in two folders, the second time with another zone, language and user, and another JDK when one is given, and compares every jar and the list of parts byte by
 * byte. Every jar, of classes, sources or pages, must carry the licence and its module's notice with the third parties in it. Tests are left out here; the build has run them.
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
        String jdk = System.getProperty("jdk", "");
        try {
            Map<String, byte[]> first = build(work.resolve("first"), "-Duser.timezone=UTC -Duser.language=en", "");
            Map<String, byte[]> second = build(work.resolve("second-time"), ELSEWHERE, jdk);
            int different = 0;
            int otherTool = 0;
            for (String name : first.keySet()) {
                boolean same = Arrays.equals(first.get(name), second.get(name));
                // The pages carry scripts of the JDK that makes them, which change from patch to patch.
                boolean tool = !same && name.endsWith("-javadoc.jar") && !jdk.isEmpty();
                different += same || tool ? 0 : 1;
                otherTool += tool ? 1 : 0;
                System.out.println((same ? "same      " : tool ? "BY JDK    " : "DIFFERENT ") + name + ", "
                        + first.get(name).length + " bytes");
            }
            different += Math.abs(first.size() - second.size());
            List<String> unlicensed = unlicensed(first);
            System.out.println("result: artifacts=" + first.size() + " different=" + different + " byJdk=" + otherTool
                    + " unlicensed="
                    + unlicensed.size() + " parts="
                    + parts(new String(first.get("bom.xml"), StandardCharsets.UTF_8)));
            if (different > 0) {
                throw new IllegalStateException("two builds of the same sources differ");
            }
            if (!unlicensed.isEmpty()) {
                throw new IllegalStateException("licence or notice is missing in " + unlicensed);
            }
        } finally {
            delete(work);
        }
    }

    private static Map<String, byte[]> build(Path folder, String javaOptions, String jdk)
            throws IOException, InterruptedException {
        copySources(folder);
        new MavenRun(folder, folder.resolve("target/release.log"), javaOptions, jdk)
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

    /** The jars that lack the licence, or the notice of their module, in {@code META-INF}. */
    static List<String> unlicensed(Map<String, byte[]> built) throws IOException {
        List<String> lacking = new ArrayList<>();
        for (Map.Entry<String, byte[]> each : built.entrySet()) {
            String name = each.getKey();
            if (name.endsWith(".jar")
                    && !carriesLicence(each.getValue(), name.contains("-demo-") ? "demo-ui" : "lib")) {
                lacking.add(name);
            }
        }
        return lacking;
    }

    private static boolean carriesLicence(byte[] jar, String module) throws IOException {
        String licence = Files.readString(ROOT.resolve(module + "/LICENSE"));
        String notice = Files.readString(ROOT.resolve(module + "/NOTICE"));
        boolean licensed = false;
        boolean noticed = false;
        try (ZipInputStream entries = new ZipInputStream(new ByteArrayInputStream(jar))) {
            for (ZipEntry entry = entries.getNextEntry(); entry != null; entry = entries.getNextEntry()) {
                switch (entry.getName()) {
                    case "META-INF/LICENSE" -> licensed = text(entries).equals(licence);
                    // The jar with everything in it puts the notices of all its parts together.
                    case "META-INF/NOTICE" -> noticed = text(entries).contains(notice.strip());
                    default -> {}
                }
            }
        }
        return licensed && noticed;
    }

    private static String text(ZipInputStream entry) throws IOException {
        return new String(entry.readAllBytes(), StandardCharsets.UTF_8);
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
