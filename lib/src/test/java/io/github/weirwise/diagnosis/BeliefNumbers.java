package io.github.weirwise.diagnosis;

import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Sum;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** A belief as a list of numbers, to tell whether two are the same. */
final class BeliefNumbers {
    private BeliefNumbers() {}

    static List<Double> of(Belief belief) {
        List<Double> all = new ArrayList<>();
        for (Part part : Part.SERVICEABLE) {
            add(all, belief.size(part));
        }
        for (Sum sum : Sum.values()) {
            add(all, belief.sum(sum, 0));
        }
        add(all, belief.passing());
        add(all, belief.foaminess());
        add(all, belief.amountNow());
        add(all, belief.prospects().after(3, Set.of(Part.NECK_AND_CUP)).tomorrow());
        add(all, belief.prospects().after(-3, Set.of()).later());
        all.add(belief.width());
        return all;
    }

    private static void add(List<Double> all, Mixture one) {
        all.add(one.mean());
        all.add(one.sd());
    }
}
