package io.github.weirwise.internal.physics.foam;

import io.github.weirwise.report.Require;

/**
 * Radius (m) of bubbles by their age (s): r^2 = r0^2 + (r1^2 - r0^2) a/a1, the growth with the root of time of a foam that
 * coarsens by diffusion of gas between bubbles (Durian, Weitz &amp; Pine 1991, Phys. Rev. A 44:R7902). Merging of bubbles
 * comes on top under {@link Venting#BY_MERGING}. How fast tank foam coarsens is not known: r1 at a1 is assumed.
 *
 * @param freshRadiusM r0, 1e-5 to 0.02 m
 * @param grownRadiusM r1, from r0 to 0.05 m
 * @param grownAgeS a1, age at which the bubbles have that radius, 0.1 to 1e6 s
 * @since 0.1
 */
public record BubbleGrowth(double freshRadiusM, double grownRadiusM, double grownAgeS) {
    /**
     * @throws io.github.weirwise.report.OutOfRangeException outside the limits
     */
    public BubbleGrowth {
        Require.inRange("freshRadiusM", freshRadiusM, 1e-5, 0.02, "m", "give a radius, 0.0004 for bubbles of 0.8 mm");
        Require.inRange("grownRadiusM", grownRadiusM, freshRadiusM, 0.05, "m", "bubbles do not shrink with age");
        Require.inRange("grownAgeS", grownAgeS, 0.1, 1e6, "s", "about 100 s at the lip of a tank's foam");
    }

    /**
     * Bubbles that keep their size.
     *
     * @param radiusM 1e-5 to 0.02 m
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static BubbleGrowth none(double radiusM) {
        return new BubbleGrowth(radiusM, radiusM, 1);
    }

    /**
     * r^2 at an age, m2; for ages from 0.
     *
     * @param ageS 0 or more, s; not looked at, never throws
     */
    public double squareRadiusM2(double ageS) {
        return freshRadiusM * freshRadiusM + squarePerSecond() * ageS;
    }

    /** d(r^2)/da, m2/s. */
    double squarePerSecond() {
        return (grownRadiusM * grownRadiusM - freshRadiusM * freshRadiusM) / grownAgeS;
    }
}
