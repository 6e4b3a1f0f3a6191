package io.github.weirwise.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every public and protected element has a comment.
 *
 * <p>The compiler itself rejects comments with dead references, unknown tags and broken markup. Its group "missing" is
 * asked here only for elements without any comment: taken whole it wants the components of a record told again at its
 * compact constructor, and a "return" beside every first sentence that says the same.
 */
class PublicCommentsTest {
    @TempDir
    private Path folder;

    @Test
    void everyPublicElementHasAComment() {
        List<String> arguments = new ArrayList<>(List.of(
                "-proc:none",
                "-Xmaxwarns",
                "100000",
                "-Xdoclint:missing/protected",
                "-d",
                folder.toString(),
                "--module-path",
                libraries()));
        Library.javaFiles("lib/src/main/java").forEach(file -> arguments.add(file.toString()));
        StringWriter said = new StringWriter();
        PrintWriter out = new PrintWriter(said);
        int code = ToolProvider.findFirst("javac").orElseThrow().run(out, out, arguments.toArray(String[]::new));
        assertThat(code).as(said.toString()).isZero();
        assertThat(said.toString().lines().filter(line -> line.endsWith("no comment")))
                .isEmpty();
    }

    /** Types inside another one are there as long as that one; what is not exported is promised by no version. */
    @Test
    void everyPublicTypeSaysSinceWhichVersionItIsThere() {
        Pattern type = Pattern.compile("(?m)^public [a-z -]*(class|record|interface|enum) ");
        Pattern exported = Pattern.compile("exports ([\\w.]+);");
        String module = Library.read(Library.module().resolve("src/main/java/module-info.java"));
        List<String> promised =
                exported.matcher(module).results().map(found -> found.group(1)).toList();
        assertThat(promised).isNotEmpty();
        List<String> silent = Library.javaFiles("lib/src/main/java").stream()
                .filter(file ->
                        promised.stream().anyMatch(name -> Library.read(file).contains("package " + name + ";")))
                .filter(file -> type.matcher(Library.read(file)).find())
                .filter(file -> !Library.read(file).contains("\n * @since 0."))
                .map(Path::toString)
                .toList();
        assertThat(silent)
                .as("add \"@since\" and the version to the type's comment")
                .isEmpty();
    }

    /** What the library was tested with, without the library itself. */
    private static String libraries() {
        List<String> jars = Stream.of("jdk.module.path", "java.class.path", "surefire.test.class.path")
                .map(System::getProperty)
                .filter(Objects::nonNull)
                .flatMap(path -> Stream.of(path.split(File.pathSeparator)))
                .filter(path -> path.contains("jackson") || path.contains("hipparchus"))
                .distinct()
                .toList();
        return String.join(File.pathSeparator, jars);
    }
}
