package io.github.weirwise.unit;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.internal.physics.foam.Capillarity;
import io.github.weirwise.internal.physics.foam.Venting;
import io.github.weirwise.report.Range;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The records of the device: each {@code with} changes what its name says and nothing else; bands and limits. */
class SkimmerValuesTest {
    private static final Settings SETTINGS = FirstRoundUnits.middle().ratedSettings(205);

    @Test
    void everyWithChangesOneComponentAlone() throws ReflectiveOperationException {
        List<Record> values = List.of(
                SETTINGS,
                Condition.REFERENCE,
                FirstRoundUnits.traits(24),
                ColumnAssumptions.DEFAULT,
                SteadyInputs.of(FirstRoundUnits.middle(), SETTINGS));
        int tried = 0;
        for (Record value : values) {
            for (Method with : value.getClass().getDeclaredMethods()) {
                boolean ofItsOwnType = !with.getName().equals("withLipAnswer");
                if (ofItsOwnType
                        && with.getName().startsWith("with")
                        && !java.lang.reflect.Modifier.isStatic(with.getModifiers())) {
                    tried++;
                    changesOne(value, with);
                }
            }
        }
        assertThat(tried).isGreaterThan(22);
    }

    private static void changesOne(Record value, Method with) throws ReflectiveOperationException {
        String wanted = with.getName().substring(4);
        RecordComponent component = Stream.of(value.getClass().getRecordComponents())
                .filter(each -> each.getName().equalsIgnoreCase(wanted))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no component " + wanted));
        Object other = another(component.getAccessor().invoke(value));
        Object changed = with.invoke(value, other);
        for (RecordComponent each : value.getClass().getRecordComponents()) {
            Object expected = each.getName().equals(component.getName())
                    ? other
                    : each.getAccessor().invoke(value);
            assertThat(each.getAccessor().invoke(changed))
                    .as("%s after %s", each.getName(), with.getName())
                    .isEqualTo(expected);
        }
    }

    private static Object another(Object old) {
        if (old instanceof Double number) {
            return number == 0 ? 0.5 : number == 1 ? 0.75 : 1.01 * number;
        }
        if (old instanceof Condition) {
            return Condition.REFERENCE.withNeckFouling(0.3);
        }
        if (old instanceof Venting) {
            return Venting.AT_TOP;
        }
        if (old instanceof Capillarity) {
            return Capillarity.ORDERED;
        }
        return ColumnDetail.SKETCH;
    }

    @Test
    void theStatesOfTheFoamMeetAtTheEndsOfTheBand() {
        Target target = new Target(22, 250, new Range(700, 5000));
        assertThat(target.skimmateBandMlPerDay()).isEqualTo(new Range(100, 600));
        assertThat(FoamState.of(0, false, target)).isEqualTo(FoamState.NO_FOAM);
        assertThat(FoamState.of(4.99, false, target)).isEqualTo(FoamState.NO_FOAM);
        assertThat(FoamState.of(5.01, false, target)).isEqualTo(FoamState.TOO_DRY);
        assertThat(FoamState.of(99.9, false, target)).isEqualTo(FoamState.TOO_DRY);
        assertThat(FoamState.of(100, false, target)).isEqualTo(FoamState.ON_TARGET);
        assertThat(FoamState.of(600, false, target)).isEqualTo(FoamState.ON_TARGET);
        assertThat(FoamState.of(600.1, false, target)).isEqualTo(FoamState.TOO_WET);
        assertThat(FoamState.of(250, true, target)).isEqualTo(FoamState.FLOODING);
    }

    @Test
    void aCrestIsKeptWithinTheTravelOfTheWeir() {
        Weir weir = FirstRoundUnits.middle().weir();
        assertThat(weir.clampMm(149)).isEqualTo(150);
        assertThat(weir.clampMm(271)).isEqualTo(270);
        assertThat(weir.clampMm(205.5)).isEqualTo(205.5);
    }
}
