package io.github.weirwise.lab;

import io.github.weirwise.advice.Step;
import io.github.weirwise.lab.rival.AdviserPolicy;
import io.github.weirwise.lab.rival.Decision;
import io.github.weirwise.lab.rival.Policy;
import io.github.weirwise.lab.rival.Visit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Command {@code calm}: journals from plays of all truths, each asked again after one small change. Half of the journals have an
 * answer other than hold. The step has changed if type, part or look differ, or a move by more than a millimetre; stated times do not
 * count. Properties: {@code journals}, {@code seed}, {@code phase}.
 */
public final class CalmRun {
    private static final int USUAL = 300;
    private static final double SAME_MOVE_MM = 1;

    private final Policy adviser = new AdviserPolicy();
    private final int wanted;
    private final List<Visit> visits = new ArrayList<>();
    private final List<Decision> answers = new ArrayList<>();
    private int holds;

    private CalmRun(int wanted) {
        this.wanted = wanted;
    }

    /** Gathers, changes, counts, prints. */
    public static void run() {
        CalmRun run = new CalmRun(Integer.getInteger("journals", USUAL));
        run.gather(System.getProperty("phase", "tune"), Long.getLong("seed", 1));
        System.out.println(run.count());
    }

    private boolean enough() {
        return visits.size() >= wanted;
    }

    /** One visit of every tank is kept, if its kind of answer is still wanted. */
    private void gather(String phase, long seed) {
        for (int tank = 0; !enough(); tank++) {
            for (Truth truth : Truth.values()) {
                long tankSeed = Dice.tankSeed(phase, truth.word(), seed, tank);
                Plan plan = new PlanDraw(truth, tankSeed).draw();
                List<Visit> seen = new ArrayList<>();
                Entrant keeper = new Entrant("recorded", hidden -> visit -> {
                    seen.add(visit);
                    return Entrant.KEEPER.forTank().apply(hidden).next(visit);
                });
                Play.of(plan, keeper);
                SplittableRandom dice = Dice.of(tankSeed, "calm", 0);
                for (int tries = 0; tries < 2; tries++) {
                    keep(seen.get(dice.nextInt(seen.size())));
                }
            }
        }
    }

    private void keep(Visit visit) {
        if (enough()) {
            return;
        }
        Decision answer = adviser.next(visit);
        boolean hold = answer.step() instanceof Step.Hold;
        if (hold && holds >= wanted / 2 || !hold && visits.size() - holds >= wanted - wanted / 2) {
            return;
        }
        holds += hold ? 1 : 0;
        visits.add(visit);
        answers.add(answer);
    }

    private String count() {
        Map<SmallChange, Integer> steps = new EnumMap<>(SmallChange.class);
        int changed = 0;
        int named = 0;
        int unequal = 0;
        for (int i = 0; i < visits.size(); i++) {
            Decision answer = answers.get(i);
            unequal += adviser.next(visits.get(i)).equals(answer) ? 0 : 1;
            for (SmallChange change : SmallChange.values()) {
                Decision again = adviser.next(change.of(visits.get(i)));
                if (!same(answer.step(), again.step())) {
                    changed++;
                    steps.merge(change, 1, Integer::sum);
                }
                named += answer.stated().equals(again.stated()) || part(answer).equals(part(again)) ? 0 : 1;
            }
        }
        double asked = visits.size() * SmallChange.values().length;
        StringBuilder line = new StringBuilder(String.format(
                Locale.ROOT,
                "result: journals=%d stepChangedPct=%.2f namedChangedPct=%.2f seedDependent=%d",
                visits.size(),
                100 * changed / asked,
                100 * named / asked,
                unequal));
        for (SmallChange change : SmallChange.values()) {
            line.append(String.format(
                    Locale.ROOT,
                    " %sPct=%.2f",
                    change.name().toLowerCase(Locale.ROOT),
                    100.0 * steps.getOrDefault(change, 0) / visits.size()));
        }
        return line.toString();
    }

    private static String part(Decision decision) {
        return decision.stated()
                .map(stated -> stated.part().map(Enum::name).orElse(""))
                .orElse("");
    }

    /** Same type, part and look, and a move within a millimetre. */
    static boolean same(Step one, Step other) {
        if (one instanceof Step.Hold && other instanceof Step.Hold) {
            return true;
        }
        if (one instanceof Step.MoveWeir a && other instanceof Step.MoveWeir b) {
            return Math.abs(a.byMm() - b.byMm()) <= SAME_MOVE_MM;
        }
        if (one instanceof Step.MakeSafe a && other instanceof Step.MakeSafe b) {
            return a.how() == b.how() && Math.abs(a.byMm() - b.byMm()) <= SAME_MOVE_MM;
        }
        return one.equals(other);
    }
}
