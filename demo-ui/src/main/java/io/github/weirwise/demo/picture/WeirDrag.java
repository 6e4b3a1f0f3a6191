package io.github.weirwise.demo.picture;

import java.awt.Cursor;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;

/** Takes the weir by its grip and moves it with the mouse. */
final class WeirDrag extends MouseAdapter {
    private final UnitPicture picture;
    private double grabbedMm;
    private double crestMm;
    private boolean holding;

    WeirDrag(UnitPicture picture) {
        this.picture = picture;
    }

    @Override
    public void mousePressed(MouseEvent e) {
        picture.requestFocusInWindow();
        holding = picture.weirHandle().contains(e.getPoint());
        grabbedMm = picture.view().heightMm(e.getY());
        crestMm = picture.scene().settings().weirCrestMm();
    }

    @Override
    public void mouseDragged(MouseEvent e) {
        if (holding) {
            picture.moveWeirTo(crestMm + picture.view().heightMm(e.getY()) - grabbedMm);
        }
    }

    @Override
    public void mouseReleased(MouseEvent e) {
        holding = false;
    }

    @Override
    public void mouseMoved(MouseEvent e) {
        boolean over = picture.weirHandle().contains(e.getPoint());
        picture.setCursor(Cursor.getPredefinedCursor(over ? Cursor.N_RESIZE_CURSOR : Cursor.DEFAULT_CURSOR));
    }
}
