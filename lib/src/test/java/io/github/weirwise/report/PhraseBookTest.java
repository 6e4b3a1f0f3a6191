package io.github.weirwise.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The one rule for rounding, plurals and dates. */
class PhraseBookTest {
    private final PhraseBook english = PhraseBook.ENGLISH_METRIC;
    private final PhraseBook us = new PhraseBook(Locale.US, UnitSystem.US_CUSTOMARY);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "13.2 | MILLIMETRE | 13 mm", //
                "3.6 | MILLIMETRE | 3.5 mm",
                "-0.1 | MILLIMETRE | 0 mm",
                "205.4 | MILLIMETRE | 205 mm",
                "23.62 | LITRE | 24 L",
                "4.26 | LITRE | 4.3 L",
                "212.4 | MILLILITRE | 212 mL",
                "3517 | MILLILITRE_PER_DAY | 3,520 mL/day",
                "25.04 | CELSIUS | 25 \u00b0C",
                "0.0137 | MILLIGRAM_PER_LITRE | 0.014 mg/L",
                "24.0 | HOUR | 24 h",
                "1.26 | HOUR | 1.5 h",
                "0.33 | HOUR | 20 min",
                "96 | HOUR | 4 days",
                "1 | DAY | 1 day",
                "0.5 | DAY | 12 h",
                "2.4 | DAY | 2.5 days",
                "120 | MINUTE | 2 h",
                "0.354 | SHARE | 35 %",
                "0.364 | CHANCE | 35 %",
                "0.02 | CHANCE | under 5 %",
                "1 | CHANCE | over 95 %",
                "2.437 | PLAIN | 2.4",
                "0.0642 | PLAIN | 0.064",
                "18.7 | PLAIN | 19",
                "12000 | COUNT | 12,000",
            })
    void aNumberIsToldAsFinelyAsItIsReadOnATank(double value, Unit unit, String words) {
        assertThat(english.say(Quantity.of(value, unit))).isEqualTo(words);
    }

    @Test
    void aStatedBandKeepsItsEndsAndAnEstimateDoesNot() {
        Range ends = new Range(82, 492);
        assertThat(english.say(new Phrase("report.words", List.of(Band.of(ends, Unit.MILLILITRE_PER_DAY)))))
                .isEqualTo("82 to 492 mL/day");
        assertThat(english.say(QuantityRange.of(ends, Unit.MILLILITRE_PER_DAY))).isEqualTo("100 to 500 mL/day");
        assertThat(us.say(new Phrase("report.words", List.of(Band.of(ends, Unit.MILLILITRE_PER_DAY)))))
                .isEqualTo("2.8 to 17 fl oz/day");
        assertThat(english.say(new Phrase("report.words", List.of(Band.of(new Range(0, 1), Unit.HOUR)))))
                .isEqualTo("up to 1 h");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3517 | 8433 | MILLILITRE_PER_DAY | 3,500 to 8,500 mL/day", //
                "152 | 311 | MILLILITRE_PER_DAY | 150 to 310 mL/day",
                "800 | 1250 | LITRE_PER_HOUR | 800 to 1,250 L/h",
                "20 | 24 | MILLIMETRE | 20 to 24 mm",
                "19.8 | 20.3 | MILLIMETRE | 20 mm",
                "0 | 1 | HOUR | up to 1 h",
                "18 | 24 | HOUR | 18 to 24 h",
                "48 | 120 | HOUR | 2 to 5 days",
                "0.11 | 0.32 | CHANCE | 10 to 30 %",
            })
    void aRangeIsRoundedToAboutATenthOfItsWidth(double low, double high, Unit unit, String words) {
        assertThat(english.say(QuantityRange.of(new Range(low, high), unit))).isEqualTo(words);
    }

    @Test
    void anInchIs25Point4Millimetres() {
        assertThat(us.say(Quantity.of(25.4, Unit.MILLIMETRE))).isEqualTo("1 in");
        assertThat(us.say(Quantity.of(205, Unit.MILLIMETRE))).isEqualTo("8.07 in");
        assertThat(us.say(Quantity.of(25, Unit.CELSIUS))).isEqualTo("77 \u00b0F");
    }

    @Test
    void noNumberHasATrailingZeroOrAMinusBeforeNothing() {
        for (Unit unit : Unit.values()) {
            for (PhraseBook book : List.of(english, us)) {
                for (double value = -30; value < 4000; value += 7.3) {
                    assertThat(book.number(value, unit)).doesNotMatch(".*\\.\\d*0|-0");
                }
            }
        }
    }

    @Test
    void whatIsTypedIsNeitherRoundedForReadingNorSeparated() {
        assertThat(english.typed(205.4, Unit.MILLIMETRE)).isEqualTo("205.4");
        assertThat(english.typed(12500, Unit.MILLILITRE)).isEqualTo("12500");
        assertThat(us.typed(254, Unit.MILLIMETRE)).isEqualTo("10");
    }

    @Test
    void oneThingReadsDifferentlyFromSeveral() {
        assertThat(english.say(Phrase.of("report.words", Count.of(1, "report.count.changes"))))
                .isEqualTo("1 change");
        assertThat(english.say(Phrase.of("report.words", Count.of(0, "report.count.changes"))))
                .isEqualTo("0 changes");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-11-26T08:00:00Z | Thursday 08:00", //
                "2026-11-30T23:30:00Z | Tuesday 00:30",
                "2026-11-10T08:00:00Z | 10 November, 09:00",
                "2025-12-31T23:30:00Z | 1 January, 00:30",
                "2025-12-31T08:00:00Z | 31 December 2025, 09:00",
            })
    void aRealInstantIsToldAsTheClockOnTheWall(String at, String words) {
        Moment moment = new Moment(
                Instant.parse(at),
                ZoneId.of(words.startsWith("Thursday") ? "Europe/Lisbon" : "Europe/Madrid"),
                Instant.parse("2026-11-25T08:00:00Z"));
        assertThat(english.say(Phrase.of("report.words", moment))).isEqualTo(words);
    }

    @Test
    void practiceHasDaysAndNoDates() {
        assertThat(english.say(Phrase.of("report.words", new PracticeTime(56)))).isEqualTo("day 3, 08:00");
        assertThat(english.say(Phrase.of("report.words", new PracticeTime(23.9999))))
                .isEqualTo("day 2, 00:00");
        assertThat(english.say(Phrase.of("report.words", LocalDate.of(2026, 11, 26))))
                .isEqualTo("26 November 2026");
    }

    @Test
    void namesOfDaysAreInTheLanguageOfTheTexts() {
        PhraseBook french = new PhraseBook(Locale.FRENCH, UnitSystem.METRIC);
        Instant day = Instant.parse("2026-11-26T08:00:00Z");
        assertThat(french.say(Phrase.of("report.words", new Moment(day, ZoneId.of("Z"), day))))
                .isEqualTo("Thursday 08:00");
    }

    @Test
    void shownAndHeldValuesAreInverseInBothSystems() {
        for (Unit unit : Unit.values()) {
            for (UnitSystem system : UnitSystem.values()) {
                double there = unit.toShown(17.25, system);
                assertThat(unit.fromShown(there, system))
                        .as("%s %s", unit, system)
                        .isEqualTo(17.25, Offset.offset(1e-9));
            }
        }
    }

    @Test
    void anUnknownKeyNamesItself() {
        assertThatThrownBy(() -> english.say(Phrase.of("report.nosuch")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("report.nosuch");
    }
}
