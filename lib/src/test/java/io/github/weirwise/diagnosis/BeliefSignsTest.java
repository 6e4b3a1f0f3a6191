package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a person would take for the sign of a cause makes that cause likelier than the same journal without it. */
class BeliefSignsTest {
    private static final Instant NOW = Instant.parse("2026-03-10T08:00:00Z");
    private static final int SEEDS = 2;
    private static final int POSSIBILITIES = 4000;

    /** Told apart after the fact, without a sign of their own, or shown only by readings that do not fit. */
    private static final Set<Cause> WITHOUT_SIGN = Set.of(
            Cause.WEIR_TOO_LOW,
            Cause.WEIR_TOO_HIGH,
            Cause.NOTHING_WRONG,
            Cause.LOW_LOAD,
            Cause.READING_ERROR,
            Cause.SOMETHING_ELSE);

    private final SkimmerUnit unit = FirstRoundUnits.middle();

    /** A cause, whether the unit runs wet in its journal, and its sign. */
    record Sign(Cause cause, boolean wet, JournalEntry entry) {
        @Override
        public String toString() {
            return cause + " by " + (entry instanceof Reading reading ? reading.observations() : entry);
        }
    }

    private static Sign seen(Cause cause, Observation observation) {
        return new Sign(cause, false, Reading.of(NOW, observation));
    }

    private static Sign bad(Cause cause, Part part) {
        return seen(cause, new Observation.Inspection(part, Finding.BAD));
    }

    private static Sign happened(Cause cause, boolean wet, Happening.Kind kind) {
        return new Sign(cause, wet, new Happening(NOW.minus(Duration.ofHours(20)), kind));
    }

    static Stream<Sign> signs() {
        return Stream.of(
                bad(Cause.AIR_LINE_RESTRICTED, Part.AIR_LINE),
                seen(Cause.AIR_LINE_UNDER_WATER, new Observation.AirFlow(8)),
                bad(Cause.INJECTOR_PUMP_WORN, Part.INJECTOR_PUMP),
                bad(Cause.NOZZLE_SCALED, Part.INJECTOR_NOZZLE),
                bad(Cause.NECK_DIRTY, Part.NECK_AND_CUP),
                seen(Cause.RETURN_FLOW_DOWN, new Observation.ReturnFlow(1450)),
                seen(Cause.RETURN_FLOW_DOWN, new Observation.HeadOverCrest(16)),
                new Sign(Cause.PAD_CLOGGED, true, Reading.of(NOW, new Observation.LevelBeyondWeir(12))),
                bad(Cause.CUP_VENT_BLOCKED, Part.CUP_VENT),
                bad(Cause.PART_SEATED_WRONG, Part.SEATING),
                seen(Cause.WEIR_SLIPPED_DOWN, new Observation.CrestAgainstMark(-6)),
                bad(Cause.BUBBLES_CARRIED_UNDER, Part.RETURN_WATER),
                seen(Cause.SALINITY_LOW, new Observation.Salinity(27)),
                bad(Cause.FILM_BREAKER, Part.WATER_SURFACE),
                happened(Cause.FILM_BREAKER, false, Happening.Kind.FED_HEAVILY),
                happened(Cause.FILM_BREAKER, false, Happening.Kind.HANDS_IN_TANK),
                new Sign(
                        Cause.FOAMING_AGENT,
                        true,
                        Reading.of(NOW, new Observation.Inspection(Part.ADDITIVES, Finding.BAD))),
                happened(Cause.FOAMING_AGENT, true, Happening.Kind.CONDITIONER),
                happened(Cause.FOAMING_AGENT, true, Happening.Kind.SEALANT),
                happened(Cause.MEDICATION, true, Happening.Kind.MEDICATION),
                happened(Cause.BREAK_IN, false, Happening.Kind.FIRST_START),
                happened(Cause.JUST_CHANGED, false, Happening.Kind.PUMP_RESTARTED),
                happened(Cause.HIGH_LOAD, true, Happening.Kind.ANIMAL_DIED));
    }

    private Reading routine(int daysAgo, boolean wet) {
        return Reading.of(
                NOW.minus(Duration.ofDays(daysAgo)),
                new Observation.FunnelLevel(wet ? 27 : 19),
                new Observation.CupVolume(wet ? 690 : 70, 24, false),
                new Observation.Darkness(wet ? DarknessWord.LIGHT_TEA : DarknessWord.COFFEE),
                new Observation.FoamLook(wet ? FoamLookWord.RUNNY : FoamLookWord.STIFF));
    }

    private double probability(Cause cause, Journal journal) {
        return LongStream.rangeClosed(1, SEEDS)
                .mapToDouble(seed -> Belief.of(
                                unit, unit.ratedSettings(205), journal, NOW, new BeliefOptions(POSSIBILITIES, seed))
                        .diagnosis()
                        .probability(cause))
                .average()
                .orElseThrow();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("signs")
    void theSignMakesItsCauseLikelier(Sign sign) {
        Journal without = Journal.of(routine(2, sign.wet()), routine(1, sign.wet()));
        double before = probability(sign.cause(), without);
        double after = probability(sign.cause(), without.with(sign.entry()));
        assertThat(after).isGreaterThan(1.2 * before);
    }

    /** A look that finds a part in order speaks against its fault. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("signs")
    void aGoodFindingSpeaksAgainstIt(Sign sign) {
        if (sign.entry() instanceof Reading reading
                && reading.observations().get(0) instanceof Observation.Inspection look) {
            Journal without = Journal.of(routine(2, sign.wet()), routine(1, sign.wet()));
            Reading good = Reading.of(NOW, new Observation.Inspection(look.part(), Finding.GOOD));
            assertThat(probability(sign.cause(), without.with(good))).isLessThan(probability(sign.cause(), without));
        }
    }

    @Test
    void everyCauseHasASignInTheTable() {
        Set<Cause> expected = EnumSet.allOf(Cause.class);
        expected.removeAll(WITHOUT_SIGN);
        assertThat(signs().map(Sign::cause).collect(Collectors.toSet())).isEqualTo(expected);
    }
}
