/**
 * Floor 1: what foam does on its way up: how wet it is at the top, what it carries.
 *
 * <p>Order of use: {@code Drainage} gives the speed scale K of the liquid that runs back between the bubbles; {@code RisingFoam} turns gas flux and K into
 * liquid fraction and liquid flux at the lip; {@code Adsorption} and {@code BubbleUptake} say what that liquid holds. SI, pure
 * functions. Rival formulas and the full column live in the test tree.
 */
package io.github.weirwise.internal.physics.foam;
