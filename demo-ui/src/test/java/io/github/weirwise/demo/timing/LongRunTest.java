package io.github.weirwise.demo.timing;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.Sample;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.window.MainPanel;
import org.junit.jupiter.api.Test;

/** A clock that runs for long fills no memory: a fortieth of the hour that the command runs, with a wide bound. */
class LongRunTest {
    private static final int TICKS = 900;
    private static final double MOST_GROWN_MB = 12;

    @Test
    void memoryDoesNotGrowWithTime() throws Exception {
        MainPanel panel = Parts.onEvents(() -> Sample.window(Dress.USUAL));
        LongRun.Measured measured = new LongRun(panel, (TankDesk) panel.desk()).run(TICKS);
        assertThat(measured.tankDays()).isGreaterThan(20);
        assertThat(measured.journal()).isEqualTo(2);
        assertThat(measured.lateMb() - measured.earlyMb()).isLessThan(MOST_GROWN_MB);
    }
}
