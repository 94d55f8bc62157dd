package collarwright.plan;

import collarwright.dome.FrameSettings;
import collarwright.hub.Alike;
import collarwright.job.Job;

/** How near two parts of a job's frame have to be to be one type. */
final class Alikes {

    private Alikes() {}

    static Alike of(Job job) {
        Alike alike = job.dome() instanceof FrameSettings frame
                ? Alike.within(frame.alike(), frame.alike() / job.hub().body().outerRadius())
                : Alike.EXACT;
        return job.strut().tieHole().isPresent() ? alike : alike.untwisted();
    }
}
