package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Belief;
import io.github.weirwise.diagnosis.Foresight;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Target;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** What it is worth to look first: the mean over what a look may show of what the best step then costs, and its own effort. */
final class Looks {
    /** A look is not asked for again within this time; a part not until its next service or this long. */
    private static final Duration FRESH = Duration.ofHours(60);

    /** A part this surely sound is not looked at. */
    private static final double LEAST_TROUBLE = 0.06;

    private static final double TROUBLE = 0.3;
    /** A part seen to be worse than this may be serviced. */
    private static final double BAD_PART = 0.2;
    /** A look has to spare this much to be asked for. */
    private static final double LEAST_GAIN = 0.05;

    /** Costs this near may be the same. */
    private static final double CLOSE = 1e-9;

    private static final double LOW = Math.log(Target.AMOUNT_BAND.low());
    private static final double HIGH = Math.log(Target.AMOUNT_BAND.high());
    /** This surely on target, parts are looked at when their upkeep is due and not before. */
    private static final double CALM = 0.85;

    private final Belief belief;
    private final GuardScene scene;
    private final boolean calm;
    private final Plan plan;
    private final AdviserOptions options;
    private final Set<Part> mayService;

    Looks(Belief belief, GuardScene scene, Plan plan, AdviserOptions options, Set<Part> mayService) {
        this.belief = belief;
        this.scene = scene;
        this.calm = belief.amountNow().between(LOW, HIGH) >= CALM;
        this.plan = plan;
        this.options = options;
        this.mayService = mayService;
    }

    /** A look and what it costs with the best step after it. */
    record Valued(LookKind look, double cost) {}

    /** The look that pays, if one does. */
    Optional<Valued> best(double withoutLook) {
        double coarse = plan.best(belief.prospects(), mayService);
        Valued best = null;
        for (LookKind look : LookKind.values()) {
            if (!options.looks().contains(look) || look.routine() || fresh(look) || !matters(look)) {
                continue;
            }
            Optional<Foresight> foresight = foresee(look);
            if (foresight.isPresent()) {
                double effort = options.efforts().look();
                double gain = coarse - after(look, foresight.get(), coarse - effort - LEAST_GAIN) - effort;
                if (gain > LEAST_GAIN && (best == null || withoutLook - gain < best.cost())) {
                    best = new Valued(look, withoutLook - gain);
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private Optional<Foresight> foresee(LookKind look) {
        return look.part().isPresent()
                ? belief.foresee(look.part().get())
                : look.instrument().flatMap(belief::foresee);
    }

    /** The mean cost after a look; of a look after which it is plainly more than {@code most} only something over that. */
    private double after(LookKind look, Foresight foresight, double most) {
        Set<Part> then = EnumSet.noneOf(Part.class);
        then.addAll(mayService);
        then.addAll(look.tells());
        double[] costs = new double[foresight.outcomes()];
        double least = -plan.rest() - CLOSE;
        for (int i : foresight.likeliestFirst()) {
            boolean bad = bad(look, foresight.outcome(i));
            costs[i] = foresight.chance(i) * plan.best(foresight.after(foresight.outcome(i)), bad ? then : mayService);
            least += costs[i];
            if (least > most) {
                return least;
            }
        }
        double sum = 0;
        for (double each : costs) {
            sum += each;
        }
        return sum;
    }

    /** Whether an outcome lets the part be serviced. */
    private static boolean bad(LookKind look, double outcome) {
        return look.instrument().map(row -> row.showsFault(outcome)).orElse(outcome > BAD_PART);
    }

    private boolean notYetDue(Part part) {
        return part.upkeepDays() > 0 && !PartSeen.lookDue(part, scene);
    }

    private boolean fresh(LookKind look) {
        Optional<Instant> last = look.part().isPresent()
                ? belief.look(look.part().get())
                : look.instrument().flatMap(belief::reading);
        return last.filter(at -> Duration.between(at, belief.now()).compareTo(FRESH) < 0)
                .isPresent();
    }

    private boolean matters(LookKind look) {
        if (look.tells().isEmpty()) {
            return true;
        }
        return look.tells().stream()
                .anyMatch(part -> belief.chanceOver(part, TROUBLE) > LEAST_TROUBLE && !(calm && notYetDue(part)));
    }
}
