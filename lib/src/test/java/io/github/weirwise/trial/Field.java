package io.github.weirwise.trial;

import io.github.weirwise.advice.AdviserOptions;
import java.util.ArrayList;
import java.util.List;

/** Who takes part. */
final class Field {
    static final String NOTHING = "do nothing";
    static final String ORACLE = "oracle";
    static final String ADVISER = "adviser";

    private Field() {}

    /** Rules of thumb that set or service, without a model. */
    static List<Entrant> rules() {
        return List.of(
                new Entrant("fixed step, impatient", tank -> RulePolicies.fixedStep(6)),
                new Entrant("fixed step, waiting", tank -> RulePolicies.fixedStep(24)),
                new Entrant("halving steps", tank -> RulePolicies.halvingSteps()),
                new Entrant("bisection on level", tank -> RulePolicies.bisection()),
                new Entrant("checklist, then steps", tank -> new Checklist()));
    }

    static Entrant doNothing() {
        return new Entrant(NOTHING, tank -> RulePolicies.doNothing());
    }

    static Entrant random() {
        return new Entrant(
                "random", tank -> RulePolicies.random(Dice.of(tank.plan().seed(), "random policy", 0)));
    }

    static Entrant oracle() {
        return new Entrant(ORACLE, Oracle::new);
    }

    static Entrant adviser() {
        return adviser(ADVISER, AdviserOptions.DEFAULT);
    }

    static Entrant adviser(String name, AdviserOptions options) {
        return new Entrant(name, tank -> new AdviserPolicy(options));
    }

    /** A policy by its name. */
    static Entrant named(String name) {
        List<Entrant> all = new ArrayList<>(rules());
        all.add(doNothing());
        all.add(random());
        all.add(oracle());
        all.add(adviser());
        return all.stream().filter(each -> each.name().equals(name)).findFirst().orElseThrow();
    }
}
