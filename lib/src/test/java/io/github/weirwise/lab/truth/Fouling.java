package io.github.weirwise.lab.truth;

import io.github.weirwise.unit.Part;
import java.util.EnumSet;
import java.util.Set;

/** How far each part is fouled, off or at fault: 0 sound to 1 at its worst. Changes with time; not for two threads. */
public final class Fouling {
    private final double[] size;

    /** All parts sound. */
    public Fouling() {
        size = new double[Part.values().length];
    }

    /** The same sizes, free to go their own way. */
    public Fouling(Fouling other) {
        size = other.size.clone();
    }

    /** Size of a part, 0 to 1. */
    public double of(Part part) {
        return size[part.ordinal()];
    }

    /** Sets a part's size, held within 0 to 1. */
    public void set(Part part, double value) {
        size[part.ordinal()] = Math.max(0, Math.min(1, value));
    }

    /** Makes a part sound. */
    public void clean(Part part) {
        size[part.ordinal()] = 0;
    }

    /** Parts fouled by more than a size. */
    public Set<Part> over(double least) {
        Set<Part> found = EnumSet.noneOf(Part.class);
        for (Part part : Part.values()) {
            if (of(part) > least) {
                found.add(part);
            }
        }
        return found;
    }
}
