package collarwright.plan;

import collarwright.dome.Dome;
import collarwright.dome.DomeSettings;
import collarwright.dome.DomeSource;
import collarwright.dome.Role;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.geometry.Vec3;
import collarwright.units.Angles;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** Finds hubs that no collar can be made for, before any collar is laid out. */
final class HubFaults {

    /** More struts than this have no room round a collar. Our choice, no source. */
    static final int MOST_STRUTS = 12;

    /** A strut that leans further than this goes in along the pipe, not through its wall. Our choice, no source. */
    static final double STEEPEST_DEGREES = 70;

    /** Directions nearer than this are one, rad. */
    private static final double SAME_DIRECTION = 1e-6;

    private final Dome dome;
    private final DomeSource source;
    private final int[] struts;
    private final List<Finding> findings = new ArrayList<>();

    private HubFaults(Dome dome, DomeSource source) {
        this.dome = dome;
        this.source = source;
        this.struts = FrameShape.struts(dome);
    }

    static List<Finding> of(Dome dome, DomeSource source) {
        HubFaults faults = new HubFaults(dome, source);
        faults.look();
        return faults.findings;
    }

    private void look() {
        if (dome.memberCount() == 0) {
            findings.add(Finding.stop(
                    Code.HUB_STRUTS,
                    new Where.Part("dome"),
                    "hubs and struts",
                    "none is left",
                    "keep more of the sphere, or make the openings smaller"));
            return;
        }
        String cure = source instanceof DomeSettings
                ? "leave it out with nodes = [\"…\"] in an opening, or join it to another hub with add"
                : "give it another strut, or take it out of the frame's file";
        each(node -> struts[node] < 2, "2 struts or more", node -> struts[node] + " strut", cure);
        each(
                node -> struts[node] > MOST_STRUTS,
                "at most " + MOST_STRUTS + " struts",
                node -> struts[node] + " struts",
                "join fewer struts in one hub");
        pieces();
        if (!findings.isEmpty() || asBrokenDown()) {
            return;
        }
        axes();
        if (findings.isEmpty()) {
            steep();
        }
        if (findings.isEmpty()) {
            oneBelowTheOther();
        }
    }

    // On a sphere axes are radial, and no strut of the breakdown is so long that it leans too far; an added one may be,
    // and one to a foot that was moved.
    private boolean asBrokenDown() {
        return dome.onSphere()
                && IntStream.range(0, dome.memberCount()).noneMatch(m -> dome.role(m) == Role.RIM)
                && dome.feet().stream().noneMatch(node -> dome.moved(node) > 0);
    }

    // Two struts of one azimuth would need one hole: between them no web can be.
    private void oneBelowTheOther() {
        List<List<Vec3>> around = new ArrayList<>();
        for (int node = 0; node < dome.nodeCount(); node++) {
            around.add(new ArrayList<>(6));
        }
        boolean[] faulty = new boolean[dome.nodeCount()];
        for (int m = 0; m < dome.memberCount(); m++) {
            int a = dome.memberA(m);
            int b = dome.memberB(m);
            faulty[a] |= meets(around.get(a), flat(dome.node(b).minus(dome.node(a)), dome.axis(a)));
            faulty[b] |= meets(around.get(b), flat(dome.node(a).minus(dome.node(b)), dome.axis(b)));
        }
        int[] found =
                IntStream.range(0, faulty.length).filter(node -> faulty[node]).toArray();
        if (found.length > 0) {
            findings.add(Finding.stop(
                    Code.HUB_AXIS,
                    new Where.Part(FrameShape.named(dome, found)),
                    "struts that leave the hub in different directions round its axis",
                    "two of them one above the other",
                    source instanceof DomeSettings
                            ? "leave one of them out"
                            : "leave one of them out, or give the hub another axis"));
        }
    }

    private static Vec3 flat(Vec3 along, Vec3 axis) {
        return along.minus(axis.times(along.dot(axis))).unit();
    }

    private static boolean meets(List<Vec3> others, Vec3 flat) {
        boolean found = others.stream().anyMatch(other -> other.minus(flat).norm() < SAME_DIRECTION);
        others.add(flat);
        return found;
    }

    private void each(IntPredicate fault, String expected, java.util.function.IntFunction<String> found, String cure) {
        int[] nodes = IntStream.range(0, dome.nodeCount()).filter(fault).toArray();
        if (nodes.length > 0) {
            findings.add(Finding.stop(
                    Code.HUB_STRUTS,
                    new Where.Part(FrameShape.named(dome, nodes)),
                    expected,
                    found.apply(nodes[0]),
                    cure));
        }
    }

    private void pieces() {
        int[] piece = FrameShape.pieces(dome);
        int[] starts = IntStream.range(0, piece.length)
                .filter(node -> piece[node] == node)
                .toArray();
        if (starts.length > 1) {
            findings.add(Finding.stop(
                    Code.FRAME_APART,
                    new Where.Part("dome"),
                    "one frame that hangs together",
                    starts.length + " pieces, with " + FrameShape.named(dome, starts),
                    "join them, or make each a job of its own"));
        }
    }

    private void axes() {
        int[] loose = IntStream.range(0, dome.nodeCount())
                .filter(node -> Double.isNaN(dome.axis(node).x()))
                .toArray();
        if (loose.length > 0) {
            findings.add(Finding.stop(
                    Code.HUB_AXIS,
                    new Where.Part(FrameShape.named(dome, loose)),
                    "struts that determine the hub's axis: three that are not in one plane through the hub",
                    struts[loose[0]] + " struts that leave it open",
                    "give the axis: axes = { " + dome.nodeId(loose[0]) + " = [0, 0, 1] } in [dome]"));
        }
    }

    private void steep() {
        double most = StrictMath.sin(Angles.radians(STEEPEST_DEGREES));
        for (int m = 0; m < dome.memberCount(); m++) {
            int a = dome.memberA(m);
            int b = dome.memberB(m);
            Vec3 along = dome.node(b).minus(dome.node(a)).unit();
            steep(m, a, along.dot(dome.axis(a)), most);
            steep(m, b, -along.dot(dome.axis(b)), most);
        }
    }

    private void steep(int member, int node, double sine, double most) {
        if (StrictMath.abs(sine) > most && findings.size() < 20) {
            int other = dome.memberA(member) + dome.memberB(member) - node;
            double degrees = Angles.degrees(StrictMath.asin(StrictMath.max(-1, StrictMath.min(1, sine))));
            findings.add(Finding.stop(
                    Code.HUB_AXIS,
                    new Where.Part("hub " + dome.nodeId(node) + " / strut to " + dome.nodeId(other)),
                    "a strut that leans at most " + collarwright.units.Decimals.fixed(STEEPEST_DEGREES, 0)
                            + "° from the hub's plane",
                    collarwright.units.Decimals.fixed(StrictMath.abs(degrees), 1) + "°",
                    dome.role(member) == Role.RIM
                            ? "no hole through the collar's wall takes it: join other hubs with add"
                            : source instanceof DomeSettings
                                    ? "no hole through the collar's wall takes it: change the dome"
                                    : "no hole through the collar's wall takes it: change the frame, or give the hub's axis: axes = { "
                                            + dome.nodeId(node) + " = [0, 0, 1] } in [dome]"));
        }
    }
}
