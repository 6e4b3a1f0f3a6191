package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Belief;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Target;
import java.util.EnumSet;
import java.util.Set;

/**
 * Which parts may be serviced without another look: those seen or measured not good since their last service, those whose
 * upkeep is due or, with the foam off its target, unknown, and those that are likely bad where no look can show it.
 */
final class MayService {
    private static final double CLEARLY = 0.3;
    private static final double LOW = Math.log(Target.AMOUNT_BAND.low());
    private static final double HIGH = Math.log(Target.AMOUNT_BAND.high());
    /** This surely on target nothing is amiss; and wet foam is not washed or rinsed wetter. */
    private static final double CALM = 0.85;

    private static final double SURELY_SOUND = 0.05;
    /** What nobody can look at here is put right when it is likelier bad than not. */
    private static final double EVEN = 0.5;

    private MayService() {}

    static Set<Part> parts(Belief belief, GuardScene scene) {
        Set<Part> parts = EnumSet.noneOf(Part.class);
        boolean amiss = belief.amountNow().between(LOW, HIGH) < CALM
                && belief.amountNow().below(HIGH) > CALM;
        for (Part part : Part.SERVICEABLE) {
            if (belief.chanceOver(part, CLEARLY) > SURELY_SOUND) {
                PartSeen seen = PartSeen.of(part, scene);
                boolean unseen = belief.chanceOver(part, CLEARLY) > EVEN
                        && PartSeen.firstLook(part, scene).isEmpty();
                if (seen.speaksForService()
                        || seen.upkeepDue(part, scene.now())
                        || unseen
                        || (amiss || PartSeen.lookDue(part, scene)) && seen.upkeepUnknown(part)) {
                    parts.add(part);
                }
            }
        }
        return parts;
    }
}
