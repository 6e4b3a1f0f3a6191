package io.github.weirwise.evidence;

import java.util.List;

/** Asks for advice in every case of the guard's grid and counts what came. */
final class GuardCommand {
    private GuardCommand() {}

    /** An answer that fails is no answer. */
    private static GuardCheck check(GuardCase each) {
        try {
            return GuardCheck.of(each);
        } catch (RuntimeException e) {
            System.out.println(e);
            return new GuardCheck(false, false, false, true);
        }
    }

    static void run() {
        int journals = 0;
        int actedOn = 0;
        int withCaution = 0;
        int wayBack = 0;
        int nearMisses = 0;
        int falseAlarms = 0;
        List<GuardCase> all = GuardGrid.all();
        for (GuardCase each : all) {
            GuardCheck check = check(each);
            if (!check.right(each.danger())) {
                System.out.println("not right: " + each.line() + " -> " + check);
            }
            if (each.danger()) {
                journals++;
                actedOn += check.actedOn() ? 1 : 0;
                withCaution += check.withCaution() ? 1 : 0;
                wayBack += check.wayBack() ? 1 : 0;
            } else {
                nearMisses++;
                falseAlarms += check.alarmed() ? 1 : 0;
            }
        }
        System.out.println("result: journals=" + journals + " actedOn=" + actedOn + " withCaution=" + withCaution
                + " wayBack=" + wayBack + " nearMisses=" + nearMisses + " falseAlarms=" + falseAlarms);
    }
}
