package collarwright.tooling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Hub types that one pattern serves, and how far its holes are free to move.
 *
 * <p>The first member uses every hole. Each member turns as a whole, so what it asks is how far apart two holes may be: by
 * its own azimuths, give or take what both struts allow. All members together leave an interval for every pair of holes;
 * there is a pattern if these intervals do not contradict each other, which the shortest ways through them tell (difference
 * constraints).
 */
final class PatternGroup {

    /** Angles from different hubs that are equal may differ by rounding. */
    private static final double ROUNDING = 1e-11;

    private static final double TURN = 2 * StrictMath.PI;
    private static final int HALVINGS = 40;

    private final SharingRule rule;
    private final List<Member> members;
    private final double[] leastTilt;
    private final double[] way;
    /** [j · n + l]: the most by which hole j may lie beyond hole l. */
    private final double[] most;

    /**
     * A hub type on the pattern.
     *
     * @param type hub type
     * @param flipped whether its collar is put on upside down
     * @param first the strut that goes into the member's lowest hole
     * @param holes ascending; that of the first strut, of the next clockwise (on a flipped collar: the next the other way
     *     round), and so on
     */
    @SuppressWarnings("ArrayRecordComponent") // private to the package; never compared
    record Member(int type, boolean flipped, int first, int[] holes) {

        int strut(int at) {
            return StrictMath.floorMod(flipped ? first - at : first + at, holes.length);
        }
    }

    private PatternGroup(SharingRule rule, List<Member> members, double[] leastTilt, double[] way, double[] most) {
        this.rule = rule;
        this.members = members;
        this.leastTilt = leastTilt;
        this.way = way;
        this.most = most;
    }

    /** The pattern of one hub type. */
    static PatternGroup of(SharingRule rule, int type) {
        int holes = rule.struts(type);
        int[] own = new int[holes];
        double[] tilts = new double[holes];
        double[] ways = new double[holes];
        for (int i = 0; i < holes; i++) {
            own[i] = i;
            tilts[i] = rule.tilt(type, i);
            ways[i] = rule.way(type, i);
        }
        return joined(rule, List.of(new Member(type, false, 0, own)), tilts, ways, 1)
                .orElseThrow(() -> new IllegalStateException("a hub that has no pattern of its own"));
    }

    List<Member> members() {
        return members;
    }

    int holes() {
        return leastTilt.length;
    }

    /** All ways in which one more hub type can use this pattern, those that move the holes least first. */
    List<PatternGroup> with(int type) {
        List<PatternGroup> found = new ArrayList<>();
        int struts = rule.struts(type);
        if (struts > holes()) {
            return found;
        }
        for (int first = 0; first < struts; first++) {
            place(new Member(type, false, first, new int[struts]), new double[struts], 0, found);
        }
        for (int first = 0; first < struts && rule.flips(type); first++) {
            place(new Member(type, true, first, new int[struts]), new double[struts], 0, found);
        }
        found.sort((a, b) -> Double.compare(b.freedom(), a.freedom()));
        return found;
    }

    // How much play the tightest pair of holes has left.
    private double freedom() {
        double least = Double.POSITIVE_INFINITY;
        for (int j = 0; j < holes(); j++) {
            for (int l = 0; l < j; l++) {
                least = StrictMath.min(least, most[j * holes() + l] + most[l * holes() + j]);
            }
        }
        return least;
    }

    private void place(Member member, double[] plays, int count, List<PatternGroup> found) {
        int[] taken = member.holes();
        if (count == taken.length) {
            plus(new Member(member.type(), member.flipped(), member.first(), taken.clone()))
                    .ifPresent(found::add);
            return;
        }
        int from = count == 0 ? 0 : taken[count - 1] + 1;
        for (int hole = from; hole <= holes() - (taken.length - count); hole++) {
            taken[count] = hole;
            rule.countTrial();
            plays[count] = play(member, count, leastTilt);
            if (passes(member, plays, count)) {
                place(member, plays, count + 1, found);
            }
        }
    }

    // Whether a strut may use its hole, and lies right to those placed before it, as far as pairs can tell.
    private boolean passes(Member member, double[] plays, int at) {
        if (plays[at] < 0 || way(member, at) != way[member.holes()[at]]) {
            return false;
        }
        for (int before = 0; before < at; before++) {
            double apart = azimuth(member, at) - azimuth(member, before);
            double both = plays[at] + plays[before] + ROUNDING;
            int j = member.holes()[at];
            int l = member.holes()[before];
            if (apart - both > most[j * holes() + l] || -apart - both > most[l * holes() + j]) {
                return false;
            }
        }
        return true;
    }

    private double play(Member member, int at, double[] least) {
        int strut = member.strut(at);
        double tilt = StrictMath.min(least[member.holes()[at]], rule.tilt(member.type(), strut));
        return rule.allowed(member.type(), strut, tilt);
    }

