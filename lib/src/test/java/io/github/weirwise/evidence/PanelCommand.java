package io.github.weirwise.evidence;

import io.github.weirwise.lab.PanelRun;

/** The panel of truths; see {@link PanelRun} for its properties. */
final class PanelCommand implements Evidence.Command {
    @Override
    public void run(String[] options) throws Exception {
        PanelRun.fromProperties().run();
    }
}
