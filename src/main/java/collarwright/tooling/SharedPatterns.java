package collarwright.tooling;

import collarwright.collar.Direction;
import collarwright.collar.Heights;
import collarwright.collar.HubSettings;
import collarwright.collar.StrutLine;
import collarwright.geometry.Interval;
import collarwright.hub.HubType;
import collarwright.hub.Hubs;
import collarwright.strut.StrutLayout;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Patterns that hub types share: the fewest groups, the hole azimuths that suit each group best, the lines that the struts
 * take through them, and what every hole has to fit.
 */
final class SharedPatterns {

    private static final double TURN = 2 * StrictMath.PI;
    /** How often the limit is tightened where the true lines come out a little beyond it. */
    private static final int MOST_TRIES = 8;

    /** How much of what good far ends may add is counted on, one after another, until the lines are within the limits. */
    private static final List<Double> FAR_ENDS = List.of(1.0, 0.9, 0.8, 0.65, 0.5, 0.25, 0.0);

    private static final double ROUNDING = 1e-9;

    private final Hubs hubs;
    private final StrutLayout struts;
    private final HubSettings hub;
    private final SharingLimits limits;
    private final boolean flip;
    private final double midRadius;

    private List<PatternGroup> groups = List.of();
    private List<double[]> azimuths = List.of();
    private List<Placement> placements = List.of();
    private List<Joint> joints = List.of();
    private List<List<Use>> uses = List.of();
    private int atLeast;
    private int exact;

    /** One strut end in a hole. */
    private record Use(Direction direction, double lean, double tilt, double ownLean) {}

    private SharedPatterns(Hubs hubs, StrutLayout struts, HubSettings hub, SharingLimits limits, boolean flip) {
        this.flip = flip;
        this.hubs = hubs;
        this.struts = struts;
        this.hub = hub;
        this.limits = limits;
        this.midRadius = hub.body().midRadius();
    }

    /**
     * What was laid out, before holes have sizes.
     *
     * @param azimuths of the holes of each pattern
     * @param heights of the holes of each pattern
     * @param needs of the holes of each pattern
     * @param required of the holes of each pattern: the largest of all their struts
     * @param placements by hub type
     * @param sharing what it saves and costs
     */
    record Laid(
            List<List<Double>> azimuths,
            List<List<Double>> heights,
            List<List<HoleNeed>> needs,
            List<List<Double>> required,
            List<Placement> placements,
            Sharing sharing) {

        /** What the holes ask of the cutters, each with the number of its holes in one dome. */
        List<PatternBook.Asked> asked(Hubs hubs) {
            List<PatternBook.Asked> all = new ArrayList<>();
            for (int pattern = 0; pattern < needs.size(); pattern++) {
                for (int hole = 0; hole < needs.get(pattern).size(); hole++) {
                    all.add(new PatternBook.Asked(
                            needs.get(pattern).get(hole),
                            required.get(pattern).get(hole),
                            Placement.collars(hubs, placements, pattern)));
                }
            }
            return all;
        }
    }

    /** The fewest patterns that were found; no collar is put on upside down where that saves none. */
    static SharedPatterns lay(Hubs hubs, StrutLayout struts, HubSettings hub, DrillingSettings drilling) {
        SharingLimits limits = drilling.shared().orElseThrow();
        SharedPatterns upright = new SharedPatterns(hubs, struts, hub, limits, false);
        upright.lay(Integer.MAX_VALUE);
        if (!drilling.flip()) {
            return upright;
        }
        SharedPatterns flipping = new SharedPatterns(hubs, struts, hub, limits, true);
        flipping.lay(upright.groups.size());
        if (flipping.groups.size() < upright.groups.size()) {
            return flipping;
        }
        // What was proven with collars on either side holds for those on one.
        upright.atLeast = StrictMath.min(flipping.atLeast, upright.groups.size());
        upright.exact = flipping.exact;
        return upright;
    }

    // Given up as soon as it is proven that there are not fewer than others have.
    private void lay(int others) {
        exact = Drillings.of(hubs, midRadius, hub.heights(), flip).all().size();
        int fewestProven = 1;
        for (double far : FAR_ENDS) {
            int fewest = group(limits.extraLean(), far);
            // With all that far ends may add counted on, nothing is left out: no fewer patterns can do.
            fewestProven = far == 1 ? fewest : fewestProven;
            if (within() || fewestProven >= others) {
                break;
            }
        }
        double extra = limits.extraLean();
        for (int i = 0; i < MOST_TRIES && fewestProven < others && !within() && extra > 0; i++) {
            // Where only the miss is beyond its limit, a smaller extra lean brings the holes nearer, too.
            double beyond = StrictMath.max(extraLean() - limits.extraLean(), miss() > limits.miss() ? extra / 8 : 0);
            extra = StrictMath.max(0, extra - beyond - ROUNDING);
            group(extra, 0);
        }
        atLeast = StrictMath.min(fewestProven, groups.size());
    }

    private boolean within() {
        return extraLean() <= limits.extraLean() + ROUNDING && miss() <= limits.miss() + ROUNDING;
    }

    // The number of groups that cannot be gone below under the rule.
    private int group(double extraLean, double far) {
        double[] chords =
                struts.types().stream().mapToDouble(type -> type.chord()).toArray();
        boolean signed = hub.heights() != Heights.MIDPLANE;
        SharingLimits tight = new SharingLimits(extraLean, limits.miss());
        SharingRule rule = new SharingRule(tight, midRadius, hubs, chords, new SharingRule.Freedom(far, signed, flip));
        PatternSearch.Found found = PatternSearch.search(rule);
        groups = found.groups().stream()
                .map(PatternGroup::tightest)
                .sorted(Comparator.comparingInt(this::firstNode))
                .toList();
        azimuths = groups.stream().map(PatternGroup::azimuths).toList();
        place();
        joints = Joints.of(hubs, struts, midRadius, errors());
        uses = uses();
        return found.atLeast();
    }

