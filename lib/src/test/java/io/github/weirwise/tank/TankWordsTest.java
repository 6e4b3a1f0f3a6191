package io.github.weirwise.tank;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Severity;
import io.github.weirwise.report.Warning;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a keeper reads about a tank. */
class TankWordsTest {
    private final PhraseBook english = PhraseBook.ENGLISH_METRIC;
    private final TankPlan plan = Tanks.plan();
    private final TankState mature = Tanks.mature(plan);

    @Test
    void goodWaterNeedsNoWords() {
        assertThat(TankConditions.of(plan, mature).warnings()).isEmpty();
    }

    @Test
    void aDeadFishInATankWithoutBacteriaEndsInDanger() {
        TankState after = new TankSimulator(plan)
                .advance(
                        mature,
                        24 * 12,
                        List.of(new TankEvent.Fouled(0, TankPart.MEDIA, 1), new TankEvent.AnimalDied(1, 400)));
        List<Warning> warnings = TankConditions.of(plan, after).warnings();
        assertThat(warnings).isNotEmpty();
        assertThat(warnings.get(0).severity()).isEqualTo(Severity.DANGER);
        assertThat(english.say(warnings.get(0))).contains("Un-ionised ammonia").contains("mg/L");
    }

    @Test
    void aLongPowerCutWithManyAnimalsEndsInDanger() {
        TankPlan crowded = plan.withFeeding(new Feeding(30, 1));
        TankState after = new TankSimulator(crowded).advance(mature, 23.9, List.of(new TankEvent.PowerCut(0, 24)));
        assertThat(TankConditions.of(crowded, after).warnings())
                .map(english::say)
                .anyMatch(words -> words.startsWith("Oxygen is"));
    }

    @Test
    void freshWaterByMistakeIsSaid() {
        TankState after = new TankSimulator(plan).advance(mature, 1, List.of(new TankEvent.WaterChanged(0, 100, 0)));
        assertThat(TankConditions.of(plan, after).warnings())
                .map(english::say)
                .anyMatch(words -> words.contains("Salinity is 23"));
    }
}
