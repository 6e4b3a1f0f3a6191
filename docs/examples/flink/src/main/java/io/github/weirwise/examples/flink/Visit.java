package io.github.weirwise.examples.flink;

/**
 * One visit to a tank.
 *
 * @param tank name of the tank
 * @param request a request document whose journal holds what was seen on this visit alone
 */
public record Visit(String tank, String request) {
    static Visit of(String line) {
        int tab = line.indexOf('\t');
        // A line without a tank is no reason to stop the others.
        return tab < 0 ? new Visit("", line) : new Visit(line.substring(0, tab), line.substring(tab + 1));
    }
}
