package io.github.weirwise.care;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Work;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The days of the next weeks on which tasks are to be done, oldest first, overdue ones on the first day.
 *
 * <p>The media are never cleaned on a day of pad or pumps (common practice): their date moves on to the next free day.
 *
 * @param firstDay the first day
 * @param dates what falls on which day
 * @since 0.1
 */
public record CareCalendar(LocalDate firstDay, List<CareDate> dates) {
    private static final Limit DAYS = Limit.of("days", 1, 3660, Unit.DAY, "care.try.askForAtMost");

    private static final Set<CareTask> APART_FROM_MEDIA = Collections.unmodifiableSet(EnumSet.of(
            CareTask.RINSE_PAD,
            CareTask.REPLACE_PAD,
            CareTask.CLEAN_INJECTOR_PUMP,
            CareTask.CLEAN_RETURN_PUMP,
            CareTask.RENEW_IMPELLERS));

    /** Steps are whole days, rounded down: rather early than late. */
    private static final double ROUNDING_DAYS = 0.05;

    /** Copies and sorts the dates. */
    public CareCalendar {
        dates = dates.stream().sorted().toList();
    }

    /**
     * The calendar of a plan.
     *
     * @param zone the unit's time zone
     * @param days how many days, 1 to 3660
     * @param tasks which tasks; the daily look is better left out of a calendar
     * @throws io.github.weirwise.report.OutOfRangeException if the number of days is out of its range
     */
    public static CareCalendar of(CarePlan plan, ZoneId zone, int days, Set<CareTask> tasks) {
        DAYS.check(days);
        LocalDate first = plan.now().atZone(zone).toLocalDate();
        LocalDate end = first.plusDays(days);
        List<CareDate> dates = new ArrayList<>();
        for (CareTask task : tasks) {
            if (task != CareTask.CLEAN_MEDIA) {
                addDates(plan.item(task), zone, first, end, dates);
            }
        }
        if (tasks.contains(CareTask.CLEAN_MEDIA)) {
            addMedia(plan.item(CareTask.CLEAN_MEDIA), zone, first, end, dates);
        }
        return new CareCalendar(first, dates);
    }

    private static void addDates(CareItem item, ZoneId zone, LocalDate first, LocalDate end, List<CareDate> dates) {
        long step = Math.max(1, (long) Math.floor(item.interval().days() + ROUNDING_DAYS));
        for (LocalDate day = begin(item, zone, first); day.isBefore(end); day = day.plusDays(step)) {
            Work.step();
            dates.add(new CareDate(day, item.task()));
        }
    }

    private static void addMedia(CareItem item, ZoneId zone, LocalDate first, LocalDate end, List<CareDate> dates) {
        Set<LocalDate> taken = new HashSet<>();
        dates.stream().filter(date -> APART_FROM_MEDIA.contains(date.task())).forEach(date -> taken.add(date.day()));
        List<CareDate> wanted = new ArrayList<>();
        addDates(item, zone, first, end, wanted);
        for (CareDate date : wanted) {
            LocalDate day = date.day();
            while (taken.contains(day)) {
                day = day.plusDays(1);
            }
            if (day.isBefore(end)) {
                dates.add(new CareDate(day, item.task()));
            }
        }
    }

    private static LocalDate begin(CareItem item, ZoneId zone, LocalDate first) {
        LocalDate due = item.due().atZone(zone).toLocalDate();
        return due.isBefore(first) ? first : due;
    }
}
