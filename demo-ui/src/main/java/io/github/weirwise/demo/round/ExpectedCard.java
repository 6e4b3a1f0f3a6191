package io.github.weirwise.demo.round;

import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.Forecast;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.Standing;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.report.Unit;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Was it as expected? What the last visit told to follow, and on the same rule what came. */
final class ExpectedCard extends Card {
    private static final long serialVersionUID = 1L;
    /** A forecast that was given this lately belongs to this visit. */
    private static final Duration JUST_NOW = Duration.ofMinutes(30);

    private final transient Desk desk;
    private final RangeBar level;
    private final RangeBar amount;

    ExpectedCard(Desk desk, Dress dress) {
        super(dress.palette(), "[grow,fill]16[grow,fill]", "");
        this.desk = desk;
        level = new RangeBar("expected.level", Unit.MILLIMETRE, dress);
        amount = new RangeBar("expected.amount", Unit.MILLILITRE_PER_DAY, dress);
        body().add(level);
        body().add(amount);
        dress(dress);
    }

    /** Shows the last forecast against what was read since, or stands in the boxes. */
    void refresh(List<Observation> draft) {
        Optional<Forecast> last = Forecast.newest(desk.journal());
        setVisible(last.filter(this::isOfAnEarlierVisit).isPresent());
        last.ifPresent(forecast -> {
            show(
                    level,
                    forecast,
                    forecast.levelMm(),
                    Observation.FunnelLevel.class,
                    draft,
                    Observation.FunnelLevel::mm);
            show(
                    amount,
                    forecast,
                    forecast.mlPerDay(),
                    Observation.CupVolume.class,
                    draft,
                    Observation.CupVolume::mlPerDay);
        });
    }

    private boolean isOfAnEarlierVisit(Forecast forecast) {
        return forecast.given().plus(JUST_NOW).isBefore(desk.now());
    }

    private <T extends Observation> void show(
            RangeBar bar,
            Forecast forecast,
            io.github.weirwise.report.Range range,
            Class<T> kind,
            List<Observation> draft,
            java.util.function.ToDoubleFunction<T> value) {
        Optional<T> typed =
                draft.stream().filter(kind::isInstance).map(kind::cast).findFirst();
        Optional<T> read = desk.newest(kind)
                .filter(seen -> seen.at().isAfter(forecast.given()))
                .map(Desk.Seen::what);
        OptionalDouble came = typed.or(() -> read)
                .map(seen -> OptionalDouble.of(value.applyAsDouble(seen)))
                .orElseGet(OptionalDouble::empty);
        bar.show(range, came, typed.isPresent() ? Standing.DRAFT : Standing.READ);
    }

    void dress(Dress dress) {
        head(dress.text("expected.title"));
        paper(dress.palette());
        level.dress(dress);
        amount.dress(dress);
    }
}
