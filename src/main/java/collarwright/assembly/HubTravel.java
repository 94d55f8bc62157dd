package collarwright.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

/**
 * How far every strut of a hub can be pushed into its collar beyond its seat, and how far it has to come out of its hole
 * to be entered. What limits a push is independent: a strut can be pushed as far as the least of wall, ring and each
 * neighbour that sits there.
 *
 * @param holes by hole
 */
public record HubTravel(List<HoleTravel> holes) {

    /** Keeps the list. */
    public HubTravel {
        holes = List.copyOf(holes);
    }

    /**
     * One hole of a hub.
     *
     * @param needed how far the strut's end has to stand back from its seat to be clear of this hole: what the other end
     *     has to be pushed in
     * @param wall how far the strut can be pushed in until it meets the far wall; infinite if it comes out above or below
     * @param ring the same for the centre ring
     * @param past the same for the strut in each hole; infinite for one that it passes by, and for itself
     * @param ringRoom how far the end face stays from the outside of the centre ring
     */
    public record HoleTravel(double needed, double wall, double ring, List<Double> past, double ringRoom) {
        /** Keeps the list. */
        public HoleTravel {
            past = List.copyOf(past);
        }
    }

    /**
     * Measures a hub.
     *
     * @param struts by hole, at most 12
     * @param space what they move in
     * @return travel of each
     */
    public static HubTravel of(List<SeatedStrut> struts, HubSpace space) {
        return worst(struts.stream().map(List::of).toList(), space);
    }

    /**
     * Measures hubs of one type whose struts take several lines through their holes: the worst of any of them, whichever
     * meet on one hub.
     *
     * @param lines by hole, at most 12; one or more lines each
     * @param space what they move in
     * @return the least travel and the largest need of each
     */
    public static HubTravel worst(List<List<SeatedStrut>> lines, HubSpace space) {
        List<List<Cylinder>> solids = lines.stream()
                .map(hole -> hole.stream().map(space::solid).toList())
                .toList();
        Cylinder ring = space.ring().solid();
        List<HoleTravel> holes = new ArrayList<>();
        for (int hole = 0; hole < lines.size(); hole++) {
            List<Cylinder> own = solids.get(hole);
            List<Double> past = new ArrayList<>();
            for (int other = 0; other < lines.size(); other++) {
                past.add(other == hole ? Double.POSITIVE_INFINITY : past(own, solids.get(other)));
            }
            List<SeatedStrut> seats = lines.get(hole);
            holes.add(new HoleTravel(
                    seats.stream().mapToDouble(s -> needed(s, space)).max().orElseThrow(),
                    least(seats, s -> new FarWall(s, space).travel()),
                    past(own, List.of(ring)),
                    past,
                    least(seats, s -> ringRoom(s, space))));
        }
        return new HubTravel(holes);
    }

    private static double least(List<SeatedStrut> seats, ToDoubleFunction<SeatedStrut> room) {
        return seats.stream().mapToDouble(room).min().orElseThrow();
    }

    private static double past(List<Cylinder> movers, List<Cylinder> others) {
        double least = Double.POSITIVE_INFINITY;
        for (Cylinder mover : movers) {
            for (Cylinder other : others) {
                least = StrictMath.min(least, Slide.travel(mover, other));
            }
        }
        return least;
    }

    /**
     * Finds how far a strut's end has to stand back from its seat to be clear of its hole: {@code Ro·cos θ + (p + Rm·tan|θ|)·sin|θ|
     * − s} and the working clearance; the outer rim's far lip is at the underside. With a swing it is beside it, and is searched
     * for on the rim.
     *
     * @param seat the strut
     * @param space what it sits in
     * @return 0 or more
     */
    static double needed(SeatedStrut seat, HubSpace space) {
        double mid = space.body().midRadius();
        double outer = space.body().outerRadius();
        double sin = StrictMath.sin(seat.axialAngle());
        double ahead = StrictMath.cos(seat.axialAngle()) * StrictMath.cos(seat.swing());
        double aside = StrictMath.cos(seat.axialAngle()) * StrictMath.sin(seat.swing());
        double rim = StrictMath.max(space.strut(), seat.hole().diameter()) / 2;
        double lip = (outer - mid) * ahead + rim * StrictMath.abs(sin);
        if (aside != 0) {
            DoubleUnaryOperator shorter = turn -> {
                double beside = rim * StrictMath.sin(turn);
                double out = StrictMath.sqrt(StrictMath.max(0, outer * outer - beside * beside));
                return -((out - mid) * ahead + beside * aside + rim * StrictMath.cos(turn) * sin);
            };
            lip = -Lowest.around(shorter, 64);
        }
        return StrictMath.max(0, seat.alongToHole(mid) + lip - seat.setback() + space.clearance());
    }

    // The end face seen along the hub's axis is an ellipse; how near it comes to the axis, less the ring's radius.
    private static double ringRoom(SeatedStrut seat, HubSpace space) {
        double mid = space.body().midRadius();
        double half = space.strut() / 2;
        double sin = StrictMath.sin(seat.axialAngle());
        double out = seat.setback() * StrictMath.cos(seat.axialAngle());
        double miss = seat.miss(mid);
        boolean over = StrictMath.hypot(out / (half * sin), miss / half) <= 1;
        double nearest = over
                ? 0
                : Lowest.around(
                        turn -> StrictMath.hypot(
                                out + half * sin * StrictMath.cos(turn), miss + half * StrictMath.sin(turn)),
                        64);
        return nearest - space.ring().radius();
    }

    /**
     * Tells how far a strut can be pushed with the ring out.
     *
     * @param hole its hole, from 0
     * @param seated bit i is set if there is a strut in hole i
     * @return its travel
     */
    public double available(int hole, int seated) {
        HoleTravel at = holes.get(hole);
        double least = at.wall();
        for (int other = 0; other < holes.size(); other++) {
            if ((seated & 1 << other) != 0) {
                least = StrictMath.min(least, at.past().get(other));
            }
        }
        return least;
    }

    /**
     * All holes of the hub.
     *
     * @return a bit for each
     */
    public int all() {
        return (1 << holes.size()) - 1;
    }
}
