package collarwright.collar;

import collarwright.collar.RimView.Spot;
import collarwright.collar.TangentCorner.Place;
import collarwright.collar.TangentCorner.Tangent;
import java.util.ArrayList;
import java.util.List;

/**
 * The contact of a round strut with both rims of a round hole, for a lean in any direction.
 *
 * <p>Looking along the strut, each rim is a closed convex curve, and the strut fits where a circle of its size lies inside
 * both ({@link RimView}). Three things can be asked with the other two given: the largest lean, the thickest strut, the
 * least hole. Each is the last value for which all rim points stay clear of the circle.
 *
 * <p>It is found by exchange: the rims are replaced by a few of their tangents, the linear problem in the circle's centre
 * and the unknown is solved, and tangents are added where the rims come nearest to the circle, until they no longer cut it.
 * Three points of contact are met in a few rounds. Where there are two, opposite each other, the centre slides between
 * them; then Newton's rule on the line that is square to both rims finishes.
 */
final class RimContacts {

    /** What is looked for. */
    enum Unknown {
        /** The largest lean. */
        LEAN,
        /** The thickest strut. */
        STRUT,
        /** The least hole. */
        HOLE
    }

    /**
     * What is known, and where the search starts from.
     *
     * @param r radius of the strut
     * @param p radius of the hole
     * @param lean of the strut
     */
    record State(double r, double p, double lean) {}

    /** Every so many places of a rim a tangent is laid at first. */
    private static final int FIRST_EVERY = 6;
    /** 75 degrees: beyond it nobody leans a strut. */
    private static final double MOST_LEAN = 75 * StrictMath.PI / 180;

    private static final int MOST_ROUNDS = 60;
    private static final int MOST_POLISH = 12;
    /** Nearest points of a rim this close together, in φ, are one. */
    private static final double SAME_PLACE = 1e-9;

    private static final int MOST_PAIR_STEPS = 30;
    /** Of the strut's radius: a rim that cuts the strut by no more touches it. */
    private static final double CLEAR = 1e-12;
    /** The same, from where on Newton's rule on two contacts is tried. */
    private static final double NEARLY = 1e-2;
    /** The same, beyond which a search has failed. */
    private static final double SOLVED = 1e-6;
    /** Cosine between two tangents' normals below which the tangents are opposite. */
    private static final double OPPOSITE = -0.95;

    private final RimView view;
    private final Unknown unknown;
    private final double mostLean;
    private final double[] squares = new double[RimView.PLACES];

    private double r;
    private double p;
    private double lean;
    private double a;
    private double b;

    private RimContacts(RimView view, Unknown unknown, State start) {
        this.view = view;
        this.unknown = unknown;
        this.mostLean = mostLean(start.p(), view.inner());
        set(start);
    }

    /**
     * The lean up to which a rim is seen as a convex curve and the form holds.
     *
     * @param p radius of the hole
     * @param inner radius of the inner rim's cylinder
     * @return an angle, at most 75°
     */
    static double mostLean(double p, double inner) {
        double convex = StrictMath.min(StrictMath.atan(inner / p), StrictMath.acos(p / inner));
        return StrictMath.min(MOST_LEAN, 0.98 * convex);
    }

    /**
     * Solves for the unknown.
     *
     * @param view both rims and the bearing of the lean
     * @param unknown what is looked for
     * @param start what is known; of the unknown a guess
     * @return the unknown: a radius or an angle; {@link #mostLean} if the strut does not bind before
     */
    static double solve(RimView view, Unknown unknown, State start) {
        RimContacts contacts = new RimContacts(view, unknown, start);
        contacts.search();
        return switch (unknown) {
            case LEAN -> contacts.lean;
            case STRUT -> contacts.r;
            case HOLE -> contacts.p;
        };
    }

    private void set(State state) {
        r = state.r();
        p = state.p();
        lean = state.lean();
        view.set(p, lean);
    }

    private State state() {
        return new State(r, p, lean);
    }

