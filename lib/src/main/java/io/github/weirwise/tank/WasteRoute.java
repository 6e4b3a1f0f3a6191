package io.github.weirwise.tank;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;

/**
 * Where skimmate goes.
 *
 * @param drained whether the cup drains to a container; if not, the cup itself fills and a full cup spills back
 * @param containerLitres what the container holds, 0.1 to 1e5 L
 * @param cutOff whether a float shuts the air when the container is full; without it a full container spills on the floor
 */
public record WasteRoute(boolean drained, double containerLitres, boolean cutOff) {
    private static final Limit CONTAINER_LITRES =
            Limit.of("containerLitres", 0.1, 1e5, Unit.LITRE, "tank.try.measureTheContainer");

    /** A cup that is emptied by hand. */
    public static final WasteRoute CUP_ONLY = new WasteRoute(false, 1, false);

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if the container is out of its range
     */
    public WasteRoute {
        CONTAINER_LITRES.check(containerLitres);
    }

    /** A drain to a container with a float that shuts the air. */
    public static WasteRoute container(double litres) {
        return new WasteRoute(true, litres, true);
    }
}
