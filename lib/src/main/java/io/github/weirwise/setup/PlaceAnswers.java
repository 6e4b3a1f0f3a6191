package io.github.weirwise.setup;

import static io.github.weirwise.setup.Measures.cm;
import static io.github.weirwise.setup.Measures.litres;
import static io.github.weirwise.setup.Measures.mm;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.ArrayList;
import java.util.List;

/** Answers about room and weight, which need no running water. */
record PlaceAnswers(Installation installation) {
    private static final double HEAVY_FOR_A_FLOOR_KG = 500;

    List<FitAnswer> all() {
        return List.of(levelBase(), container(), hoseFall(), headroom(), standLoad(), topOff());
    }

    FitAnswer levelBase() {
        double offMm = installation.extraSump().map(sump -> sump.floorMm()).orElse(0.0);
        return new FitAnswer(
                Question.LEVEL_BASE,
                Grade.atMost(Math.abs(offMm), FitLimits.LEVEL_MM, 10 * FitLimits.LEVEL_MM),
                mm(offMm),
                mm(FitLimits.LEVEL_MM),
                mm(FitLimits.LEVEL_MM - Math.abs(offMm)),
                installation.extraSump().isPresent()
                        ? Phrase.of("setup.levelBase", mm(offMm))
                        : Phrase.of("setup.levelBase.alone"),
                List.of());
    }

    FitAnswer container() {
        SkimmerUnit unit = installation.filter().unit();
        SkimmateHose hose = installation.hose();
        double expected = unit.target().skimmateMlPerDay() / 1000 * hose.emptiedEveryDays();
        double wanted = expected * FitLimits.CONTAINER_MARGIN;
        return new FitAnswer(
                Question.CONTAINER,
                Grade.atLeast(hose.containerLitres(), wanted, expected),
                litres(hose.containerLitres()),
                litres(wanted),
                litres(hose.containerLitres() - wanted),
                Phrase.of(
                        "setup.container",
                        litres(hose.containerLitres()),
                        litres(expected),
                        Quantity.of(hose.emptiedEveryDays(), Unit.DAY),
                        litres(wanted)),
                List.of(Warning.danger("setup.runaway")));
    }

    FitAnswer hoseFall() {
        SkimmateHose hose = installation.hose();
        double wantedMm = FitLimits.HOSE_FALL_SHARE * hose.hoseLengthMm();
        return new FitAnswer(
                Question.HOSE_FALL,
                Grade.atLeast(hose.hoseFallMm(), wantedMm, wantedMm / 2),
                mm(hose.hoseFallMm()),
                mm(wantedMm),
                mm(hose.hoseFallMm() - wantedMm),
                Phrase.of("setup.hoseFall", mm(hose.hoseFallMm()), cm(hose.hoseLengthMm()), mm(wantedMm)),
                List.of(Warning.caution("setup.hoseEnd")));
    }

    FitAnswer headroom() {
        FilterBody filter = installation.filter();
        double neededMm = filter.cupTopMm() + filter.cupLiftMm();
        double roomMm = installation.stand().headroomMm();
        return new FitAnswer(
                Question.HEADROOM,
                Grade.atLeast(roomMm, neededMm + FitLimits.HAND_MM, neededMm),
                mm(roomMm - filter.cupTopMm()),
                mm(filter.cupLiftMm() + FitLimits.HAND_MM),
                mm(roomMm - neededMm - FitLimits.HAND_MM),
                Phrase.of("setup.headroom", mm(roomMm - filter.cupTopMm()), mm(filter.cupLiftMm())),
                List.of());
    }

    FitAnswer standLoad() {
        double load = loadKilograms();
        List<Warning> cautions = new ArrayList<>();
        cautions.add(Warning.note("setup.standLevel"));
        if (load > HEAVY_FOR_A_FLOOR_KG) {
            cautions.add(Warning.caution("setup.floorLoad", kilograms(load)));
        }
        if (installation.stand().ratedKilograms().isEmpty()) {
            cautions.add(Warning.caution("setup.standUnknown"));
            return new FitAnswer(
                    Question.STAND_LOAD,
                    Fit.TIGHT,
                    kilograms(load),
                    kilograms(0),
                    kilograms(0),
                    Phrase.of("setup.standLoad.unknown", kilograms(load)),
                    cautions);
        }
        double rated = installation.stand().ratedKilograms().getAsDouble();
        double allowed = FitLimits.STAND_SHARE * rated;
        return new FitAnswer(
                Question.STAND_LOAD,
                Grade.atMost(load, allowed, rated),
                kilograms(load),
                kilograms(allowed),
                kilograms(allowed - load),
                Phrase.of("setup.standLoad", kilograms(load), kilograms(rated)),
                cautions);
    }

    FitAnswer topOff() {
        double reservoir = installation.topOffReservoirLitres();
        double water = waterLitres();
        double salinity = installation.practicalSalinity();
        double fall = salinity * reservoir / (water + reservoir);
        double largest = salinity > FitLimits.SALINITY_FALL
                ? water * FitLimits.SALINITY_FALL / (salinity - FitLimits.SALINITY_FALL)
                : reservoir;
        return new FitAnswer(
                Question.TOP_OFF,
                Grade.atMost(fall, FitLimits.SALINITY_FALL, 2 * FitLimits.SALINITY_FALL),
                litres(reservoir),
                litres(largest),
                litres(largest - reservoir),
                reservoir > 0
                        ? Phrase.of(
                                "setup.topOff",
                                litres(reservoir),
                                Quantity.of(salinity, Unit.SALINITY),
                                Quantity.of(salinity - fall, Unit.SALINITY),
                                litres(largest))
                        : Phrase.of("setup.topOff.none", litres(largest)),
                List.of(Warning.danger("setup.topOffFloods")));
    }

    /** Everything filled to the brim: tank to its rim, filter and sump to theirs. */
    private double loadKilograms() {
        DisplayTank tank = installation.tank();
        FilterBody filter = installation.filter();
        WetSide wet = new WetSide(installation);
        double litres = tank.waterLitres()
                + tank.litresInLayer(tank.rimMm() - tank.crestMm())
                + filter.chamberLitresPerMm() * (filter.rimMm() - filter.chamberFloorMm())
                + wet.litresAt(wet.highestLevelMm());
        double dry = tank.dryKilograms()
                + filter.dryKilograms()
                + installation.extraSump().map(ExtraSump::dryKilograms).orElse(0.0);
        return dry + litres * installation.density() / 1000;
    }

    private double waterLitres() {
        WetSide wet = new WetSide(installation);
        return installation.tank().waterLitres() + wet.litresAt(wet.runningLevelMm());
    }

    private static Quantity kilograms(double value) {
        return Quantity.of(value, Unit.KILOGRAM);
    }
}
