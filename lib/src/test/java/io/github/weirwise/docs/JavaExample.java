package io.github.weirwise.docs;

import static java.util.stream.Collectors.joining;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/**
 * Java from a document, compiled as a reader would: on the class path, against what the library exports.
 *
 * <p>A block that declares a type at its left margin is a source file of its own; any other block is imports followed by
 * statements, which get a class and a {@code main} around them.
 */
record JavaExample(String block) {
    private static final Pattern TYPE =
            Pattern.compile("(?m)^(?:public |final |sealed |abstract )*(?:class|record|interface|enum) ([A-Za-z]\\w*)");

    /**
     * What the compiler has to say, empty when all is well.
     *
     * @param folder where the source and the classes go
     */
    String compile(Path folder) throws IOException {
        Path source = folder.resolve(className() + ".java");
        Files.writeString(source, source());
        StringWriter said = new StringWriter();
        PrintWriter out = new PrintWriter(said);
        ToolProvider javac = ToolProvider.findFirst("javac").orElseThrow();
        int code = javac.run(out, out, "-proc:none", "-d", folder.toString(), "-cp", libraries(), source.toString());
        return code == 0 ? "" : said + "\n" + source();
    }

    /** Compiles, runs {@code main}, and gives back what was printed. */
    String run(Path folder) throws IOException, ReflectiveOperationException {
        String complaints = compile(folder);
        if (!complaints.isEmpty()) {
            throw new IllegalStateException(complaints);
        }
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        PrintStream before = System.out;
        try (URLClassLoader loader =
                new URLClassLoader(new URL[] {folder.toUri().toURL()})) {
            System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
            var main = loader.loadClass(className()).getMethod("main", String[].class);
            main.invoke(null, (Object) new String[0]);
        } finally {
            System.setOut(before);
        }
        return printed.toString(StandardCharsets.UTF_8);
    }

    private boolean hasType() {
        return TYPE.matcher(block).find();
    }

    private String className() {
        Matcher type = TYPE.matcher(block);
        return type.find() ? type.group(1) : "Example";
    }

    private String source() {
        if (hasType()) {
            return block;
        }
        String imports = block.lines().filter(JavaExample::isImport).collect(joining("\n"));
        String statements = block.lines().filter(line -> !isImport(line)).collect(joining("\n"));
        return imports + "\npublic class Example {\n    public static void main(String[] args) throws Exception {\n"
                + statements + "\n    }\n}\n";
    }

    private static boolean isImport(String line) {
        return line.startsWith("import ");
    }

    /** The library and all that it was tested with, whether surefire put it on the module path or on the class path. */
    private static String libraries() {
        List<String> paths = Stream.of("jdk.module.path", "java.class.path", "surefire.test.class.path")
                .map(System::getProperty)
                .filter(Objects::nonNull)
                .toList();
        return String.join(File.pathSeparator, paths);
    }
}
