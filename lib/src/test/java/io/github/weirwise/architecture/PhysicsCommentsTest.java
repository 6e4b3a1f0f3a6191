package io.github.weirwise.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The physics and the device say what a reader must know to trust a number: whose law it is, in which unit, from where to
 * where, and how a wrong argument is refused.
 */
class PhysicsCommentsTest {
    private static final List<String> ROOMS = List.of(
            "internal.physics.seawater",
            "internal.physics.hydraulics",
            "internal.physics.bubbles",
            "internal.physics.foam",
            "internal.physics.colour",
            "unit");
    private static final String COMMENT = "(/\\*\\*(?:(?!\\*/).)*\\*/)\\s*";
    private static final Pattern TYPE = Pattern.compile(
            COMMENT + "(?:@\\w+\\s+)?public (?:final |sealed )*(?:class|record|interface|enum) (\\w+)", Pattern.DOTALL);
    private static final Pattern FUNCTION =
            Pattern.compile(COMMENT + "public (?:static )?([\\w.<>\\[\\]]+) (\\w+)\\(([^)]*)\\)", Pattern.DOTALL);
    private static final Pattern RECORD =
            Pattern.compile(COMMENT + "public record (\\w+)\\(([^)]*)\\)", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("\\bdouble (\\w+)");

    /** A year of publication, a standard, how it is known, or the type that says so. */
    private static final Pattern SOURCE =
            Pattern.compile("\\b(?:18|19|20)\\d\\d\\b|\\b(?:ISO|CIE|IEC|IAPWS|EOS-80|Crane)\\b"
                    + "|Torricelli|Archimedes|Darcy|from memory|assum|common practice|judgement|geometr|definition|[Dd]erived"
                    + "|agreed|invented|measured|conservation|[Ss]ources? (?:is|are|stand)");

    private static final Pattern UNIT = Pattern.compile(
            "m3/s|kg/m3|Pa s|N/m|umol/kg|kilogram|mol |m/s|m2/s|m3|m2|1/m|kg/m2|, m[:;.,]|, s[:;.,]|, Pa|mg/L|mL|mm\\b|nm\\b"
                    + "|units|[Ss]hare|without unit|number|K of|[Ss]alinity|gravity|index|[Ee]xponent|[Ff]raction|[Hh]oldup"
                    + "|instrument shows|power|0 to 1|chromaticity|Chromaticity|colour-matching|[Ff]actor|degrees");
    private static final Pattern UNIT_IN_NAME = Pattern.compile(
            "(?:Mm|M|M2|M3|S|Nm|PerM3|PerS|PerDay|PtCo|PerLitre|PerHour|Seconds|Per[A-Z]\\w*|Celsius|Days|Log|Hours)$");

    @Test
    void everyTypeNamesItsSource() {
        List<String> silent = new ArrayList<>();
        each(TYPE, (file, type) -> {
            if (!SOURCE.matcher(type.group(1)).find()) {
                silent.add(file + " says neither whose law it is nor how it is known");
            }
        });
        assertThat(silent).isEmpty();
    }

    @Test
    void everyFunctionOfNumbersNamesItsArgumentsAndItsError() {
        List<String> silent = new ArrayList<>();
        int[] looked = {0};
        each(FUNCTION, (file, function) -> {
            String comment = function.group(1);
            boolean numbers = NUMBER.matcher(function.group(4)).find();
            if (numbers && !function.group(2).equals("record")) {
                looked[0]++;
                String name = file + " " + function.group(3);
                if (!comment.contains("@throws") && !comment.contains("never throws")) {
                    silent.add(name + " does not say how it refuses");
                }
                complainOfArguments(name, comment, function.group(4), silent);
            }
        });
        assertThat(looked[0]).isGreaterThan(60);
        assertThat(silent).isEmpty();
    }

    @Test
    void everyNumberThatComesOutHasAUnit() {
        List<String> silent = new ArrayList<>();
        each(FUNCTION, (file, function) -> {
            String told = function.group(1).split("@param|@throws")[0];
            if (function.group(2).equals("double")
                    && !UNIT.matcher(told).find()
                    && !UNIT_IN_NAME.matcher(function.group(3)).find()) {
                silent.add(file + " " + function.group(3) + " does not say its unit, or that it has none");
            }
        });
        assertThat(silent).isEmpty();
    }

    /** What comes in has limits; of what goes out ("what ... answers") the unit is enough. */
    @Test
    void everyNumberOfARecordIsToldWithItsLimitsOrItsUnit() {
        List<String> silent = new ArrayList<>();
        each(RECORD, (file, record) -> {
            Matcher number = NUMBER.matcher(record.group(3));
            while (number.find()) {
                String name = number.group(1);
                String told = argument(record.group(1), name);
                boolean unit =
                        UNIT_IN_NAME.matcher(name).find() || UNIT.matcher(told).find();
                boolean limited = Pattern.compile("\\d").matcher(told).find();
                if (told.isEmpty() || !(unit || limited)) {
                    silent.add(file + " does not say what " + name + " may be, or in which unit");
                }
            }
        });
        assertThat(silent).isEmpty();
    }

    private static void each(Pattern pattern, BiConsumer<String, Matcher> look) {
        for (String room : ROOMS) {
            for (Path file : Library.javaFiles("lib/src/main/java/io/github/weirwise/" + room.replace('.', '/'))) {
                Matcher found = pattern.matcher(Library.read(file));
                while (found.find()) {
                    look.accept(room + "/" + file.getFileName(), found);
                }
            }
        }
    }

    private static void complainOfArguments(String name, String comment, String arguments, List<String> silent) {
        Matcher number = NUMBER.matcher(arguments);
        while (number.find()) {
            String told = argument(comment, number.group(1));
            if (told.isEmpty()) {
                silent.add(name + " does not say what " + number.group(1) + " is");
            } else if (!told.matches("(?s).*(\\d|any number|any finite|\\{@link).*")) {
                silent.add(name + " does not say from where to where " + number.group(1) + " goes");
            }
        }
    }

    /** What a comment says of an argument; empty when nothing. */
    private static String argument(String comment, String name) {
        Matcher told = Pattern.compile("@param " + name + " ((?:(?!\\* @|\\*/).)*)", Pattern.DOTALL)
                .matcher(comment);
        return told.find() ? told.group(1) : "";
    }
}
