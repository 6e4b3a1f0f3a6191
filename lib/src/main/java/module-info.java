/** Models a weir-levelled foam fractionator and suggests the next small, safe step. */
module io.github.weirwise {
    requires tools.jackson.databind;
    requires hipparchus.core;
    requires hipparchus.ode;

    exports io.github.weirwise.report;
}
