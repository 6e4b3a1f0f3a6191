package io.github.weirwise.lab;

import io.github.weirwise.unit.Part;

/**
 * Something that goes wrong with one part: from an hour on it grows to a size within some hours, unless it was serviced.
 */
record Fault(Part part, int fromHour, double growsHours, double size) {
    /** How much it adds within the hour that begins. */
    double growth(int hour) {
        return hour >= fromHour && hour < fromHour + growsHours ? size / growsHours : 0;
    }
}
