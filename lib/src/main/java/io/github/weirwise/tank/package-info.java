/**
 * Floor 3: the tank over days. What tuning does to the water, and what days do to the tuning.
 *
 * <p>A {@link io.github.weirwise.tank.TankPlan} says what stands in the room and how its processes run; a
 * {@link io.github.weirwise.tank.TankState} is one moment of it; {@link io.github.weirwise.tank.TankEvent}s are what
 * people, animals and accidents do; {@link io.github.weirwise.tank.TankSimulator} takes a state to a later one. The
 * skimmer's behaviour comes in through {@link io.github.weirwise.tank.SkimmerLaw}, by default the
 * {@link io.github.weirwise.unit.OperatingPoint} of the device. Nothing here keeps state of its own, and a state can be
 * kept, branched and replayed.
 */
package io.github.weirwise.tank;
