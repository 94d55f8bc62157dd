package collarwright.plan;

import collarwright.dome.Dome;
import collarwright.dome.Girth;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Level;
import collarwright.hub.Alike;
import collarwright.hub.Hubs;
import collarwright.job.Job;
import collarwright.strut.StrutLayout;
import java.util.ArrayList;
import java.util.List;

/**
 * The frame of a job with its size: shell, size, then what is measured in mm.
 *
 * @param shell hubs of the shell, without risers and openings; the hubs of the frame where there are none
 * @param hubs hubs of the whole frame
 * @param struts its struts and its size
 * @param findings what a person has to know of it
 */
record Framing(Hubs shell, Hubs hubs, StrutLayout struts, List<Finding> findings) {

    Framing {
        findings = List.copyOf(findings);
    }

    /**
     * Builds the frame of a job.
     *
     * @param job the job
     * @return the frame
     * @throws JobException if it has a hub that no collar can be made for
     */
    static Framing of(Job job) {
        List<Finding> findings = new ArrayList<>();
        StrutLayout.Clearance clearance = new StrutLayout.Clearance(
                job.hub().ring().outerRadius(), job.hub().endGap());
        Dome shell = Dome.of(job.dome());
        refuse(FootFaults.of(shell));
        refuse(HubFaults.of(shell, job.dome()));
        Alike alike = Alikes.of(job);
        Hubs shellHubs = Hubs.of(shell, alike);
        StrutLayout sized = StrutLayout.of(shellHubs, job.size(), job.strut(), clearance);
        double strut = job.strut().stock().od().max();
        Dome whole = shell.finished(
                sized.radius(), new Girth(strut / 2, job.hub().body().outerRadius()), findings);
        refuse(findings);
        if (whole == shell) {
            return new Framing(shellHubs, shellHubs, sized, findings);
        }
        refuse(HubFaults.of(whole, job.dome()));
        refuse(RimFaults.of(whole, sized.radius(), strut));
        Hubs hubs = Hubs.of(whole, alike);
        StrutLayout struts = StrutLayout.of(hubs, sized.radius(), job.strut(), clearance);
        return new Framing(shellHubs, hubs, struts, findings);
    }

    private static void refuse(List<Finding> findings) {
        if (findings.stream().anyMatch(f -> f.level() == Level.STOP)) {
            throw new JobException(findings);
        }
    }
}
