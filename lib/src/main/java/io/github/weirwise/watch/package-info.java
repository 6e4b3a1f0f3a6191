/**
 * Floor 7: sensor streams. Values come in one by one, are put in order of time, condensed into the few readings that a
 * careful person would have taken, and written into the unit's book; then the adviser is asked, and a person is called only
 * when that pays.
 *
 * <p>{@link io.github.weirwise.watch.SensorValue} {@code ->} {@link io.github.weirwise.watch.SensorWatch} {@code ->}
 * {@link io.github.weirwise.watch.UnitBook} and {@link io.github.weirwise.watch.Counsel} {@code ->}
 * {@link io.github.weirwise.watch.Attention}. No thread is started and no clock is read: time is what the values
 * carry.
 */
package io.github.weirwise.watch;
