package io.github.weirwise.practice;

import static io.github.weirwise.unit.Part.AIR_LINE;
import static io.github.weirwise.unit.Part.FILTER_PAD;
import static io.github.weirwise.unit.Part.INJECTOR_PUMP;
import static io.github.weirwise.unit.Part.NECK_AND_CUP;
import static io.github.weirwise.unit.Part.RETURN_PUMP;

import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Part;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A careful keeper with a calendar and no model (common practice): at the start neck, pad and air line; neck and pad every 7 days,
 * air line and both pumps every 30. Two amounts since the last move under 0.4 or over 2.4 of the wanted: 4 mm; under 0.2 or over
 * 5: 8 mm. A full cup of runny or streaming foam: 10 mm down at once.
 */
final class KeeperVisitor implements Hands.Visitor {
    private static final Set<Part> AT_THE_START = Set.of(NECK_AND_CUP, FILTER_PAD, AIR_LINE);
    /** A calendar knows days: a visit a few hours early still counts as that day. */
    private static final Duration SAME_DAY = Duration.ofHours(12);

    private static final double SURE = 0.7;

    /** Days between the keeper's services of a part; empty for parts that are not on the calendar. */
    static Optional<Integer> intervalDays(Part part) {
        return switch (part) {
            case NECK_AND_CUP, FILTER_PAD -> Optional.of(7);
            case AIR_LINE, INJECTOR_PUMP, RETURN_PUMP -> Optional.of(30);
            default -> Optional.empty();
        };
    }

    @Override
    public PracticeSession visit(PracticeSession from) {
        PracticeSession session = from;
        double byMm = runsOver(session) ? -10 : 0;
        if (byMm == 0) {
            for (Part part : Part.values()) {
                Act service = new Act.ServicePart(part);
                if (!session.over()
                        && due(session, part)
                        && session.scenario().offers().has(service)) {
                    session = Hands.passOver(
                            session.act(service, new Prediction(Trend.SAME, Trend.SAME, 1, SURE), "on the calendar"));
                }
            }
            byMm = step(session);
        }
        double to = session.scenario().unit().weir().clampMm(session.markMm() + byMm) - session.markMm();
        if (to == 0 || session.over() || !session.scenario().offers().has(new Act.MoveWeir(to))) {
            return session;
        }
        Trend trend = to > 0 ? Trend.MORE : Trend.LESS;
        return session.act(new Act.MoveWeir(to), new Prediction(trend, trend, 1.5, SURE), "as keepers do");
    }

    private static boolean runsOver(PracticeSession session) {
        Optional<Reading> last = session.lastReading();
        return last.flatMap(each -> each.find(Observation.CupVolume.class))
                        .filter(Observation.CupVolume::full)
                        .isPresent()
                && last.flatMap(each -> each.find(Observation.FoamLook.class))
                        .filter(foam -> foam.look().compareTo(FoamLookWord.RUNNY) >= 0)
                        .isPresent();
    }

    private static boolean due(PracticeSession session, Part part) {
        if (intervalDays(part).isEmpty()) {
            return false;
        }
        Optional<Instant> last = serviced(session, part);
        if (last.isEmpty() && AT_THE_START.contains(part)) {
            return true;
        }
        Instant from = last.orElse(SessionClock.at(session.scenario().start().arrivesAtHour()));
        return !session.now()
                .isBefore(from.plus(Duration.ofDays(intervalDays(part).get())).minus(SAME_DAY));
    }

    private static Optional<Instant> serviced(PracticeSession session, Part part) {
        return session.journal().all(Service.class).stream()
                .filter(each -> each.part() == part)
                .map(Service::at)
                .reduce((first, second) -> second);
    }

    private static double step(PracticeSession session) {
        double wanted = session.scenario().unit().target().skimmateMlPerDay();
        Instant moved = session.journal().last(WeirMove.class).map(WeirMove::at).orElse(Instant.MIN);
        List<Double> amounts = session.journal().all(Reading.class).stream()
                .filter(each -> each.at().isAfter(moved))
                .flatMap(each -> each.find(Observation.CupVolume.class).stream())
                .map(cup -> cup.mlPerDay() / wanted)
                .toList();
        if (amounts.size() < 2) {
            return 0;
        }
        double last = amounts.get(amounts.size() - 1);
        double before = amounts.get(amounts.size() - 2);
        double more = Math.max(last, before);
        double less = Math.min(last, before);
        return more < 0.4 ? more < 0.2 ? 8 : 4 : less > 2.4 ? less > 5 ? -8 : -4 : 0;
    }
}
