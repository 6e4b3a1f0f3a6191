package io.github.weirwise.demo.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * What the cup took in, as layers in the order of time: what fell in last lies on top. In a real cup falling skimmate stirs the
 * newest layer a little; that is left out, the mean of all is what a vial of the stirred cup shows.
 *
 * @param layers from the floor up
 */
public record CupFill(List<Layer> layers) {
    /** Nothing in it. */
    public static final CupFill EMPTY = new CupFill(List.of());

    private static final int MOST_LAYERS = 8;
    private static final double LEAST_ML = 0.01;
    /** Nobody sees a border between colours that are closer. */
    private static final double SAME_COLOUR = 0.08;

    /** Copies the list. */
    public CupFill {
        layers = List.copyOf(layers);
    }

    /** What came in while the colour was about the same. */
    public record Layer(double ml, double ptCo) {
        private Layer with(Layer above) {
            double sum = ml + above.ml;
            return new Layer(sum, (ml * ptCo + above.ml * above.ptCo) / sum);
        }

        private double apartFrom(Layer other) {
            return Math.abs(ptCo - other.ptCo) / Math.max(50, Math.max(ptCo, other.ptCo));
        }
    }

    /** One colour throughout; nothing for less than a drop. */
    public static CupFill of(double ml, double ptCo) {
        return ml < LEAST_ML ? EMPTY : new CupFill(List.of(new Layer(ml, ptCo)));
    }

    /** All that is in it, mL. */
    public double ml() {
        return layers.stream().mapToDouble(Layer::ml).sum();
    }

    /** Platinum-cobalt units of all of it stirred; 0 when empty. */
    public double ptCo() {
        double ml = ml();
        return ml > 0
                ? layers.stream()
                                .mapToDouble(layer -> layer.ml() * layer.ptCo())
                                .sum()
                        / ml
                : 0;
    }

    /** The same some time later, when it holds more of a new mean colour; with less in it, it was emptied between. */
    public CupFill risenTo(double laterMl, double laterPtCo) {
        double before = ml();
        double added = laterMl - before;
        if (added < -LEAST_ML || before < LEAST_ML) {
            return of(laterMl, laterPtCo);
        }
        if (added < LEAST_ML) {
            return this;
        }
        double ptCo = Math.max(0, (laterMl * laterPtCo - before * ptCo()) / added);
        List<Layer> all = new ArrayList<>(layers);
        all.add(new Layer(added, ptCo));
        while (all.size() > 1 && (all.size() > MOST_LAYERS || gap(all, closest(all)) < SAME_COLOUR)) {
            int at = closest(all);
            all.set(at, all.get(at).with(all.remove(at + 1)));
        }
        return new CupFill(all);
    }

    private static double gap(List<Layer> all, int at) {
        return all.get(at).apartFrom(all.get(at + 1));
    }

    /** The place of the pair that is hardest to tell apart. */
    private static int closest(List<Layer> all) {
        int best = 0;
        for (int i = 1; i + 1 < all.size(); i++) {
            if (gap(all, i) < gap(all, best)) {
                best = i;
            }
        }
        return best;
    }
}
