package io.github.weirwise.demo.care;

/** The sections of the form of an installation, in the order in which water goes round. */
enum SiteGroup {
    TANK,
    OVERFLOW,
    DRAIN,
    BOX,
    UNIT,
    SUMP,
    PUMP,
    RETURN,
    HOSE,
    PLACE
}
