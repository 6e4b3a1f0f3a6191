package io.github.weirwise.unit;

/**
 * How closely the reference column is solved; the laws and their sources are those of {@link
 * io.github.weirwise.internal.physics.foam.FoamColumn}.
 *
 * @since 0.1
 */
public enum ColumnDetail {
    /** The whole column with suction, to a relative error of 1e-7; with its layers. */
    FULL,
    /**
     * Gas and liquid counted age by age in few steps, without suction and layers, tens of times quicker
     * ({@link io.github.weirwise.internal.physics.foam.FoamColumn#sketched}); only for gas that vents through the foam.
     */
    SKETCH
}
