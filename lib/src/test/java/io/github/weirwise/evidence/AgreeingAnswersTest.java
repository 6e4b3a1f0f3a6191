package io.github.weirwise.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.Weirwise;
import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.HoldReason;
import io.github.weirwise.advice.Step;
import io.github.weirwise.json.Request;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Reason;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.UnitSystem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every line of an answer agrees with the target band, and with every other line. */
class AgreeingAnswersTest {
    private static final List<PhraseBook> BOOKS =
            List.of(PhraseBook.ENGLISH_METRIC, new PhraseBook(Locale.US, UnitSystem.US_CUSTOMARY));
    private static final Pattern TARGET = Pattern.compile("target (\\S+) to (\\S+) \\S+ ?\\S*\\)\\.");
    private static final Pattern AN_AMOUNT = Pattern.compile("([0-9][0-9.,]*) (?:mL|fl oz)/day");
    /** Ranges are told for 80 of 100 times. */
    private static final double INSIDE = 0.8;

    private record Asked(String name, Request request, Advice advice) {
        Range band() {
            return request.unit().target().skimmateBandMlPerDay();
        }

        Stream<Phrase> reasons() {
            return lines(advice.why());
        }

        private static Stream<Phrase> lines(Reason reason) {
            return Stream.concat(
                    Stream.of(reason.line()), reason.because().stream().flatMap(Asked::lines));
        }

        boolean says(String verdict) {
            return advice.why().line().values().stream()
                    .anyMatch(value ->
                            value instanceof Phrase phrase && phrase.key().equals("advice.verdict." + verdict));
        }
    }

    private static final List<Asked> ANSWERS = answers();

    private static List<Asked> answers() {
        List<Asked> all = new ArrayList<>();
        for (Map.Entry<String, Request> each : JournalsOfAllKinds.all().entrySet()) {
            Request request = each.getValue();
            Advice advice = Weirwise.advise(request.unit(), request.settings(), request.journal(), request.now());
            all.add(new Asked(each.getKey(), request, advice));
        }
        return all;
    }

    /** Names the journals whose answers break a rule, and what the first of them says. */
    private static void ofAll(Consumer<Asked> rule) {
        Map<String, String> broken = new LinkedHashMap<>();
        for (Asked each : ANSWERS) {
            try {
                rule.accept(each);
            } catch (AssertionError e) {
                broken.put(each.name(), e.getMessage());
            }
        }
        assertThat(ANSWERS).hasSizeGreaterThan(700);
        assertThat(broken.entrySet().stream().limit(10))
                .as(broken.keySet().toString())
                .isEmpty();
    }

    @Test
    void theBandIsTheSameTwoNumbersInEveryLine() {
        ofAll(AgreeingAnswersTest::theBandIsTheSameTwoNumbersInEveryLine);
    }

    private static void theBandIsTheSameTwoNumbersInEveryLine(Asked asked) {
        for (PhraseBook book : BOOKS) {
            Set<String> ends = new HashSet<>();
            ends.add(bare(book, asked.band().low()));
            ends.add(bare(book, asked.band().high()));
            asked.reasons()
                    .filter(line -> line.key().equals("advice.why.amount"))
                    .forEach(line -> {
                        Matcher target = TARGET.matcher(book.say(line));
                        assertThat(target.find()).as(book.say(line)).isTrue();
                        assertThat(Set.of(target.group(1), target.group(2))).isEqualTo(ends);
                    });
            for (Phrase line : asked.advice().wouldChangeIt()) {
                Matcher amount = AN_AMOUNT.matcher(book.say(line));
                while (amount.find()) {
                    assertThat(ends).as(book.say(line)).contains(amount.group(1));
                }
            }
        }
    }

    private static String bare(PhraseBook book, double mlPerDay) {
        return book.say(Quantity.of(mlPerDay, Unit.MILLILITRE_PER_DAY)).split(" ")[0];
    }

