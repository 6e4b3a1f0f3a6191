package io.github.weirwise.advice;

import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Target;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What amounts came at which settings of the weir, as far as nothing else was changed since: a keeper's own brackets. It holds for
 * steep units as for gentle ones.
 *
 * @param tooWet the lowest crest at which a flood was seen
 * @param fine the highest crest at which an amount in the band was read
 * @param shares the newest {@value #NEWEST} amounts at the present settings, over the wanted one
 */
record WeirNoted(Optional<At> tooWet, Optional<At> fine, List<Double> shares) {
    static final WeirNoted NONE = new WeirNoted(Optional.empty(), Optional.empty(), List.of());

    private static final int NEWEST = 3;
    /** A cup that began to fill sooner after a change says little of the new setting. */
    private static final Duration SETTLED = Duration.ofHours(6);

    private static final Duration REMEMBERED = Duration.ofDays(7);
    /** A jump of the amount by this factor between two readings. */
    private static final double ODD_LOG = Math.log(1.7);

    private static final double LEAST_SHARE = 0.02;
    /** On one amount that stands alone the weir goes no farther: it does no harm when that was misread. */
    private static final double ALONE_MM = 3;

    /** This near the wanted amount nothing is gained by a move (stated judgement). */
    private static final double NEAR_LOG = Math.log(1.28);

    /** On a first amount that lies in the band, no farther than this. */
    private static final double FIRST_MM = 5;

    private static final double HALF_WAY = 0.5;
    private static final double LEAST_MM = 1;
    private static final double LOW = Math.log(Target.AMOUNT_BAND.low());
    private static final double HIGH = Math.log(Target.AMOUNT_BAND.high());
    /** Over the wanted amount by this, nothing is gained by more, whatever else was read. */
    private static final double MUCH = 1.5;

    /**
     * A crest and what was seen there.
     *
     * @param crestMm over the chamber floor
     * @param when the newest time
     */
    record At(double crestMm, Instant when) {}

    WeirNoted after(JournalEntry entry, Settings settings, boolean flood, Optional<Instant> changed, SkimmerUnit unit) {
        if (entry instanceof Service || entry instanceof SettingChange) {
            return NONE;
        }
        if (entry instanceof WeirMove) {
            return new WeirNoted(tooWet, fine, List.of());
        }
        if (flood) {
            At here = new At(settings.weirCrestMm(), entry.at());
            boolean lowest =
                    tooWet.filter(wet -> wet.crestMm() < here.crestMm()).isEmpty();
            return new WeirNoted(
                    lowest ? Optional.of(here) : tooWet, fine.filter(each -> each.crestMm() < here.crestMm()), shares);
        }
        if (!(entry instanceof Reading reading)) {
            return this;
        }
        Optional<Observation.CupVolume> cup = reading.find(Observation.CupVolume.class);
        boolean settled = changed.filter(at -> Duration.between(at, entry.at()).compareTo(SETTLED) < 0)
                .isEmpty();
        if (cup.isEmpty() && otherFoam(reading)) {
            return new WeirNoted(tooWet, fine, List.of());
        }
        if (cup.isEmpty() || cup.get().full() || !cup.get().possibleIn(unit) || !settled) {
            return this;
        }
        double share = cup.get().mlPerDay() / unit.target().skimmateMlPerDay();
        List<Double> newer = new ArrayList<>(shares);
        newer.add(share);
        if (newer.size() > NEWEST) {
            newer.remove(0);
        }
        boolean good = Target.AMOUNT_BAND.contains(share);
        boolean highest =
                fine.filter(each -> each.crestMm() > settings.weirCrestMm()).isEmpty();
        Optional<At> best = good && highest ? Optional.of(new At(settings.weirCrestMm(), entry.at())) : fine;
        return new WeirNoted(tooWet, best, newer);
    }

    /** Whether foam was seen out of the band, on the other side of what the newest amount tells. */
    private boolean otherFoam(Reading reading) {
        double newest = shares.isEmpty() ? 1 : shares.get(shares.size() - 1);
        return reading.find(Observation.FoamLook.class)
                .map(seen -> seen.look().amountLog())
                .filter(log -> newest >= 1 ? log.high() < LOW : log.low() > HIGH)
                .isPresent();
    }

    /** Whether the newest amount stands alone against two before it that agree: misread as likely as true. */
    private boolean oddAmount() {
        if (shares.size() < NEWEST) {
            return false;
        }
        double first = Math.log(Math.max(LEAST_SHARE, shares.get(0)));
        double second = Math.log(Math.max(LEAST_SHARE, shares.get(1)));
        double newest = Math.log(Math.max(LEAST_SHARE, shares.get(2)));
        return Math.abs(first - second) < ODD_LOG && Math.abs(newest - 0.5 * (first + second)) > ODD_LOG;
    }

    /** Whether the newest amounts, all in their band, lie about the wanted one on the average: each by itself tells of chance alone. */
    private boolean runsWell() {
        double logs = 0;
        for (double share : shares) {
            if (!Target.AMOUNT_BAND.contains(share)) {
                return false;
            }
            logs += Math.log(share);
        }
        return shares.size() == NEWEST && Math.abs(logs) < NEWEST * NEAR_LOG;
    }

    /** Whether the two newest amounts at the present settings are out of the band on the same side. */
    boolean twiceOut() {
        int n = shares.size();
        if (n < 2) {
            return false;
        }
        double lower = Math.min(shares.get(n - 1), shares.get(n - 2));
        double upper = Math.max(shares.get(n - 1), shares.get(n - 2));
        return lower > Target.AMOUNT_BAND.high() || upper < Target.AMOUNT_BAND.low();
    }

    /** Whether one amount was read at the present settings, and lies in the band. */
    boolean onceInBand() {
        return shares.size() == 1 && Target.AMOUNT_BAND.contains(shares.get(0));
    }

    /** Whether an amount was read at the present settings. */
    boolean readHere() {
        return !shares.isEmpty();
    }

    /**
     * Whether a move keeps to the brackets: none while the unit runs well; up not more than half way to where it flooded lately, not up while the newest amount is
     * in the upper part of its band or over it, nor down while it is in the lower part; and not far on one amount that stands alone.
     */
    boolean allows(double byMm, double crestMm, Instant now) {
        if (byMm > LEAST_MM
                && tooWet.filter(wet -> Duration.between(wet.when(), now).compareTo(REMEMBERED) <= 0
                                && byMm > Math.max(LEAST_MM, HALF_WAY * (wet.crestMm() - crestMm)))
                        .isPresent()) {
            return false;
        }
        if (shares.isEmpty()) {
            return true;
        }
        if (Math.abs(byMm) > ALONE_MM && oddAmount() || Math.abs(byMm) > FIRST_MM && onceInBand()) {
            return false;
        }
        if (byMm != 0 && runsWell()) {
            return false;
        }
        double newest = shares.get(shares.size() - 1);
        return byMm > 0 ? newest <= MUCH : byMm == 0 || newest >= 1 / MUCH;
    }
}
