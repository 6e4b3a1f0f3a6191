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
import java.util.function.Consumer;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;

/** The menus: journals, and how everything looks. Each entry has a key of its own. */
final class Menus {
    private static final Map<String, Integer> KEYS = keys();

    private final JMenuBar bar = new JMenuBar();
    private final Map<String, JMenuItem> items = new LinkedHashMap<>();
    private final JCheckBoxMenuItem dark = new JCheckBoxMenuItem();
    private final JCheckBoxMenuItem us = new JCheckBoxMenuItem();
    private final Consumer<Dress> dressing;
    private Dress dress;

    /**
     * The menus.
     *
     * @param deeds what each entry of the first menu does, by its name
     * @param dressing gets other words or colours
     */
    Menus(Map<String, Runnable> deeds, Consumer<Dress> dressing, Dress dress) {
        this.dressing = dressing;
        this.dress = dress;
        JMenu file = menu("menu.file");
        JMenu view = menu("menu.view");
        KEYS.forEach((key, letter) -> {
            if (key.equals("menu.quit")) {
                file.addSeparator();
            }
            add(file, key, new JMenuItem(), letter, deeds.get(key));
        });
        add(view, "menu.dark", dark, KeyEvent.VK_D, this::change);
        add(view, "menu.us", us, KeyEvent.VK_U, this::change);
        dress(dress);
    }

    private static Map<String, Integer> keys() {
        Map<String, Integer> keys = new LinkedHashMap<>();
        keys.put("menu.begin", KeyEvent.VK_N);
        keys.put("menu.open", KeyEvent.VK_O);
        keys.put("menu.invented", KeyEvent.VK_I);
        keys.put("menu.trainer", KeyEvent.VK_T);
        keys.put("menu.quit", KeyEvent.VK_Q);
        return keys;
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
        dressing.accept(new Dress(new Words(book), Palette.of(dark.isSelected())));
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
