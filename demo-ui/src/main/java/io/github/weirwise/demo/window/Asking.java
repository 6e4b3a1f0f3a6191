package io.github.weirwise.demo.window;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.start.UnitForm;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JComponent;

/** What has to be asked in a dialog; a test answers for itself. */
public interface Asking {
    /** Which journal to open. */
    Optional<Path> journalToOpen(Dress dress);

    /** Where to keep a new journal. */
    Optional<Path> journalToBegin(Dress dress);

    /** Where to save a file of a suggested name. */
    Optional<Path> fileToSave(String suggestedName, Dress dress);

    /** Shows the form of a unit; true when it is to be taken as filled in. */
    boolean describe(UnitForm form, Dress dress);

    /** Another name for a file. */
    Optional<String> newName(String now, Dress dress);

    /** Whether something that cannot be taken back is really meant. */
    boolean sure(String question, Dress dress);

    /** Which other document to open. */
    Optional<Path> documentToOpen(Dress dress);

    /** Shows something in a window of its own, or brings that window to the front. */
    void showBeside(String title, JComponent content);

    /** Nobody is there to answer. */
    Asking NOBODY = new Asking() {
        @Override
        public Optional<Path> journalToOpen(Dress dress) {
            return Optional.empty();
        }

        @Override
        public Optional<Path> journalToBegin(Dress dress) {
            return Optional.empty();
        }

        @Override
        public Optional<Path> fileToSave(String suggestedName, Dress dress) {
            return Optional.empty();
        }

        @Override
        public boolean describe(UnitForm form, Dress dress) {
            return false;
        }

        @Override
        public Optional<String> newName(String now, Dress dress) {
            return Optional.empty();
        }

        @Override
        public boolean sure(String question, Dress dress) {
            return false;
        }

        @Override
        public Optional<Path> documentToOpen(Dress dress) {
            return Optional.empty();
        }

        @Override
        public void showBeside(String title, JComponent content) {
            // There is no screen to show it on.
        }
    };
}
