package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Belief;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.report.Times;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Target;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Chooses the step that costs least over the next days; the guards stand below and above it. */
final class Choice {
    /** A service at the same visit as another one. */
    private static final Duration VISIT = Duration.ofHours(2);

    private static final double LOW = Math.log(Target.AMOUNT_BAND.low());
    private static final double HIGH = Math.log(Target.AMOUNT_BAND.high());
    private static final double LIKELY = 0.6;
    /** This surely on target one visit may be skipped. */
    private static final double CALM = 0.85;

    private static final Duration REMEMBERED = Duration.ofDays(10);
    private static final double CLEARLY_BAD = 0.3;
    private static final double EVEN = 0.5;
    /** Before a longer move a level that stands alone is read again. */
    private static final double READ_AGAIN_MM = 2;

    /** Foam settles within hours; after this a change that failed has shown it. */
    private static final Duration COME_THROUGH = Duration.ofHours(9);
    /** Less than this chance of being on target is none. */
    private static final double FAILED = 0.1;

    /** What was put right will plainly not do, if the chance to be on target tomorrow stays under this. */
    private static final double NOT_ENOUGH = 0.5;

    /** So long the foam may lie low after the daily food (common practice). */
    private static final Duration JUST_FED = Duration.ofHours(3);

    /** Wild foam is looked at again after this. */
    private static final Duration WATCHED = Duration.ofHours(6);

    private static final double SURELY_WET = 0.8;

    /** A measured fault this likely is one. */
    private static final double PLAINLY = 0.8;

    private static final double SURELY = 0.55;
    private static final double STIRRED = 0.35;

    private final Belief belief;
    private final GuardScene scene;
    private final AdviserOptions options;
    private final Set<Part> mayService;
    private final Plan plan;
    private final LooksFirst first;
    private List<Plan.Option> ranked = List.of();

    Choice(Belief belief, GuardScene scene, AdviserOptions options) {
        this.belief = belief;
        this.scene = scene;
        this.options = options;
        this.mayService = MayService.parts(belief, scene);
        this.first = new LooksFirst(belief, scene, options.looks());
        this.plan = new Plan(
                belief,
                new Outlay(belief, options.efforts()),
                scene.noted().weir().twiceOut());
    }

    /** The best step of another kind than the one advised; empty when nothing was weighed. */
    Optional<Step> rival(Step advised) {
        return ranked.stream()
                .map(option -> option.rests() ? hold() : act(option))
                .filter(step -> step.getClass() != advised.getClass())
                .findFirst();
    }

    Step step() {
        if (belief.reading(Instrument.CUP_VOLUME).isEmpty()
                && belief.reading(Instrument.FOAM_LOOK).isEmpty()) {
            return firstReading();
        }
        Optional<Step> again = first.again();
        if (again.isPresent()) {
            return again.get();
        }
        Optional<Step> settling = settling();
        if (settling.isPresent()) {
            return settling.get();
        }
        if (within(options.clocks().breakIn(), Happening.Kind.FIRST_START)) {
            return new Step.Hold(nextVisit(), HoldReason.BREAKING_IN);
        }
        if (oilOnTheWater() && plainlyBad().isEmpty()) {
            return new Step.Hold(nextVisit(), HoldReason.PASSES_BY_ITSELF);
        }
        ranked = plan.options(belief.prospects(), mayService, false).stream()
                .filter(this::keepsToBrackets)
                .toList();
        Plan.Option best = ranked.get(0);
        if (best.mm() > 0 && first.onFoamAlone()) {
            return new Step.Look(LookKind.CUP_VOLUME);
        }
        if (Math.abs(best.mm()) > READ_AGAIN_MM
                && scene.noted().levels().once()
                && options.looks().contains(LookKind.FUNNEL_LEVEL)) {
            return new Step.Look(LookKind.FUNNEL_LEVEL);
        }
        if (best.mm() != 0) {
            Optional<Part> hidden = plainlyBad();
            if (hidden.isPresent()) {
                return new Step.ServicePart(hidden.get());
            }
        }
        if (best.mm() > 0 && stillPassing()) {
            return new Step.Hold(nextVisit(), HoldReason.PASSES_BY_ITSELF);
        }
        if (best.mm() > 0) {
            Optional<LookKind> before = first.beforeRaising();
            if (before.isPresent()) {
                return new Step.Look(before.get());
            }
        }
        Set<Part> plain = plainlySeen(best);
        if (!plain.isEmpty()) {
            return act(new Plan.Option(0, plain, best.cost()));
        }
        Optional<Looks.Valued> look = new Looks(belief, scene, plan, options, mayService).best(best.cost());
        if (look.isPresent()) {
            return new Step.Look(look.get().look());
        }
        Optional<LookKind> pad = first.surelyClogged();
        if (best.mm() <= 0 && pad.isPresent()) {
            return new Step.Look(pad.get());
        }
        if (best.rests()) {
            return measuredBad().<Step>map(Step.ServicePart::new).orElseGet(this::hold);
        }
        return act(best);
    }

