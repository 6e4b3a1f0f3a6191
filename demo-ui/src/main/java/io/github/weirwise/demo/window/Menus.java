package io.github.weirwise.demo.window;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.UnitSystem;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;

/** The menus: journals, and how everything looks. Each entry has a key of its own. */
final class Menus {
    /** What the menus can do. */
    interface Deeds {
        void begin();

        void open();

        void invented();

        void trainer();

        void quit();

        void dress(Dress dress);
    }

    private final JMenuBar bar = new JMenuBar();
    private final Map<String, JMenuItem> items = new LinkedHashMap<>();
    private final JCheckBoxMenuItem dark = new JCheckBoxMenuItem();
    private final JCheckBoxMenuItem us = new JCheckBoxMenuItem();
    private final Deeds deeds;
    private Dress dress;

    Menus(Deeds deeds, Dress dress) {
        this.deeds = deeds;
        this.dress = dress;
        JMenu file = menu("menu.file");
        JMenu view = menu("menu.view");
        add(file, "menu.begin", new JMenuItem(), KeyEvent.VK_N, deeds::begin);
        add(file, "menu.open", new JMenuItem(), KeyEvent.VK_O, deeds::open);
        add(file, "menu.invented", new JMenuItem(), KeyEvent.VK_I, deeds::invented);
        add(file, "menu.trainer", new JMenuItem(), KeyEvent.VK_T, deeds::trainer);
        file.addSeparator();
        add(file, "menu.quit", new JMenuItem(), KeyEvent.VK_Q, deeds::quit);
        add(view, "menu.dark", dark, KeyEvent.VK_D, this::change);
        add(view, "menu.us", us, KeyEvent.VK_U, this::change);
        dress(dress);
    }

    private JMenu menu(String key) {
        JMenu menu = new JMenu();
        items.put(key, menu);
        menu.setName(key);
        bar.add(menu);
        return menu;
    }

    private void add(JMenu menu, String key, JMenuItem item, int keyCode, Runnable deed) {
        item.setName(key);
        item.setAccelerator(KeyStroke.getKeyStroke(keyCode, InputEvent.CTRL_DOWN_MASK));
        item.addActionListener(e -> deed.run());
        items.put(key, item);
        menu.add(item);
    }

    private void change() {
        PhraseBook book = new PhraseBook(
                dress.words().book().locale(), us.isSelected() ? UnitSystem.US_CUSTOMARY : UnitSystem.METRIC);
        deeds.dress(new Dress(new Words(book), Palette.of(dark.isSelected())));
    }

    JMenuBar bar() {
        return bar;
    }

    void dress(Dress other) {
        dress = other;
        bar.setBackground(other.palette().ground());
        bar.setBorder(null);
        bar.getAccessibleContext().setAccessibleName(other.text("menu.bar"));
        items.forEach((key, item) -> Buttons.name(item, other, key));
        dark.setSelected(other.palette().dark());
        us.setSelected(other.words().book().units() == UnitSystem.US_CUSTOMARY);
    }
}
