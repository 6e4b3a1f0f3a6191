package io.github.weirwise.watch;

/**
 * What a watch has done so far.
 *
 * @param values values that came
 * @param unsound values that no sound sensor shows
 * @param passedOver values whose time fitted nothing
 * @param jumps steps of the clock that were believed
 * @param readings readings written into the book
 * @param consultations times that the adviser was asked
 * @param calls times that a person was called
 * @since 0.1
 */
public record WatchCounts(
        long values, long unsound, long passedOver, long jumps, long readings, long consultations, long calls) {
    WatchCounts plus(long v, long u, long p, long j, long r, long q, long c) {
        return new WatchCounts(
                values + v, unsound + u, passedOver + p, jumps + j, readings + r, consultations + q, calls + c);
    }
}
