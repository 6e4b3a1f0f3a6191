package io.github.weirwise.demo.window;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.start.UnitForm;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.GraphicsConfiguration;
import java.awt.GraphicsDevice;
import java.awt.GraphicsEnvironment;
import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.JOptionPane;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import javax.swing.filechooser.FileNameExtensionFilter;

/** Asks in dialogs over the window. */
final class Dialogs implements Asking {
    static final String ENDING = "jsonl";
    private static final int LONGEST_NAME = 60;
    private static final int FROM_EDGE_PX = 60;
    private static final int ROOM_FOR_BAR_PX = 16;
    /** Taken by the title and the buttons of a form. */
    private static final int AROUND_FORM_PX = 120;

    private final Supplier<Component> over;

    Dialogs(Supplier<Component> over) {
        this.over = over;
    }

    @Override
    public Optional<Path> journalToOpen(Dress dress) {
        return open(chooser("file.open", "file.kind", ENDING, dress));
    }

    private Optional<Path> open(JFileChooser chooser) {
        return chooser.showOpenDialog(over.get()) == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath())
                : Optional.empty();
    }

    @Override
    public Optional<Path> journalToBegin(String unit, Dress dress) {
        JFileChooser chooser = chooser("file.begin", "file.kind", ENDING, dress);
        chooser.setSelectedFile(new File(fileName(unit) + "." + ENDING));
        if (chooser.showSaveDialog(over.get()) != JFileChooser.APPROVE_OPTION) {
            return Optional.empty();
        }
        String name = chooser.getSelectedFile().getPath();
        return Optional.of(Path.of(name.endsWith("." + ENDING) ? name : name + "." + ENDING));
    }

    /** Letters, digits, blanks and dashes are taken by every file system. */
    static String fileName(String unit) {
        String plain = unit.replaceAll("[^\\p{L}\\p{N} _-]", "").strip();
        return plain.isEmpty() ? "unit" : plain.substring(0, Math.min(plain.length(), LONGEST_NAME));
    }

    @Override
    public Optional<Path> fileToSave(String suggestedName, Dress dress) {
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle(dress.text("file.save"));
        chooser.setSelectedFile(new File(suggestedName));
        while (chooser.showSaveDialog(over.get()) == JFileChooser.APPROVE_OPTION) {
            File chosen = chooser.getSelectedFile();
            if (!chosen.exists() || sure(dress.text("file.replace", chosen.getName()), dress)) {
                return Optional.of(chosen.toPath());
            }
        }
        return Optional.empty();
    }

    private static JFileChooser chooser(String key, String kind, String ending, Dress dress) {
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle(dress.text(key));
        chooser.setFileFilter(new FileNameExtensionFilter(dress.text(kind), ending));
        return chooser;
    }

    @Override
    public boolean describe(UnitForm form, Dress dress) {
        JScrollPane scroll = new JScrollPane(form);
        scroll.setBorder(null);
        Dimension whole = form.getPreferredSize();
        scroll.setPreferredSize(new Dimension(
                whole.width + ROOM_FOR_BAR_PX,
                Math.min(whole.height + 4, over.get().getHeight() - AROUND_FORM_PX)));
        JOptionPane pane = new JOptionPane(scroll, JOptionPane.PLAIN_MESSAGE, JOptionPane.OK_CANCEL_OPTION) {
            private static final long serialVersionUID = 1L;

            @Override
            public void selectInitialValue() {
                super.selectInitialValue();
                form.goTo();
            }
        };
        JDialog dialog = pane.createDialog(over.get(), dress.text("form.title"));
        dialog.setVisible(true);
        dialog.dispose();
        return Integer.valueOf(JOptionPane.OK_OPTION).equals(pane.getValue());
    }

    @Override
    public Optional<String> newName(String now, Dress dress) {
        Object typed = JOptionPane.showInputDialog(
                over.get(),
                dress.text("file.name"),
                dress.text("start.rename"),
                JOptionPane.PLAIN_MESSAGE,
                null,
                null,
                now);
        return Optional.ofNullable(typed)
                .map(name -> name.toString().strip())
                .filter(name -> !name.isEmpty() && !name.equals(now));
    }

    @Override
    public boolean sure(String question, Dress dress) {
        return JOptionPane.showConfirmDialog(
                        over.get(),
                        question,
                        dress.text("window.name"),
                        JOptionPane.YES_NO_OPTION,
                        JOptionPane.WARNING_MESSAGE)
                == JOptionPane.YES_OPTION;
    }

    @Override
    public Optional<Path> documentToOpen(Dress dress) {
        return open(chooser("file.document", "file.json", "json", dress));
    }

    @Override
    public void showBeside(String title, JComponent content) {
        if (SwingUtilities.getWindowAncestor(content) instanceof JFrame there) {
            there.setVisible(true);
            there.toFront();
            return;
        }
        JFrame beside = new JFrame(title);
        beside.setContentPane(content);
        beside.setSize(760, 640);
        place(beside);
        beside.setVisible(true);
    }

    /** On another screen when there is one, because what it shows is not for whoever sits at this one. */
    private void place(JFrame beside) {
        GraphicsConfiguration here = over.get().getGraphicsConfiguration();
        for (GraphicsDevice screen :
                GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices()) {
            GraphicsConfiguration there = screen.getDefaultConfiguration();
            if (here != null && !there.getBounds().equals(here.getBounds())) {
                beside.setLocation(there.getBounds().x + FROM_EDGE_PX, there.getBounds().y + FROM_EDGE_PX);
                return;
            }
        }
        beside.setLocationRelativeTo(over.get());
    }
}
