package collarwright.plan;

import collarwright.dome.Dome;
import collarwright.dome.DomeSettings;
import collarwright.dome.Opening;
import collarwright.dome.Role;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.hub.HubType;
import collarwright.hub.Hubs;
import collarwright.job.Job;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Checks whether a frame hangs together as a frame: what its hubs and its counts tell before any load is known. */
final class FrameChecks {

    /** Struts that reach round less than this past half a turn still lie on one side. */
    private static final double HALF_TURN = 1e-6;

    private final Dome dome;
    private final Hubs hubs;
    private final Set<Integer> feet;
    private final Set<String> corners = new HashSet<>();
    private final boolean generated;
    private final boolean opened;
    private final List<Finding> findings = new ArrayList<>();

    private FrameChecks(Job job, Hubs hubs) {
        this.generated = job.dome() instanceof DomeSettings;
        this.opened = !job.dome().openings().isEmpty();
        this.hubs = hubs;
        this.dome = hubs.dome();
        this.feet = new HashSet<>(dome.feet());
        job.dome().openings().stream().map(Opening::corners).forEach(corners::addAll);
    }

    static List<Finding> of(Job job, Hubs hubs) {
        FrameChecks checks = new FrameChecks(job, hubs);
        checks.fewStruts();
        checks.oneSided();
        checks.maxwell();
        checks.racking();
        return checks.findings;
    }

    private void fewStruts() {
        int[] struts = FrameShape.struts(dome);
        int[] few = IntStream.range(0, struts.length)
                .filter(node -> struts[node] < 3 && !corners.contains(dome.nodeId(node)))
                .toArray();
        if (few.length > 0) {
            findings.add(Finding.warn(
                    Code.HUB_STRUTS,
                    new Where.Part(FrameShape.named(dome, few)),
                    "3 struts or more at a hub",
                    struts[few[0]] + " struts",
                    opened
                            ? "close the opening's rim with add, or leave the hub out with nodes"
                            : "give it another strut, or leave it out",
                    "or declare it a corner, if something else holds it: corners = [\"" + dome.nodeId(few[0]) + "\"]"));
        }
    }

    private void oneSided() {
        boolean[] sided = new boolean[hubs.types().size()];
        for (int type = 0; type < sided.length; type++) {
            sided[type] = oneSided(hubs.types().get(type));
        }
        int[] found = IntStream.range(0, dome.nodeCount())
                .filter(node -> sided[hubs.typeOf(node)] && !corners.contains(dome.nodeId(node)))
                .toArray();
        int[] inside = IntStream.of(found).filter(node -> !feet.contains(node)).toArray();
        if (inside.length > 0) {
            findings.add(
                    Finding.warn(
                            Code.HUB_ONE_SIDED,
                            new Where.Part(FrameShape.named(dome, inside)),
                            "struts all round the hub",
                            "all its struts lie on one side",
                            "the struts can pull the centre ring out of the collar: close the opening's rim, or hold the hub otherwise"));
        }
        if (found.length > inside.length) {
            findings.add(Finding.note(
                    Code.HUB_ONE_SIDED,
                    new Where.Part((found.length - inside.length) + " foot hubs"),
                    "struts all round a hub",
                    "all their struts lie on one side",
                    "usual at a foot: fix the collars themselves to the ground or to a base ring"));
        }
    }

    private static boolean oneSided(HubType type) {
        return IntStream.range(0, type.struts().size())
                .anyMatch(hole -> type.gapAfter(hole) > StrictMath.PI - HALF_TURN);
    }

    private void maxwell() {
        int count = FrameCounts.onFeet(dome);
        if (count < 0) {
            findings.add(Finding.warn(
                    Code.FRAME_MECHANISM,
                    new Where.Part("dome"),
                    "a count of 0 or more: struts less 3 for each hub, and 3 for each foot hub that is held"
                            + " (6 for the whole where there is no foot)",
                    count + "; the frame may be a mechanism",
                    "add struts, close openings, or have somebody licensed look at it",
                    generated
                            ? "a count of 0 or more would not prove that the frame is stiff"
                            : "if more hubs stand on the ground than the " + feet.size()
                                    + " lowest, tell how high above the lowest they are: feet-within = \"…\""));
        }
    }

    private void racking() {
        boolean risers = IntStream.range(0, dome.memberCount()).anyMatch(m -> dome.role(m) == Role.RISER);
        boolean diagonals = IntStream.range(0, dome.memberCount()).anyMatch(m -> dome.role(m) == Role.RISER_DIAGONAL);
        if (risers && !diagonals) {
            findings.add(Finding.warn(
                    Code.FRAME_MECHANISM,
                    new Where.Part("risers"),
                    "braced quads between the risers",
                    "quads without diagonals, which can rack",
                    "write riser-diagonals = true, or brace the wall otherwise, as somebody licensed tells you"));
        }
    }
}
