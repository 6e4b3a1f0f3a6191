package io.github.weirwise.demo.look;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.practice.SessionClock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class ClockTest {
    private static final Instant START = Instant.parse("2026-11-20T07:30:00Z");

    @Test
    void aRealJournalHasDatesByTheClockOnTheWall() {
        Clock clock = Clock.real(START, ZoneId.of("Europe/Madrid"), START.plus(Duration.ofDays(8)));
        assertThat(said(clock, START)).isEqualTo("20 November, 08:30");
        assertThat(said(clock, START.plus(Duration.ofDays(6)))).isEqualTo("Thursday 08:30");
    }

    @Test
    void anInventedTankHasDays() {
        assertThat(said(Clock.invented(START), START.plus(Duration.ofHours(49))))
                .isEqualTo("day 3, 08:30");
    }

    @Test
    void practiceHasDaysOfTheWeekWithTheirNumber() {
        assertThat(said(Clock.practice(SessionClock.at(8)), SessionClock.at(24 * 8 + 8)))
                .isEqualTo("Tuesday 08:00, day 9");
    }

    private static String said(Clock clock, Instant at) {
        return Words.ENGLISH.say(clock.when(at));
    }
}
