package io.github.weirwise.evidence;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A local repository for one run: links to all that the usual one holds, except this project, which is installed into the
 * scratch alone. So a project outside the tree resolves the library as a user's would, and nothing is left behind.
 */
final class ScratchRepository implements AutoCloseable {
    private final Path folder;

    private ScratchRepository(Path folder) {
        this.folder = folder;
    }

    /** Builds the library from the tree at {@code root} and installs it into a new scratch repository. */
    static ScratchRepository with(Path root, Path log) throws IOException, InterruptedException {
        ScratchRepository scratch = new ScratchRepository(Files.createTempDirectory("weirwise-repository"));
        Path usual =
                Path.of(System.getProperty("maven.repo.local", System.getProperty("user.home") + "/.m2/repository"));
        Path own = Path.of("io", "github", "weirwise");
        Path level = Path.of("");
        for (Path name : own) {
            scratch.link(usual.resolve(level), level, name);
            level = level.resolve(name);
        }
        Path sources = Files.createTempDirectory("weirwise-sources");
        try {
            Release.copySources(sources);
            new MavenRun(sources, log)
                    .run(scratch.argument(), "-pl", "lib", "-am", "install", "-Dmaven.test.skip=true");
        } finally {
            delete(sources);
        }
        return scratch;
    }

    /** Links all that lies on a level but one name, which becomes a folder of its own. */
    private void link(Path usual, Path level, Path except) throws IOException {
        Path here = Files.createDirectories(folder.resolve(level));
        if (Files.isDirectory(usual)) {
            try (Stream<Path> each = Files.list(usual)) {
                for (Path file : each.filter(found -> !found.getFileName().equals(except))
                        .toList()) {
                    Files.createSymbolicLink(here.resolve(file.getFileName()), file);
                }
            }
        }
        Files.createDirectories(here.resolve(except));
    }

    /** What Maven is told. */
    String argument() {
        return "-Dmaven.repo.local=" + folder;
    }

    /** Removes it; links are removed, not followed. */
    @Override
    public void close() throws IOException {
        delete(folder);
    }

    static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    /** The jars of the library and of what it needs, out of the scratch. */
    List<Path> ownJars() throws IOException {
        try (Stream<Path> files = Files.walk(folder.resolve("io/github/weirwise"))) {
            return files.filter(file -> file.toString().endsWith(".jar")).toList();
        }
    }
}
