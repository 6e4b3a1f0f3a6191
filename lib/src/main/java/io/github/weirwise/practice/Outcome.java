package io.github.weirwise.practice;

import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Target;
import java.util.List;

/**
 * What a session came to by the tank's true course, from the trainee's coming in to the present.
 *
 * @param hours length so far
 * @param hoursInBand hours with the wanted amount and no flood
 * @param floodHours hours with water running into the cup, or the cup running over
 * @param stressHours hours with water that harms animals
 * @param spilledLitres water and skimmate on the floor
 * @param organicsRemovedG organics that the foam took out
 * @param lastDayMlPerDay true mean amount of the last day
 * @param moves moves of the weir
 * @param services services of parts
 * @param looks looks taken
 * @param goals the scenario's goals and limits, each with whether it holds
 * @since 0.1
 */
public record Outcome(
        double hours,
        double hoursInBand,
        double floodHours,
        double stressHours,
        double spilledLitres,
        double organicsRemovedG,
        double lastDayMlPerDay,
        int moves,
        int services,
        int looks,
        List<GoalCheck> goals) {
    private static final double DAY = 24;

    /** Copies the list. */
    public Outcome {
        goals = List.copyOf(goals);
    }

    /** The outcome of a session as it stands. */
    public static Outcome of(PracticeSession session) {
        List<TrackPoint> track = session.track();
        double arrival = session.scenario().start().arrivesAtHour();
        Target target = session.scenario().unit().target();
        double band = 0;
        double flood = 0;
        double stress = 0;
        TrackPoint first = null;
        TrackPoint last = null;
        for (TrackPoint each : track) {
            if (each.hours() < arrival) {
                continue;
            }
            if (last == null) {
                first = each;
            } else {
                double step = each.hours() - last.hours();
                band += each.inBand(target) ? step : 0;
                flood += each.flooding() ? step : 0;
                stress += each.stressed() ? step : 0;
            }
            last = each;
        }
        double hours = session.hours() - arrival;
        List<JournalEntry> done =
                session.log().stream().flatMap(line -> line.written().stream()).toList();
        Outcome bare = new Outcome(
                hours,
                band,
                flood,
                stress,
                last == null ? 0 : last.spilledLitres() - first.spilledLitres(),
                last == null ? 0 : last.organicsSkimmedG() - first.organicsSkimmedG(),
                Course.amountBetween(track, session.hours() - DAY, session.hours()),
                (int) done.stream().filter(WeirMove.class::isInstance).count(),
                (int) done.stream().filter(Service.class::isInstance).count(),
                (int) session.log().stream()
                        .filter(line -> line.step() instanceof SessionStep.LookAt)
                        .count(),
                List.of());
        return bare.with(new GoalChecks(session, bare).all());
    }

    private Outcome with(List<GoalCheck> checks) {
        return new Outcome(
                hours,
                hoursInBand,
                floodHours,
                stressHours,
                spilledLitres,
                organicsRemovedG,
                lastDayMlPerDay,
                moves,
                services,
                looks,
                checks);
    }

    /** Whether every goal and limit holds. */
    public boolean solved() {
        return goals.stream().allMatch(GoalCheck::met);
    }
}