    /** A part that a measurement shows clearly bad is put right, though the weir makes up for it today. */
    private Optional<Part> measuredBad() {
        return mayService.stream()
                .filter(part -> belief.chanceOver(part, EVEN) > PLAINLY
                        && PartSeen.of(part, scene).measuredOff())
                .findFirst();
    }

    /** Whether the foam looked out of its band at the newest look. */
    private boolean offNow() {
        return belief.value(Instrument.FOAM_LOOK)
                .map(seen -> ((Observation.FoamLook) seen).look().amountLog())
                .filter(log -> log.high() < LOW || log.low() > HIGH)
                .isPresent();
    }

    /** Whether the newest look at the foam, half a day old at most, showed it wet. */
    private boolean wetNow() {
        return belief.value(Instrument.FOAM_LOOK)
                .map(seen -> ((Observation.FoamLook) seen).look().amountLog())
                .filter(log -> log.low() > 0)
                .flatMap(wet -> belief.reading(Instrument.FOAM_LOOK))
                .filter(at -> scene.within(at, FloodSeen.FRESH))
                .isPresent();
    }

    /** Nothing tells of the amount yet: the cup is read or, where it cannot be, the foam. */
    private Step firstReading() {
        for (LookKind look : List.of(LookKind.CUP_VOLUME, LookKind.FOAM_LOOK)) {
            if (options.looks().contains(look)) {
                return new Step.Look(look);
            }
        }
        return new Step.Hold(nextVisit(), HoldReason.NOTHING_READ);
    }

    /** A part that was seen or measured bad, and is so for certain: a weir move would only hide it. */
    private Optional<Part> plainlyBad() {
        return mayService.stream()
                .filter(part -> belief.chanceOver(part, CLEARLY_BAD) > SURELY
                        && PartSeen.of(part, scene).speaksForService())
                .findFirst();
    }

    /** Of the parts to service those that were seen or measured bad: they need no other look first. */
    private Set<Part> plainlySeen(Plan.Option option) {
        Set<Part> plain = EnumSet.noneOf(Part.class);
        for (Part part : option.parts()) {
            PartSeen seen = PartSeen.of(part, scene);
            if (seen.speaksForService() && !(onlyMeasured(seen) && lately(part))) {
                plain.add(part);
            }
        }
        return plain;
    }

    /** Whether a move keeps to what was seen at this very weir, whatever the belief makes of it. */
    private boolean keepsToBrackets(Plan.Option option) {
        if (option.mm() > 0 && wetNow()) {
            return false;
        }
        // The first amount after a repair still holds hours without foam: in the band is good enough.
        if (option.mm() != 0
                && belief.lastChangeWasService()
                && scene.noted().weir().onceInBand()) {
            return false;
        }
        return scene.noted().weir().allows(option.mm(), belief.settings().weirCrestMm(), scene.now());
    }

    /** Foam that is so surely out of its band, nine hours after a change, need not be given the rest of the day. */
    private boolean surelyFailed(Duration since) {
        return since.compareTo(COME_THROUGH.plus(mixing())) >= 0
                && scene.noted().weir().readHere()
                && belief.amountNow().between(LOW, HIGH) < FAILED;
    }

    /** Where what was put right will plainly not do, the next look is taken at the same visit and not a day later. */
    private Optional<Step> notEnough() {
        if (belief.prospects().after(0, Set.of()).tomorrow().between(LOW, HIGH) >= NOT_ENOUGH) {
            return Optional.empty();
        }
        double rest = plan.options(belief.prospects(), mayService, true).get(0).cost();
        return new Looks(belief, scene, plan, options, mayService).best(rest).map(each -> new Step.Look(each.look()));
    }

    /** A change that has come through too well is taken back at once, whatever has still to settle. */
    private Optional<Step> tooWetAlready() {
        boolean read = belief.reading(Instrument.CUP_VOLUME)
                .filter(at -> at.isAfter(belief.lastChange().orElseThrow()))
                .isPresent();
        if (!read || 1 - belief.amountNow().below(HIGH) < SURELY_WET) {
            return Optional.empty();
        }
        return plan.options(belief.prospects(), Set.of(), false).stream()
                .filter(option -> option.mm() < 0 && keepsToBrackets(option))
                .findFirst()
                .map(this::act);
    }

    /** A meter that several parts move does not tell which. */
    private static boolean onlyMeasured(PartSeen seen) {
        return seen.found().filter(finding -> finding != Finding.GOOD).isEmpty();
    }

    private boolean lately(Part part) {
        return belief.service(part)
                .filter(at -> Duration.between(at, belief.now()).compareTo(REMEMBERED) < 0)
                .isPresent();
    }

    private Step act(Plan.Option option) {
        if (!option.parts().isEmpty()) {
            Part first = first(option.parts());
            List<Part> also =
                    option.parts().stream().filter(part -> part != first).toList();
            return new Step.ServicePart(first, also);
        }
        double to = belief.settings().weirCrestMm() + option.mm();
        return new Step.MoveWeir(option.mm(), to, Math.abs(option.mm()) <= 2);
    }

