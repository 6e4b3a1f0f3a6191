package io.github.weirwise.evidence;

import io.github.weirwise.Weirwise;
import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.HoldReason;
import io.github.weirwise.advice.LookKind;
import io.github.weirwise.advice.SafeWay;
import io.github.weirwise.advice.Step;
import java.util.Set;

/**
 * What an answer makes of one case of the grid.
 *
 * @param actedOn whether the step is what a technician would do at once
 * @param withCaution whether it says what can hurt or mislead here
 * @param wayBack whether it says how things go on from there
 * @param alarmed whether it raises an alarm
 */
record GuardCheck(boolean actedOn, boolean withCaution, boolean wayBack, boolean alarmed) {
    private static final Set<String> ALARMS = Set.of(
            "advice.caution.wetFloor",
            "advice.caution.airOff",
            "advice.caution.levelHigh",
            "advice.caution.levelLow",
            "advice.caution.crestOutside",
            "advice.caution.death");

    private static final Set<LookKind> LEVEL_LOOKS = Set.of(
            LookKind.LEVEL_BEYOND_WEIR,
            LookKind.FILTER_PAD,
            LookKind.CREST_AGAINST_MARK,
            LookKind.HEAD_OVER_CREST,
            LookKind.RETURN_FLOW,
            LookKind.CUP_VENT,
            LookKind.OUTSIDE_LEVEL);

    static GuardCheck of(GuardCase each) {
        return of(each, Weirwise.advise(each.unit(), each.start(), each.journal(), each.now()));
    }

    static GuardCheck of(GuardCase each, Advice advice) {
        boolean back =
                advice.wouldChangeIt().stream().anyMatch(line -> line.key().startsWith("advice.back."));
        return new GuardCheck(
                acts(each.wanted(), each, advice.step()),
                cautions(advice, caution(each.wanted(), each)),
                back,
                advice.step() instanceof Step.MakeSafe || ALARMS.stream().anyMatch(key -> cautions(advice, key)));
    }

    /** Whether all that a dangerous case asks for is there, or nothing is that a near miss must not have. */
    boolean right(boolean danger) {
        return danger ? actedOn && withCaution && wayBack : !alarmed;
    }

    private static boolean acts(String wanted, GuardCase each, Step step) {
        String[] words = wanted.split(" ");
        return switch (words[0] + " " + words[1]) {
            case "lower weir" ->
                step instanceof Step.MakeSafe safe
                        && safe.how() == SafeWay.LOWER_WEIR
                        && inRange(-safe.byMm(), words)
                        && safe.toCrestMm() >= each.unit().weir().lowestCrestMm();
            case "less air" -> made(step, SafeWay.LESS_AIR);
            case "stop air" -> made(step, SafeWay.STOP_THE_AIR);
            case "start air" ->
                step instanceof Step.MakeSafe safe
                        && safe.how() == SafeWay.START_THE_AIR
                        && safe.airLitresPerHour() == Double.parseDouble(words[2]);
            case "start pumps" -> made(step, SafeWay.START_PUMPS);
            case "air rests" -> step instanceof Step.Hold hold && hold.reason() == HoldReason.AIR_OFF;
            case "wait minutes" -> step instanceof Step.Hold hold && hold.reason() == HoldReason.STILL_SETTLING;
            case "look foam" -> look(step, LookKind.FOAM_LOOK);
            case "look salinity" -> look(step, LookKind.SALINITY);
            case "look crest" -> look(step, LookKind.CREST_AGAINST_MARK);
            case "look level" ->
                step instanceof Step.Look look && LEVEL_LOOKS.contains(look.what())
                        || step instanceof Step.ServicePart
                        || step instanceof Step.MoveWeir;
            case "no alarm" -> true;
            default -> throw new IllegalArgumentException("nobody does this: " + wanted);
        };
    }

    /** Millimetres between the last two numbers of the words; any when there are none. */
    private static boolean inRange(double mm, String[] words) {
        if (words.length < 4) {
            return mm >= 1;
        }
        return mm >= Double.parseDouble(words[2]) - 0.5 && mm <= Double.parseDouble(words[3]) + 0.5;
    }

    private static boolean made(Step step, SafeWay how) {
        return step instanceof Step.MakeSafe safe && safe.how() == how;
    }

    private static boolean look(Step step, LookKind kind) {
        return step instanceof Step.Look look && look.what() == kind;
    }

    private static String caution(String wanted, GuardCase each) {
        boolean noAir = each.journal().settingsAfter(each.start()).airLitresPerHour() == 0;
        return switch (wanted.split(" ")[0]) {
            case "lower", "less", "stop" -> "advice.caution.wetFloor";
            case "start" ->
                noAir || wanted.equals("start pumps") ? "advice.caution.airOff" : "advice.caution.container";
            case "air" -> noAir || wanted.equals("air rests") ? "advice.caution.airOff" : "";
            case "wait" -> "advice.caution.container";
            case "look" ->
                switch (wanted.split(" ")[1]) {
                    case "salinity" -> "advice.caution.death";
                    case "crest" -> "advice.caution.crestOutside";
                    case "level" -> "advice.caution.level";
                    default -> "advice.caution.";
                };
            default -> "";
        };
    }

    private static boolean cautions(Advice advice, String key) {
        return advice.cautions().stream()
                .map(each -> each.text().key())
                .anyMatch(each -> each.startsWith(key) && !each.equals("advice.caution.noDevice"));
    }
}
