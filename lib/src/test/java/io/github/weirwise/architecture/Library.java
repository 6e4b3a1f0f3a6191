package io.github.weirwise.architecture;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The project as the architecture tests see it: the compiled library, and the source files of both modules. */
final class Library {
    static final String BASE = "io.github.weirwise";

    private Library() {}

    /** The library's own compiled classes, without its tests. */
    static JavaClasses classes() {
        return Classes.READ_ONCE;
    }

    /** The folder of the library's module. */
    static Path module() {
        Path here = Path.of(System.getProperty("basedir", "")).toAbsolutePath();
        return Files.isDirectory(here.resolve("lib/src")) ? here.resolve("lib") : here;
    }

    /** The project's root folder. */
    static Path root() {
        return module().getParent();
    }

    /** All Java files below the given folders of the project, in a fixed order. */
    static List<Path> javaFiles(String... folders) {
        return files(".java", folders);
    }

    /** All files with the given end below the given folders of the project, in a fixed order; a missing folder is empty. */
    static List<Path> files(String end, String... folders) {
        return Stream.of(folders)
                .map(root()::resolve)
                .filter(Files::isDirectory)
                .flatMap(Library::walk)
                .filter(file -> file.toString().endsWith(end))
                .sorted()
                .toList();
    }

    static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stream<Path> walk(Path folder) {
        try (Stream<Path> found = Files.walk(folder)) {
            return found.toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Reading all class files takes seconds, so that the tests share it. */
    private static final class Classes {
        static final JavaClasses READ_ONCE = new ClassFileImporter().importPath(module().resolve("target/classes"));
    }
}
