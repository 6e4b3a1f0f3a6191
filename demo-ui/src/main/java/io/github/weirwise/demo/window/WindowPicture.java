package io.github.weirwise.demo.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** Paints the window's content into a picture file without a window. */
public final class WindowPicture {
    private WindowPicture() {}

    /** The content at a size in pixels, with {@code scale} device pixels to each. */
    public static BufferedImage of(Container content, int width, int height, double scale) {
        content.setSize(width, height);
        // Wrapped text tells its height only once it has a width, so the first rounds settle the sizes.
        for (int round = 0; round < 3; round++) {
            lay(content);
        }
        BufferedImage image = new BufferedImage(
                (int) Math.round(width * scale), (int) Math.round(height * scale), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            // Layout measures text at scale 1; without this, letters set at another scale would need other widths.
            graphics.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
            graphics.scale(scale, scale);
            content.paint(graphics);
        } finally {
            graphics.dispose();
        }
        return image;
    }

    /** Lays out a tree of components that is on no screen. */
    public static void lay(Container container) {
        container.invalidate();
        container.doLayout();
        for (Component child : container.getComponents()) {
            if (child instanceof Container inner) {
                lay(inner);
            }
        }
    }

    /**
     * Writes a PNG.
     *
     * @throws IOException if it cannot be written
     */
    public static void write(BufferedImage image, Path file) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        try (OutputStream out = Files.newOutputStream(file)) {
            ImageIO.write(image, "png", out);
        }
    }
}
