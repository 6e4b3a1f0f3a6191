/**
 * Models a weir-levelled foam fractionator and suggests the next small, safe step.
 *
 * <p>Exported, and so promised, are the front door, the values that go in and come out, and the contract for other languages. Practice,
 * tank, setup, sheets and tables are reached through documents ({@code json}); our own demo uses them from the class path.
 */
module io.github.weirwise {
    requires tools.jackson.databind;
    requires hipparchus.core;
    requires hipparchus.ode;

    exports io.github.weirwise;
    exports io.github.weirwise.advice;
    exports io.github.weirwise.care;
    exports io.github.weirwise.diagnosis;
    exports io.github.weirwise.json;
    exports io.github.weirwise.reading;
    exports io.github.weirwise.report;
    exports io.github.weirwise.unit;
    exports io.github.weirwise.watch;
}
