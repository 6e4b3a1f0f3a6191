package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import java.awt.Component;
import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/** Names buttons from texts; an ampersand stands before the letter that Alt presses. */
public final class Buttons {
    private Buttons() {}

    /** What a button is called, which is its text's key as well unless that changes, and what a press does. */
    public static void set(AbstractButton button, String name, Runnable deed) {
        button.setName(name);
        button.addActionListener(e -> deed.run());
    }

    /** Labels and mnemonics of buttons that are called as their texts. */
    public static void name(Dress dress, AbstractButton... buttons) {
        for (AbstractButton button : buttons) {
            name(button, dress, button.getName());
        }
    }

    /** A row that shows what is behind it; a part that is hidden takes no room. */
    public static JPanel row(Component... parts) {
        JPanel row = new JPanel(new MigLayout("insets 0, gapx 6, hidemode 3"));
        row.setOpaque(false);
        for (Component part : parts) {
            row.add(part);
        }
        return row;
    }

    /** Sets label and mnemonic. */
    public static void name(AbstractButton button, Dress dress, String key, Object... values) {
        String text = dress.text(key, values);
        int at = text.indexOf('&');
        button.setText(at < 0 ? text : text.substring(0, at) + text.substring(at + 1));
        if (at >= 0 && at + 1 < text.length()) {
            button.setMnemonic(Character.toUpperCase(text.charAt(at + 1)));
            button.setDisplayedMnemonicIndex(at);
        }
        button.getAccessibleContext().setAccessibleName(button.getText());
    }

    /** Does something at a key; {@code when} as of {@link JComponent#getInputMap(int)}. */
    public static void onKey(JComponent where, int when, KeyStroke key, Runnable deed) {
        where.getInputMap(when).put(key, key.toString());
        where.getActionMap().put(key.toString(), new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                deed.run();
            }
        });
    }
}
