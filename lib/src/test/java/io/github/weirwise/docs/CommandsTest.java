package io.github.weirwise.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The table of commands and the commands that there are agree. */
class CommandsTest {
    private static final Pattern KNOWN = Pattern.compile("known\\.put\\(\\s*\"([a-z-]+)\"");
    private static final Pattern EVIDENCE = Pattern.compile("-Devidence=([a-z-]+)");

    private final List<List<String>> rows = Markdown.of(Markdown.ROOT.resolve("docs/commands.md")).rows().stream()
            .filter(row -> row.get(1).startsWith("`"))
            .toList();

    @Test
    void everyEvidenceCommandIsInTheTableUnderItsName() {
        Set<String> listed = new TreeSet<>();
        List<String> misnamed = new ArrayList<>();
        for (List<String> row : rows) {
            Matcher evidence = EVIDENCE.matcher(row.get(1));
            if (evidence.find()) {
                listed.add(evidence.group(1));
                if (!row.get(0).replace("`", "").equals(evidence.group(1))) {
                    misnamed.add(row.get(0));
                }
            }
        }
        assertThat(misnamed).isEmpty();
        assertThat(listed).isEqualTo(known());
    }

    @Test
    void everyRowHasANameACommandOnOneLineAndWhatItPrints() {
        assertThat(rows).allSatisfy(row -> {
            assertThat(row).hasSize(3).noneMatch(String::isBlank);
            assertThat(row.get(1)).matches("`(mvn|java|xvfb-run|\\.ci/run)[^`]*`");
        });
        assertThat(rows).map(row -> row.get(0)).doesNotHaveDuplicates();
    }

    private static Set<String> known() {
        String launcher = Markdown.of(
                        Markdown.ROOT.resolve("lib/src/test/java/io/github/weirwise/evidence/Evidence.java"))
                .text();
        Set<String> names = new TreeSet<>();
        Matcher matcher = KNOWN.matcher(launcher);
        while (matcher.find()) {
            names.add(matcher.group(1));
        }
        return names;
    }
}