    @Test
    void whatTheFoamIsCalledAgreesWithTheAmountThatIsTold() {
        ofAll(AgreeingAnswersTest::whatTheFoamIsCalledAgreesWithTheAmountThatIsTold);
    }

    private static void whatTheFoamIsCalledAgreesWithTheAmountThatIsTold(Asked asked) {
        Range told = asked.advice().diagnosis().skimmateMlPerDay();
        if (asked.says("TOO_DRY") || asked.says("NO_FOAM")) {
            assertThat(told.low()).isLessThan(asked.band().low());
        }
        if (asked.says("TOO_WET") || asked.says("FLOODING")) {
            assertThat(told.high()).isGreaterThan(asked.band().high());
        }
        if (asked.says("ON_TARGET")) {
            assertThat(told.low()).isLessThan(asked.band().high());
            assertThat(told.high()).isGreaterThan(asked.band().low());
        }
    }

    @Test
    void theWeirGoesTheWayThatTheFoamAsksFor() {
        ofAll(AgreeingAnswersTest::theWeirGoesTheWayThatTheFoamAsksFor);
    }

    private static void theWeirGoesTheWayThatTheFoamAsksFor(Asked asked) {
        if (asked.advice().step() instanceof Step.MoveWeir move) {
            assertThat(asked.says(move.byMm() > 0 ? "TOO_WET" : "TOO_DRY")).isFalse();
            assertThat(asked.says("ON_TARGET"))
                    .as("only at an end of the target")
                    .isFalse();
        }
        if (asked.advice().step() instanceof Step.Hold hold && hold.reason() == HoldReason.ON_TARGET) {
            assertThat(asked.says("TOO_DRY")
                            || asked.says("TOO_WET")
                            || asked.says("FLOODING")
                            || asked.says("NO_FOAM"))
                    .isFalse();
        }
    }

    @Test
    void theChanceAgreesWithTheExpectedAmount() {
        ofAll(AgreeingAnswersTest::theChanceAgreesWithTheExpectedAmount);
    }

    private static void theChanceAgreesWithTheExpectedAmount(Asked asked) {
        Range expected = asked.advice().expectation().skimmateMlPerDay();
        double chance = asked.advice().expectation().chanceOnTarget();
        if (asked.band().contains(expected.low()) && asked.band().contains(expected.high())) {
            assertThat(chance).isGreaterThanOrEqualTo(INSIDE - 1e-6);
        }
        if (expected.high() < asked.band().low()
                || expected.low() > asked.band().high()) {
            assertThat(chance).isLessThanOrEqualTo((1 - INSIDE) / 2 + 1e-6);
        }
    }

    @Test
    void noLineIsSaidTwiceAndNothingIsBothForAndAgainst() {
        ofAll(AgreeingAnswersTest::noLineIsSaidTwiceAndNothingIsBothForAndAgainst);
    }

    private static void noLineIsSaidTwiceAndNothingIsBothForAndAgainst(Asked asked) {
        PhraseBook book = PhraseBook.ENGLISH_METRIC;
        List<String> cautions =
                asked.advice().cautions().stream().map(book::say).toList();
        assertThat(cautions).doesNotHaveDuplicates();
        assertThat(asked.advice().wouldChangeIt().stream().map(book::say).toList())
                .doesNotHaveDuplicates();
        duplicates(book, asked.advice().why());
    }

    private static void duplicates(PhraseBook book, Reason reason) {
        assertThat(reason.because().stream().map(each -> book.say(each.line())).toList())
                .doesNotHaveDuplicates();
        assertThat(reason.because().stream()
                        .filter(each -> each.line().key().startsWith("diagnosis.for.")
                                || each.line().key().startsWith("diagnosis.against."))
                        .map(each -> book.say((Phrase) each.line().values().get(0)))
                        .toList())
                .doesNotHaveDuplicates();
        reason.because().forEach(each -> duplicates(book, each));
    }
}
