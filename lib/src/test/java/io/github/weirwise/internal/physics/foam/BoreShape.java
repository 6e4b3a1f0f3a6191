package io.github.weirwise.internal.physics.foam;

import io.github.weirwise.report.Require;

/**
 * Cross-section (m2) of a foam column by height (m), over any fixed floor: plain geometry, positive and continuous where foam
 * can stand. The column asks for no other height; what a shape answers there is its own affair.
 *
 * @since 0.1
 */
@FunctionalInterface
public interface BoreShape {
    /**
     * Inner cross-section at a height, m2.
     *
     * @param heightM between the water's surface and the lip of the column that asks
     */
    double areaM2(double heightM);

    /**
     * A straight tube.
     *
     * @param areaM2 its cross-section, 1e-6 to 10 m2
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    static BoreShape tube(double areaM2) {
        Require.inRange("areaM2", areaM2, 1e-6, 10, "m2", "a bore of 110 mm has 0.0095 m2");
        return heightM -> areaM2;
    }
}
