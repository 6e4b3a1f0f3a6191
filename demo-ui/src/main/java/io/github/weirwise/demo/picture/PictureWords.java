package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.EntryWords;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.QuantityRange;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.OperatingPoint;
import java.util.List;

/** Says in words what the picture shows, from the same scene. */
final class PictureWords {
    /** As far as this from a mark nobody can tell without a ruler on which side the froth ends. */
    private static final double UNSURE_MM = 3;

    private PictureWords() {}

    static Phrase of(Scene scene) {
        OperatingPoint point = scene.point();
        if (!scene.figures()) {
            return atAGlance(scene);
        }
        Phrase level = Words.phrase(
                point.submergenceMm() < 0 ? "picture.level.below" : "picture.level.over",
                mm(Math.abs(point.submergenceMm())));
        Collected collected = scene.collected();
        Phrase cup = collected.ml() <= 0
                ? Words.phrase("picture.cup.empty")
                : Words.phrase(
                        collected.waste().isPresent() ? "picture.container.holds" : "picture.cup.holds",
                        Quantity.of(collected.ml(), Unit.MILLILITRE),
                        EntryWords.darkness(collected.ptCo()));
        return alarmed(
                scene,
                Words.phrase(
                        "picture.describe",
                        scene.unit().name(),
                        mm(scene.settings().weirCrestMm()),
                        mm(point.headMm()),
                        level,
                        QuantityRange.of(scene.bandMm(), Unit.MILLIMETRE),
                        foam(scene),
                        Quantity.of(Sight.of(scene).creepMmPerMin(), Unit.MILLIMETRE_PER_MINUTE),
                        Quantity.of(scene.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY),
                        cup));
    }

    /** What must not be overlooked comes first. */
    private static Phrase alarmed(Scene scene, Phrase rest) {
        Phrase all = rest;
        List<Sight.Alarm> alarms = Sight.of(scene).alarms();
        for (int i = alarms.size() - 1; i >= 0; i--) {
            all = Words.phrase("picture.alarmed", Words.phrase("picture.alarm." + alarms.get(i)), all);
        }
        return all;
    }

    /** As much as a person sees without ruler and vial. */
    private static Phrase atAGlance(Scene scene) {
        double over = scene.point().submergenceMm() - scene.bandMm().middle();
        double half = scene.bandMm().width() / 2 + UNSURE_MM;
        String level = over > half ? "above" : over < -half ? "below" : "within";
        String vessel = scene.collected().waste().isPresent() ? "container." : "cup.";
        double full = scene.collected().ml()
                / scene.collected()
                        .waste()
                        .map(Collected.Waste::capacityMl)
                        .orElse(scene.unit().cupMl());
        String cup = vessel + (full < 0.03 ? "empty" : full > 0.97 ? "full" : "partly");
        return alarmed(
                scene,
                Words.phrase(
                        "picture.glance",
                        scene.unit().name(),
                        Words.phrase("picture.glance.level." + level),
                        foam(scene),
                        Words.phrase("picture.glance." + cup)));
    }

    private static Phrase foam(Scene scene) {
        Sight foam = Sight.of(scene);
        if (!foam.reachesTheLip(scene.unit().column().lipMm())) {
            return scene.figures()
                    ? Words.phrase(
                            "picture.foam.breaks", mm(scene.unit().column().lipMm() - foam.topMm()))
                    : Words.phrase("picture.foam.low");
        }
        return Words.phrase("picture.foam." + foam.look());
    }

    private static Quantity mm(double value) {
        return Quantity.of(value, Unit.MILLIMETRE);
    }
}
