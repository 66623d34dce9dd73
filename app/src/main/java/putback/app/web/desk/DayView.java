package putback.app.web.desk;

import java.util.ArrayList;
import java.util.List;
import putback.store.books.JobLine;
import putback.store.books.Recheck;

/**
 * What the day holds.
 *
 * @param lists who acts next, each with its jobs; empty ones are left out
 * @param rechecks due today or before
 * @param standstills jobs in which something broke
 */
public record DayView(
        List<Waiting> lists,
        List<Due> rechecks,
        List<NotDriven> notDriven,
        List<Standstill> standstills,
        boolean blank) {
    public DayView {
        lists = List.copyOf(lists);
        rechecks = List.copyOf(rechecks);
        notDriven = List.copyOf(notDriven);
        standstills = List.copyOf(standstills);
    }

    /** Jobs that wait for the same. */
    public record Waiting(String heading, List<JobLine> jobs) {
        public Waiting {
            jobs = List.copyOf(jobs);
        }
    }

    /** A recheck that is due. */
    public record Due(Recheck recheck, JobLine job) {}

    /**
     * @param now the garage's time, as 2026-11-03T16:00
     */
    static DayView of(
            List<JobLine> open, List<Due> due, List<NotDriven> notDriven, List<Standstill> standstills, String now) {
        List<JobLine> late = new ArrayList<>();
        List<JobLine> ramp = new ArrayList<>();
        List<JobLine> owner = new ArrayList<>();
        List<JobLine> parts = new ArrayList<>();
        List<JobLine> us = new ArrayList<>();
        for (JobLine job : open) {
            if (!job.promisedAt().isEmpty() && job.promisedAt().compareTo(now) < 0) {
                late.add(job);
                continue;
            }
            switch (job.stage()) {
                case UNDER_WAY, TOGETHER -> ramp.add(job);
                case PRICED -> owner.add(job);
                case AGREED -> (job.partsMissing() > 0 ? parts : us).add(job);
                default -> us.add(job);
            }
        }
        List<Waiting> lists = new ArrayList<>();
        add(lists, "Promised for before now", late);
        add(lists, "On the ramp", ramp);
        add(lists, "Waits for the owner’s word", owner);
        add(lists, "Waits for parts", parts);
        add(lists, "Waits for us", us);
        return new DayView(lists, due, notDriven, standstills, open.isEmpty() && due.isEmpty());
    }

    private static void add(List<Waiting> lists, String heading, List<JobLine> jobs) {
        if (!jobs.isEmpty()) {
            lists.add(new Waiting(heading, jobs));
        }
    }
}
