package io.github.weirwise.demo.care;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.FieldReader;
import io.github.weirwise.demo.panel.FieldRow;
import io.github.weirwise.demo.panel.UnitMeasure;
import io.github.weirwise.setup.DisplayTank;
import io.github.weirwise.setup.Drainage;
import io.github.weirwise.setup.ExtraSump;
import io.github.weirwise.setup.FilterBody;
import io.github.weirwise.setup.Fitting;
import io.github.weirwise.setup.Installation;
import io.github.weirwise.setup.LanternQuaySites;
import io.github.weirwise.setup.Overflow;
import io.github.weirwise.setup.PumpCurve;
import io.github.weirwise.setup.ReturnLine;
import io.github.weirwise.setup.SkimmateHose;
import io.github.weirwise.setup.Stand;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JCheckBox;
import javax.swing.JPanel;

/** The numbers of an installation in boxes: filled from one, and read back with a word at each box that cannot be taken. */
final class SiteForm {
    private final Map<SiteField, FieldRow> rows = new EnumMap<>(SiteField.class);
    private final Map<UnitMeasure, FieldRow> measures = new EnumMap<>(UnitMeasure.class);
    private final JCheckBox sump = new JCheckBox();
    private final JCheckBox checkValve = new JCheckBox();
    private Optional<FittingRows> drain = Optional.empty();
    private Optional<FittingRows> back = Optional.empty();
    private Optional<PumpRows> pump = Optional.empty();
    private Installation base = LanternQuaySites.trainingTank();
    private Dress dress;

    /** A form with no section yet. */
    SiteForm(Dress dress) {
        this.dress = dress;
        sump.setName("own.sump");
        sump.setOpaque(false);
        sump.addActionListener(e -> allow());
        checkValve.setName("own.checkValve");
        checkValve.setOpaque(false);
        show(base);
    }

    /** Makes the boxes of a section, fills them, and puts them into a sheet of three columns. */
    void make(SiteGroup group, JPanel sheet) {
        for (SiteField field : SiteField.values()) {
            if (field.group() == group) {
                rows.put(field, new FieldRow("site." + field, field.component(), field.unit(), field.scale(), dress));
            }
        }
        switch (group) {
            case SUMP -> sheet.add(sump, "span 3, h 26!, wrap");
            case DRAIN -> drain = Optional.of(new FittingRows("drain", dress));
            case RETURN -> back = Optional.of(new FittingRows("return", dress));
            case PUMP -> pump = Optional.of(new PumpRows(dress));
            case UNIT -> {
                for (UnitMeasure each : UnitMeasure.values()) {
                    measures.put(each, new FieldRow("form." + each, each.component(), each.unit(), dress));
                }
            }
            default -> {
                // Its numbers are all that it asks for.
            }
        }
        rows(group).forEach(row -> row.addTo(sheet));
        switch (group) {
            case DRAIN -> drain.ifPresent(fittings -> fittings.addTo(sheet));
            case UNIT -> measures.values().forEach(row -> row.addTo(sheet));
            case PUMP -> pump.ifPresent(curve -> curve.addTo(sheet));
            case RETURN -> {
                sheet.add(checkValve, "span 3, h 26!, wrap");
                back.ifPresent(fittings -> fittings.addTo(sheet));
            }
            default -> {
                // See above.
            }
        }
        show(group);
        dress(group);
    }

    /** The boxes of a section. */
    List<FieldRow> rows(SiteGroup group) {
        return rows.entrySet().stream()
                .filter(each -> each.getKey().group() == group)
                .map(Map.Entry::getValue)
                .toList();
    }

    private void allow() {
        rows(SiteGroup.SUMP).forEach(row -> row.enable(sump.isSelected()));
    }

    /** Fills all boxes. */
    void show(Installation site) {
        base = site;
        for (SiteGroup group : SiteGroup.values()) {
            show(group);
        }
    }

    private void show(SiteGroup group) {
        rows.forEach((field, row) -> {
            if (field.group() == group) {
                show(field, row);
            }
        });
        switch (group) {
            case UNIT ->
                measures.forEach(
                        (measure, row) -> row.show(measure.of(base.filter().unit())));
            case DRAIN ->
                drain.ifPresent(fittings -> fittings.show(base.drainage().each().fittings()));
            case PUMP -> pump.ifPresent(curve -> curve.show(base.pump()));
            case RETURN -> {
                back.ifPresent(
                        fittings -> fittings.show(base.returnLine().plumbing().fittings()));
                checkValve.setSelected(base.returnLine().checkValve());
            }
            case SUMP -> {
                sump.setSelected(base.extraSump().isPresent());
                allow();
            }
            default -> {
                // Its numbers are all that it asks for.
            }
        }
    }

    private void show(SiteField field, FieldRow row) {
        double value = field.of(base);
        boolean noHole = field == SiteField.RETURN_BREAK && !base.returnLine().hasSiphonBreak();
        if (Double.isNaN(value) || noHole) {
            row.clear();
        } else {
            row.show(value);
        }
    }

    /** The installation that was filled in last; what the form does not ask for is taken from it. */
    Installation base() {
        return base;
    }

    /** The result of a reading: an installation, or the boxes that cannot be taken. */
    record Result(Optional<Installation> site, List<FieldRow> faults) {}

    /** Reads all boxes; every section has been made. */
    Result read(String name) {
        FieldReader reader = new FieldReader(dress);
        Map<SiteField, OptionalDouble> typed = new EnumMap<>(SiteField.class);
        rows.forEach((field, row) -> {
            boolean asked = field.group() != SiteGroup.SUMP || sump.isSelected();
            typed.put(field, asked ? reader.number(row, field.mayBeEmpty()) : OptionalDouble.empty());
        });
        Map<UnitMeasure, OptionalDouble> measured = new EnumMap<>(UnitMeasure.class);
        measures.forEach((measure, row) -> measured.put(measure, reader.number(row, false)));
        List<Fitting> drainFittings = drain.orElseThrow().read(reader);
        List<Fitting> backFittings = back.orElseThrow().read(reader);
        Optional<PumpCurve> curve = pump.orElseThrow().read(reader);
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
        for (SiteGroup group : SiteGroup.values()) {
            dress(group);
        }
    }

    private void dress(SiteGroup group) {
        String section = dress.text("site.group." + group);
        rows(group).forEach(row -> row.dress(dress, section));
        switch (group) {
            case UNIT -> measures.values().forEach(row -> row.dress(dress, section));
            case DRAIN -> drain.ifPresent(fittings -> fittings.dress(dress, section));
            case PUMP -> pump.ifPresent(curve -> curve.dress(dress));
            case RETURN -> {
                back.ifPresent(fittings -> fittings.dress(dress, section));
                checkValve.setText(dress.text("own.checkValve"));
            }
            case SUMP -> sump.setText(dress.text("own.sump"));
            default -> {
                // Its numbers are all that it asks for.
            }
        }
    }
}
