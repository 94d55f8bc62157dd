package collarwright.frame;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.units.Decimals;
import collarwright.units.LengthUnit;
import java.util.Arrays;
import java.util.Optional;

/** Makes a frame of what a file says: one unit, one node for each place, one member for each edge. */
final class FrameBuilder {

    /** Further out than this no frame stands, mm. */
    private static final double FARTHEST = 1e9;

    private final RawFrame raw;
    private final FrameOptions options;
    private int[] nodeOfPoint = {};

    FrameBuilder(RawFrame raw, FrameOptions options) {
        this.raw = raw;
        this.options = options;
    }

    FrameReading build() {
        Optional<LengthUnit> unit = unit();
        if (raw.edges() == 0 && !raw.stopped()) {
            stop(Code.FRAME_MEMBER, "members: faces or lines", "none", "write the faces or lines of the frame too");
        }
        if (unit.isEmpty() || raw.stopped()) {
            return stopped();
        }
        PointGrid nodes = merged(unit.get());
        if (raw.stopped()) {
            return stopped();
        }
        int[] members = members(nodes.size());
        FrameNet net = compact(nodes, members);
        if (raw.stopped()) {
            return stopped();
        }
        if (net.nodeCount() > FrameReader.MOST_NODES || net.memberCount() > FrameReader.MOST_MEMBERS) {
            tooMany(net.nodeCount(), net.memberCount());
            return stopped();
        }
        Crossings.each(
                net,
                member -> true,
                StrictMath.max(options.merge(), 1e-6),
                (first, second, apart) -> crossing(net, first, second, apart));
        return raw.stopped() ? stopped() : new FrameReading(Optional.of(net), unit.get(), raw.findings());
    }

    private void crossing(FrameNet net, int first, int second, double apart) {
        raw.stop(
                Code.FRAME_CROSSING,
                new Where.Part(raw.file() + " / members " + named(net, first) + " and " + named(net, second)),
                "members that meet at their nodes only",
                "they come within " + Decimals.fixed(apart, 3) + " mm of each other",
                "put a node where they meet, or take one of them out");
    }

    private static String named(FrameNet net, int member) {
        return number(net, net.memberA(member)) + "/" + number(net, net.memberB(member));
    }

    private static String number(FrameNet net, int node) {
        String digits = Integer.toString(node + 1);
        int width = StrictMath.max(3, Integer.toString(net.nodeCount()).length());
        return "N" + "0".repeat(width - digits.length()) + digits;
    }

    private FrameReading stopped() {
        return new FrameReading(Optional.empty(), LengthUnit.MM, raw.findings());
    }

    private void stop(Code code, String expected, String found, String hint) {
        raw.stop(code, new Where.Part(raw.file()), expected, found, hint);
    }

    private void tooMany(int nodes, int members) {
        stop(
                Code.FRAME_LIMIT,
                "at most " + FrameReader.MOST_NODES + " nodes and " + FrameReader.MOST_MEMBERS + " members",
                nodes + " nodes and " + members + " members",
                "give a part of the frame, or a coarser one");
    }

    private Optional<LengthUnit> unit() {
        Optional<LengthUnit> said = raw.unit();
        Optional<LengthUnit> given = options.unit();
        if (said.isEmpty() && given.isEmpty()) {
            stop(
                    Code.FRAME_UNIT,
                    "the unit of the file's numbers",
                    "the file does not say it",
                    "write frame-unit = \"mm\" (or cm, m, in, ft) in [dome]");
        } else if (said.isPresent() && given.isPresent() && said.get() != given.get()) {
            raw.add(Finding.warn(
                    Code.FRAME_UNIT,
                    new Where.Part(raw.file()),
                    said.get().symbol() + ", as the file says",
                    "frame-unit = \"" + given.get().symbol() + "\"",
                    "the job's unit is taken; take frame-unit out to have the file's"));
        }
        return given.or(() -> said);
    }

    // Vertices nearer than the tolerance are one node, the first of them; it keeps its place exactly.
    private PointGrid merged(LengthUnit unit) {
        double millimetres = unit.millimetres().value();
        PointGrid nodes = new PointGrid(options.merge());
        nodeOfPoint = new int[raw.points()];
        for (int point = 0; point < nodeOfPoint.length; point++) {
            double x = raw.coordinate(3 * point) * millimetres;
            double y = raw.coordinate(3 * point + 1) * millimetres;
            double z = raw.coordinate(3 * point + 2) * millimetres;
            if (StrictMath.max(StrictMath.abs(x), StrictMath.max(StrictMath.abs(y), StrictMath.abs(z))) > FARTHEST) {
                raw.stop(
                        Code.FRAME_COORDINATE,
                        raw.at(raw.pointPlace(point)),
                        "coordinates of at most a million metres",
                        x + " " + y + " " + z + " mm",
                        "check the unit");
            } else {
                nodeOfPoint[point] = options.upY() ? nodes.index(x, -z, y) : nodes.index(x, y, z);
            }
            if (nodes.size() > 2 * FrameReader.MOST_NODES) {
                tooMany(nodes.size(), raw.edges());
                break;
            }
        }
        return nodes;
    }

