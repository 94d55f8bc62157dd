package collarwright.dome;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Leaves openings in a frame and closes their rims. Ids stay with the nodes that are left. */
final class Openings {

    /** So many ids are told; the rest are counted. */
    private static final int TOLD = 6;

    /** Tier, or N alone, and place. */
    private static final Pattern ID = Pattern.compile("([TF]\\d+-|N)0*(\\d+)");

    private final DomeParts whole;
    private final Measure measure;
    private final List<Doorway> doorways = new ArrayList<>();
    private final Map<String, Integer> nodeOfId = new HashMap<>();
    private final Map<Long, Integer> memberOfPair = new HashMap<>();
    private final boolean[] goneNode;
    private final boolean[] goneMember;
    private final List<int[]> added = new ArrayList<>();
    private final List<Finding> findings;

    private Openings(DomeParts whole, Measure measure, List<Finding> findings) {
        this.whole = whole;
        this.measure = measure;
        this.findings = findings;
        this.goneNode = new boolean[whole.nodeCount()];
        this.goneMember = new boolean[whole.memberCount()];
        for (int node = 0; node < whole.nodeCount(); node++) {
            nodeOfId.put(whole.names().id(node), node);
        }
        for (int m = 0; m < whole.memberCount(); m++) {
            memberOfPair.put(pair(whole.members()[2 * m], whole.members()[2 * m + 1]), m);
        }
    }

    /**
     * Cuts openings.
     *
     * @param whole the frame
     * @param openings what to leave out and what to add
     * @param measure its size
     * @param findings takes what is wrong, such as ids that are not there, and what is to be known
     * @return what is left
     */
    static DomeParts cut(DomeParts whole, List<Opening> openings, Measure measure, List<Finding> findings) {
        if (openings.isEmpty()) {
            return whole;
        }
        Openings cut = new Openings(whole, measure, findings);
        for (int i = 0; i < openings.size(); i++) {
            cut.leaveOut(openings.get(i), "opening " + (i + 1));
        }
        for (int i = 0; i < openings.size(); i++) {
            cut.close(openings.get(i), "opening " + (i + 1));
        }
        DomeParts left = cut.left();
        cut.doorways.forEach(doorway -> doorway.tell(left, findings));
        return left;
    }

    /** Such as "hub T3-01" or "hubs T3-01, T3-04 and 12 more". */
    static String named(DomeParts parts, List<Integer> nodes) {
        String told = nodes.stream().limit(TOLD).map(parts.names()::id).collect(Collectors.joining(", "));
        String more = nodes.size() > TOLD ? " and " + (nodes.size() - TOLD) + " more" : "";
        return (nodes.size() == 1 ? "hub " : "hubs ") + told + more;
    }

    /**
     * The size of a frame.
     *
     * @param scale mm of its unit
     * @param girth how thick its parts are
     */
    record Measure(double scale, Girth girth) {}

    private static long pair(int a, int b) {
        return (long) StrictMath.min(a, b) << 32 | StrictMath.max(a, b);
    }

    private void leaveOut(Opening opening, String place) {
        for (String id : opening.nodes()) {
            node(id, place + " / nodes").ifPresent(node -> goneNode[node] = true);
        }
        for (Opening.Between strut : opening.struts()) {
            member(strut, place + " / struts").ifPresent(member -> goneMember[member] = true);
        }
        opening.corners().forEach(id -> node(id, place + " / corners"));
        opening.box().ifPresent(box -> leaveOut(box, place));
    }

    private Optional<Integer> node(String id, String place) {
        Integer node = nodeOfId.get(id);
        if (node == null) {
            findings.add(Finding.stop(
                    Code.DOME_OPENING,
                    new Where.Part(place),
                    "the id of a hub of this dome, " + whole.names().id(0) + " to "
                            + whole.names().id(whole.nodeCount() - 1),
                    id + likely(id),
                    "make the pack without the opening first: struts/hubs.csv lists every hub with its id and place"));
        }
        return Optional.ofNullable(node);
    }

    // The id that was meant where only capitals or zeros are wrong.
    private String likely(String id) {
        Matcher parts = ID.matcher(id.strip().toUpperCase(Locale.ROOT));
        if (!parts.matches()) {
            return "";
        }
        return IntStream.range(0, whole.nodeCount())
                .mapToObj(whole.names()::id)
                .filter(known -> {
                    Matcher one = ID.matcher(known);
                    return one.matches()
                            && one.group(1).equals(parts.group(1))
                            && one.group(2).equals(parts.group(2));
                })
                .findFirst()
                .map(known -> "; did you mean " + known + "?")
                .orElse("");
    }

