package io.github.weirwise.demo.look;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Color;
import java.awt.Font;
import java.awt.Insets;
import java.util.HashMap;
import java.util.Map;
import javax.swing.UIManager;
import javax.swing.plaf.FontUIResource;

/** Sets up FlatLaf with the palette's colours, targets of at least 24 pixels and a ring that shows the focus. */
public final class Theme {
    private static final int FONT_SIZE = 13;

    private Theme() {}

    /** Makes the look and feel that belongs to a palette the current one. */
    public static void install(Palette palette) {
        Map<String, String> colours = new HashMap<>();
        colours.put("@background", hex(palette.ground()));
        colours.put("@foreground", hex(palette.ink()));
        colours.put("@componentBackground", hex(palette.paper()));
        colours.put("@accentColor", hex(palette.accent()));
        FlatLaf.setGlobalExtraDefaults(colours);
        if (palette.dark()) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        UIManager.put("defaultFont", new FontUIResource(new Font(Font.SANS_SERIF, Font.PLAIN, FONT_SIZE)));
        UIManager.put("Button.margin", new Insets(5, 12, 5, 12));
        UIManager.put("ToggleButton.margin", new Insets(5, 12, 5, 12));
        UIManager.put("MenuBar.itemMargins", new Insets(5, 9, 5, 9));
        UIManager.put("MenuItem.minimumWidth", 160);
        UIManager.put("Button.arc", 8);
        UIManager.put("Component.arc", 8);
        UIManager.put("Component.focusWidth", 2);
        UIManager.put("Component.hideMnemonics", Boolean.FALSE);
        UIManager.put("Slider.focusWidth", 3);
        UIManager.put("Spinner.padding", new Insets(4, 6, 4, 6));
        UIManager.put("ComboBox.padding", new Insets(4, 6, 4, 6));
        UIManager.put("TextField.margin", new Insets(4, 6, 4, 6));
        UIManager.put("ScrollBar.width", 12);
        UIManager.put("Tree.rowHeight", 0);
        UIManager.put("Tree.paintLines", Boolean.FALSE);
        UIManager.put("Tree.selectionBackground", palette.dark() ? palette.rule() : palette.water());
        UIManager.put("Tree.selectionForeground", palette.ink());
        UIManager.put("Tree.selectionInactiveBackground", palette.dark() ? palette.rule() : palette.water());
        UIManager.put("Tree.selectionInactiveForeground", palette.ink());
        Color pressed = palette.dark() ? new Color(0x0A5C8C) : palette.accent();
        UIManager.put("Button.default.background", pressed);
        UIManager.put("Button.default.foreground", Color.WHITE);
        // Whatever state it is in, its white words must be read.
        for (String state : new String[] {"focused", "hover", "pressed"}) {
            UIManager.put("Button.default." + state + "Background", pressed);
        }
        UIManager.put("Label.disabledForeground", palette.muted());
    }

    private static String hex(Color colour) {
        return String.format("#%06x", colour.getRGB() & 0xffffff);
    }
}