    // Sorted by nodes, then by place in the file, so that what comes twice stands side by side: each edge in the bucket
    // of its lower node, as its higher node above its own number.
    private int[] members(int nodes) {
        int[] start = new int[nodes + 1];
        for (int edge = 0; edge < raw.edges(); edge++) {
            start[lower(edge) + 1]++;
        }
        for (int node = 0; node < nodes; node++) {
            start[node + 1] += start[node];
        }
        long[] sorted = new long[raw.edges()];
        int[] next = start.clone();
        for (int edge = 0; edge < sorted.length; edge++) {
            sorted[next[lower(edge)]++] = (long) higher(edge) << Integer.SIZE | edge;
        }
        Ints members = new Ints();
        for (int node = 0; node < nodes; node++) {
            Arrays.sort(sorted, start[node], start[node + 1]);
            ofNode(node, sorted, start[node], start[node + 1], members);
        }
        return members.toArray();
    }

    private int lower(int edge) {
        return StrictMath.min(nodeOfPoint[raw.from(edge)], nodeOfPoint[raw.to(edge)]);
    }

    private int higher(int edge) {
        return StrictMath.max(nodeOfPoint[raw.from(edge)], nodeOfPoint[raw.to(edge)]);
    }

    private void ofNode(int node, long[] sorted, int first, int end, Ints members) {
        for (int from = first; from < end; ) {
            int other = (int) (sorted[from] >>> Integer.SIZE);
            int to = from;
            while (to < end && (int) (sorted[to] >>> Integer.SIZE) == other) {
                to++;
            }
            if (other == node) {
                zeroLength(sorted, from, to);
            } else {
                repeated(sorted, from, to);
                members.add(node);
                members.add(other);
            }
            from = to;
        }
    }

    private static int edge(long sorted) {
        return (int) sorted;
    }

    private void zeroLength(long[] sorted, int from, int to) {
        for (int i = from; i < to; i++) {
            raw.stop(
                    Code.FRAME_MEMBER,
                    raw.at(raw.edgePlace(edge(sorted[i]))),
                    "a member between two nodes",
                    "both ends are one node, within " + options.merge() + " mm",
                    "take it out, or make merge smaller");
        }
    }

    // An edge belongs to one face or two; a line stands once.
    private void repeated(long[] sorted, int from, int to) {
        int first = -1;
        int faces = 0;
        for (int i = from; i < to; i++) {
            int edge = edge(sorted[i]);
            if (!raw.isLine(edge)) {
                faces++;
            } else if (first < 0) {
                first = edge;
            } else {
                raw.stop(
                        Code.FRAME_MEMBER,
                        raw.at(raw.edgePlace(edge)),
                        "each member once",
                        "a member that stands before, "
                                + raw.at(raw.edgePlace(first)).text(),
                        "take one of the two out");
            }
        }
        if (faces > 2) {
            raw.add(Finding.warn(
                    Code.FRAME_MEMBER,
                    raw.at(raw.edgePlace(edge(sorted[from]))),
                    "an edge of one face or two",
                    faces + " faces at one edge",
                    "the frame is no plain surface there; it is built all the same"));
        }
    }

    // Nodes that no member uses are left out.
    private FrameNet compact(PointGrid nodes, int[] members) {
        boolean[] used = new boolean[nodes.size()];
        for (int node : members) {
            used[node] = true;
        }
        lonely(used);
        int[] index = new int[used.length];
        Doubles coordinates = new Doubles();
        int count = 0;
        for (int node = 0; node < used.length; node++) {
            index[node] = count;
            if (used[node]) {
                count++;
                for (int i = 0; i < 3; i++) {
                    coordinates.add(nodes.coordinate(3 * node + i));
                }
            }
        }
        double[] kept = new double[3 * count];
        Arrays.setAll(kept, coordinates::get);
        return new FrameNet(
                kept, Arrays.stream(members).map(node -> index[node]).toArray());
    }

    private void lonely(boolean[] used) {
        int unused = 0;
        for (int point = 0; point < nodeOfPoint.length; point++) {
            if (!used[nodeOfPoint[point]]) {
                unused++;
                if (raw.declared()) {
                    raw.stop(
                            Code.FRAME_MEMBER,
                            raw.at(raw.pointPlace(point)),
                            "a node with members",
                            "a node that no member joins",
                            "take it out, or add its members");
                }
            }
        }
        if (unused > 0 && !raw.declared()) {
            raw.add(Finding.note(
                    Code.FRAME_MEMBER,
                    new Where.Part(raw.file()),
                    "points that some face or line uses",
                    unused + (unused == 1 ? " point" : " points") + " that none uses",
                    "left out"));
        }
    }
}
