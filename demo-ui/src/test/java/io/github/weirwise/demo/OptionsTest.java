package io.github.weirwise.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.weirwise.demo.look.MadeUpLanguage;
import io.github.weirwise.demo.look.Words;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OptionsTest {
    @Test
    void withoutWordsTheBestRunIsTaken() throws Options.BadOption {
        assertThat(Options.parse(List.of()).kind()).isEqualTo(Options.Kind.BEST);
    }

    @Test
    void aPictureTakesFileAndScaleInAnyOrder() throws Options.BadOption {
        Options options = Options.parse(List.of("--scale", "2", "--picture", "a/b.png", "--dark"));
        assertThat(options.kind()).isEqualTo(Options.Kind.PICTURE);
        assertThat(options.picture()).contains(Path.of("a/b.png"));
        assertThat(options.scale()).isEqualTo(2);
        assertThat(options.dark()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--txt",
                "text",
                "--picture",
                "--scale",
                "--picture --scale 2",
                "--scale big",
                "--scale 9",
                "--scale NaN",
                "--language",
                "--language not_a_language"
            })
    void whatCannotBeUnderstoodIsRefused(String words) {
        assertThatThrownBy(() -> Options.parse(List.of(words.split(" ")))).isInstanceOf(Options.BadOption.class);
    }

    @Test
    void aLanguageIsTakenByItsTag() throws Exception {
        MadeUpLanguage.words();
        Options options = Options.parse(List.of("--language", "qaa", "--dark"));
        assertThat(options.words().of("use.tune")).isNotEqualTo(Words.ENGLISH.of("use.tune"));
        assertThat(Options.parse(List.of("--language", "de")).words().of("use.tune"))
                .isEqualTo(Words.ENGLISH.of("use.tune"));
    }
}
