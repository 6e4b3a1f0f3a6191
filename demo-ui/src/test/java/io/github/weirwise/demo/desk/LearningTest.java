package io.github.weirwise.demo.desk;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.Sample;
import io.github.weirwise.diagnosis.LearningPlan;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Note;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A plan to learn a unit lives in the journal. */
class LearningTest {
    private static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");

    private static Learning plan() {
        TankDesk desk = Sample.desk();
        LearningPlan plan = LearningPlan.of(
                        desk.unit(), desk.told(), desk.journal(), desk.now(), LearningPlan.Wish.USUAL)
                .orElseThrow();
        return Learning.of(plan);
    }

    @Test
    void whatIsNotedIsReadAgain() {
        Learning plan = plan();
        Learning read = Learning.in(Journal.of(plan.begin(NOW))).orElseThrow();
        assertThat(read.runs()).isTrue();
        assertThat(read.stages()).hasSameSizeAs(plan.stages());
        assertThat(read.plan().homeCrestMm()).isEqualTo(plan.plan().homeCrestMm());
        for (int i = 0; i < plan.stages().size(); i++) {
            assertThat(read.stages().get(i).from())
                    .isEqualTo(plan.stages().get(i).from());
            assertThat(read.stages().get(i).weirCrestMm())
                    .isEqualTo(plan.stages().get(i).weirCrestMm());
            assertThat(read.stages().get(i).floodChance()).isBetween(0.0, LearningPlan.Wish.USUAL.mostFloodChance());
        }
        assertThat(read.plan().slopeAfter().width())
                .isLessThan(read.plan().slopeNow().width());
        assertThat(Learning.in(Journal.of(plan.begin(NOW), Learning.end(NOW.plusSeconds(60))))
                        .orElseThrow()
                        .over())
                .contains(NOW.plusSeconds(60));
    }

    @Test
    void aNoteThatOnlyLooksLikeAPlanIsNone() {
        String text = plan().begin(NOW).text();
        for (String other : List.of(
                text.replace("Learning plan", "Lesson plan"),
                text.replaceFirst("until \\S+Z", "until yesterdayZ"),
                text.substring(0, text.indexOf(": 2") + 2))) {
            assertThat(Learning.in(Journal.of(new Note(NOW, other)))).as(other).isEmpty();
        }
    }
}
