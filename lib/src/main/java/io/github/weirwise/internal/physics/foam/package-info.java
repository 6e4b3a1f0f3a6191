/**
 * Floor 1: what foam does on its way up: how long it lives, how wet it is at the top, what it carries.
 *
 * <p>Order of use: {@code FoamLife} says which share of the gas still is foam after a given foam volume; {@code Drainage}
 * gives the speed scale K of the liquid that runs back between the bubbles; {@code RisingFoam} turns gas flux and K into
 * liquid fraction and liquid flux at the lip; {@code Adsorption} and {@code Enrichment} say what that liquid holds.
 * {@code FoamColumn} puts life, drainage and suction together by height: solved in full, sketched, or followed in time. SI,
 * pure functions.
 */
package io.github.weirwise.internal.physics.foam;