    private void search() {
        double nearest = Double.NEGATIVE_INFINITY;
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < RimView.PLACES; i += FIRST_EVERY) {
            places.add(new Place(false, RimView.phi(i)));
            places.add(new Place(true, RimView.phi(i)));
        }
        for (int round = 0; round < MOST_ROUNDS; round++) {
            List<Tangent> tangents = new ArrayList<>(places.size());
            for (Place place : places) {
                tangents.add(tangent(place));
            }
            TangentCorner corner = TangentCorner.best(tangents, p);
            a = corner.a();
            b = corner.b();
            gain(corner.gain());
            places = new ArrayList<>(corner.places());
            nearest = StrictMath.min(near(false, places), near(true, places));
            boolean touches = nearest >= -CLEAR * r && StrictMath.abs(corner.gain()) <= CLEAR * r;
            if (touches || (nearest >= -NEARLY * r && pair(corner.places()))) {
                return;
            }
        }
        boolean free = unknown == Unknown.LEAN && lean >= mostLean;
        if (!free && nearest < -SOLVED * r) {
            throw new IllegalStateException("no contact found: strut " + 2 * r + ", hole " + 2 * p + ", lean " + lean);
        }
    }

    private void gain(double gain) {
        switch (unknown) {
            case LEAN -> lean = StrictMath.max(0, StrictMath.min(mostLean, lean + gain));
            case STRUT -> r = StrictMath.max(r / 2, r + gain);
            case HOLE -> p = StrictMath.min(view.inner() * (1 - 1e-9), StrictMath.max(p / 2, p - gain));
        }
        view.set(p, lean);
    }

    private Tangent tangent(Place place) {
        Spot s = view.spot(place.outer(), place.phi());
        double length = StrictMath.sqrt(s.da() * s.da() + s.db() * s.db());
        double na = -s.db() / length;
        double nb = s.da() / length;
        double slope = switch (unknown) {
            case LEAN -> na * s.leanA();
            case STRUT -> -1;
            case HOLE -> -(na * s.holeA() + nb * s.holeB());
        };
        return new Tangent(place, na * s.a() + nb * s.b() - r, slope, na, nb);
    }

    // Adds the places of a rim that lie nearest to the circle's centre; the least distance less the strut's radius.
    private double near(boolean outer, List<Place> places) {
        view.measure(outer, a, b, squares);
        double least = Double.POSITIVE_INFINITY;
        for (Place place : List.copyOf(places)) {
            if (place.outer() == outer) {
                least = StrictMath.min(least, add(outer, polished(outer, place.phi()), places));
            }
        }
        int last = RimView.PLACES - 1;
        for (int i = 0; i <= last; i++) {
            double before = squares[i > 0 ? i - 1 : last];
            double after = squares[i < last ? i + 1 : 0];
            if (squares[i] <= before && squares[i] < after) {
                // Two nearest points may lie close together, on either side of a place.
                double half = RimView.phi(1) / 2;
                double left = polished(outer, RimView.phi(i) - half);
                double right = polished(outer, RimView.phi(i) + half);
                least = StrictMath.min(least, StrictMath.min(add(outer, left, places), add(outer, right, places)));
            }
        }
        return least;
    }

    private double add(boolean outer, double phi, List<Place> places) {
        boolean known = false;
        for (Place place : places) {
            known |= place.outer() == outer && StrictMath.abs(place.phi() - phi) < SAME_PLACE;
        }
        if (!known) {
            places.add(new Place(outer, phi));
        }
        Spot s = view.spot(outer, phi);
        return StrictMath.sqrt((s.a() - a) * (s.a() - a) + (s.b() - b) * (s.b() - b)) - r;
    }

    // Newton's rule on the distance from the centre, kept near the place it starts from.
    private double polished(boolean outer, double start) {
        double phi = start;
        double most = RimView.phi(1);
        for (int i = 0; i < MOST_POLISH; i++) {
            Spot s = view.spot(outer, phi);
            double slope = (s.a() - a) * s.da() + (s.b() - b) * s.db();
            double bend = s.da() * s.da() + s.db() * s.db() + (s.a() - a) * s.dda() + (s.b() - b) * s.ddb();
            double step = bend > 0 ? -slope / bend : -StrictMath.signum(slope) * most / 4;
            double next = StrictMath.max(start - most, StrictMath.min(start + most, phi + step));
            if (StrictMath.abs(next - phi) < 1e-12) {
                return next;
            }
            phi = next;
        }
        return phi;
    }

    // Tries whether two opposite contacts hold the strut; if not, nothing is changed.
    private boolean pair(List<Place> held) {
        for (int i = 0; i < held.size(); i++) {
            for (int j = i + 1; j < held.size(); j++) {
                Tangent one = tangent(held.get(i));
                Tangent two = tangent(held.get(j));
                if (one.na() * two.na() + one.nb() * two.nb() < OPPOSITE) {
                    State before = state();
                    double beforeA = a;
                    double beforeB = b;
                    if (between(held.get(i), held.get(j))) {
                        return true;
                    }
                    set(before);
                    a = beforeA;
                    b = beforeB;
                }
            }
        }
        return false;
    }

    // Newton's rule on the line square to both rims, and on the unknown, until it is as long as the strut is thick.
    private boolean between(Place one, Place two) {
        double phi1 = one.phi();
        double phi2 = two.phi();
        for (int i = 0; i < MOST_PAIR_STEPS; i++) {
            Spot s = view.spot(one.outer(), phi1);
            Spot t = view.spot(two.outer(), phi2);
            double ga = s.a() - t.a();
            double gb = s.b() - t.b();
            double length = StrictMath.sqrt(ga * ga + gb * gb);
            double f1 = ga * s.da() + gb * s.db();
            double f2 = -(ga * t.da() + gb * t.db());
            double m11 = s.da() * s.da() + s.db() * s.db() + ga * s.dda() + gb * s.ddb();
            double m22 = t.da() * t.da() + t.db() * t.db() - ga * t.dda() - gb * t.ddb();
            double m12 = -(s.da() * t.da() + s.db() * t.db());
            double det = m11 * m22 - m12 * m12;
            double step1 = (f1 * m22 - f2 * m12) / det;
            double step2 = (f2 * m11 - f1 * m12) / det;
            double slope = switch (unknown) {
                case LEAN -> ga * (s.leanA() - t.leanA()) / length;
                case STRUT -> -2;
                case HOLE -> -(ga * (s.holeA() - t.holeA()) + gb * (s.holeB() - t.holeB())) / length;
            };
            double gain = -(length - 2 * r) / slope;
            if (!(StrictMath.abs(step1) + StrictMath.abs(step2) < 1 && slope < 0)) {
                return false;
            }
            a = (s.a() + t.a()) / 2;
            b = (s.b() + t.b()) / 2;
            if (StrictMath.abs(step1) + StrictMath.abs(step2) < 1e-9 && StrictMath.abs(gain) <= CLEAR * r / 10) {
                List<Place> found =
                        new ArrayList<>(List.of(new Place(one.outer(), phi1), new Place(two.outer(), phi2)));
                return StrictMath.min(near(false, found), near(true, found)) >= -CLEAR * r;
            }
            phi1 -= step1;
            phi2 -= step2;
            gain(gain);
        }
        return false;
    }
}
