package io.github.weirwise.demo.picture;

import io.github.weirwise.tank.Stock;
import io.github.weirwise.tank.TankState;
import io.github.weirwise.tank.WasteRoute;
import io.github.weirwise.unit.SkimmateStrength;
import java.util.Optional;

/**
 * Where the skimmate went.
 *
 * @param cup what stands in the cup
 * @param waste the container, where the cup's drain is open; without it the skimmate stays in the cup
 * @param spilledLitres skimmate and water on the floor
 */
public record Collected(CupFill cup, Optional<Waste> waste, double spilledLitres) {
    /** All is empty and dry, and a drain is shut. */
    public static final Collected NOTHING = inCup(CupFill.EMPTY);

    /** The container that the cup drains into. */
    public record Waste(double ml, double capacityMl, double ptCo) {}

    /** All of it in the cup. */
    public static Collected inCup(CupFill cup) {
        return new Collected(cup, Optional.empty(), 0);
    }

    /** What a tank's vessels hold, with the cup's layers as somebody saw them come. */
    public static Collected of(TankState tank, WasteRoute route, CupFill cup, double spilledLitres) {
        double ptCo = SkimmateStrength.darknessPtCo(tank.collectedMgPerLitre());
        Optional<Waste> waste = route.drained()
                ? Optional.of(new Waste(tank.of(Stock.CONTAINER_ML), 1000 * route.containerLitres(), ptCo))
                : Optional.empty();
        return new Collected(cup, waste, spilledLitres);
    }

    /** All that stands in cup and container, mL. */
    public double ml() {
        return cup.ml() + waste.map(Waste::ml).orElse(0.0);
    }

    /** Darkness of all of it stirred; 0 when there is none. */
    public double ptCo() {
        return waste.filter(each -> each.ml() > 0).map(Waste::ptCo).orElseGet(cup::ptCo);
    }
}
