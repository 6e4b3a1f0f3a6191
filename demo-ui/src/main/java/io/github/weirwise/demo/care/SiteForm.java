package io.github.weirwise.demo.care;

import io.github.weirwise.commissioning.DisplayTank;
import io.github.weirwise.commissioning.Drainage;
import io.github.weirwise.commissioning.ExtraSump;
import io.github.weirwise.commissioning.FilterBody;
import io.github.weirwise.commissioning.Installation;
import io.github.weirwise.commissioning.LanternQuaySites;
import io.github.weirwise.commissioning.Overflow;
import io.github.weirwise.commissioning.PumpCurve;
import io.github.weirwise.commissioning.ReturnLine;
import io.github.weirwise.commissioning.SkimmateHose;
import io.github.weirwise.commissioning.Stand;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.FieldReader;
import io.github.weirwise.demo.panel.FieldRow;
import io.github.weirwise.demo.panel.UnitMeasure;
import io.github.weirwise.hydraulics.Fitting;
import io.github.weirwise.skimmer.SkimmerUnit;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JCheckBox;

/** The numbers of an installation in boxes: filled from one, and read back with a word at each box that cannot be taken. */
final class SiteForm {
    private final Map<SiteField, FieldRow> rows = new EnumMap<>(SiteField.class);
    private final Map<UnitMeasure, FieldRow> measures = new EnumMap<>(UnitMeasure.class);
    private final FittingRows drain;
    private final FittingRows back;
    private final PumpRows pump;
    private final JCheckBox sump = new JCheckBox();
    private final JCheckBox checkValve = new JCheckBox();
    private Installation base = LanternQuaySites.trainingTank();
    private Dress dress;

    SiteForm(Dress dress) {
        this.dress = dress;
        for (SiteField field : SiteField.values()) {
            rows.put(field, new FieldRow("site." + field, field.component(), field.unit(), field.scale(), dress));
        }
        for (UnitMeasure measure : UnitMeasure.values()) {
            measures.put(measure, new FieldRow("form." + measure, measure.component(), measure.unit(), dress));
        }
        drain = new FittingRows("drain", dress);
        back = new FittingRows("return", dress);
        pump = new PumpRows(dress);
        sump.setName("own.sump");
        sump.setOpaque(false);
        sump.addActionListener(e -> allow());
        checkValve.setName("own.checkValve");
        checkValve.setOpaque(false);
        show(base);
        dress(dress);
    }

    FittingRows drainFittings() {
        return drain;
    }

    FittingRows returnFittings() {
        return back;
    }

    PumpRows pump() {
        return pump;
    }

    JCheckBox sump() {
        return sump;
    }

    JCheckBox checkValve() {
        return checkValve;
    }

    /** The boxes of a section. */
    List<FieldRow> rows(SiteGroup group) {
        return rows.entrySet().stream()
                .filter(each -> each.getKey().group() == group)
                .map(Map.Entry::getValue)
                .toList();
    }

    /** The boxes of the skimmer's measures. */
    Collection<FieldRow> measures() {
        return measures.values();
    }

    private void allow() {
        rows(SiteGroup.SUMP).forEach(row -> row.enable(sump.isSelected()));
    }

    /** Fills all boxes. */
    void show(Installation site) {
        base = site;
        rows.forEach((field, row) -> {
            double value = field.of(site);
            boolean noHole =
                    field == SiteField.RETURN_BREAK && !site.returnLine().hasSiphonBreak();
            if (Double.isNaN(value) || noHole) {
                row.clear();
            } else {
                row.show(value);
            }
        });
        measures.forEach((measure, row) -> row.show(measure.of(site.filter().unit())));
        drain.show(site.drainage().each().fittings());
        back.show(site.returnLine().plumbing().fittings());
        pump.show(site.pump());
        sump.setSelected(site.extraSump().isPresent());
        checkValve.setSelected(site.returnLine().checkValve());
        allow();
    }

    /** The installation that was filled in last; what the form does not ask for is taken from it. */
    Installation base() {
        return base;
    }

    /** The result of a reading: an installation, or the boxes that cannot be taken. */
    record Result(Optional<Installation> site, List<FieldRow> faults) {}

    /** Reads all boxes. */
    Result read(String name) {
        FieldReader reader = new FieldReader(dress);
        Map<SiteField, OptionalDouble> typed = new EnumMap<>(SiteField.class);
        rows.forEach((field, row) -> {
            boolean asked = field.group() != SiteGroup.SUMP || sump.isSelected();
            typed.put(field, asked ? reader.number(row, field.mayBeEmpty()) : OptionalDouble.empty());
        });
        Map<UnitMeasure, OptionalDouble> measured = new EnumMap<>(UnitMeasure.class);
        measures.forEach((measure, row) -> measured.put(measure, reader.number(row, false)));
        List<Fitting> drainFittings = drain.read(reader);
        List<Fitting> backFittings = back.read(reader);
        Optional<PumpCurve> curve = pump.read(reader);
        if (!reader.faults().isEmpty()) {
            return new Result(Optional.empty(), reader.faults());
        }
        SiteNumbers numbers = new SiteNumbers(typed, reader, this::rows);
        Optional<DisplayTank> tank = numbers.tank();
        Optional<Overflow> overflow = numbers.overflow();
        Optional<Drainage> drainage = numbers.drainage(drainFittings);
        Optional<SkimmerUnit> unit = reader.make(
                measures.values(),
                () -> UnitMeasure.unit(
                        base.filter().unit().name(),
                        measure -> measured.get(measure).getAsDouble(),
                        base.filter().unit()));
        Optional<FilterBody> box = unit.flatMap(numbers::box);
        Optional<ExtraSump> second = sump.isSelected() ? numbers.sump() : Optional.empty();
        Optional<ReturnLine> line = numbers.returnLine(backFittings, checkValve.isSelected());
        Optional<SkimmateHose> hose = numbers.hose();
        Optional<Stand> stand = numbers.stand();
        if (!reader.faults().isEmpty()) {
            return new Result(Optional.empty(), reader.faults());
        }
        Optional<Installation> site = reader.make(
                rows(SiteGroup.PLACE),
                () -> new Installation(
                        name,
                        tank.orElseThrow(),
                        overflow.orElseThrow(),
                        drainage.orElseThrow(),
                        box.orElseThrow(),
                        second,
                        curve.orElseThrow(),
                        line.orElseThrow(),
                        hose.orElseThrow(),
                        numbers.of(SiteField.PLACE_TOP_OFF),
                        stand.orElseThrow(),
                        numbers.of(SiteField.PLACE_CELSIUS),
                        numbers.of(SiteField.PLACE_SALINITY)));
        return new Result(site, reader.faults());
    }

    void dress(Dress other) {
        dress = other;
        sump.setText(other.text("own.sump"));
        checkValve.setText(other.text("own.checkValve"));
        drain.dress(other, section(SiteGroup.DRAIN));
        back.dress(other, section(SiteGroup.RETURN));
        pump.dress(other);
        rows.forEach((field, row) -> row.dress(other, section(field.group())));
        measures.values().forEach(row -> row.dress(other, section(SiteGroup.UNIT)));
    }

    private String section(SiteGroup group) {
        return dress.text("site.group." + group);
    }
}
