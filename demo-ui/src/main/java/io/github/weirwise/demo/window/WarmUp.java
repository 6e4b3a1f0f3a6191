package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.Adviser;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.picture.NeckIcon;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.setup.FitCheck;
import io.github.weirwise.setup.LanternQuaySites;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import javax.swing.JComboBox;
import javax.swing.JSlider;
import javax.swing.JSpinner;
import javax.swing.JTable;
import javax.swing.JTree;
import javax.swing.UIManager;

/**
 * What costs time the first time that it is used, done once away from the event thread while the start page is read. No component
 * is made here: classes are loaded, values compared, one piece of advice is worked out.
 */
public final class WarmUp {
    private static final List<String> LOOKS = List.of(
            "CheckBoxUI",
            "ComboBoxUI",
            "FormattedTextFieldUI",
            "ListUI",
            "ScrollBarUI",
            "SliderUI",
            "SpinnerUI",
            "TableHeaderUI",
            "TableUI",
            "TextAreaUI",
            "TextFieldUI",
            "TreeUI");
    private static final List<Class<?>> PARTS =
            List.of(JComboBox.class, JSlider.class, JSpinner.class, JTable.class, JTree.class);

    private WarmUp() {}

    /** Warms up on a tank that stays as it is, and gives it back. */
    public static TankDesk on(TankDesk desk, Adviser adviser, Dress dress) {
        LOOKS.forEach(id -> UIManager.getDefaults().getUIClass(id));
        PARTS.forEach(WarmUp::load);
        BufferedImage nowhere = new BufferedImage(64, 64, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D graphics = nowhere.createGraphics();
        for (FoamLookWord word : FoamLookWord.values()) {
            new NeckIcon(word, dress.palette()).paintIcon(null, graphics, 0, 0);
        }
        graphics.dispose();
        // The first comparison of a record makes the code that compares it.
        desk.scene().equals(desk.scene());
        desk.scene().hashCode();
        dress.words()
                .say(adviser.advise(desk.unit(), desk.told(), desk.journal(), desk.now())
                        .what());
        dress.words().say(FitCheck.of(LanternQuaySites.trainingTank()).summary());
        return desk;
    }

    private static void load(Class<?> part) {
        try {
            Class.forName(part.getName(), true, part.getClassLoader());
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }
}
