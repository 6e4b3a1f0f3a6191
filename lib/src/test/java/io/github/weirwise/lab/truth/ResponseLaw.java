package io.github.weirwise.lab.truth;

/** How one hidden unit answers to where its weir stands, to its parts and to its water. */
@FunctionalInterface
public interface ResponseLaw {
    /**
     * The unit at rest with the air on.
     *
     * @param crestMm where the weir's mark stands, over the chamber floor
     * @param airSet air as set by hand over all that the clean injectors draw, above 0 to 1
     * @param fouling state of the parts
     * @param foaminess what the water's own foaminess adds to the logarithm of the amount of a unit on target
     * @param passing what passes by itself (food, conditioner, hands) adds to it
     */
    Response at(double crestMm, double airSet, Fouling fouling, double foaminess, double passing);
}
