package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Pieces.Piece;
import java.awt.Insets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** Pages that lie one on another, and above them a row of buttons that turn to them. Only the one in sight is kept up to date. */
public final class Tabs extends JPanel {
    private static final long serialVersionUID = 1L;

    private final JPanel choice = new JPanel(new MigLayout("insets 0, gapx 6"));
    private final transient Group group = new Group();
    private final transient Map<String, Page> pages = new LinkedHashMap<>();
    private final Place place = new Place();
    private transient Optional<Page> shown = Optional.empty();

    private record Page(JToggleButton button, JComponent content, Piece piece) {}

    /** No pages yet. */
    public Tabs() {
        super(new MigLayout("insets 0, fill, wrap 1, gapy 8", "[grow,fill]", "[][grow,fill]"));
        setOpaque(false);
        choice.setOpaque(false);
        add(choice);
        add(place.outside(), "grow, push, wmin 0, hmin 0");
    }

    /** One more page; its button has the name and the text of the key. */
    public void add(String key, JComponent page, Piece piece, Dress dress) {
        JToggleButton button = new JToggleButton();
        button.setName(key);
        button.setMargin(new Insets(5, 8, 5, 8));
        button.addActionListener(e -> turn(key));
        Buttons.name(button, dress, key);
        group.add(button);
        choice.add(button);
        pages.put(key, new Page(button, page, piece));
        place.keep(page);
        if (shown.isEmpty()) {
            turn(key);
        }
    }

    /** Turns to a page, which then shows what is so now. */
    public void turn(String key) {
        Page page = pages.get(key);
        shown = Optional.of(page);
        page.button().setSelected(true);
        page.piece().refresh().run();
        place.hold(page.content());
    }

    /** Whether a page can be turned to now. */
    public void offer(String key, boolean on) {
        pages.get(key).button().setEnabled(on);
    }

    /** The page in sight shows what is so now; the others do when it is turned to them. */
    public void refresh() {
        shown.ifPresent(page -> page.piece().refresh().run());
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        pages.forEach((key, page) -> {
            Buttons.name(page.button(), other, key);
            page.piece().dress().accept(other);
        });
    }
}
