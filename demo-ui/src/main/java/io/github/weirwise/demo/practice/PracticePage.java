package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;

/** Something that shows a moment of a session. */
interface PracticePage {
    /** Shows the session as it is now. */
    void show(Moment moment);

    /** Other words or colours. */
    void dress(Dress dress);
}
