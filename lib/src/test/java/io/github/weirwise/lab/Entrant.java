package io.github.weirwise.lab;

import io.github.weirwise.lab.rival.AdviserPolicy;
import io.github.weirwise.lab.rival.CarefulKeeper;
import io.github.weirwise.lab.rival.Checklist;
import io.github.weirwise.lab.rival.Decision;
import io.github.weirwise.lab.rival.FixedSteps;
import io.github.weirwise.lab.rival.Policy;
import java.util.List;
import java.util.function.Function;

/**
 * Who plays.
 *
 * @param name what the tables call it
 * @param forTank its policy for a tank; all but the oracle do not look at the tank
 */
record Entrant(String name, Function<Tank, Policy> forTank) {
    static final Entrant ADVISER = blind("adviser", new AdviserPolicy());
    static final Entrant KEEPER = blind("careful keeper", new CarefulKeeper(true));
    static final Entrant WITHOUT_UPKEEP = blind("keeper without upkeep", new CarefulKeeper(false));
    static final Entrant FIXED_STEPS = blind("fixed steps", new FixedSteps());
    static final Entrant CHECKLIST = blind("checklist", new Checklist());
    static final Entrant NOTHING = blind("nothing", visit -> Decision.hold(visit.now()));
    static final Entrant ORACLE = new Entrant("oracle", Oracle::new);

    /** Everybody, in the order of the tables. */
    static final List<Entrant> ALL = List.of(ADVISER, KEEPER, ORACLE, WITHOUT_UPKEEP, FIXED_STEPS, CHECKLIST, NOTHING);

    static Entrant blind(String name, Policy policy) {
        return new Entrant(name, tank -> policy);
    }
}
