/**
 * Floor 1: how fast bubbles rise and how much gas a column of them holds.
 *
 * <p>Diameter and water properties give a terminal speed; terminal speed and the fluxes of gas and liquid give the gas
 * holdup. SI, pure functions. Tank water is dirty: the contaminated speed is the one to use there, and the clean laws
 * stand beside it for comparison.
 */
package io.github.weirwise.internal.physics.bubbles;