    private int firstNode(PatternGroup group) {
        return group.members().stream()
                .mapToInt(m -> hubs.types().get(m.type()).firstNode())
                .min()
                .orElseThrow();
    }

    private void place() {
        Placement[] all = new Placement[hubs.types().size()];
        for (int g = 0; g < groups.size(); g++) {
            PatternGroup group = groups.get(g);
            for (PatternGroup.Member member : group.members()) {
                Integer[] holes = new Integer[member.holes().length];
                for (int at = 0; at < holes.length; at++) {
                    holes[member.strut(at)] = member.holes()[at];
                }
                all[member.type()] =
                        new Placement(g, group.turn(member, azimuths.get(g)), member.flipped(), List.of(holes));
            }
        }
        placements = List.of(all);
    }

    private List<double[]> errors() {
        List<double[]> errors = new ArrayList<>();
        for (int type = 0; type < placements.size(); type++) {
            Placement placement = placements.get(type);
            HubType hubType = hubs.types().get(type);
            double[] off = new double[hubType.struts().size()];
            for (int strut = 0; strut < off.length; strut++) {
                double hole =
                        azimuths.get(placement.pattern())[placement.holes().get(strut)];
                double azimuth = placement.onPattern(hubType.struts().get(strut).azimuth());
                off[strut] = placement.clockwise(StrictMath.IEEEremainder(hole - azimuth, TURN));
            }
            errors.add(off);
        }
        return errors;
    }

    // By pattern and hole, one after another.
    private List<List<Use>> uses() {
        List<List<Use>> all = new ArrayList<>();
        azimuths.forEach(a -> IntStream.range(0, a.length).forEach(i -> all.add(new ArrayList<>())));
        for (Joint joint : joints) {
            use(joint.a(), joint.line().a(), all);
            use(joint.b(), joint.line().b(), all);
        }
        return all;
    }

    private void use(Joint.At at, StrutLine.End end, List<List<Use>> all) {
        Placement placement = placements.get(at.hubType());
        double tilt = hubs.types().get(at.hubType()).struts().get(at.strut()).axialAngle();
        // As the collar has it: turned over, what leans to the inside of the dome leans toward TOP.
        Direction direction = placement.flipped()
                ? new Direction(-end.direction().tilt(), -end.direction().swing())
                : end.direction();
        double own = placement.outward(tilt);
        all.get(slot(placement.pattern(), placement.holes().get(at.strut())))
                .add(new Use(direction, end.direction().lean(), own, StrictMath.abs(tilt)));
    }

    private int slot(int pattern, int hole) {
        int slot = hole;
        for (int i = 0; i < pattern; i++) {
            slot += azimuths.get(i).length;
        }
        return slot;
    }

    private double extraLean() {
        double most = 0;
        for (List<Use> hole : uses) {
            double largest = hole.stream().mapToDouble(Use::lean).max().orElseThrow();
            double least = hole.stream().mapToDouble(Use::ownLean).min().orElseThrow();
            most = StrictMath.max(most, largest - least);
        }
        return most;
    }

    private double miss() {
        return joints.stream()
                .flatMap(j -> List.of(j.line().a(), j.line().b()).stream())
                .mapToDouble(end -> StrictMath.abs(end.miss()))
                .max()
                .orElseThrow();
    }

    /** What was laid out, for struts of a diameter. */
    Laid laid(Interval strut) {
        List<List<Double>> places = new ArrayList<>();
        List<List<Double>> heights = new ArrayList<>();
        List<List<HoleNeed>> needs = new ArrayList<>();
        List<List<Double>> required = new ArrayList<>();
        for (int pattern = 0; pattern < azimuths.size(); pattern++) {
            int first = slot(pattern, 0);
            List<List<Use>> holes = uses.subList(first, first + azimuths.get(pattern).length);
            places.add(Arrays.stream(azimuths.get(pattern)).boxed().toList());
            heights.add(hub.heights()
                    .of(
                            midRadius,
                            holes.stream().map(SharedPatterns::middleTilt).toList()));
            needs.add(holes.stream().map(h -> governing(h, strut)).toList());
            required.add(holes.stream().map(h -> required(h, strut)).toList());
        }
        Sharing sharing =
                new Sharing(hubs.types().size(), exact, groups.size(), atLeast, extraLean(), miss(), limits, joints);
        return new Laid(places, heights, needs, required, placements, sharing);
    }

    private static double middleTilt(List<Use> hole) {
        double least = hole.stream().mapToDouble(Use::tilt).min().orElseThrow();
        double most = hole.stream().mapToDouble(Use::tilt).max().orElseThrow();
        return (least + most) / 2;
    }

    // The use that asks for the largest hole: of all uses it is left the least slack, and its limit is the hole's.
    private HoleNeed governing(List<Use> hole, Interval strut) {
        Use most = hole.stream()
                .max(Comparator.comparingDouble((Use u) -> new HoleNeed(hub.body(), strut, u.direction()).required())
                        .thenComparingDouble(Use::lean)
                        .thenComparingDouble(u -> u.direction().swing()))
                .orElseThrow();
        return new HoleNeed(hub.body(), strut, most.direction());
    }

    private double required(List<Use> hole, Interval strut) {
        return hole.stream()
                .map(use -> new HoleNeed(hub.body(), strut, use.direction()))
                .distinct()
                .mapToDouble(HoleNeed::required)
                .max()
                .orElseThrow();
    }
}
