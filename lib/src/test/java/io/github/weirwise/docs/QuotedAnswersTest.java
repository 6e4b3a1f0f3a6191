package io.github.weirwise.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a page prints below a Java example is what the example prints. {@code mvn -q -pl lib test -Dtest=QuotedAnswersTest
 * -Danswers.rewrite=true} writes it anew.
 */
class QuotedAnswersTest {
    private static final Pattern EXAMPLE = Pattern.compile("(?ms)^```java\\n(.*?)^```\\n\\s*^```text\\n(.*?)^```$");

    @TempDir
    private Path folder;

    @Test
    void everyQuotedAnswerIsWhatTheExamplePrints() throws IOException, ReflectiveOperationException {
        boolean rewrite = Boolean.getBoolean("answers.rewrite");
        int quoted = 0;
        for (Markdown page : Markdown.pages()) {
            String current = page.text();
            Matcher example = EXAMPLE.matcher(page.text());
            while (example.find()) {
                Path own = Files.createDirectory(folder.resolve("answer" + quoted++));
                String printed = new JavaExample(example.group(1)).run(own);
                current = current.replace(example.group(), example.group().replace(example.group(2), printed));
            }
            if (rewrite && !current.equals(page.text())) {
                Files.writeString(page.file(), current);
            }
            assertThat(page.text())
                    .as("%s, run with -Danswers.rewrite=true", page.name())
                    .isEqualTo(current);
        }
        assertThat(quoted).isPositive();
    }

    @Test
    void theReadmesAnswerIsASmallStep() {
        Matcher move = Pattern.compile("(?:Raise|Lower) the weir by ([\\d.]+) mm")
                .matcher(Markdown.of(Markdown.ROOT.resolve("README.md")).text());
        if (move.find()) {
            assertThat(Double.parseDouble(move.group(1))).isLessThanOrEqualTo(10);
        }
    }
}
