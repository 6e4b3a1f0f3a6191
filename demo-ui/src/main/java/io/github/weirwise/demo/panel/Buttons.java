package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import javax.swing.AbstractButton;

/** Names buttons from texts; an ampersand stands before the letter that Alt presses. */
public final class Buttons {
    private Buttons() {}

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
}
