/** Models a weir-levelled foam fractionator and suggests the next small, safe step. */
module io.github.weirwise {
    requires tools.jackson.databind;
    requires hipparchus.core;
    requires hipparchus.ode;

    exports io.github.weirwise;
    exports io.github.weirwise.advice;
    exports io.github.weirwise.care;
    exports io.github.weirwise.setup;
    exports io.github.weirwise.diagnosis;
    exports io.github.weirwise.json;
    exports io.github.weirwise.practice;
    exports io.github.weirwise.reading;
    exports io.github.weirwise.report;
    exports io.github.weirwise.sheet;
    exports io.github.weirwise.table;
    exports io.github.weirwise.unit;
    exports io.github.weirwise.tank;
    exports io.github.weirwise.watch;
}
