package io.github.weirwise.evidence;

import static io.github.weirwise.practice.ProcessPoint.Habit.LOOKED_BEFORE_MOVING;
import static io.github.weirwise.practice.ProcessPoint.Habit.RULED_OUT_THE_AIR_INTAKE;
import static io.github.weirwise.practice.ProcessPoint.Habit.WAITED_FOR_THE_FOAM;

import io.github.weirwise.practice.Act;
import io.github.weirwise.practice.Look;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.Prediction;
import io.github.weirwise.practice.ProcessPoint.Habit;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.practice.SessionOptions;
import io.github.weirwise.practice.SessionStep;
import io.github.weirwise.practice.Trend;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Part;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A simulated trainee: a plain tuner by the cup who has all the habits of sound work but those that a misconception takes away.
 * Whoever has a habit mended has it from then on; nothing else is learnt. Stated judgement, none of it measured on people.
 *
 * @param name what the trainee believes
 * @param visitHours hours between visits
 * @param keeps habits that the trainee has
 */
record Trainee(String name, double visitHours, Set<Habit> keeps) {
    private static final double STEP_MM = 4;
    private static final double TOO_LITTLE = 0.5;
    private static final double TOO_MUCH = 2;
    private static final double SURE = 0.8;
    /** What a look at may find bad, and the part that is then put right. */
    private static final Map<Look, Part> LOOKS = new LinkedHashMap<>();

    static {
        LOOKS.put(Look.AIR_LINE, Part.AIR_LINE);
        LOOKS.put(Look.NECK_AND_CUP, Part.NECK_AND_CUP);
        LOOKS.put(Look.RETURN_PUMP, Part.RETURN_PUMP);
        LOOKS.put(Look.FILTER_PAD, Part.FILTER_PAD);
    }

    /** Raises the weir at every dryness, looks at no part. */
    static final Trainee RAISER =
            new Trainee("every dryness is a weir too low", 24, EnumSet.of(WAITED_FOR_THE_FOAM, LOOKED_BEFORE_MOVING));
    /** Comes every six hours and answers every reading. */
    static final Trainee CHASER =
            new Trainee("every reading wants an answer", 6, EnumSet.of(RULED_OUT_THE_AIR_INTAKE, LOOKED_BEFORE_MOVING));
    /** Goes by what was told at the start, and reads nothing. */
    static final Trainee BLIND =
            new Trainee("what I was told is enough", 24, EnumSet.of(WAITED_FOR_THE_FOAM, RULED_OUT_THE_AIR_INTAKE));

    static final List<Trainee> ALL = List.of(RAISER, CHASER, BLIND);

    /** Those habits that a trainee can lack, the ones that a debrief can teach. */
    static final List<Habit> TEACHABLE = List.of(RULED_OUT_THE_AIR_INTAKE, WAITED_FOR_THE_FOAM, LOOKED_BEFORE_MOVING);

    Trainee mended(Habit habit) {
        Set<Habit> more = EnumSet.copyOf(keeps);
        more.add(habit);
        return new Trainee(name, visitHours, more);
    }

    PracticeSession play(Scenario scenario, int seed) {
        PracticeSession session = passOver(PracticeSession.begin(
                scenario, SessionOptions.DEFAULT.withTrainee(name).withSeed(seed)));
        while (!session.over()) {
            double came = session.hours();
            session = visit(session);
            if (!session.over()) {
                double left = Math.max(0.5, 60 * (came + visitHours - session.hours()));
                session = passOver(session.waitFor(left));
            }
        }
        return session;
    }

    private PracticeSession visit(PracticeSession from) {
        boolean reads = keeps.contains(LOOKED_BEFORE_MOVING);
        PracticeSession session = reads ? passOver(from.look(Look.ROUND)) : from;
        boolean wait =
                keeps.contains(WAITED_FOR_THE_FOAM) && session.settlesAt().isPresent();
        double amount = reads ? amount(session) : told(session);
        if (session.over() || wait || amount > TOO_LITTLE && amount < TOO_MUCH) {
            return session;
        }
        if (amount <= TOO_LITTLE && keeps.contains(RULED_OUT_THE_AIR_INTAKE)) {
            for (Map.Entry<Look, Part> each : reads ? LOOKS.entrySet() : Set.<Map.Entry<Look, Part>>of()) {
                if (session.over() || !session.scenario().offers().has(each.getKey())) {
                    continue;
                }
                session = passOver(session.look(each.getKey()));
                if (found(session, each.getValue()) && !session.over()) {
                    return act(session, new Act.ServicePart(each.getValue()));
                }
            }
        }
        double to = session.scenario()
                .unit()
                .weir()
                .clampMm(session.markMm() + (amount <= TOO_LITTLE ? STEP_MM : -STEP_MM));
        return session.over() || to == session.markMm()
                ? session
                : act(session, new Act.MoveWeir(to - session.markMm()));
    }

    private static boolean found(PracticeSession session, Part part) {
        return session.lastReading().stream()
                .flatMap(each -> each.observations().stream())
                .anyMatch(each -> each instanceof Observation.Inspection seen
                        && seen.part() == part
                        && seen.finding() == Finding.BAD);
    }

    /** Amount of the last cup over the wanted one; 1 where no cup was read since the weir was moved. */
    private static double amount(PracticeSession session) {
        Optional<Double> cup = session.journal().all(Reading.class).stream()
                .filter(each -> session.journal()
                        .last(WeirMove.class)
                        .map(move -> each.at().isAfter(move.at()))
                        .orElse(true))
                .flatMap(each -> each.find(Observation.CupVolume.class).stream())
                .map(Observation.CupVolume::mlPerDay)
                .reduce((first, last) -> last);
        return cup.orElse(session.scenario().unit().target().skimmateMlPerDay())
                / session.scenario().unit().target().skimmateMlPerDay();
    }

    /** Who reads nothing goes on from the last reading in the book, whatever was done since. */
    private static double told(PracticeSession session) {
        return session.journal().all(Reading.class).stream()
                        .flatMap(each -> each.find(Observation.CupVolume.class).stream())
                        .map(Observation.CupVolume::mlPerDay)
                        .reduce((first, last) -> last)
                        .orElse(0.0)
                / session.scenario().unit().target().skimmateMlPerDay();
    }

    private static PracticeSession act(PracticeSession session, Act act) {
        boolean less = act instanceof Act.MoveWeir move && move.byMm() < 0;
        Trend trend = less ? Trend.LESS : Trend.MORE;
        return passOver(session.act(act, new Prediction(trend, trend, 2, SURE), "it is time"));
    }

    private static PracticeSession passOver(PracticeSession session) {
        PracticeSession now = session;
        while (!now.questions().isEmpty()) {
            now = now.perform(new SessionStep.Answer(now.questions().get(0).name(), 0, ""));
        }
        return now;
    }
}
