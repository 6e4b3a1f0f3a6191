package io.github.weirwise.demo.care;

import io.github.weirwise.demo.panel.FieldReader;
import io.github.weirwise.demo.panel.FieldRow;
import io.github.weirwise.setup.DisplayTank;
import io.github.weirwise.setup.Drainage;
import io.github.weirwise.setup.ExtraSump;
import io.github.weirwise.setup.FilterBody;
import io.github.weirwise.setup.Fitting;
import io.github.weirwise.setup.Overflow;
import io.github.weirwise.setup.Plumbing;
import io.github.weirwise.setup.ReturnLine;
import io.github.weirwise.setup.SkimmateHose;
import io.github.weirwise.setup.Stand;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The parts of an installation, made of the numbers typed for it. */
final class SiteNumbers {
    private static final int MOST_PIPES = 8;

    private final Map<SiteField, OptionalDouble> typed;
    private final FieldReader reader;
    private final Function<SiteGroup, List<FieldRow>> rows;

    SiteNumbers(Map<SiteField, OptionalDouble> typed, FieldReader reader, Function<SiteGroup, List<FieldRow>> rows) {
        this.typed = typed;
        this.reader = reader;
        this.rows = rows;
    }

    double of(SiteField field) {
        return typed.get(field).getAsDouble();
    }

    Optional<DisplayTank> tank() {
        return reader.make(
                rows.apply(SiteGroup.TANK),
                () -> new DisplayTank(
                        of(SiteField.TANK_LENGTH),
                        of(SiteField.TANK_WIDTH),
                        of(SiteField.TANK_FLOOR),
                        of(SiteField.TANK_CREST),
                        of(SiteField.TANK_RIM),
                        of(SiteField.TANK_WATER),
                        of(SiteField.TANK_DRY)));
    }

    Optional<Overflow> overflow() {
        return reader.make(rows.apply(SiteGroup.OVERFLOW), () -> new Overflow(of(SiteField.OVERFLOW_WIDTH)));
    }

    Optional<Drainage> drainage(List<Fitting> fittings) {
        if (of(SiteField.DRAIN_PIPES) != Math.rint(of(SiteField.DRAIN_PIPES))) {
            reader.wholeNumber(rows.apply(SiteGroup.DRAIN).get(0), MOST_PIPES);
            return Optional.empty();
        }
        return reader.make(
                rows.apply(SiteGroup.DRAIN),
                () -> new Drainage(
                        (int) of(SiteField.DRAIN_PIPES),
                        new Plumbing(of(SiteField.DRAIN_BORE), of(SiteField.DRAIN_LENGTH), fittings),
                        of(SiteField.DRAIN_INLET),
                        of(SiteField.DRAIN_OUTLET)));
    }

    Optional<FilterBody> box(SkimmerUnit unit) {
        return reader.make(
                rows.apply(SiteGroup.BOX),
                () -> new FilterBody(
                        unit,
                        of(SiteField.BOX_CHAMBER_FLOOR),
                        of(SiteField.BOX_CHAMBER_WATER),
                        of(SiteField.BOX_WET_LENGTH),
                        of(SiteField.BOX_WET_WIDTH),
                        of(SiteField.BOX_WET_FLOOR),
                        of(SiteField.BOX_MEDIA_BOTTOM),
                        of(SiteField.BOX_MEDIA_HEIGHT),
                        of(SiteField.BOX_MEDIA_LENGTH),
                        of(SiteField.BOX_MEDIA_VOIDS),
                        of(SiteField.BOX_PUMP_AIR),
                        of(SiteField.BOX_RIM),
                        of(SiteField.BOX_CUP_LIFT),
                        of(SiteField.BOX_CUP_TOP),
                        of(SiteField.BOX_DRY)));
    }

    Optional<ExtraSump> sump() {
        return reader.make(
                rows.apply(SiteGroup.SUMP),
                () -> new ExtraSump(
                        of(SiteField.SUMP_LENGTH),
                        of(SiteField.SUMP_WIDTH),
                        of(SiteField.SUMP_FLOOR),
                        of(SiteField.SUMP_RIM),
                        of(SiteField.SUMP_DRY)));
    }

    Optional<ReturnLine> returnLine(List<Fitting> fittings, boolean valve) {
        double mouth = of(SiteField.RETURN_MOUTH);
        return reader.make(
                rows.apply(SiteGroup.RETURN),
                () -> new ReturnLine(
                        new Plumbing(of(SiteField.RETURN_BORE), of(SiteField.RETURN_LENGTH), fittings),
                        mouth,
                        typed.get(SiteField.RETURN_BREAK).orElse(mouth),
                        valve));
    }

    Optional<SkimmateHose> hose() {
        return reader.make(
                rows.apply(SiteGroup.HOSE),
                () -> new SkimmateHose(
                        of(SiteField.HOSE_HOLDS),
                        of(SiteField.HOSE_EMPTIED),
                        of(SiteField.HOSE_LENGTH),
                        of(SiteField.HOSE_FALL)));
    }

    Optional<Stand> stand() {
        return reader.make(
                rows.apply(SiteGroup.PLACE),
                () -> new Stand(typed.get(SiteField.PLACE_LOAD), of(SiteField.PLACE_HEADROOM)));
    }
}
