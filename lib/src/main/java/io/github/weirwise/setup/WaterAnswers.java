package io.github.weirwise.setup;

import static io.github.weirwise.setup.Measures.litres;
import static io.github.weirwise.setup.Measures.mm;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import java.util.ArrayList;
import java.util.List;

/** Answers about standing water: what comes down at a power cut, what is filled in, what the pump stands in. */
record WaterAnswers(Installation installation, ReturnPoint running, DrainBack back, FirstFilling filling) {

    List<FitAnswer> all() {
        return List.of(powerCut(), extraSump(), blockedDrain(), waterToAdd(), pumpIntake());
    }

    FitAnswer powerCut() {
        double total = back.totalLitres();
        List<Warning> cautions = new ArrayList<>();
        cautions.add(Warning.caution("setup.rehearse"));
        double spilledWhenBlocked = back.worstLitres() - back.freeLitres();
        if (!installation.returnLine().hasSiphonBreak()) {
            cautions.add(Warning.caution("setup.noHole"));
        } else if (spilledWhenBlocked > 0) {
            cautions.add(
                    Warning.danger("setup.blockedHole", litres(back.blockedHoleLitres()), litres(spilledWhenBlocked)));
        }
        if (installation.returnLine().checkValve()) {
            cautions.add(Warning.note("setup.checkValve"));
        }
        Fit fit = Grade.atMost(total, back.freeLitres() / FitLimits.DRAIN_BACK_MARGIN, back.freeLitres());
        Phrase parts = Phrase.of(
                "setup.powerCut.parts",
                litres(back.tankLitres()),
                litres(back.pipeLitres()),
                litres(back.chamberLitres()),
                litres(back.trickleLitres()));
        Phrase sentence = back.spilledLitres() > 0
                ? Phrase.of(
                        "setup.powerCut.floods",
                        litres(total),
                        parts,
                        litres(back.freeLitres()),
                        litres(back.spilledLitres()))
                : Phrase.of("setup.powerCut", litres(total), parts, litres(back.freeLitres()), mm(back.levelAfterMm()));
        return new FitAnswer(
                Question.POWER_CUT,
                fit,
                litres(total),
                litres(back.freeLitres()),
                litres(back.freeLitres() - total),
                sentence,
                cautions);
    }

    FitAnswer extraSump() {
        double missing = back.missingLitres();
        WetSide wet = new WetSide(installation);
        double usableMm = wet.highestLevelMm() - wet.runningLevelMm();
        double rimMm = installation.filter().rimMm();
        double areaDm2 = usableMm <= 0 ? 0 : missing / usableMm * 100;
        Phrase sentence;
        if (missing <= 0) {
            sentence = Phrase.of("setup.extraSump.none", litres(back.freeLitres() - back.totalLitres()));
        } else if (usableMm <= 0) {
            sentence = Phrase.of("setup.extraSump.higher", litres(missing), mm(rimMm));
        } else {
            sentence = Phrase.of(
                    "setup.extraSump",
                    litres(missing),
                    litres(areaDm2 * rimMm / 100),
                    Quantity.of(areaDm2, Unit.PLAIN),
                    mm(rimMm));
        }
        return new FitAnswer(
                Question.EXTRA_SUMP,
                missing <= 0 ? Fit.FITS : back.spilledLitres() > 0 ? Fit.FAILS : Fit.TIGHT,
                litres(missing),
                litres(0),
                litres(-missing),
                sentence,
                missing <= 0 ? List.of() : List.of(Warning.caution("setup.sumpLevel")));
    }

    FitAnswer blockedDrain() {
        WetSide wet = new WetSide(installation);
        DisplayTank tank = installation.tank();
        double pumped = Math.max(
                0,
                wet.litresAt(wet.runningLevelMm())
                        - wet.litresAt(installation.filter().pumpDrawsAirMm()));
        double room = Math.max(0, tank.litresInLayer(tank.rimMm() - tank.crestMm() - running.overflowHeadMm()));
        return new FitAnswer(
                Question.BLOCKED_DRAIN,
                Grade.atMost(pumped, room / FitLimits.DRAIN_BACK_MARGIN, room),
                litres(pumped),
                litres(room),
                litres(room - pumped),
                Phrase.of("setup.blockedDrain", litres(pumped), litres(room)),
                List.of(Warning.caution("setup.onePath")));
    }

    FitAnswer waterToAdd() {
        double add = filling.addLitres();
        WetSide wet = new WetSide(installation);
        double wanted = wet.litresAt(filling.levelRunningMm());
        Phrase what = Phrase.of(
                add >= 0 ? "setup.filling.add" : "setup.filling.take",
                litres(Math.abs(add)),
                litres(filling.transitDoubtLitres()));
        boolean enough = filling.levelAfterStartMm() > installation.filter().pumpDrawsAirMm();
        return new FitAnswer(
                Question.FILLING,
                enough ? Fit.FITS : Fit.TIGHT,
                litres(add),
                litres(wanted),
                litres(wet.litresAt(filling.levelAfterStartMm())
                        - wet.litresAt(installation.filter().pumpDrawsAirMm())),
                Phrase.of(
                        "setup.filling",
                        litres(filling.totalLitres()),
                        mm(filling.levelBeforeMm()),
                        litres(filling.inTransitLitres()),
                        mm(filling.levelAfterStartMm()),
                        what,
                        mm(filling.levelRunningMm())),
                enough ? List.of() : List.of(Warning.caution("setup.fillSlowly")));
    }

    FitAnswer pumpIntake() {
        FilterBody filter = installation.filter();
        double overMm = filling.levelRunningMm() - filter.pumpDrawsAirMm();
        double litresPerMm = new WetSide(installation).litresAt(filling.levelRunningMm() + 0.5)
                - new WetSide(installation).litresAt(filling.levelRunningMm() - 0.5);
        return new FitAnswer(
                Question.PUMP_INTAKE,
                Grade.atLeast(overMm, FitLimits.PUMP_INTAKE_MM, 0),
                mm(filling.levelRunningMm()),
                mm(filter.pumpDrawsAirMm() + FitLimits.PUMP_INTAKE_MM),
                mm(overMm - FitLimits.PUMP_INTAKE_MM),
                Phrase.of("setup.pumpIntake", mm(overMm), litres(Math.max(0, overMm) * litresPerMm)),
                List.of());
    }
}
