package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Words;
import java.awt.Shape;

/** What every painter has at hand: the unit's parts, where they lie in the picture, colours and words. */
abstract class Painter {
    final Brush brush;
    final Section section;
    final View view;
    final Palette palette;
    final Words words;

    Painter(Brush brush) {
        this.brush = brush;
        section = brush.section();
        view = brush.view();
        palette = brush.palette();
        words = brush.words();
    }

    /** A shape given in model millimetres, in pixels. */
    final Shape model(Shape shape) {
        return view.transform().createTransformedShape(shape);
    }
}
