package putback.plan.steps;

import putback.sheet.Height;

/** Makes the car stand as the next thing to be opened asks. */
final class Footing {
    private final StepLog log;
    private final Standing standing;

    Footing(Job job, StepLog log) {
        this.log = log;
        this.standing = new Standing(job);
    }

    void stand(Height height, boolean wheelIsOff) {
        if (height == Height.ANY || height == log.height()) {
            return;
        }
        log.stand(height, standing.step(log.height(), height, wheelIsOff));
        if (height == Height.ON_WHEELS && wheelIsOff) {
            log.warn("The plan sets the car on its wheels while one is off: look at the heights in the sheet.");
        }
    }
}
