package collarwright.tooling;

import collarwright.hub.HubStrut;
import collarwright.hub.HubType;
import collarwright.hub.Hubs;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What a hub type asks of a pattern that it is to share. Judged by itself, each strut passes with no more than the extra
 * lean whatever patterns stand at the far ends; counting on good far ends, more may do, which has to be tried.
 *
 * <p>A hole that is off by ψ along the girth shifts the strut by {@code Rm·sin ψ} at its end and turns it by that over its
 * length; the hole at the far end may turn it by as much again. So of the swing σ that the extra lean leaves a strut of
 * length L, with {@code cos σ = cos(cap) / cos θ}, its own hole may take {@code (σ − F/L) / (1 + Rm/L)}, F being the most
 * that any hole is off: so little that no line passes a hub's axis further off than the limit.
 */
final class SharingRule {

    /** Angles and shares that differ by less differ by rounding. */
    private static final double SAME = 1e-9;

    /**
     * 0.02°: a strut that turns in both holes changes its tilt, too, by some 0.001° where it was measured; what may be
     * possible allows for more than that.
     */
    private static final double HAIR = 0.02 * StrictMath.PI / 180;

    private final double midRadius;
    private final double extraLean;
    private final double off;
    private final double miss;
    private final double far;
    private final boolean flip;
    private final List<double[]> azimuths;
    private final List<double[]> tilts;
    private final List<double[]> ways;
    private final List<double[]> chords;
    private int trials;

    /**
     * A rule.
     *
     * @param limits what the job allows
     * @param midRadius radius of the middle of the collar's wall
     * @param hubs the hubs
     * @param chordOfType node to node, by strut type
     * @param freedom what is left to the search
     */
    SharingRule(SharingLimits limits, double midRadius, Hubs hubs, double[] chordOfType, Freedom freedom) {
        this.midRadius = midRadius;
        this.extraLean = limits.extraLean();
        this.miss = limits.miss();
        this.far = freedom.far();
        this.flip = freedom.flip();
        this.azimuths =
                hubs.types().stream().map(t -> each(t, HubStrut::azimuth)).toList();
        this.tilts = hubs.types().stream()
                .map(t -> each(t, s -> StrictMath.abs(s.axialAngle())))
                .toList();
        this.ways = hubs.types().stream()
                .map(t -> each(t, s -> freedom.signed() ? StrictMath.signum(s.axialAngle()) : 0))
                .toList();
        this.chords = hubs.types().stream()
                .map(t -> each(t, s -> chordOfType[s.strutType()]))
                .toList();
        this.off = mostOff(limits.miss());
    }

    /**
     * What is left to the search.
     *
     * @param far from 0 to 1: how much of what a good far end may add is counted on; at 0 each hub is judged by itself and
     *     the limits hold, at 1 nothing that is within the limits is left out
     * @param signed whether a strut that leans outward may not share with one that leans inward: where heights differ
     * @param flip whether a hub type may take its collar upside down
     */
    record Freedom(double far, boolean signed, boolean flip) {}

    private static double[] each(HubType type, ToDoubleFunction<HubStrut> value) {
        return type.struts().stream().mapToDouble(value).toArray();
    }

    // Every hub type can stand on a pattern of its own, also with holes that are off at the far ends of its struts; and
    // a
    // line that is off by so much at both ends passes the hub's axis, one radius behind the hole, within the miss.
    private double mostOff(double miss) {
        double most = Double.POSITIVE_INFINITY;
        for (int type = 0; type < tilts.size(); type++) {
            for (int i = 0; i < tilts.get(type).length; i++) {
                double tilt = tilts.get(type)[i];
                double chord = chords.get(type)[i];
                double flat = chord * StrictMath.cos(tilt);
                double passing = miss * StrictMath.max(0, 1 - 2 * midRadius / flat);
                most = StrictMath.min(most, StrictMath.min(passing, swing(tilt, tilt + extraLean) * chord / 2));
            }
        }
        return most;
    }

    /** One more strut of a hub type is tried in a hole of a pattern. */
    void countTrial() {
        trials++;
    }

    /** How often that was done: the same on every machine. */
    int trials() {
        return trials;
    }

    int types() {
        return tilts.size();
    }

    int struts(int type) {
        return tilts.get(type).length;
    }

    /** Whether a hub type has to be tried upside down, too: not where it is its own mirror image. */
    boolean flips(int type) {
        return flip && !mirrored(type);
    }

    private boolean mirrored(int type) {
        int n = struts(type);
        for (int first = 0; first < n; first++) {
            boolean alike = true;
            for (int at = 0; at < n && alike; at++) {
                alike = alike(type, at, StrictMath.floorMod(first - at, n), first);
            }
            if (alike) {
                return true;
            }
        }
        return false;
    }

    // Whether a strut is the mirror image of another, when strut 0 is that of the first.
    private boolean alike(int type, int strut, int other, int first) {
        double turned = azimuth(type, first) - azimuth(type, strut) - azimuth(type, other);
        double chord = chords.get(type)[strut];
        return StrictMath.abs(StrictMath.IEEEremainder(turned, 2 * StrictMath.PI)) < SAME
                && StrictMath.abs(tilt(type, strut) - tilt(type, other)) < SAME
                && way(type, strut) == -way(type, other)
                && StrictMath.abs(chord - chords.get(type)[other]) < SAME * chord;
    }

    double azimuth(int type, int strut) {
        return azimuths.get(type)[strut];
    }

    double tilt(int type, int strut) {
        return tilts.get(type)[strut];
    }

    /** Which way a strut leans, where that matters: only struts of one way share a hole. */
    double way(int type, int strut) {
        return ways.get(type)[strut];
    }

    /**
     * Returns by how much a strut's hole may be off in azimuth.
     *
     * @param type hub type
     * @param strut its strut
     * @param least the least tilt of all struts that use the hole
     * @return an angle; negative if the strut may not use it
     */
    double allowed(int type, int strut, double least) {
        double tilt = tilt(type, strut);
        double cap = least + extraLean;
        if (tilt > cap) {
            return -1;
        }
        double sure = sure(type, strut, swing(tilt, cap));
        return far == 0 ? sure : sure + far * (possible(type, strut, swing(tilt, cap + HAIR)) - sure);
    }

    // Whatever stands at the far end.
    private double sure(int type, int strut, double swing) {
        double chord = chords.get(type)[strut];
        double own = (swing - off / chord) / (1 + midRadius / chord);
        return StrictMath.min(own, StrictMath.asin(StrictMath.min(1, off / midRadius)));
    }

    // With a hole at the far end that is off the same way as far as it may be, so that the strut does not turn: more is
    // never within the limits. A strut that swings by σ passes the hub's axis by Rm·sin σ.
    private double possible(int type, int strut, double swing) {
        double flat = chords.get(type)[strut] * StrictMath.cos(tilt(type, strut));
        double turning = midRadius / StrictMath.max(midRadius, flat - 2 * midRadius);
        double passing = StrictMath.asin(StrictMath.min(1, miss / midRadius));
        return (StrictMath.min(swing, passing) + turning * passing) / (1 + turning);
    }

    private static double swing(double tilt, double lean) {
        if (lean >= StrictMath.PI / 2) {
            return StrictMath.PI / 2;
        }
        double cosine = StrictMath.cos(lean) / StrictMath.cos(tilt);
        return StrictMath.acos(StrictMath.max(-1, StrictMath.min(1, cosine)));
    }
}
