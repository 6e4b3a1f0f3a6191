package io.github.weirwise.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a repository of artifacts asks for is there, or named as still open. */
class PublishableTest {
    private static final List<String> PUBLISHERS = List.of("url", "scm", "developers");
    private static final Pattern PLUGIN = Pattern.compile("(?s)<plugin>(.*?)</plugin>");
    private static final Pattern ARTIFACT = Pattern.compile("<artifactId>([^<]+)</artifactId>");
    private static final Pattern DEPENDENCY = Pattern.compile("(?s)<dependency>(.*?)</dependency>");

    /** How the NOTICE names what a module declares. */
    private static final Map<String, String> NAMES = Map.of(
            "jackson-databind", "Jackson",
            "hipparchus-core", "Hipparchus",
            "hipparchus-ode", "Hipparchus",
            "weirwise", "Weirwise",
            "flatlaf", "FlatLaf",
            "miglayout-swing", "MigLayout",
            "jfreechart", "JFreeChart");

    @Test
    void everyModuleCarriesItsLicenceAndWhatItNeeds() {
        for (String module : List.of("lib", "demo-ui")) {
            assertThat(text(module + "/LICENSE"))
                    .contains("Apache License", "Version 2.0, January 2004", "END OF TERMS AND CONDITIONS");
            String notice = text(module + "/NOTICE");
            List<String> declared = runTime(text(module + "/pom.xml"));
            assertThat(declared).isNotEmpty();
            assertThat(declared).allSatisfy(name -> assertThat(NAMES).containsKey(name));
            assertThat(declared).allSatisfy(name -> assertThat(notice).contains(NAMES.get(name)));
            assertThat(text(module + "/pom.xml")).contains("<include>LICENSE</include>", "<include>NOTICE</include>");
        }
        assertThat(Files.exists(Library.module().resolve("target/classes/META-INF/LICENSE")))
                .isTrue();
        assertThat(Files.exists(Library.module().resolve("target/classes/META-INF/NOTICE")))
                .isTrue();
    }

    /** Nobody but the publisher knows them; none is invented here. */
    @Test
    void theOpenPlacesOfThePublisherAreSaid() {
        String pom = text("pom.xml").replaceAll("(?s)<licenses>.*?</licenses>", "");
        String open = PUBLISHERS.stream()
                .filter(name -> !pom.contains("<" + name + ">"))
                .map(name -> "`" + name + "`")
                .collect(Collectors.joining(", "));
        assertThat(text("docs/versioning.md")).contains("Still open in the top `pom.xml`: " + open + ".");
        assertThat(pom).contains("<name>", "<description>");
        assertThat(text("docs/versioning.md")).contains("mvn -q -Prelease-check package");
        assertThat(pom).contains("<id>release-check</id>");
    }

    @Test
    void everyPluginHasAFixedVersion() {
        String top = text("pom.xml");
        List<String> pinned = plugins(top.substring(0, top.indexOf("</pluginManagement>")))
                .filter(PublishableTest::hasVersion)
                .map(PublishableTest::artifact)
                .toList();
        List<String> loose = new ArrayList<>();
        for (String pom : List.of("pom.xml", "lib/pom.xml", "demo-ui/pom.xml")) {
            plugins(text(pom))
                    .filter(plugin -> !hasVersion(plugin) && !pinned.contains(artifact(plugin)))
                    .forEach(plugin -> loose.add(pom + ": " + artifact(plugin)));
        }
        assertThat(pinned).hasSizeGreaterThan(10);
        assertThat(loose).isEmpty();
    }

    private static List<String> runTime(String pom) {
        String own = pom.substring(pom.indexOf("<dependencies>"), pom.indexOf("</dependencies>"));
        return DEPENDENCY
                .matcher(own)
                .results()
                .map(found -> found.group(1))
                .filter(each -> !each.contains("<scope>test</scope>"))
                .map(PublishableTest::artifact)
                .toList();
    }

    private static Stream<String> plugins(String pom) {
        return PLUGIN.matcher(pom).results().map(found -> found.group(1));
    }

    private static boolean hasVersion(String plugin) {
        return plugin.replaceAll("(?s)<(dependencies|configuration|executions)>.*", "")
                .contains("<version>");
    }

    private static String artifact(String part) {
        Matcher found = ARTIFACT.matcher(part);
        return found.find() ? found.group(1) : "";
    }

    private static String text(String file) {
        return Library.read(Path.of(Library.root().toString(), file));
    }
}
