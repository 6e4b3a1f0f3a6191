package io.github.weirwise.demo.start;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.demo.panel.Sheet;
import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.demo.picture.UnitPicture;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.SkimmerUnit;
import java.awt.Component;
import java.awt.Font;
import java.awt.KeyboardFocusManager;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;

/** One's own units, a few plain lines each, and what can be done with their journals. */
public final class UnitList extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final float LARGE = 1.15f;
    private static final int IN_A_ROW = 3;
    private static final double RIGHT_UNDER_BASE_MM = 18;

    /** What can be done with a journal. */
    public interface Deeds {
        /** Goes to its round. */
        void go(Path journal);

        /** Asks for another name of its file. */
        void rename(Path journal);

        /** Writes a copy of it to where a person wants it. */
        void export(Path journal);

        /** Writes its hand-over sheet for printing. */
        void print(Path journal);

        /** Takes it off the list; the file stays. */
        void drop(Path journal);
    }

    private final transient Deeds deeds;
    private final Sheet sheet = new Sheet("[grow,fill]");
    private final List<JButton> buttons = new ArrayList<>();
    private transient List<UnitLine> lines = List.of();
    private transient Dress dress;

    /** An empty list. */
    public UnitList(Deeds deeds, Dress dress) {
        super(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
        this.deeds = deeds;
        this.dress = dress;
        setOpaque(false);
        setName("start.units");
        JScrollPane scroll = Sheet.around(sheet);
        add(scroll, "grow");
        fill();
    }

    /** Shows these units. */
    public void show(List<UnitLine> others) {
        if (others.equals(lines)) {
            return;
        }
        boolean first = lines.isEmpty();
        lines = List.copyOf(others);
        Component had = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        boolean here = had != null && SwingUtilities.isDescendingFrom(had, this);
        fill();
        if (here || first && isShowing() && !(had instanceof JTextComponent)) {
            goTo(here ? had.getName() : "start.go.0");
        }
    }

    /** Goes to the button with a name, as after the lines were made anew. */
    private void goTo(String name) {
        buttons.stream()
                .filter(button -> button.getName().equals(name))
                .findFirst()
                .ifPresent(JButton::requestFocusInWindow);
    }

    private void fill() {
        buttons.clear();
        sheet.removeAll();
        if (lines.isEmpty()) {
            sheet.add(prose(dress.text("start.noUnits"), 1, Font.PLAIN), "growx, wmin 0, wrap 12");
            sheet.add(prose(dress.text("start.what"), LARGE, Font.BOLD), "growx, wmin 0, wrap");
            sheet.add(prose(dress.text("start.how"), 1, Font.PLAIN), "growx, wmin 0, wrap");
            sheet.add(example(), "grow, push, wmin 0, h 300:560:");
        }
        for (int i = 0; i < lines.size(); i++) {
            unit(lines.get(i), i);
        }
        revalidate();
        repaint();
    }

    /** A unit with the names of its parts, for whoever has never seen one. */
    private UnitPicture example() {
        SkimmerUnit unit = LanternQuay.jetty();
        Scene scene = Scene.wanted(unit, unit.ratedSettings(unit.column().funnelBaseMm() - RIGHT_UNDER_BASE_MM));
        UnitPicture picture = new UnitPicture(scene, dress.words(), dress.palette());
        picture.setName("start.example");
        picture.setFocusable(false);
        return picture;
    }

    private void unit(UnitLine line, int number) {
        JPanel block = new JPanel(new MigLayout("insets 4 0 12 0, fillx, gapy 2", "[grow,fill]", ""));
        block.setOpaque(false);
        Prose name = prose(line.name(), LARGE, Font.BOLD);
        name.setName("start.name." + number);
        block.add(name, "growx, wmin 0, wrap");
        for (Phrase phrase : line.says()) {
            block.add(prose(dress.words().say(phrase), 1, Font.PLAIN), "growx, wmin 0, wrap");
        }
        Prose file = prose(line.path().toString(), 1, Font.PLAIN);
        file.setForeground(dress.palette().muted());
        block.add(file, "growx, wmin 0, wrap");
        JPanel row = new JPanel(new MigLayout("insets 4 0 0 0, gapx 6, gapy 4, nogrid"));
        row.setOpaque(false);
        button(row, "start.go", line, number, deeds::go);
        button(row, "start.rename", line, number, deeds::rename);
        button(row, "start.export", line, number, deeds::export);
        button(row, "start.print", line, number, deeds::print);
        button(row, "start.drop", line, number, deeds::drop);
        block.add(row, "growx, wmin 0");
        sheet.add(block, "growx, wmin 0, wrap");
    }

    private void button(JPanel row, String key, UnitLine line, int number, Consumer<Path> deed) {
        JButton button = new JButton();
        button.setName(key + "." + number);
        Buttons.name(button, dress, key);
        button.getAccessibleContext()
                .setAccessibleName(dress.text("ask.named", button.getText(), line.name() + " " + line.path()));
        button.addActionListener(e -> deed.accept(line.path()));
        button.getAccessibleContext()
                .setAccessibleDescription(
                        line.says().stream().map(dress.words()::say).collect(Collectors.joining(" ")));
        buttons.add(button);
        row.add(button, row.getComponentCount() == IN_A_ROW - 1 ? "wrap" : "");
    }

    private Prose prose(String text, float size, int style) {
        Prose prose = new Prose();
        Font plain = UIManager.getFont("Label.font");
        prose.setFont(plain.deriveFont(style, plain.getSize2D() * size));
        prose.setForeground(dress.palette().ink());
        prose.setText(text);
        return prose;
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        fill();
    }
}