    // Which way a strut leans on its collar.
    private double way(Member member, int at) {
        double outward = rule.way(member.type(), member.strut(at));
        return member.flipped() ? -outward : outward;
    }

    // Ascending from the member's first strut.
    private double azimuth(Member member, int at) {
        int strut = member.strut(at);
        double clockwise = rule.azimuth(member.type(), strut) - rule.azimuth(member.type(), member.first());
        double azimuth = member.flipped() ? -clockwise : clockwise;
        return azimuth < 0 ? azimuth + TURN : azimuth;
    }

    private Optional<PatternGroup> plus(Member member) {
        double[] least = leastTilt.clone();
        boolean lower = false;
        for (int at = 0; at < member.holes().length; at++) {
            int hole = member.holes()[at];
            double tilt = rule.tilt(member.type(), member.strut(at));
            lower |= tilt < least[hole];
            least[hole] = StrictMath.min(least[hole], tilt);
        }
        List<Member> all = new ArrayList<>(members);
        all.add(member);
        if (lower) {
            return joined(rule, List.copyOf(all), least, way, 1);
        }
        PatternGroup group = new PatternGroup(rule, List.copyOf(all), least, way, most.clone());
        return group.bound(member, 1) && group.closed() ? Optional.of(group) : Optional.empty();
    }

    // The share scales what every strut allows; empty if no pattern serves all members.
    private static Optional<PatternGroup> joined(
            SharingRule rule, List<Member> members, double[] least, double[] way, double share) {
        int n = least.length;
        double[] most = new double[n * n];
        Arrays.fill(most, Double.POSITIVE_INFINITY);
        PatternGroup group = new PatternGroup(rule, members, least, way, most);
        for (Member member : members) {
            if (!group.bound(member, share)) {
                return Optional.empty();
            }
        }
        return group.closed() ? Optional.of(group) : Optional.empty();
    }

    // False if one of the member's struts may not use its hole at all.
    private boolean bound(Member member, double share) {
        int struts = member.holes().length;
        double[] plays = new double[struts];
        double[] azimuths = new double[struts];
        for (int at = 0; at < struts; at++) {
            plays[at] = play(member, at, leastTilt);
            azimuths[at] = azimuth(member, at);
            if (plays[at] < 0) {
                return false;
            }
        }
        for (int at = 0; at < struts; at++) {
            for (int other = 0; other < struts; other++) {
                double both = other == at ? 0 : share * (plays[at] + plays[other]) + ROUNDING;
                int cell = member.holes()[at] * holes() + member.holes()[other];
                most[cell] = StrictMath.min(most[cell], azimuths[at] - azimuths[other] + both);
            }
        }
        return true;
    }

    // Shortest ways between all holes; false if some lead below zero.
    private boolean closed() {
        int n = holes();
        for (int k = 0; k < n; k++) {
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    double way = most[i * n + k] + most[k * n + j];
                    if (way < most[i * n + j]) {
                        most[i * n + j] = way;
                    }
                }
            }
        }
        for (int i = 0; i < n; i++) {
            if (most[i * n + i] < 0) {
                return false;
            }
        }
        return true;
    }

    /** The same group with the least share of what every strut allows: the pattern that suits all best. */
    PatternGroup tightest() {
        double low = 0;
        double high = 1;
        PatternGroup best = this;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = i == 0 ? 0 : (low + high) / 2;
            Optional<PatternGroup> trial = joined(rule, members, leastTilt, way, middle);
            if (trial.isPresent()) {
                best = trial.get();
                high = middle;
            } else {
                low = middle;
            }
            if (high == 0) {
                break;
            }
        }
        return best;
    }

    /** Azimuths of the holes from hole 1, clockwise: the middle of what the members leave open. */
    double[] azimuths() {
        int n = holes();
        double[] azimuths = new double[n];
        for (int hole = 1; hole < n; hole++) {
            azimuths[hole] = (most[hole * n] - most[hole]) / 2;
        }
        return azimuths;
    }

    /** Azimuth of a member's own 0° line on the pattern: the middle of what its struts leave open. */
    double turn(Member member, double[] azimuths) {
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (int at = 0; at < member.holes().length; at++) {
            double shift = azimuths[member.holes()[at]] - azimuth(member, at);
            double play = play(member, at, leastTilt);
            low = StrictMath.max(low, shift - play);
            high = StrictMath.min(high, shift + play);
        }
        double first = rule.azimuth(member.type(), member.first());
        double turn = (low + high) / 2 + (member.flipped() ? first : -first);
        double whole = turn % TURN;
        double positive = whole < 0 ? whole + TURN : whole;
        return positive >= TURN - ROUNDING || positive < ROUNDING ? 0 : positive;
    }
}
