package collarwright.dome;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.geometry.Vec3;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/**
 * Keeps a doorway clear: struts by their thickness, and hubs by their collars, each taken as a ball of the collar's outside
 * radius about its node.
 */
final class Doorway {

    /** What comes into a box by less than this, in mm, is beside it. */
    private static final double TOUCH = 1e-9;

    private final DomeParts whole;
    private final Opening.Box box;
    private final Openings.Measure measure;
    private final String place;
    private final double floor;
    private final BoxReach reach;
    private final List<Integer> hubs = new ArrayList<>();
    private double deepest;
    private int struts;

    Doorway(DomeParts whole, Opening.Box box, Openings.Measure measure, String place) {
        this.whole = whole;
        this.box = box;
        this.measure = measure;
        this.place = place;
        double lowest = Double.POSITIVE_INFINITY;
        for (int node = 0; node < whole.nodeCount(); node++) {
            lowest = StrictMath.min(lowest, at(whole, node).z());
        }
        this.floor = lowest;
        this.reach = new BoxReach(box, floor);
    }

    private Vec3 at(DomeParts parts, int node) {
        return parts.node(node).times(measure.scale());
    }

    /** Marks what comes in. */
    void leaveOut(boolean[] goneNode, boolean[] goneMember) {
        boolean[] standing = new boolean[whole.nodeCount()];
        for (int m = 0; m < whole.memberCount(); m++) {
            int a = whole.members()[2 * m];
            int b = whole.members()[2 * m + 1];
            if (reach.touches(
                    at(whole, a), at(whole, b), TOUCH - measure.girth().strut())) {
                goneMember[m] = true;
                struts++;
            } else {
                standing[a] = true;
                standing[b] = true;
            }
        }
        for (int node = 0; node < whole.nodeCount(); node++) {
            double in = reach.depth(at(whole, node)) + measure.girth().collar();
            // A hub without girth is the end of its struts, which have been looked at.
            if (measure.girth().collar() > 0 && in > TOUCH && !goneNode[node]) {
                goneNode[node] = true;
                if (standing[node]) {
                    hubs.add(node);
                    deepest = StrictMath.max(deepest, in);
                }
            }
        }
    }

    /** Tells what was left out beside struts, what comes in all the same, and how large the doorway really is. */
    void tell(DomeParts left, List<Finding> findings) {
        if (struts == 0 && hubs.isEmpty()) {
            findings.add(Finding.warn(
                    Code.DOME_OPENING,
                    new Where.Part(place + " / box"),
                    "a box that some strut comes into",
                    "no strut is in the way",
                    "nothing was left out for it; check its azimuth and size if that is not what you want"));
            return;
        }
        if (!hubs.isEmpty()) {
            findings.add(Finding.note(
                    Code.DOME_OPENING,
                    new Where.Part(place + " / box"),
                    "a doorway clear of collars",
                    Openings.named(whole, hubs) + ", whose collars came in by up to " + Decimals.fixed(deepest, 1)
                            + " mm",
                    "left out with their struts; a smaller box or another azimuth would keep them"));
        }
        double highest = Double.NEGATIVE_INFINITY;
        for (int node = 0; node < whole.nodeCount(); node++) {
            highest = StrictMath.max(highest, at(whole, node).z());
        }
        if (reach.top() > highest) {
            findings.add(Finding.warn(
                    Code.DOME_OPENING,
                    new Where.Part(place + " / box"),
                    "a doorway lower than the frame, " + Decimals.fixed(highest - floor, 1) + " mm",
                    Decimals.fixed(box.height(), 1) + " mm high",
                    "the frame is open to its top there; check the height if that is not what you want"));
        }
        comesIn(left, findings);
        clear(left, findings);
    }

    private void comesIn(DomeParts left, List<Finding> findings) {
        for (int m = 0; m < left.memberCount(); m++) {
            int a = left.members()[2 * m];
            int b = left.members()[2 * m + 1];
            if (reach.touches(at(left, a), at(left, b), TOUCH - measure.girth().strut())) {
                findings.add(Finding.warn(
                        Code.DOME_OPENING,
                        new Where.Part(place + " / box"),
                        "a doorway clear of added struts",
                        left.names().id(a) + "/" + left.names().id(b) + ", which comes into it",
                        "join other hubs, or make the box smaller"));
            }
        }
    }

    // First how low the lowest part hangs in it, then how near the parts below that stand.
    private void clear(DomeParts left, List<Finding> findings) {
        double under = Double.POSITIVE_INFINITY;
        for (int m = 0; m < left.memberCount(); m++) {
            Vec3 a = at(left, left.members()[2 * m]);
            Vec3 b = at(left, left.members()[2 * m + 1]);
            under = StrictMath.min(under, reach.underside(a, b, measure.girth().strut()));
        }
        for (int node = 0; node < left.nodeCount(); node++) {
            Vec3 at = at(left, node);
            under = StrictMath.min(
                    under, reach.underside(at, at, measure.girth().collar()));
        }
        double height = StrictMath.min(under, reach.top()) - floor;
        BoxReach below = new BoxReach(new Opening.Box(box.width(), StrictMath.max(height, 0), box.azimuth()), floor);
        double aside = Double.POSITIVE_INFINITY;
        for (int m = 0; m < left.memberCount(); m++) {
            Vec3 a = at(left, left.members()[2 * m]);
            Vec3 b = at(left, left.members()[2 * m + 1]);
            aside = StrictMath.min(aside, below.aside(a, b, measure.girth().strut()));
        }
        for (int node = 0; node < left.nodeCount(); node++) {
            Vec3 at = at(left, node);
            aside = StrictMath.min(aside, below.aside(at, at, measure.girth().collar()));
        }
        String wide = aside == Double.POSITIVE_INFINITY ? "no limit" : Decimals.fixed(2 * aside, 0) + " mm";
        String high = under == Double.POSITIVE_INFINITY ? "open above" : Decimals.fixed(under - floor, 0) + " mm high";
        findings.add(Finding.note(
                Code.DOME_OPENING,
                new Where.Part(place + " / box"),
                Decimals.fixed(box.width(), 0) + " mm wide and " + Decimals.fixed(box.height(), 0) + " mm high",
                "clear between struts and collars: " + wide + " wide about its middle, " + high,
                "heights count from the lowest hubs' nodes; measure the frame before a door is ordered"));
    }
}
