package io.github.weirwise.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every public function of the physics that takes numbers says what it takes and how it refuses. */
class PhysicsCommentsTest {
    private static final Pattern FUNCTION = Pattern.compile(
            "(/\\*\\*(?:(?!\\*/).)*\\*/)\\s*public (?:static )?(\\w+) (\\w+)\\(([^)]*)\\)", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("\\bdouble (\\w+)");

    @Test
    void everyFunctionOfNumbersNamesItsArgumentsAndItsError() {
        List<String> silent = new ArrayList<>();
        int looked = 0;
        for (String room : List.of("seawater", "hydraulics", "bubbles", "foam", "colour")) {
            for (Path file : Library.javaFiles("lib/src/main/java/io/github/weirwise/" + room)) {
                Matcher function = FUNCTION.matcher(Library.read(file));
                while (function.find()) {
                    String comment = function.group(1);
                    if (!function.group(2).equals("record")
                            && NUMBER.matcher(function.group(4)).find()) {
                        looked++;
                        complain(file.getFileName() + " " + function.group(3), comment, function.group(4), silent);
                    }
                }
            }
        }
        assertThat(looked).isGreaterThan(60);
        assertThat(silent).isEmpty();
    }

    private static void complain(String name, String comment, String arguments, List<String> silent) {
        if (!comment.contains("@throws") && !comment.contains("never throws")) {
            silent.add(name + " does not say how it refuses");
        }
        Matcher number = NUMBER.matcher(arguments);
        while (number.find()) {
            if (!comment.contains("@param " + number.group(1) + " ")) {
                silent.add(name + " does not say what " + number.group(1) + " may be");
            }
        }
    }
}