    private Optional<Integer> member(Opening.Between strut, String place) {
        Optional<Integer> first = node(strut.first(), place);
        Optional<Integer> second = node(strut.second(), place);
        if (first.isEmpty() || second.isEmpty()) {
            return Optional.empty();
        }
        Integer member = memberOfPair.get(pair(first.get(), second.get()));
        if (member == null) {
            findings.add(Finding.stop(
                    Code.DOME_OPENING,
                    new Where.Part(place),
                    "two hubs with a strut between them",
                    strut.text() + ", which no strut joins",
                    "look in struts/members.csv for the struts of a hub"));
        }
        return Optional.ofNullable(member);
    }

    private void leaveOut(Opening.Box box, String place) {
        Doorway doorway = new Doorway(whole, box, measure, place);
        doorway.leaveOut(goneNode, goneMember);
        doorways.add(doorway);
    }

    private void close(Opening opening, String place) {
        for (Opening.Between strut : opening.added()) {
            Optional<Integer> first = node(strut.first(), place + " / add");
            Optional<Integer> second = node(strut.second(), place + " / add");
            if (first.isEmpty() || second.isEmpty()) {
                continue;
            }
            int a = StrictMath.min(first.get(), second.get());
            int b = StrictMath.max(first.get(), second.get());
            Integer member = memberOfPair.get(pair(a, b));
            boolean there = member != null && !goneMember[member] && !goneNode[a] && !goneNode[b];
            boolean twice = added.stream().anyMatch(m -> m[0] == a && m[1] == b);
            boolean left = goneNode[a] || goneNode[b];
            if (a == b || there || twice || left) {
                String why = a == b
                        ? ", one hub"
                        : left ? ", of which one is left out by nodes" : ", which a strut joins already";
                findings.add(Finding.stop(
                        Code.DOME_OPENING,
                        new Where.Part(place + " / add"),
                        "two hubs with no strut between them",
                        strut.text() + why,
                        left ? "take it out, or keep the hub" : "take it out"));
            } else {
                added.add(new int[] {a, b});
            }
        }
    }

    private DomeParts left() {
        List<Placed> members = new ArrayList<>();
        for (int m = 0; m < whole.memberCount(); m++) {
            int a = whole.members()[2 * m];
            int b = whole.members()[2 * m + 1];
            if (!goneMember[m] && !goneNode[a] && !goneNode[b]) {
                Role role = whole.roles().length == 0 ? Role.SHELL : whole.roles()[m];
                members.add(new Placed(a, b, role));
            }
        }
        added.forEach(m -> members.add(new Placed(m[0], m[1], Role.RIM)));
        members.sort(Placed.ORDER);
        boolean[] used = new boolean[whole.nodeCount()];
        members.forEach(m -> {
            used[m.a()] = true;
            used[m.b()] = true;
        });
        int[] kept = IntStream.range(0, used.length).filter(node -> used[node]).toArray();
        fellAway(used);
        int[] index = new int[used.length];
        Arrays.fill(index, -1);
        for (int i = 0; i < kept.length; i++) {
            index[kept[i]] = i;
        }
        int[] ends = members.stream()
                .flatMapToInt(m -> IntStream.of(index[m.a()], index[m.b()]))
                .toArray();
        Role[] roles = members.stream().map(Placed::role).toArray(Role[]::new);
        double[] coordinates = three(whole.coordinates(), kept);
        double[] axes = whole.onSphere() ? coordinates : three(whole.axes(), kept);
        double[] moved = whole.moved().length == 0
                ? whole.moved()
                : Arrays.stream(kept).mapToDouble(node -> whole.moved()[node]).toArray();
        int[] feet = Arrays.stream(whole.feet())
                .map(node -> index[node])
                .filter(node -> node >= 0)
                .toArray();
        return new DomeParts(
                whole.source(), coordinates, axes, ends, roles, whole.names().kept(kept), feet, moved);
    }

    private void fellAway(boolean[] used) {
        List<Integer> fallen = IntStream.range(0, used.length)
                .filter(node -> !used[node] && !goneNode[node])
                .boxed()
                .toList();
        if (!fallen.isEmpty()) {
            findings.add(Finding.note(
                    Code.DOME_OPENING,
                    new Where.Part("openings"),
                    "a strut left at every hub that no opening leaves out",
                    named(whole, fallen) + (fallen.size() == 1 ? ", which has none" : ", which have none"),
                    "left out too; keep a strut, or close the rim with add, to keep a hub"));
        }
    }

    private static double[] three(double[] from, int[] nodes) {
        double[] to = new double[3 * nodes.length];
        for (int i = 0; i < nodes.length; i++) {
            System.arraycopy(from, 3 * nodes[i], to, 3 * i, 3);
        }
        return to;
    }
}
