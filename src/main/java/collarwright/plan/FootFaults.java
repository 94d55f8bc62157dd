package collarwright.plan;

import collarwright.dome.Dome;
import collarwright.dome.DomeSettings;
import collarwright.dome.Foot;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Finds feet that cannot be brought to one plane without crushing the shell. */
final class FootFaults {

    /** A strut that is left less than this share of its length is crushed. Our choice, no source. */
    static final double CRUSHED = 0.5;

    /** Heights nearer than this are one. */
    private static final double SAME = 1e-9;

    private FootFaults() {}

    /**
     * Looks for them.
     *
     * @param shell a shell, its foot brought to one plane if the job says so
     * @return a stop; empty where the foot is as the breakdown has it, or can be levelled
     */
    static List<Finding> of(Dome shell) {
        boolean moved = shell.feet().stream().anyMatch(node -> shell.moved(node) > 0);
        if (!moved || !(shell.source() instanceof DomeSettings settings)) {
            return List.of();
        }
        Dome natural = Dome.of(new DomeSettings(
                settings.sphere(),
                settings.cut(),
                settings.form(),
                new Foot.Natural(),
                settings.tiersFromFoot(),
                List.of()));
        List<Finding> findings = new ArrayList<>();
        crushed(shell, natural, findings);
        if (findings.isEmpty()) {
            below(shell, findings);
        }
        return findings;
    }

    private static void crushed(Dome shell, Dome natural, List<Finding> findings) {
        TreeSet<Integer> hubs = new TreeSet<>();
        double least = 1;
        for (int m = 0; m < shell.memberCount(); m++) {
            double share = shell.chordFactor(m) / natural.chordFactor(m);
            if (share < CRUSHED) {
                hubs.add(shell.memberA(m));
                hubs.add(shell.memberB(m));
                least = StrictMath.min(least, share);
            }
        }
        hubs.retainAll(shell.feet());
        if (!hubs.isEmpty()) {
            findings.add(stop(
                    shell,
                    hubs,
                    "struts that keep half their length or more",
                    "a strut is left " + Decimals.fixed(100 * least, 0) + " % of its length"));
        }
    }

    private static void below(Dome shell, List<Finding> findings) {
        double plane = shell.feet().stream().mapToDouble(shell::z).max().orElseThrow();
        TreeSet<Integer> hubs = new TreeSet<>();
        for (int node = 0; node < shell.nodeCount(); node++) {
            if (shell.z(node) < plane - SAME) {
                hubs.add(node);
            }
        }
        hubs.removeAll(shell.feet());
        if (!hubs.isEmpty()) {
            findings.add(stop(shell, hubs, "foot hubs lower than all others", "these would hang lower"));
        }
    }

    private static Finding stop(Dome shell, Set<Integer> hubs, String expected, String found) {
        return Finding.stop(
                Code.FOOT_LEVELLED,
                new Where.Part(FrameShape.named(
                        shell, hubs.stream().mapToInt(Integer::intValue).toArray())),
                "a foot that can be brought to one plane: " + expected,
                found,
                "this cut runs in a zigzag and cannot be levelled so: write foot = \"natural\", or cut elsewhere with"
                        + " another tiers = or cut-height =",
                "or try the other foot-plane");
    }
}
