package io.github.weirwise.lab;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The page docs/reference/evidence.md. */
final class PanelPage {
    private PanelPage() {}

    static String of(PanelReport report, int tanks, long seed) {
        PanelTables tables = new PanelTables(report.all());
        List<String> losses = report.losses();
        String where = losses.isEmpty()
                ? "On no line of this run.\n"
                : losses.stream().map(each -> "- " + each + "\n").collect(Collectors.joining());
        return String.format(
                Locale.ROOT,
                """
                # Evidence: the panel of truths

                Written by `mvn -q -Pevidence test-compile exec:exec -Devidence=panel -Dtanks=%d -Dseed=%d -Dphase=report`.

                The adviser that ships is played on hidden tanks against a careful keeper with a calendar and no model, and against an
                oracle that knows the true state. None of this is a real tank: no measurement of how a tank skimmer answers to level or
                air is known. What a real journal says can be reckoned with the command `score` ([embedding](../embedding.md)).

                ## How it is counted

                - **Truths.** Six families of hidden units (test tree, package `lab.truth`, a page each). Their laws share no code, no
                  parameter and no prior with the adviser or with each other. *gentle* is nearly the form that the adviser assumes, so it
                  is left out of averages over truths. *slow* is played over 90 days with a reading every second day, the others over 14
                  days with a daily reading and a hidden fault at the start. Counts are per 14 days.
                - **People, events and noise** are one page of numbers for all truths (`lab/Habits.java`): two readers with their own eye,
                  rounding, 3 %% gross misreadings, readings left out, missed visits, one advice in ten not followed; foaminess that
                  wanders, two feedings a day, heavy feeding, conditioner, a death, power cuts, noted or not. All are judgement.
                - **Cost**, in days of a badly running skimmer (`lab/Cost.java`): running 24 h mean out of 0.4 to 2.4 of the wanted amount 1 a
                  day; water that leaves cup and drain 3 a day instead, at least 0.5 an event; air off by hand 0.5 a day besides; a move, a
                  look, a visit asked for 0.1 each; a quick service 0.2, salt 0.3, a longer one 0.5; each part fouled by more than half
                  0.1 a day. Foam in band under the lid of a full cup stands still; wetter foam runs over, and that is a flood.
                - **Careful keeper**: at the start neck, pad and air line; neck and pad weekly, air line and both pumps monthly; 4 mm when the
                  last two amounts since the last move are both out of band on one side, 8 mm when far out, 10 mm down at once when the cup is
                  full of runny foam. Frozen before the adviser was built anew; its vectors are tests.
                - **Oracle**: knows today's true state, not what will happen; takes the cheapest over 7 days without noise of all
                  whole-millimetre moves with any set of services.
                - **Statements** are judged by replay, with the stated step done and nothing after it: the true mean over the 12 h before the
                  stated time. The log score takes the stated range as the middle 80 %% of a normal in the logarithm of the amount; "as last
                  time" gets the width that suits these very tanks best.
                - **Intervals** are 95 %% by drawing tanks with replacement, differences tank by tank.
                - Tanks looked at while building (`-Dphase=tune`) and tanks reported here never share a seed. Nothing that ships is fitted
                  on a truth.

                ## Cost

                %s
                ## Where the adviser loses

                %s
                ## What was done

                %s
                `done3` is the first trial's: in band at the end, parts put right, at most three changes and four looks. `harmful` is the share of
                moves that went farther from the band, hid a fault, or were followed by a flood within a day. Needless: a service of a part fouled
                by less than a quarter that the keeper's calendar did not call for.

                ## How honest

                %s
                %s
                ## All that played

                %s
                ## By hidden fault

                %s
                ## The adviser of the first round

                The line to beat: the adviser as it was at the end of the first round, played on this panel once, with few tanks because it was
                slow. The library of commit `c579832` played `panel -Dtanks=%d -Dseed=2 -Dphase=report` with the truths of today; the present sources
                cannot print it again.

                %s
                """,
                tanks,
                seed,
                tables.cost(),
                where,
                tables.work(),
                tables.honesty(),
                tables.reliability(),
                tables.rivals(),
                tables.byFault(),
                FirstRound.TANKS,
                FirstRound.table());
    }
}