    /** The part to begin with: the one most likely bad. */
    private Part first(Set<Part> parts) {
        return parts.stream()
                .max(Comparator.comparingDouble(part -> belief.chanceOver(part, 0.5)))
                .orElseThrow();
    }

    /** While a change has not come through, only what was seen bad at the same visit is put right. */
    private Optional<Step> settling() {
        Optional<Instant> change = belief.lastChange();
        if (change.isEmpty()) {
            return Optional.empty();
        }
        Duration settles = options.clocks().judge().plus(mixing());
        Instant judge = Times.later(change.get(), settles);
        Duration wait = settles.minus(options.clocks().judge().dividedBy(5));
        if (Duration.between(change.get(), belief.now()).compareTo(wait) >= 0
                || surelyFailed(Duration.between(change.get(), belief.now()))) {
            return Optional.empty();
        }
        if (belief.lastChangeWasService()
                && Duration.between(change.get(), belief.now()).compareTo(VISIT) < 0) {
            Optional<Plan.Option> also = plan.options(belief.prospects(), mayService, true).stream()
                    .filter(option -> option.mm() == 0)
                    .findFirst()
                    .filter(option -> !option.parts().isEmpty());
            if (also.isPresent()) {
                return Optional.of(act(also.get()));
            }
            Optional<Step> next = notEnough();
            if (next.isPresent()) {
                return next;
            }
        }
        Optional<Step> back = tooWetAlready();
        if (back.isPresent()) {
            return back;
        }
        boolean seldom = belief.rhythm()
                .filter(usual -> usual.compareTo(options.clocks().judge()) > 0)
                .isPresent();
        Instant visit = nextVisit();
        Instant until = seldom && visit.isAfter(judge) || wild() ? visit : judge;
        return Optional.of(new Step.Hold(until, HoldReason.STILL_SETTLING));
    }

    /** At the rhythm of the last visits; a day at least, a week at most. */
    private Instant nextVisit() {
        Duration day = options.clocks().judge();
        Duration usual = belief.rhythm().orElse(day);
        Duration most = Duration.ofDays(7);
        Duration wait = usual.compareTo(day) < 0 ? day : usual.compareTo(most) > 0 ? most : usual;
        return Times.later(belief.now(), wild() ? WATCHED : wait);
    }

    /** Foam that an additive has made wild within the day can go over at any hour. */
    private boolean wild() {
        return within(
                options.clocks().judge(),
                Happening.Kind.CONDITIONER,
                Happening.Kind.SEALANT,
                Happening.Kind.MEDICATION);
    }

    /** Salt takes a day to mix before the foam can answer to it. */
    private Duration mixing() {
        boolean salted = belief.service(Part.SALT_MIX).equals(belief.lastChange());
        return salted ? options.clocks().judge() : Duration.ZERO;
    }

    /** Whether something that passes was noted so lately that the foam is still away or wild. */
    private boolean stillPassing() {
        return within(JUST_FED, Happening.Kind.FED, Happening.Kind.TOP_OFF)
                || within(
                        options.clocks().afterFeeding(),
                        Happening.Kind.FED_HEAVILY,
                        Happening.Kind.HANDS_IN_TANK,
                        Happening.Kind.ANIMAL_DIED,
                        Happening.Kind.WATER_CHANGE,
                        Happening.Kind.PUMP_RESTARTED)
                || within(
                        options.clocks().afterAdditive(),
                        Happening.Kind.CONDITIONER,
                        Happening.Kind.SEALANT,
                        Happening.Kind.MEDICATION);
    }

    /** Oil or fat that was seen on the water breaks the foam until it has gone. */
    private boolean oilOnTheWater() {
        return belief.finding(Part.WATER_SURFACE)
                .filter(found -> found == Finding.BAD && offNow())
                .flatMap(found -> belief.look(Part.WATER_SURFACE))
                .filter(at -> Duration.between(at, belief.now())
                                .compareTo(options.clocks().judge())
                        < 0)
                .isPresent();
    }

    private boolean within(Duration clock, Happening.Kind... kinds) {
        for (Happening.Kind kind : kinds) {
            Optional<Instant> at = belief.happening(kind);
            if (at.isPresent() && Duration.between(at.get(), belief.now()).compareTo(clock) < 0) {
                return true;
            }
        }
        return false;
    }

    private Step hold() {
        Instant tomorrow = nextVisit();
        double good = belief.amountNow().between(LOW, HIGH);
        if (stillPassing() && (good < CALM || offNow())) {
            return new Step.Hold(tomorrow, HoldReason.PASSES_BY_ITSELF);
        }
        if (good >= LIKELY) {
            Duration wait = Duration.between(belief.now(), tomorrow);
            Instant until = good >= CALM ? Times.later(tomorrow, wait) : tomorrow;
            return new Step.Hold(until, HoldReason.ON_TARGET);
        }
        boolean stirred = Math.abs(belief.passing().mean()) > STIRRED;
        return new Step.Hold(tomorrow, stirred ? HoldReason.PASSES_BY_ITSELF : HoldReason.WITHIN_NOISE);
    }
}
