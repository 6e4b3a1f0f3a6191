package io.github.weirwise.diagnosis;

import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.SteadyInputs;
import java.util.EnumSet;
import java.util.Set;

/**
 * One weighted possibility of a belief: a cause or a pair of causes with sizes and onsets, and one set of the unit's
 * unknowns. Immutable.
 *
 * @since 0.1
 */
public final class Possibility {
    private final Foresight foresight;
    private final Timeline timeline;
    private final CauseCourse first;
    private final CauseCourse second;
    private final Unknowns unknowns;
    private final double weight;

    Possibility(
            Foresight foresight,
            Timeline timeline,
            CauseCourse first,
            CauseCourse second,
            Unknowns unknowns,
            double weight) {
        this.foresight = foresight;
        this.timeline = timeline;
        this.first = first;
        this.second = second;
        this.unknowns = unknowns;
        this.weight = weight;
    }

    Possibility withWeight(double value) {
        return new Possibility(foresight, timeline, first, second, unknowns, value);
    }

    Possibility withUnknowns(Unknowns value) {
        return new Possibility(foresight, timeline, first, second, value, weight);
    }

    /** Its probability, 0 to 1; all of a belief add up to 1. */
    public double weight() {
        return weight;
    }

    /** The main cause; {@link Cause#NOTHING_WRONG} when no part and no load is at fault. */
    public Cause cause() {
        return first.cause();
    }

    /** Full size of the main cause, 0 to 1. */
    public double size() {
        return first.size();
    }

    /** The second cause, {@link Cause#NOTHING_WRONG} for most. */
    public Cause secondCause() {
        return second.cause();
    }

    Unknowns unknowns() {
        return unknowns;
    }

    /** Momentary size of the main cause now, 0 when it was serviced, has passed or has not begun. */
    public double sizeNow() {
        return first.sizeAt(0, timeline);
    }

    /** Momentary size of a part's fault now, 0 when the part is sound. */
    public double faultNow(Part part) {
        return Math.max(faultOf(first, part), faultOf(second, part));
    }

    private double faultOf(CauseCourse course, Part part) {
        return course.cause().servicePart().filter(part::equals).isPresent() ? course.sizeAt(0, timeline) : 0;
    }

    /** Parts whose fault is larger than a given momentary size now. */
    public Set<Part> faultyParts(double largerThan) {
        Set<Part> parts = EnumSet.noneOf(Part.class);
        for (CauseCourse course : new CauseCourse[] {first, second}) {
            if (course.cause().serviceable() && course.sizeAt(0, timeline) > largerThan) {
                parts.add(course.cause().servicePart().orElseThrow());
            }
        }
        return parts;
    }

    /** Whether something that passes by itself still acts now, with at least this momentary size. */
    public boolean passing(double atLeast) {
        return first.cause().passes() && first.sizeAt(0, timeline) >= atLeast
                || second.cause().passes() && second.sizeAt(0, timeline) >= atLeast;
    }

    /** True crest over its mark now, as far as a cause moves it, mm. */
    public double slipMm() {
        return influenceAt(0).slipMm();
    }

    /** Level beyond the weir over the crest now, 0 for a free weir, mm. */
    public double drownedByMm() {
        return beyondMm(influenceAt(0), timeline.current().settings().weirCrestMm());
    }

    double beyondMm(Influence influence, double markedCrestMm) {
        return Math.max(0, foresight.beyondMm(influence, markedCrestMm));
    }

    /** Shift of the salinity now. */
    public double salinityShift() {
        return influenceAt(0).salinityShift();
    }

    /** True flow now, L/h. */
    public double flowLitresPerHour() {
        return timeline.current().settings().flowLitresPerHour()
                * unknowns.flowScale()
                * influenceAt(0).flowFactor();
    }

    /** Mean life of the foam now, s. */
    public double meanLifeSeconds() {
        return foresight.unit().traits().meanLifeSeconds()
                * unknowns.lifeScale()
                * influenceAt(0).lifeFactor();
    }

    /** What is to be seen now with the weir's mark at a height. */
    public Outlook now(double crestMm) {
        return at(timeline.current(), crestMm, 0, null);
    }

    /**
     * What is to be seen some hours ahead.
     *
     * @param crestMm the weir's mark then
     * @param hoursAhead 0 or more
     * @param serviced a part that is serviced now, or null for none
     */
    public Outlook ahead(double crestMm, double hoursAhead, Part serviced) {
        return at(timeline.current(), crestMm, hoursAhead, serviced);
    }

    Outlook at(Segment segment, double crestMm, double hours, Part serviced) {
        Influence influence = influence(first, hours, serviced).and(influence(second, hours, serviced));
        return foresight.at(foresight.inputs(segment.clean(), crestMm, unknowns, influence), unknowns, influence);
    }

    SteadyInputs inputs(Segment segment, double hours) {
        Influence influence = influence(first, hours, null).and(influence(second, hours, null));
        return foresight.inputs(segment.clean(), segment.settings().weirCrestMm(), unknowns, influence);
    }

    Influence influenceAt(double hours) {
        return influence(first, hours, null).and(influence(second, hours, null));
    }

    private Influence influence(CauseCourse course, double hours, Part serviced) {
        if (serviced != null
                && course.cause().servicePart().filter(serviced::equals).isPresent()) {
            return Influence.NONE;
        }
        return course.influence(course.sizeAt(hours, timeline));
    }

    /** What this possibility expects of any observation made now at the present settings. */
    public Expected expectedNow() {
        Segment current = timeline.current();
        return new Expected(view(current, 0, firstSizeAt(0), secondSizeAt(0)));
    }

    /** What this possibility expects in a stretch of settings at an hour, with the momentary sizes of its causes then. */
    View view(Segment segment, double hours, double firstSize, double secondSize) {
        Influence influence = first.influence(firstSize).and(second.influence(secondSize));
        SteadyInputs inputs =
                foresight.inputs(segment.clean(), segment.settings().weirCrestMm(), unknowns, influence);
        return new View(foresight.at(inputs, unknowns, influence), this, influence, segment.settings(), hours);
    }

    io.github.weirwise.unit.SkimmerUnit unit() {
        return foresight.unit();
    }

    double firstSizeAt(double hours) {
        return first.sizeAt(hours, timeline);
    }

    double secondSizeAt(double hours) {
        return second.sizeAt(hours, timeline);
    }

    /** What a look at a part or place finds wrong at an hour, 0 when all is well. */
    double faultAt(Part part, double hours) {
        return Math.max(sizeOf(first, part, hours), sizeOf(second, part, hours));
    }

    private double sizeOf(CauseCourse course, Part part, double hours) {
        if (course.cause().servicePart().filter(part::equals).isPresent()) {
            return course.sizeAt(hours, timeline);
        }
        return course.cause().shownBy(part) ? course.sizeAt(hours, timeline) : 0;
    }
}
