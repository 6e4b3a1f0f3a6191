package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.Adviser;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.picture.NeckIcon;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.setup.FitCheck;
import io.github.weirwise.setup.LanternQuaySites;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JFormattedTextField;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JRadioButton;
import javax.swing.JSlider;
import javax.swing.JSpinner;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTree;
import javax.swing.UIManager;
import javax.swing.plaf.basic.BasicHTML;

/**
 * What costs time the first time that it is used, done once away from the event thread while the start page is read: classes are
 * loaded, values compared, one piece of advice is worked out. No component of the window is made here.
 */
public final class WarmUp {
    private static final List<String> LOOKS = List.of(
            "CheckBoxUI",
            "ComboBoxUI",
            "FormattedTextFieldUI",
            "ListUI",
            "RadioButtonUI",
            "ScrollBarUI",
            "SliderUI",
            "SpinnerUI",
            "TableHeaderUI",
            "TableUI",
            "TextAreaUI",
            "TextFieldUI",
            "TreeUI");
    private static final List<Class<?>> PARTS = List.of(
            JComboBox.class,
            JFormattedTextField.class,
            JList.class,
            JRadioButton.class,
            JSlider.class,
            JSpinner.class,
            JTable.class,
            JTextArea.class,
            JTree.class);
    /** Below these all classes are linked. */
    private static final List<String> ROOMS = List.of(
            "/com/formdev/flatlaf/ui",
            "/net/miginfocom",
            "/io/github/weirwise/demo",
            "/io/github/weirwise/care",
            "/io/github/weirwise/practice",
            "/io/github/weirwise/setup");

    private static final String ENDING = ".class";
    /** Of the size of a label. */
    private static final float[] SIZES = {0.85f, 1, 1.08f, 1.15f, 1.3f, 1.35f, 1.5f};

    private static final String LETTERS =
            IntStream.rangeClosed(' ', '~').mapToObj(Character::toString).collect(Collectors.joining());

    private WarmUp() {}

    /** Warms up on a tank that stays as it is, and gives it back. */
    public static TankDesk on(TankDesk desk, Adviser adviser, Dress dress) {
        LOOKS.forEach(id -> withInner(UIManager.getDefaults().getUIClass(id)));
        PARTS.forEach(WarmUp::withInner);
        ROOMS.forEach(WarmUp::room);
        // The first label of more than one line makes the style sheet of all of them.
        BasicHTML.createHTMLView(new JLabel(), "<html>1<br>2");
        BufferedImage nowhere = new BufferedImage(64, 64, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D graphics = nowhere.createGraphics();
        for (FoamLookWord word : FoamLookWord.values()) {
            new NeckIcon(word, dress.palette()).paintIcon(null, graphics, 0, 0);
        }
        letters(graphics);
        // The first comparison of a record makes the code that compares it.
        desk.scene().equals(desk.scene());
        desk.scene().hashCode();
        dress.words()
                .say(adviser.advise(desk.unit(), desk.told(), desk.journal(), desk.now())
                        .what());
        FitCheck.of(LanternQuaySites.trainingTank())
                .answers()
                .forEach(each -> dress.words().of("fit.figures", each.number(), each.limit(), each.margin()));
        StripOf.desk(desk, dress).draw(graphics, new Rectangle(400, 200), dress, UIManager.getFont("Label.font"));
        graphics.dispose();
        return desk;
    }

    /** The letters of every size and style that the screens are set in. */
    private static void letters(Graphics2D graphics) {
        if (Toolkit.getDefaultToolkit().getDesktopProperty("awt.font.desktophints") instanceof Map<?, ?> hints) {
            graphics.addRenderingHints(hints);
        }
        Font plain = UIManager.getFont("Label.font");
        for (int style : new int[] {Font.PLAIN, Font.BOLD, Font.ITALIC}) {
            for (float size : SIZES) {
                graphics.setFont(plain.deriveFont(style, plain.getSize2D() * size));
                graphics.drawString(LETTERS, 0, 40);
            }
        }
    }

    /** Links every class of a room, from the folder or the jar that it lies in. */
    private static void room(String place) {
        try {
            URI there = WarmUp.class.getResource(place).toURI();
            if (there.getScheme().equals("jar")) {
                try (FileSystem jar = FileSystems.newFileSystem(there, Map.of())) {
                    link(jar.getPath(place), jar.getPath("/"));
                }
            } else {
                Path folder = Path.of(there);
                link(folder, folder.resolve("../../../..").normalize());
            }
        } catch (IOException | URISyntaxException e) {
            // Nothing is lost but the time that the first use then takes.
        }
    }

    private static void link(Path folder, Path root) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(folder)) {
            files = all.filter(file -> file.toString().endsWith(ENDING)).toList();
        }
        for (Path file : files) {
            String name = root.relativize(file)
                    .toString()
                    .replace(file.getFileSystem().getSeparator(), ".");
            link(name.substring(0, name.length() - ENDING.length()));
        }
    }

    /** A class, those that it is made of and those that stand in them. */
    private static void withInner(Class<?> part) {
        for (Class<?> each = part; each != null && each != Object.class; each = each.getSuperclass()) {
            link(each.getName());
            for (Class<?> inner : each.getDeclaredClasses()) {
                link(inner.getName());
            }
        }
    }

    /** Loads and links a class, and does not run any of it: that might wait for the event thread, which waits for it. */
    private static void link(String name) {
        try {
            Class.forName(name, false, WarmUp.class.getClassLoader()).getDeclaredMethods();
        } catch (ClassNotFoundException | LinkageError e) {
            // It is not used then, or its first use tells what is wrong.
        }
    }
}
