package collarwright.plan;

import collarwright.hub.Alike;
import collarwright.job.Job;

/** How near two parts of a job's frame have to be to be one type. */
final class Alikes {

    private Alikes() {}

    static Alike of(Job job) {
        return Alike.EXACT;
    }
}
