package io.github.weirwise.demo.window;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.start.UnitForm;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JComponent;

/** What has to be asked in a dialog; nobody answers unless it is told how. */
public interface Asking {
    /** Which journal to open. */
    default Optional<Path> journalToOpen(Dress dress) {
        return Optional.empty();
    }

    /** Where to keep the new journal of a unit with this name. */
    default Optional<Path> journalToBegin(String unit, Dress dress) {
        return Optional.empty();
    }

    /** Where to save a file of a suggested name. */
    default Optional<Path> fileToSave(String suggestedName, Dress dress) {
        return Optional.empty();
    }

    /** Shows the form of a unit; true when it is to be taken as filled in. */
    default boolean describe(UnitForm form, Dress dress) {
        return false;
    }

    /** Another name for a file. */
    default Optional<String> newName(String now, Dress dress) {
        return Optional.empty();
    }

    /** Whether something that cannot be taken back is really meant. */
    default boolean sure(String question, Dress dress) {
        return false;
    }

    /** Which other document to open. */
    default Optional<Path> documentToOpen(Dress dress) {
        return Optional.empty();
    }

    /** Shows something in a window of its own, or brings that window to the front. */
    default void showBeside(String title, JComponent content) {}

    /** Nobody is there to answer. */
    Asking NOBODY = new Asking() {};
}
