package io.github.weirwise.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Relations that hold for every installation, over seeded random ones. */
class FitRelationsTest {
    static Stream<Installation> sites() {
        Random random = new Random(20);
        return Stream.generate(() -> TestSites.random(random)).limit(60);
    }

    @ParameterizedTest
    @MethodSource("sites")
    void waterIsNeitherMadeNorLostAtAPowerCut(Installation site) {
        FitCheck check = FitCheck.of(site);
        WetSide wet = new WetSide(site);
        double risen = wet.litresAt(check.drainBack().levelAfterMm()) - wet.litresAt(wet.runningLevelMm());
        assertThat(risen).isCloseTo(check.drainBack().totalLitres(), within(1e-6));
        assertThat(check.drainBack().worstLitres())
                .isGreaterThanOrEqualTo(check.drainBack().totalLitres());
    }

    @ParameterizedTest
    @MethodSource("sites")
    void aWiderOverflowBringsLessWaterBack(Installation site) {
        Installation wide =
                TestSites.withOverflow(site, new Overflow(1.5 * site.overflow().openWidthMm()));
        assertThat(FitCheck.of(wide).drainBack().tankLitres())
                .isLessThan(FitCheck.of(site).drainBack().tankLitres());
    }

    @ParameterizedTest
    @MethodSource("sites")
    void aDeeperHoleBringsMoreWaterBackByItsLayer(Installation site) {
        ReturnLine line = site.returnLine();
        ReturnLine deeper = new ReturnLine(
                line.plumbing(), line.mouthBelowCrestMm() + 20, line.breakBelowCrestMm() + 10, line.checkValve());
        double more =
                FitCheck.of(TestSites.withReturnLine(site, deeper)).drainBack().tankLitres()
                        - FitCheck.of(site).drainBack().tankLitres();
        assertThat(more).isCloseTo(site.tank().litresInLayer(10), within(1e-6));
    }

    @ParameterizedTest
    @MethodSource("sites")
    void aLongerReturnPipeGivesLessFlow(Installation site) {
        Plumbing old = site.returnLine().plumbing();
        Plumbing longer = new Plumbing(old.boreMm(), old.lengthMm() * 2, old.fittings());
        ReturnLine line = new ReturnLine(
                longer, site.returnLine().mouthBelowCrestMm(), site.returnLine().breakBelowCrestMm(), false);
        assertThat(ReturnPoint.of(TestSites.withReturnLine(site, line)).flowLitresPerHour())
                .isLessThan(ReturnPoint.of(site).flowLitresPerHour());
    }

    @ParameterizedTest
    @MethodSource("sites")
    void twoDrainsCarryTwiceAsMuch(Installation site) {
        Drainage one = new Drainage(1, site.drainage().each(), 100, 300);
        Drainage two = new Drainage(2, site.drainage().each(), 100, 300);
        double single = capacity(TestSites.withDrainage(site, one));
        assertThat(capacity(TestSites.withDrainage(site, two))).isCloseTo(2 * single, within(1e-6 * single));
    }

    @ParameterizedTest
    @MethodSource("sites")
    void volumeAndLevelAreInverse(Installation site) {
        WetSide wet = new WetSide(site);
        for (double share = 0.1; share < 1; share += 0.2) {
            double level = site.filter().levelCoveringMm(share);
            assertThat(wet.levelAt(wet.litresAt(level))).isCloseTo(level, within(1e-6));
        }
    }

    private static double capacity(Installation site) {
        return FitCheck.of(site)
                .answer(Question.DRAIN_FULL)
                .orElseThrow()
                .limit()
                .value();
    }
}
