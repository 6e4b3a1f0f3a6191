package io.github.weirwise.demo.practice;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.demo.picture.Collected;
import io.github.weirwise.demo.picture.CupFill;
import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.tank.Stock;
import io.github.weirwise.tank.TankState;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmateStrength;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.Optional;

/**
 * A session at one moment with all that takes time to work out; made off the event thread.
 *
 * @param session the session
 * @param scene what a person standing there sees, without figures
 * @param advice the adviser's view, while it is open
 */
public record Moment(PracticeSession session, Scene scene, Optional<Advice> advice) {
    /** The moment of a session. */
    public static Moment of(PracticeSession session) {
        return new Moment(session, scene(session), session.advice());
    }

    /** What a person sees who stands there at the end of a session. */
    static Scene scene(PracticeSession session) {
        SkimmerUnit unit = session.scenario().unit();
        TankState tank = session.truth();
        double air = session.airOn() ? session.truePoint().airLitresPerHour() : 0;
        Settings settings = session.knownStart()
                .withWeirCrestMm(session.markMm())
                .withFlowLitresPerHour(tank.flowing() ? tank.of(Stock.FLOW_LITRES_PER_HOUR) : 0)
                .withAirLitresPerHour(air);
        CupFill cup = CupFill.of(
                Math.min(unit.cupMl(), tank.of(Stock.CUP_ML)),
                SkimmateStrength.darknessPtCo(tank.collectedMgPerLitre()));
        return new Scene(
                unit,
                settings,
                session.truePoint(),
                tank.of(Stock.SKIMMATE_ML_PER_DAY),
                Collected.of(tank, session.waste(), cup, session.spilledLitres()),
                Optional.empty(),
                false);
    }
}
