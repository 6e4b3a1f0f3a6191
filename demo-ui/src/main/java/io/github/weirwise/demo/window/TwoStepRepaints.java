package io.github.weirwise.demo.window;

import java.awt.EventQueue;
import javax.swing.JComponent;
import javax.swing.RepaintManager;

/** Lays out in one event and paints in the next one, where Swing does both in one; keys and mouse are heard in between. */
final class TwoStepRepaints extends RepaintManager {
    private boolean toLayOut;
    private boolean laidOut;

    /** Takes the place of Swing's own, unless the look and feel has put a special one there. Event thread only. */
    static void install() {
        if (RepaintManager.currentManager(null).getClass() == RepaintManager.class) {
            RepaintManager.setCurrentManager(new TwoStepRepaints());
        }
    }

    @Override
    public void addInvalidComponent(JComponent part) {
        toLayOut = true;
        super.addInvalidComponent(part);
    }

    @Override
    public void validateInvalidComponents() {
        laidOut = toLayOut;
        toLayOut = false;
        super.validateInvalidComponents();
    }

    @Override
    public void paintDirtyRegions() {
        if (laidOut && EventQueue.isDispatchThread()) {
            laidOut = false;
            EventQueue.invokeLater(super::paintDirtyRegions);
        } else {
            super.paintDirtyRegions();
        }
    }
}
