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
    private static final double FLOOD_WEIGHT = 3;
    private static final double MOVE_DAYS = 0.1;
    private static final double SERVICE_DAYS = 0.2;
    private static final double LOOK_DAYS = 0.02;

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

    /**
     * What it cost, in days of a badly running unit: a day outside the band 1, a day of flood 3 instead, a move of the weir 0.1, a
     * service 0.2, a look 0.02, and 1 for each goal that was not reached, because what is left behind is met again. Stated
     * judgement, after the cost that the panel of hidden tanks is scored by.
     */
    public double costDays() {
        double outside = Math.max(0, hours - hoursInBand - floodHours);
        return (outside + FLOOD_WEIGHT * floodHours) / DAY
                + MOVE_DAYS * moves
                + SERVICE_DAYS * services
                + LOOK_DAYS * looks
                + goals.stream()
                        .filter(each -> each.verdict() == GoalCheck.Verdict.MISSED)
                        .count();
    }

    /** Whether every goal and limit holds. */
    public boolean solved() {
        return goals.stream().allMatch(GoalCheck::met);
    }
}
