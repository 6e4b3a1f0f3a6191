package io.github.weirwise.lab;

import io.github.weirwise.advice.Step;
import io.github.weirwise.lab.rival.Decision;
import io.github.weirwise.lab.rival.Policy;
import io.github.weirwise.lab.rival.Visit;
import io.github.weirwise.lab.truth.Fouling;
import io.github.weirwise.lab.truth.Response;
import io.github.weirwise.unit.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * Knows today's true state, not what will happen: at each visit it takes the cheapest, over 7 days without noise, of all
 * whole-millimetre moves with any set of services; frozen. Sets whose services alone cost more than the best so far are left out,
 * which changes nothing; so are parts fouled by less than a tenth, whose service is dearer than the move that makes up for them.
 */
final class Oracle implements Policy {
    private static final int DAYS = 7;
    private static final int EVERY_HOURS = 12;
    private static final double WORTH_A_THOUGHT = 0.1;

    private final Tank tank;
    private final List<Step> todo = new ArrayList<>();
    private int plannedAt = Integer.MIN_VALUE;
    private double best;
    private double bestMark;
    private List<Part> bestParts = List.of();

    Oracle(Tank tank) {
        this.tank = tank;
    }

    @Override
    public Decision next(Visit visit) {
        if (plannedAt != tank.hour()) {
            plannedAt = tank.hour();
            plan();
        }
        return todo.isEmpty() ? Decision.hold(visit.now()) : Decision.of(todo.remove(0));
    }

    private void plan() {
        todo.clear();
        if (!tank.airOn()) {
            return;
        }
        best = Double.POSITIVE_INFINITY;
        List<Part> worth = List.copyOf(tank.fouling().over(WORTH_A_THOUGHT));
        tryAll(worth, 0, new ArrayList<>(), 0);
        bestParts.forEach(part -> todo.add(new Step.ServicePart(part)));
        if (bestMark != tank.markMm()) {
            todo.add(new Step.MoveWeir(bestMark - tank.markMm(), bestMark, false));
        }
    }

    /** All sets of services, none first. */
    private void tryAll(List<Part> worth, int from, List<Part> chosen, double price) {
        tryMarks(chosen, price);
        for (int i = from; i < worth.size() && chosen.size() < Play.MOST_ASKS_A_VISIT - 1; i++) {
            double more = price + Cost.ofService(worth.get(i));
            if (more < best) {
                chosen.add(worth.get(i));
                tryAll(worth, i + 1, chosen, more);
                chosen.remove(chosen.size() - 1);
            }
        }
    }

    private void tryMarks(List<Part> serviced, double price) {
        Fouling[] ahead = ahead(serviced);
        double left = fouledCost(ahead) + price;
        if (left >= best) {
            return;
        }
        double mark = tank.markMm();
        consider(mark, serviced, left + outCost(mark, ahead, best - left));
        var weir = tank.plan().sheet().weir();
        double moved = left + Cost.MOVE;
        for (int mm = 1; moved < best && mm <= 50; mm++) {
            for (double to : new double[] {mark + mm, mark - mm}) {
                if (to >= weir.lowestCrestMm() && to <= weir.highestCrestMm()) {
                    consider(to, serviced, moved + outCost(to, ahead, best - moved));
                }
            }
        }
    }

    private void consider(double mark, List<Part> serviced, double cost) {
        if (cost < best - 1e-9) {
            best = cost;
            bestMark = mark;
            bestParts = List.copyOf(serviced);
        }
    }

    /** The parts every half day from now on, as they will foul without anything new going wrong. */
    private Fouling[] ahead(List<Part> serviced) {
        Fouling[] ahead = new Fouling[24 * DAYS / EVERY_HOURS];
        double[] pace = tank.plan().pacePerHour();
        for (int i = 0; i < ahead.length; i++) {
            ahead[i] = new Fouling(tank.fouling());
            serviced.forEach(ahead[i]::clean);
            int hours = EVERY_HOURS * (i + 1);
            for (Part part : Part.values()) {
                double growth = pace[part.ordinal()] * hours;
                if (growth > 0) {
                    ahead[i].set(part, ahead[i].of(part) + growth);
                }
            }
        }
        return ahead;
    }

    private static double fouledCost(Fouling[] ahead) {
        double cost = 0;
        for (Fouling each : ahead) {
            cost += Cost.FOULED_PART_A_DAY * EVERY_HOURS / 24 * each.over(0.5).size();
        }
        return cost;
    }

    /** Days out of band and floods; stops counting when it is too much anyway. */
    private double outCost(double mark, Fouling[] ahead, double most) {
        double cup = tank.plan().sheet().cupMl() / tank.plan().sheet().target().skimmateMlPerDay();
        double cost = 0;
        for (int i = 0; i < ahead.length && cost < most; i++) {
            Response then = tank.expected(mark, ahead[i], EVERY_HOURS * (i + 1));
            double amount = Math.exp(then.logAmount());
            if (amount > cup) {
                cost += Cost.FLOOD_A_DAY * EVERY_HOURS / 24;
            } else if (!Cost.inBand(amount)) {
                cost += Cost.OUT_A_DAY * EVERY_HOURS / 24;
            }
        }
        return cost;
    }
}
