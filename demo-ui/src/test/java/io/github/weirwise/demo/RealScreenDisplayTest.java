package io.github.weirwise.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Point;
import java.awt.Robot;
import java.lang.reflect.InvocationTargetException;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The ground under every window test: there is a screen, and what is painted arrives on it. */
@Tag("display")
class RealScreenDisplayTest {
    @Test
    void aColouredFrameIsSeenOnTheScreen() throws Exception {
        Color funnelBlue = new Color(0x0072B2);
        Robot robot = new Robot();
        JFrame frame = showFrame(funnelBlue);
        try {
            robot.waitForIdle();
            Point corner = frame.getLocationOnScreen();
            int x = corner.x + frame.getWidth() / 2;
            int y = corner.y + frame.getHeight() / 2;
            long deadline = System.nanoTime() + 5_000_000_000L;
            while (!robot.getPixelColor(x, y).equals(funnelBlue) && System.nanoTime() < deadline) {
                robot.delay(50);
            }
            assertThat(robot.getPixelColor(x, y)).isEqualTo(funnelBlue);
        } finally {
            SwingUtilities.invokeAndWait(frame::dispose);
        }
    }

    private static JFrame showFrame(Color colour) throws InterruptedException, InvocationTargetException {
        JFrame[] shown = new JFrame[1];
        SwingUtilities.invokeAndWait(() -> {
            JFrame frame = new JFrame("Lantern Quay");
            frame.getContentPane().setBackground(colour);
            frame.setSize(320, 240);
            frame.setVisible(true);
            shown[0] = frame;
        });
        return shown[0];
    }
}
