package io.github.weirwise.evidence;

import static java.util.stream.Collectors.joining;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Command {@code outside}: a project outside the tree, which depends on the built library from a local repository and has
 * Jackson 2 beside it, runs the example of the README on the class path and as a module, on every JDK that lies beside the
 * one in use.
 */
final class Outside {
    private static final Path ROOT = Path.of("").toAbsolutePath();
    private static final String JACKSON_2 = "2.21.8";
    private static final String POM = """
            <project xmlns="http://maven.apache.org/POM/4.0.0">
              <modelVersion>4.0.0</modelVersion>
              <groupId>outside</groupId>
              <artifactId>outside</artifactId>
              <version>1</version>
              <properties>
                <maven.compiler.release>17</maven.compiler.release>
                <project.build.sourceEncoding>UTF-8</project.build.sourceEncoding>
              </properties>
              <dependencies>
                <dependency>
                  <groupId>io.github.weirwise</groupId>
                  <artifactId>weirwise</artifactId>
                  <version>VERSION</version>
                </dependency>
                <dependency>
                  <groupId>com.fasterxml.jackson.core</groupId>
                  <artifactId>jackson-databind</artifactId>
                  <version>JACKSON</version>
                </dependency>
              </dependencies>
              <build>
                <plugins>
                  <plugin>
                    <artifactId>maven-compiler-plugin</artifactId>
                    <version>3.14.1</version>
                  </plugin>
                  <plugin>
                    <artifactId>maven-dependency-plugin</artifactId>
                    <version>3.8.1</version>
                  </plugin>
                </plugins>
              </build>
            </project>
            """;
    private static final String MODULE = """
            module outside {
                requires io.github.weirwise;
                requires com.fasterxml.jackson.databind;
            }
            """;
    private static final String BESIDE = """

                    var jackson2 = new com.fasterxml.jackson.databind.ObjectMapper();
                    var step = jackson2.readTree(io.github.weirwise.json.WeirwiseJson.writeAdvice(advice)).get("step");
                    System.out.println("Jackson " + jackson2.version() + " reads " + step);
                    System.out.println("module " + Outside.class.getModule().getName() + " on "
                            + Weirwise.class.getModule().getName() + ", Java " + Runtime.version().feature());
            """;

    private int runs;
    private int failed;

    private Outside() {}

    static void run() throws IOException, InterruptedException {
        Outside outside = new Outside();
        Map<String, Path> jdks = jdks();
        Path work = Files.createTempDirectory("weirwise-outside");
        Path logs = ROOT.resolve("lib/target/outside");
        try (ScratchRepository repository = ScratchRepository.with(ROOT, logs.resolve("install.log"))) {
            for (boolean module : new boolean[] {false, true}) {
                Path project = work.resolve(module ? "as-module" : "on-class-path");
                String path = build(project, module, repository, logs);
                for (Map.Entry<String, Path> jdk : jdks.entrySet()) {
                    outside.tryIt(project, path, module, jdk);
                }
            }
        } finally {
            ScratchRepository.delete(work);
        }
        System.out.println("result: runs=" + outside.runs + " failed=" + outside.failed + " jdks=" + jdks.size());
        if (outside.failed > 0) {
            throw new IllegalStateException("the example does not run outside");
        }
    }

    /** Compiles the project; gives back the paths of what it depends on. */
    private static String build(Path project, boolean module, ScratchRepository repository, Path logs)
            throws IOException, InterruptedException {
        Path sources = Files.createDirectories(project.resolve("src/main/java/outside"));
        Files.writeString(
                project.resolve("pom.xml"), POM.replace("VERSION", version()).replace("JACKSON", JACKSON_2));
        Files.writeString(sources.resolve("Outside.java"), source());
        if (module) {
            Files.writeString(sources.resolveSibling("module-info.java"), MODULE);
        }
        Path path = project.resolve("path.txt");
        new MavenRun(project, logs.resolve(project.getFileName() + ".log"))
                .run(repository.argument(), "compile", "dependency:build-classpath", "-Dmdep.outputFile=" + path);
        return Files.readString(path).strip();
    }

    private void tryIt(Path project, String path, boolean module, Map.Entry<String, Path> jdk)
            throws IOException, InterruptedException {
        String all = project.resolve("target/classes") + File.pathSeparator + path;
        List<String> how =
                module ? List.of("-p", all, "-m", "outside/outside.Outside") : List.of("-cp", all, "outside.Outside");
        Process process = new ProcessBuilder(Stream.concat(
                                Stream.of(jdk.getValue().resolve("bin/java").toString()), how.stream())
                        .toList())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes());
        boolean right = process.waitFor() == 0
                && said.contains("Jackson " + JACKSON_2)
                && said.contains("module " + (module ? "outside on io.github.weirwise" : "null on null"));
        runs++;
        failed += right ? 0 : 1;
        System.out.println((right ? "runs   " : "FAILS  ") + (module ? "as a module" : "on the class path") + ", JDK "
                + jdk.getKey() + ":");
        said.lines().forEach(line -> System.out.println("    " + line));
    }

    /** The example of the README as a program, with Jackson 2 at work beside it. */
    private static String source() throws IOException {
        Matcher block = Pattern.compile("(?s)```java\n(.*?)```").matcher(Files.readString(ROOT.resolve("README.md")));
        if (!block.find()) {
            throw new IllegalStateException("README.md has lost its example");
        }
        Map<Boolean, String> parts = block.group(1)
                .lines()
                .collect(java.util.stream.Collectors.partitioningBy(line -> line.startsWith("import "), joining("\n")));
        return "package outside;\n\n" + parts.get(true)
                + "\n\npublic class Outside {\n    public static void main(String[] args) throws Exception {\n"
                + parts.get(false) + BESIDE + "    }\n}\n";
    }

    private static String version() throws IOException {
        return Files.readString(ROOT.resolve("pom.xml")).replaceAll("(?s).*?<version>([^<]+)</version>.*", "$1");
    }

    /** JDKs from 17 on that lie beside the one in use, by their version. */
    private static Map<String, Path> jdks() throws IOException {
        Map<String, Path> found = new TreeMap<>();
        Path home = Path.of(System.getProperty("java.home")).toRealPath();
        found.put(System.getProperty("java.version"), home);
        try (Stream<Path> beside = Files.list(home.getParent())) {
            for (Path each : beside.filter(folder -> Files.exists(folder.resolve("bin/javac")))
                    .toList()) {
                String release = Files.readString(each.resolve("release"));
                String version = release.replaceAll("(?s).*JAVA_VERSION=\"([^\"]+)\".*", "$1");
                if (Integer.parseInt(version.replaceAll("\\D.*", "")) >= 17) {
                    found.putIfAbsent(version, each);
                }
            }
        }
        return found;
    }
}
