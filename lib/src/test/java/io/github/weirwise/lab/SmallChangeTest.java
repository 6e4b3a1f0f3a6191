package io.github.weirwise.lab;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.advice.HoldReason;
import io.github.weirwise.advice.LookKind;
import io.github.weirwise.advice.Step;
import io.github.weirwise.lab.rival.Visit;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.Part;
import java.time.Duration;
import org.junit.jupiter.api.Test;

class SmallChangeTest {
    private final InventedJournal invented = InventedJournal.of(2);
    private final Visit visit = new Visit(invented.unit(), invented.start(), invented.journal(), LabClock.at(24 * 90));

    private static double sum(Visit visit, boolean level) {
        return visit.journal().all(Reading.class).stream()
                .flatMap(reading -> reading.observations().stream())
                .mapToDouble(seen -> seen instanceof Observation.FunnelLevel each && level
                        ? each.mm()
                        : seen instanceof Observation.CupVolume cup && !level ? cup.ml() : 0)
                .sum();
    }

    @Test
    void eachChangesWhatItSaysAndNothingElse() {
        assertThat(sum(SmallChange.LEVEL.of(visit), true) - sum(visit, true)).isBetween(0.0999, 0.1001);
        assertThat(sum(SmallChange.LEVEL.of(visit), false)).isEqualTo(sum(visit, false));
        assertThat(sum(SmallChange.CUP.of(visit), false) - sum(visit, false)).isBetween(0.999, 1.001);
        int count = visit.journal().entries().size();
        assertThat(SmallChange.TWICE.of(visit).journal().entries()).hasSize(count + 1);
        assertThat(SmallChange.LATER.of(visit).now()).isEqualTo(visit.now().plus(Duration.ofHours(3)));
        assertThat(SmallChange.READERS.of(visit).journal().all(Reading.class))
                .allMatch(reading -> reading.by().startsWith("x "))
                .hasSameSizeAs(visit.journal().all(Reading.class));
    }

    @Test
    void aStepIsTheSameWhateverItsTimes() {
        Step hold = new Step.Hold(visit.now(), HoldReason.ON_TARGET);
        assertThat(CalmRun.same(hold, new Step.Hold(visit.now().plusSeconds(9), HoldReason.WITHIN_NOISE)))
                .isTrue();
        assertThat(CalmRun.same(new Step.MoveWeir(3, 173, false), new Step.MoveWeir(4, 174, false)))
                .isTrue();
        assertThat(CalmRun.same(new Step.MoveWeir(3, 173, false), new Step.MoveWeir(4.5, 174.5, false)))
                .isFalse();
        assertThat(CalmRun.same(new Step.ServicePart(Part.AIR_LINE), new Step.ServicePart(Part.FILTER_PAD)))
                .isFalse();
        assertThat(CalmRun.same(new Step.Look(LookKind.AIR_FLOW), new Step.Look(LookKind.AIR_LINE)))
                .isFalse();
        assertThat(CalmRun.same(hold, new Step.Look(LookKind.AIR_FLOW))).isFalse();
    }
}
