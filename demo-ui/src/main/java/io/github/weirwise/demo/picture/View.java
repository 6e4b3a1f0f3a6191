package io.github.weirwise.demo.picture;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;

/**
 * The one transform between the model's millimetres (up is positive, 0 is the chamber floor) and pixels (down is
 * positive).
 *
 * @param pxPerMm scale, above 0
 * @param originXPx where x = 0 lies
 * @param originYPx where height 0 lies
 */
public record View(double pxPerMm, double originXPx, double originYPx) {
    /** The view that shows a model rectangle as large as it fits into an area, centred. */
    public static View fit(Rectangle2D modelMm, Rectangle2D areaPx) {
        double scale = Math.min(areaPx.getWidth() / modelMm.getWidth(), areaPx.getHeight() / modelMm.getHeight());
        scale = Math.max(scale, 0.05);
        return new View(
                scale,
                areaPx.getCenterX() - scale * modelMm.getCenterX(),
                areaPx.getCenterY() + scale * modelMm.getCenterY());
    }

    public double x(double mm) {
        return originXPx + pxPerMm * mm;
    }

    public double y(double heightMm) {
        return originYPx - pxPerMm * heightMm;
    }

    public double length(double mm) {
        return pxPerMm * mm;
    }

    double widthMm(double px) {
        return px / pxPerMm;
    }

    /** The height behind a pixel row. */
    public double heightMm(double yPx) {
        return (originYPx - yPx) / pxPerMm;
    }

    /** The same as a transform, for shapes given in model millimetres. */
    public AffineTransform transform() {
        return new AffineTransform(pxPerMm, 0, 0, -pxPerMm, originXPx, originYPx);
    }

    /** A rectangle given by its model edges. */
    public Rectangle2D box(double leftMm, double bottomMm, double rightMm, double topMm) {
        return new Rectangle2D.Double(x(leftMm), y(topMm), length(rightMm - leftMm), length(topMm - bottomMm));
    }
}
